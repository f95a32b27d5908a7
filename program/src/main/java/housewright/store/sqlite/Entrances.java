package housewright.store.sqlite;

import housewright.app.ProjectStore.Entrance;
import housewright.app.Role;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import org.jdbi.v3.core.Handle;

/** Browsers that somebody has come in with. Each method is part of the transaction of its handle. */
final class Entrances {
    private static final Comparator<Entrance> LAST_USED_FIRST =
            Comparator.comparing(Entrance::usedAt).reversed().thenComparing(Entrance::cookieHash);

    private Entrances() {}

    static void keep(Handle handle, Entrance entrance) {
        handle.createUpdate("""
                        INSERT INTO entrance (cookie_hash, person, role, link, used_at)
                        VALUES (:cookieHash, :person, :role, :link, :usedAt)
                        ON CONFLICT DO UPDATE SET used_at = excluded.used_at""")
                .bind("cookieHash", entrance.cookieHash())
                .bind("person", entrance.person())
                .bind("role", entrance.role().name())
                .bind("link", entrance.link())
                .bind("usedAt", entrance.usedAt().toString())
                .execute();
    }

    static List<Entrance> list(Handle handle) {
        return handle
                .createQuery("SELECT cookie_hash, person, role, link, used_at FROM entrance")
                .map((row, context) -> entrance(row))
                .stream()
                .sorted(LAST_USED_FIRST)
                .toList();
    }

    static void forget(Handle handle, Collection<String> cookieHashes) {
        for (String each : cookieHashes) {
            handle.createUpdate("DELETE FROM entrance WHERE cookie_hash = :cookieHash")
                    .bind("cookieHash", each)
                    .execute();
        }
    }

    private static Entrance entrance(ResultSet row) throws SQLException {
        return new Entrance(
                row.getString("cookie_hash"),
                row.getString("person"),
                Role.valueOf(row.getString("role")),
                row.getString("link"),
                Instant.parse(row.getString("used_at")));
    }
}
