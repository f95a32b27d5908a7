package housewright.store.sqlite;

import static housewright.store.sqlite.Stores.START;
import static housewright.store.sqlite.Stores.sql;
import static org.assertj.core.api.Assertions.assertThat;

import housewright.app.ProjectStore;
import housewright.app.ProjectStore.Backup;
import housewright.app.ProjectStore.NewRevision;
import housewright.app.ProjectStore.Revision;
import housewright.app.ProjectStore.Saved;
import housewright.app.ProjectStore.Step;
import housewright.app.StoreException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Processes that are killed (SIGKILL where there are signals) or work side by side: what they printed as acknowledged is
 * there. It says nothing of a power failure, which a test cannot make.
 */
class KilledProcessTest {
    private static final int NO_END = Integer.MAX_VALUE;

    @TempDir
    Path folder;

    private Path file;

    /** By revision, the seed of each step that a process was told is kept. */
    private final Map<Long, Long> acknowledged = new TreeMap<>();

    @BeforeEach
    void makeStore() throws StoreException {
        file = folder.resolve("halls.db");
        try (ProjectStore store = SqliteStore.open(file, START)) {
            store.create(
                    "Hall", null, new NewRevision("Ines", START, Step.BEGIN, 0, "begin", "", ""), "text of the first");
        }
    }

    @Test
    void acknowledgedStepsSurviveAFewKills() throws Exception {
        killed(4, 100, 400);
    }

    @Test
    @Tag("slow")
    void acknowledgedStepsSurvive200Kills() throws Exception {
        killed(200, 1, 300);
        System.out.printf("200 kills, %d steps acknowledged and there%n", acknowledged.size());
    }

    @Test
    void twoProcessesAppendSideBySide() throws Exception {
        int each = 150;
        Path firstOutput = folder.resolve("first.txt");
        Path secondOutput = folder.resolve("second.txt");
        Process first = start(1, START, each, firstOutput);
        Process second = start(2, START, each, secondOutput);
        assertThat(first.waitFor()).isZero();
        assertThat(second.waitFor()).isZero();
        readAcknowledged(firstOutput);
        readAcknowledged(secondOutput);
        assertThat(acknowledged).hasSize(2 * each);
        assertThat(assertAcknowledgedAreThere()).isEqualTo(1 + 2 * each);
    }

    /** Every second process is killed while it may still be opening the store and backing it up. */
    private void killed(int times, int from_ms, int to_ms) throws Exception {
        Random random = new Random(4);
        long head = 1;
        int written = 0;
        for (int kill = 0; kill < times; kill++) {
            Instant now = START.plus(Duration.ofDays(2L * kill));
            Path output = folder.resolve("acknowledged-" + kill + ".txt");
            Process process = start(kill, now, NO_END, output);
            boolean early = kill % 2 == 1;
            if (!early) {
                awaitFirstStep(process, output);
            }
            Thread.sleep(from_ms + random.nextInt(to_ms) + (early ? 300 : 0));
            assertThat(process.isAlive())
                    .as("kill %d: it worked until it was killed", kill)
                    .isTrue();
            process.destroyForcibly();
            assertThat(process.waitFor(1, TimeUnit.MINUTES)).isTrue();
            int before = acknowledged.size();
            readAcknowledged(output);
            written += acknowledged.size() > before ? 1 : 0;
            long found = assertAcknowledgedAreThere();
            assertThat(found).as("kill %d", kill).isGreaterThanOrEqualTo(head);
            head = found;
        }
        assertThat(written).as("processes that were killed while they wrote").isGreaterThanOrEqualTo(times / 2);
        try (ProjectStore store = SqliteStore.open(file, START)) {
            assertThat(store.listBackups()).isNotEmpty();
            for (Backup each : store.listBackups()) {
                assertThat(sql(each.file(), "PRAGMA integrity_check")).isEqualTo("ok");
            }
        }
    }

    private Process start(long seed, Instant now, int steps, Path output) throws IOException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-XX:+UseSerialGC",
                        "--enable-native-access=ALL-UNNAMED",
                        "-Djava.io.tmpdir=" + folder, // a killed process leaves SQLite's unpacked library behind
                        "-cp",
                        System.getProperty("java.class.path"),
                        AppendingProcess.class.getName(),
                        file.toString(),
                        String.valueOf(seed),
                        now.toString(),
                        String.valueOf(steps))
                .redirectOutput(output.toFile())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
    }

    /** A last line that was cut short by the kill was not acknowledged. */
    private void readAcknowledged(Path output) throws IOException {
        String text = Files.readString(output);
        for (String line : text.substring(0, text.lastIndexOf("\n") + 1).lines().toList()) {
            String[] words = line.split(" ");
            assertThat(acknowledged.put(Long.valueOf(words[0]), Long.valueOf(words[1])))
                    .as("acknowledged once: %s", line)
                    .isNull();
        }
    }

    private static void awaitFirstStep(Process process, Path output) throws Exception {
        while (process.isAlive() && Files.size(output) == 0) {
            Thread.sleep(5);
        }
    }

    /** @return the head */
    private long assertAcknowledgedAreThere() throws Exception {
        try (ProjectStore store = SqliteStore.open(file, START)) { // a clock long ago: the test makes no backup here
            List<Revision> revisions = store.listSince("hall", 0);
            for (int i = 0; i < revisions.size(); i++) {
                Revision revision = revisions.get(i);
                assertThat(revision.number()).as("no gap").isEqualTo(i + 1);
                Long seed = acknowledged.get(revision.number());
                if (seed != null) {
                    assertThat(revision.what()).isEqualTo(AppendingProcess.step(seed));
                }
            }
            acknowledged.keySet().forEach(number -> assertThat(number).isLessThanOrEqualTo(revisions.size()));
            Saved saved = store.findNewest("hall").orElseThrow();
            Long seed = acknowledged.get(saved.revision());
            if (seed != null) {
                assertThat(saved.document()).isEqualTo(AppendingProcess.document(seed));
            }
            assertThat(saved.revision() + saved.since().size()).isEqualTo(revisions.size());
            assertThat(sql(file, "PRAGMA integrity_check")).isEqualTo("ok");
            return revisions.size();
        }
    }
}
