package housewright.store.sqlite;

import housewright.app.ProjectStore.Printed;
import housewright.app.ProjectStore.Stationery;
import housewright.app.StoreException;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** What was last printed of each paper, and what on. Each method is part of the transaction of its handle. */
final class Prints {
    private Prints() {}

    static void keep(Handle handle, String project, String paper, List<Printed> sheets) throws StoreException {
        long key = Journal.getKey(handle, project);
        handle.createUpdate("DELETE FROM printed WHERE project = :project AND paper = :paper")
                .bind("project", key)
                .bind("paper", paper)
                .execute();
        for (Printed each : sheets) {
            handle.createUpdate("""
                            INSERT INTO printed (project, paper, sheet, title, content, revision, person, at)
                            VALUES (:project, :paper, :sheet, :title, :content, :revision, :person, :at)""")
                    .bind("project", key)
                    .bind("paper", paper)
                    .bind("sheet", each.sheet())
                    .bind("title", each.title())
                    .bind("content", each.content())
                    .bind("revision", each.revision())
                    .bind("person", each.person())
                    .bind("at", each.at().toString())
                    .execute();
        }
    }

    static List<Printed> list(Handle handle, String project) throws StoreException {
        return handle.createQuery("""
                        SELECT paper, sheet, title, content, revision, person, at FROM printed
                        WHERE project = :project ORDER BY paper, sheet""")
                .bind("project", Journal.getKey(handle, project))
                .map((row, context) -> printed(row))
                .list();
    }

    static void keepStationery(Handle handle, String project, String person, Stationery stationery)
            throws StoreException {
        handle.createUpdate("""
                        INSERT INTO stationery (project, person, size, labels)
                        VALUES (:project, :person, :size, :labels)
                        ON CONFLICT (project, person) DO UPDATE SET size = excluded.size, labels = excluded.labels""")
                .bind("project", Journal.getKey(handle, project))
                .bind("person", person)
                .bind("size", stationery.size())
                .bind("labels", stationery.labels())
                .execute();
    }

    static Optional<Stationery> findStationery(Handle handle, String project, String person) throws StoreException {
        return handle.createQuery("SELECT size, labels FROM stationery WHERE project = :project AND person = :person")
                .bind("project", Journal.getKey(handle, project))
                .bind("person", person)
                .map((row, context) -> new Stationery(row.getString("size"), row.getString("labels")))
                .findOne();
    }

    private static Printed printed(ResultSet row) throws SQLException {
        return new Printed(
                row.getString("paper"),
                row.getString("sheet"),
                row.getString("title"),
                row.getString("content"),
                row.getLong("revision"),
                row.getString("person"),
                Instant.parse(row.getString("at")));
    }
}
