package housewright.store.sqlite;

import housewright.app.ProjectStore.Appended;
import housewright.app.ProjectStore.Document;
import housewright.app.ProjectStore.Kept;
import housewright.app.ProjectStore.NewRevision;
import housewright.app.ProjectStore.Revision;
import housewright.app.ProjectStore.Saved;
import housewright.app.ProjectStore.Step;
import housewright.app.ProjectStore.StepTaken;
import housewright.app.StoreException;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/** Projects, their revisions and full texts. Each method is part of the transaction of its handle. */
final class Journal {
    /**
     * Revisions from one full text to the next. The steps since the last are what opening a project has to do again;
     * each full text costs an append the writing of the whole project. docs/performance.md says how this was chosen.
     */
    static final int FULL_TEXT_EVERY = 100;

    private static final String PROJECTS = """
            SELECT project.id, project.name, project.origin, revision.number, revision.at
            FROM project JOIN revision ON revision.project = project.key
            WHERE revision.number = (SELECT max(number) FROM revision WHERE revision.project = project.key)""";

    private static final String REVISIONS = """
            SELECT number, author, at, step, of_revision, says, changes, back
            FROM revision WHERE project = :project AND number > :after AND number < :before
            """;

    private static final Comparator<Kept> NEWEST_FIRST =
            Comparator.comparing(Kept::changedAt).reversed().thenComparing(Kept::id);

    private Journal() {}

    static List<Kept> listProjects(Handle handle) {
        // Sorted here: as text, an instant with a fraction of a second comes before the full second.
        return handle.createQuery(PROJECTS).map((row, context) -> kept(row)).stream()
                .sorted(NEWEST_FIRST)
                .toList();
    }

    static Kept create(Handle handle, String name, @Nullable String origin, NewRevision first, String document) {
        String id = ProjectIds.of(name, taken -> findKey(handle, taken).isPresent());
        long key = handle.createQuery(
                        "INSERT INTO project (id, name, origin) VALUES (:id, :name, :origin) RETURNING key")
                .bind("id", id)
                .bind("name", name)
                .bind("origin", origin)
                .mapTo(long.class)
                .one();
        addRevision(handle, key, 1, first);
        addFullText(handle, key, 1, document);
        return new Kept(id, name, origin, 1, first.at());
    }

    static void rename(Handle handle, String project, String name) throws StoreException {
        handle.createUpdate("UPDATE project SET name = :name WHERE key = :key")
                .bind("name", name)
                .bind("key", getKey(handle, project))
                .execute();
    }

    static void remove(Handle handle, String project) throws StoreException {
        handle.createUpdate("DELETE FROM project WHERE key = :key")
                .bind("key", getKey(handle, project))
                .execute();
    }

    static Appended append(Handle handle, String project, long head, NewRevision step, Document document)
            throws StoreException {
        long key = getKey(handle, project);
        long found = head(handle, key);
        if (found != head) {
            return new Appended.Moved(found);
        }
        long number = head + 1;
        addRevision(handle, key, number, step);
        if (number - newestFullText(handle, key, number) >= FULL_TEXT_EVERY) {
            addFullText(handle, key, number, document.text());
        }
        return new Appended.Done(number);
    }

    static Optional<Saved> findNewest(Handle handle, String project) {
        return findKey(handle, project).map(key -> saved(handle, key, head(handle, key)));
    }

    static Optional<Saved> findAt(Handle handle, String project, long revision) {
        return findKey(handle, project)
                .filter(key -> revision >= 1 && revision <= head(handle, key))
                .map(key -> saved(handle, key, revision));
    }

    static List<Revision> listRevisions(Handle handle, String project, long before, int most) throws StoreException {
        return handle.createQuery(REVISIONS + "ORDER BY number DESC LIMIT :most")
                .bind("project", getKey(handle, project))
                .bind("after", 0)
                .bind("before", before)
                .bind("most", Math.max(0, most))
                .map((row, context) -> revision(row))
                .list();
    }

    static List<Revision> listSince(Handle handle, String project, long revision) throws StoreException {
        return since(handle, getKey(handle, project), revision, Long.MAX_VALUE);
    }

