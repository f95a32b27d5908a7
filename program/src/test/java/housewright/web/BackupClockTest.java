package housewright.web;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import housewright.app.Author;
import housewright.app.OpenProject;
import housewright.app.ProjectFiles;
import housewright.app.Projects;
import housewright.app.Role;
import housewright.app.StoreException;
import housewright.library.BuiltInLibrary;
import housewright.store.sqlite.SqliteStore;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Backups while projects are served, of a real store; only the hours are short. */
class BackupClockTest {
    private static final Instant MORNING = Instant.parse("2027-02-10T09:00:00Z");
    private static final Duration SOON = Duration.ofMillis(20);
    private static final BuiltInLibrary LIBRARY = BuiltInLibrary.of(1);

    @TempDir
    private Path folder;

    private final AtomicReference<Instant> now = new AtomicReference<>(MORNING);
    private final Queue<Instant> asked = new ConcurrentLinkedQueue<>();
    private final ByteArrayOutputStream said = new ByteArrayOutputStream();

    private Projects open() throws StoreException {
        return new Projects(
                SqliteStore.open(folder.resolve("halls.housewright"), MORNING),
                LIBRARY,
                new ProjectFiles(LIBRARY, new ByteArrayInputStream(new byte[0])),
                now::get);
    }

    private BackupClock start(Projects projects) {
        return BackupClock.start(
                projects.store(),
                () -> {
                    asked.add(now.get());
                    return now.get();
                },
                SOON,
                new PrintStream(said, true, UTF_8));
    }

    /** Until it has begun to look again twice, so that a look that began after now has ended. */
    private void waitForALook() {
        int before = asked.size();
        long end = System.nanoTime() + Duration.ofSeconds(30).toNanos();
        while (asked.size() < before + 2) {
            assertThat(System.nanoTime()).as("it looks").isLessThan(end);
            Thread.onSpinWait();
        }
    }

    @Test
    void itLooksEveryHour() {
        assertThat(BackupClock.EVERY).isEqualTo(Duration.ofHours(1));
    }

    @Test
    void oneIsMadeADayAndOnlyWhereSomethingChanged() throws Exception {
        Projects projects = open();
        try (var store = projects.store();
                BackupClock clock = start(projects)) {
            assertThat(clock).isNotNull();
            waitForALook();
            assertThat(store.listBackups()).as("nothing to keep").isEmpty();
            OpenProject hall = projects.begin("Our hall", new Author("ada", Role.LEAD));
            waitForALook();
            assertThat(store.listBackups()).hasSize(1);
            waitForALook();
            assertThat(store.listBackups()).as("the same day").hasSize(1);
            now.set(MORNING.plus(Duration.ofHours(25)));
            waitForALook();
            assertThat(store.listBackups()).as("nothing changed").hasSize(1);
            store.rename(hall.id(), "Our other hall");
            waitForALook();
            assertThat(store.listBackups()).hasSize(2);
            assertThat(store.listBackups().getFirst().at()).isEqualTo(now.get());
        }
        assertThat(said.toString(UTF_8)).isEmpty();
    }

    @Test
    void aFailureIsSaidOnceAndItGoesOnLooking() throws Exception {
        Projects projects = open();
        try (var store = projects.store()) {
            projects.begin("Our hall", new Author("ada", Role.LEAD));
            Path backups = folder.resolve("halls-backups");
            Files.writeString(backups, "a file where the folder should be");
            try (BackupClock clock = start(projects)) {
                assertThat(clock).isNotNull();
                waitForALook();
                waitForALook();
                assertThat(said.toString(UTF_8)).containsOnlyOnce("No backup was made.");
                assertThat(store.listRemarks()).hasSize(1);
                Files.delete(backups);
                waitForALook();
                assertThat(store.listBackups()).hasSize(1);
                assertThat(store.listRemarks()).isEmpty();
            }
        }
    }

    @Test
    void afterItIsClosedItLooksNoMore() throws IOException, StoreException {
        Projects projects = open();
        try (var store = projects.store()) {
            BackupClock clock = start(projects);
            waitForALook();
            clock.close();
            int before = asked.size();
            projects.begin("Our hall", new Author("ada", Role.LEAD));
            assertThat(asked).hasSize(before);
            assertThat(store.listBackups()).isEmpty();
        }
    }

    @Test
    void theLeadMakesOneFromTheProjectsPage() {
        try (Hall hall = Hall.demo()) {
            Visitor lead = Visitor.of(hall, Role.LEAD);
            assertThat(lead.get("/").body()).contains("None is made yet.").contains("How to go back to a backup");
            assertThat(lead.post("/backups", Map.of()).statusCode()).isEqualTo(303);
            assertThat(lead.get("/").body())
                    .contains("Made the backup 2027-02-10T090000Z.db")
                    .contains("projects-backups");
            Visitor helper = Visitor.of(hall, Role.HELPER);
            assertThat(helper.get("/").body()).doesNotContain("backup");
            assertThat(helper.post("/backups", Map.of()).statusCode()).isEqualTo(403);
        }
    }
}
