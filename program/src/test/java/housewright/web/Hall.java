package housewright.web;

import housewright.app.Author;
import housewright.app.Demo;
import housewright.app.OpenProject;
import housewright.app.Opening;
import housewright.app.Outcome;
import housewright.app.ProjectFiles;
import housewright.app.Projects;
import housewright.app.Role;
import housewright.app.StoreException;
import housewright.app.plan.Acceptance;
import housewright.app.plan.Planning;
import housewright.library.BuiltInLibrary;
import housewright.model.change.Change;
import housewright.plan.Effort;
import housewright.store.sqlite.SqliteStore;
import housewright.study.PlanBasis;
import housewright.study.Study;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** A server with the demo in it, on a day some weeks before its first service; nothing of it is kept. */
final class Hall implements AutoCloseable {
    static final Author LEAD = new Author("ada", Role.LEAD);
    static final Instant TODAY = Instant.parse("2027-02-10T09:00:00Z");
    private static final BuiltInLibrary LIBRARY = BuiltInLibrary.of(1);

    private final Path folder;
    /** What the server takes for this moment. */
    volatile Instant now;

    final Projects projects;
    final WebServer server;
    final ByteArrayOutputStream faults = new ByteArrayOutputStream();

    private final boolean kept;

    private Hall(boolean share) {
        this(share, null, 0);
    }

    private Hall(boolean share, @Nullable Path where, int port) {
        this(share, where, port, TODAY);
    }

    private Hall(boolean share, @Nullable Path where, int port, Instant today) {
        kept = where != null;
        now = today;
        ProjectFiles files = new ProjectFiles(LIBRARY, new ByteArrayInputStream(new byte[0]));
        try {
            this.folder = where == null ? Files.createTempDirectory("housewright-hall-") : where;
            this.projects = new Projects(
                    SqliteStore.open(folder.resolve("projects.housewright"), today), LIBRARY, files, () -> now);
            this.server = WebServer.start(
                    projects,
                    new Serving(port, true, share, LEAD.person(), null, folder.resolve("projects.housewright")),
                    new PrintStream(faults, true, StandardCharsets.UTF_8));
        } catch (IOException | StoreException e) {
            throw new AssertionError(e);
        }
    }

    static Hall empty() {
        return new Hall(false);
    }

    /** What is in a folder already, or empty; it stays there. */
    static Hall in(Path folder) {
        return in(folder, 0);
    }

    /** The same on a port, such as that of an earlier server. */
    static Hall in(Path folder, int port) {
        return new Hall(false, folder, port);
    }

    static Hall demo() {
        Hall hall = new Hall(false);
        hall.begin("demo.yaml", text -> text);
        return hall;
    }

    /** The example of a small refit in one day, with its plan accepted a week before. */
    static Hall planned() {
        Hall hall = new Hall(false, null, 0, Instant.parse("2027-05-03T06:00:00Z"));
        try {
            String text = Files.readString(Path.of("../examples/refit-plan.yaml"))
                    .replace("currency: EUR}", "currency: EUR, time-zone: Europe/Berlin}");
            hall.begin("refit-plan.yaml", any -> text);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
        Study study = hall.job().now().study();
        PlanBasis basis = study.planBasis(LocalDateTime.parse("2027-05-03T08:00"), Map.of());
        hall.edit(
                LEAD,
                "Accepted the plan",
                Acceptance.of(
                        basis.job(),
                        Planning.quick(basis.request(Effort.quick(1, 1))),
                        LocalDateTime.parse("2027-05-03T08:00"),
                        null));
        return hall;
    }

    /** @param change of the demo's text */
    OpenProject begin(String name, UnaryOperator<String> change) {
        String text = change.apply(new String(Demo.bytes(), StandardCharsets.UTF_8));
        Opening opening = projects.read(name, text.getBytes(StandardCharsets.UTF_8));
        if (!(opening instanceof Opening.Opened opened)) {
            throw new AssertionError(opening);
        }
        try {
            return projects.begin(opened.file(), LEAD);
        } catch (StoreException e) {
            throw new AssertionError(e);
        }
    }

    OpenProject job() {
        try {
            return projects.find(projects.list().getFirst().id()).orElseThrow();
        } catch (StoreException e) {
            throw new AssertionError(e);
        }
    }

    void edit(Author author, String says, Change... changes) {
        Outcome outcome = job().edit(author, job().now().revision(), says, List.of(changes));
        if (!(outcome instanceof Outcome.Accepted)) {
            throw new AssertionError(outcome);
        }
    }

    String origin() {
        return "http://127.0.0.1:" + server.port();
    }

    /** What the server said of its own faults. */
    String faults() {
        return faults.toString(StandardCharsets.UTF_8);
    }

    @Override
    public void close() {
        server.close();
        projects.store().close();
        if (kept) {
            return;
        }
        try (Stream<Path> files = Files.walk(folder)) {
            files.sorted(Comparator.reverseOrder())
                    .forEach(path -> path.toFile().delete());
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }
}
