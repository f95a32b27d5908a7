package housewright.store.sqlite;

import housewright.app.ProjectStore.ShareLink;
import housewright.app.Role;
import housewright.app.StoreException;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import org.jdbi.v3.core.Handle;

/** Links by which others come in. Each method is part of the transaction of its handle. */
final class Links {
    private static final Comparator<ShareLink> NEWEST_FIRST =
            Comparator.comparing(ShareLink::madeAt).reversed().thenComparing(ShareLink::id);

    private Links() {}

    static void add(Handle handle, ShareLink link) throws StoreException {
        int added = handle.createUpdate("""
                        INSERT INTO share_link (id, secret_hash, role, person, made_at, revoked)
                        VALUES (:id, :secretHash, :role, :person, :madeAt, :revoked) ON CONFLICT DO NOTHING""")
                .bind("id", link.id())
                .bind("secretHash", link.secretHash())
                .bind("role", link.role().name())
                .bind("person", link.person())
                .bind("madeAt", link.madeAt().toString())
                .bind("revoked", link.revoked())
                .execute();
        if (added == 0) {
            throw new StoreException("There is a link " + link.id() + " already.");
        }
    }

    static List<ShareLink> list(Handle handle) {
        return handle
                .createQuery("SELECT id, secret_hash, role, person, made_at, revoked FROM share_link")
                .map((row, context) -> link(row))
                .stream()
                .sorted(NEWEST_FIRST)
                .toList();
    }

    static void revoke(Handle handle, String id) throws StoreException {
        int found = handle.createUpdate("UPDATE share_link SET revoked = 1 WHERE id = :id")
                .bind("id", id)
                .execute();
        if (found == 0) {
            throw new StoreException("There is no link " + id + ".");
        }
    }

    private static ShareLink link(ResultSet row) throws SQLException {
        return new ShareLink(
                row.getString("id"),
                row.getString("secret_hash"),
                Role.valueOf(row.getString("role")),
                row.getString("person"),
                Instant.parse(row.getString("made_at")),
                row.getBoolean("revoked"));
    }
}
