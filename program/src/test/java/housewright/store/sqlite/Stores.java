package housewright.store.sqlite;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.app.ProjectStore;
import housewright.app.ProjectStore.Appended;
import housewright.app.ProjectStore.NewRevision;
import housewright.app.ProjectStore.Revision;
import housewright.app.ProjectStore.Saved;
import housewright.app.ProjectStore.Step;
import housewright.app.StoreException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** What the tests of this package share. */
final class Stores {
    static final Instant START = Instant.parse("2026-03-02T08:00:00Z");

    /** As usual, but not patient. */
    static final Settings HASTY =
            new Settings(Duration.ofMillis(100), 0, Settings.USUAL.version(), Settings.USUAL.migrations());

    private Stores() {}

    static NewRevision step(long number) {
        return new NewRevision(
                "Ines Aguirre",
                START.plusSeconds(number),
                Step.EDIT,
                0,
                "step " + number,
                "changes ".repeat(100),
                "back");
    }

    /** A store with one project, {@code hall}, whose head is this. */
    static void make(Path file, int head) throws StoreException {
        try (ProjectStore store = SqliteStore.open(file, START.minusSeconds(1))) {
            store.create("Hall", null, step(1), document(1));
            for (int number = 2; number <= head; number++) {
                append(store, number);
            }
        }
    }

    static void append(ProjectStore store, long number) throws StoreException {
        assertThat(store.append("hall", number - 1, step(number), () -> document(number)))
                .isEqualTo(new Appended.Done(number));
    }

    static String document(long number) {
        return ("document at " + number + "\n").repeat(200);
    }

    /** All of the project that {@link #make} and {@link #append} made is there. */
    static void assertWhole(ProjectStore store, long head) throws StoreException {
        assertThat(store.listProjects()).extracting(ProjectStore.Kept::head).containsExactly(head);
        assertThat(store.listSince("hall", 0))
                .hasSize((int) head)
                .allSatisfy(each -> assertThat(each).isEqualTo(new Revision(each.number(), step(each.number()))));
        Saved newest = store.findNewest("hall").orElseThrow();
        assertThat(newest.document()).isEqualTo(document(newest.revision()));
    }

    /** Without this program: SQLite's own driver. */
    static String sql(Path file, String... statements) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file)) {
            return sql(connection, statements);
        }
    }

    /** @return the first column of the first row of the last statement; empty where it gives none */
    static String sql(Connection connection, String... statements) throws SQLException {
        String last = "";
        try (Statement statement = connection.createStatement()) {
            for (String each : statements) {
                last = "";
                if (statement.execute(each)) {
                    try (ResultSet rows = statement.getResultSet()) {
                        last = rows.next() ? rows.getString(1) : "";
                    }
                }
            }
        }
        return last;
    }

    /** Every file below a folder with its bytes. To be taken only while nothing in this process has them open. */
    static Map<String, String> contents(Path folder) throws IOException {
        Map<String, String> contents = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path each : files.filter(Files::isRegularFile).toList()) {
                contents.put(folder.relativize(each).toString(), Attachments.idOf(Files.readAllBytes(each)));
            }
        }
        return contents;
    }
}