    static List<StepTaken> listSteps(Handle handle, String project, long revision) throws StoreException {
        return handle.createQuery("""
                        SELECT number, author, step, of_revision FROM revision
                        WHERE project = :project AND number > :after ORDER BY number""")
                .bind("project", getKey(handle, project))
                .bind("after", revision)
                .map((row, context) -> new StepTaken(
                        row.getLong("number"),
                        row.getString("author"),
                        Step.valueOf(row.getString("step")),
                        row.getLong("of_revision")))
                .list();
    }

    static long lastSeen(Handle handle, String project, String person) throws StoreException {
        return handle.createQuery("SELECT revision FROM seen WHERE project = :project AND person = :person")
                .bind("project", getKey(handle, project))
                .bind("person", person)
                .mapTo(long.class)
                .findOne()
                .orElse(0L);
    }

    static void see(Handle handle, String project, String person, long revision) throws StoreException {
        handle.createUpdate("""
                        INSERT INTO seen (project, person, revision) VALUES (:project, :person, :revision)
                        ON CONFLICT DO UPDATE SET revision = excluded.revision WHERE excluded.revision > revision""")
                .bind("project", getKey(handle, project))
                .bind("person", person)
                .bind("revision", revision)
                .execute();
    }

    /** The key by which other tables refer to a project. */
    static long getKey(Handle handle, String project) throws StoreException {
        return findKey(handle, project)
                .orElseThrow(() -> new StoreException("There is no project " + project + " any more."));
    }

    static Optional<Long> findKey(Handle handle, String project) {
        return handle.createQuery("SELECT key FROM project WHERE id = :id")
                .bind("id", project)
                .mapTo(Long.class)
                .findOne();
    }

    private static Saved saved(Handle handle, long key, long revision) {
        long number = newestFullText(handle, key, revision);
        String document = handle.createQuery(
                        "SELECT document FROM full_text WHERE project = :project AND number = :number")
                .bind("project", key)
                .bind("number", number)
                .mapTo(String.class)
                .one();
        return new Saved(number, document, since(handle, key, number, revision + 1));
    }

    private static List<Revision> since(Handle handle, long key, long after, long before) {
        return handle.createQuery(REVISIONS + "ORDER BY number")
                .bind("project", key)
                .bind("after", after)
                .bind("before", before)
                .map((row, context) -> revision(row))
                .list();
    }

    private static long head(Handle handle, long key) {
        return handle.createQuery("SELECT max(number) FROM revision WHERE project = :project")
                .bind("project", key)
                .mapTo(long.class)
                .one();
    }

    private static long newestFullText(Handle handle, long key, long upTo) {
        return handle.createQuery("SELECT max(number) FROM full_text WHERE project = :project AND number <= :upTo")
                .bind("project", key)
                .bind("upTo", upTo)
                .mapTo(long.class)
                .one();
    }

    private static void addRevision(Handle handle, long key, long number, NewRevision what) {
        handle.createUpdate("""
                        INSERT INTO revision (project, number, author, at, step, of_revision, says, changes, back)
                        VALUES (:project, :number, :author, :at, :step, :of, :says, :changes, :back)""")
                .bind("project", key)
                .bind("number", number)
                .bind("author", what.author())
                .bind("at", what.at().toString())
                .bind("step", what.step().name())
                .bind("of", what.of())
                .bind("says", what.says())
                .bind("changes", what.changes())
                .bind("back", what.back())
                .execute();
    }

    private static void addFullText(Handle handle, long key, long number, String document) {
        handle.createUpdate("INSERT INTO full_text (project, number, document) VALUES (:project, :number, :document)")
                .bind("project", key)
                .bind("number", number)
                .bind("document", document)
                .execute();
    }

    private static Kept kept(ResultSet row) throws SQLException {
        return new Kept(
                row.getString("id"),
                row.getString("name"),
                row.getString("origin"),
                row.getLong("number"),
                Instant.parse(row.getString("at")));
    }

    private static Revision revision(ResultSet row) throws SQLException {
        return new Revision(
                row.getLong("number"),
                new NewRevision(
                        row.getString("author"),
                        Instant.parse(row.getString("at")),
                        Step.valueOf(row.getString("step")),
                        row.getLong("of_revision"),
                        row.getString("says"),
                        row.getString("changes"),
                        row.getString("back")));
    }
}
