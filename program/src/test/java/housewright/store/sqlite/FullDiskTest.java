package housewright.store.sqlite;

import static housewright.store.sqlite.Stores.START;
import static housewright.store.sqlite.Stores.append;
import static housewright.store.sqlite.Stores.assertWhole;
import static housewright.store.sqlite.Stores.document;
import static housewright.store.sqlite.Stores.make;
import static housewright.store.sqlite.Stores.sql;
import static housewright.store.sqlite.Stores.step;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import housewright.app.ProjectStore;
import housewright.app.StoreException;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FullDiskTest {
    private static final int MOST_STEPS = 100_000;

    @TempDir
    Path folder;

    private Path file;

    @BeforeEach
    void nameFile() {
        file = folder.resolve("halls.db");
    }

    /** Not a full disk, but what SQLite does when it may not grow; this runs everywhere. */
    @Test
    void storeThatMayNotGrowKeepsWhatItAcknowledged() throws Exception {
        make(file, 1);
        Settings small =
                new Settings(Duration.ofSeconds(1), 120, Settings.USUAL.version(), Settings.USUAL.migrations());
        long head;
        try (ProjectStore store = SqliteStore.open(file, START, small)) {
            head = appendUntilFull(store, 1);
            assertThatThrownBy(() ->
                            store.create("Other", null, step(1), document(1).repeat(100)))
                    .hasMessageContaining("is full");
            assertWhole(store, head);
        }
        assertThat(sql(file, "PRAGMA integrity_check")).isEqualTo("ok");
        try (ProjectStore store = SqliteStore.open(file, START)) {
            assertWhole(store, head);
            append(store, head + 1);
        }
    }

    @Test
    void storeOnAFullDiskKeepsWhatItAcknowledgedAndWorksOnWhenThereIsRoom() throws Exception {
        try (SmallDisk disk = SmallDisk.mounted(folder, 3072)) {
            Path ballast = folder.resolve("ballast");
            Files.write(ballast, new byte[512 * 1024]);
            make(file, 1);
            try (ProjectStore store = SqliteStore.open(file, START)) {
                long head = appendUntilFull(store, 1);
                assertThat(head).isGreaterThan(1);
                assertWhole(store, head);
                assertThatThrownBy(() -> store.backUp(START.plusSeconds(9)))
                        .isInstanceOf(StoreException.class)
                        .hasMessageContaining("is full");
                assertThat(store.listRemarks()).isNotEmpty();
                Files.delete(ballast);
                append(store, head + 1);
                assertWhole(store, head + 1);
                head = appendUntilFull(store, head + 1);
                assertWhole(store, head);
            }
            assertThat(sql(file, "PRAGMA integrity_check")).isEqualTo("ok");
        }
    }

    @Test
    void storeOnAFullDiskOpensOrSaysThatItIsFull() throws Exception {
        try (SmallDisk disk = SmallDisk.mounted(folder, 2048)) {
            make(file, 50);
            Path ballast = folder.resolve("ballast");
            fill(ballast);
            try (ProjectStore store = SqliteStore.open(file, START.plus(Duration.ofDays(9)))) {
                assertWhole(store, 50);
                assertThat(store.listRemarks())
                        .singleElement()
                        .asString()
                        .contains("The last backup failed", "is full");
                appendUntilFull(store, 50);
            } catch (StoreException e) {
                assertThat(e.why()).contains("is full");
            }
            Files.delete(ballast);
            try (ProjectStore store = SqliteStore.open(file, START.plus(Duration.ofDays(9)))) {
                append(store, store.listProjects().getFirst().head() + 1);
            }
        }
    }

    @Test
    void newStoreOnAFullDiskIsNotHalfMade() throws Exception {
        try (SmallDisk disk = SmallDisk.mounted(folder, 64)) {
            Path ballast = folder.resolve("ballast");
            fill(ballast);
            assertThatThrownBy(() -> SqliteStore.open(file, START))
                    .isInstanceOf(StoreException.class)
                    .hasMessageContaining("is full");
            assertThat(file).doesNotExist();
        }
    }

    /** The head when the first step was refused. */
    private static long appendUntilFull(ProjectStore store, long from) throws StoreException {
        for (long head = from; head < MOST_STEPS; head++) {
            long next = head + 1;
            try {
                store.append("hall", head, step(next), () -> document(next));
            } catch (StoreException e) {
                assertThat(e.why()).contains("halls.db is full").contains("Make room");
                return head;
            }
        }
        throw new AssertionError("never full");
    }

    private static void fill(Path ballast) {
        try (OutputStream out = Files.newOutputStream(ballast)) {
            for (int number = 0; number < MOST_STEPS; number++) {
                out.write(new byte[1024]);
            }
        } catch (IOException e) {
            return; // it is full
        }
        throw new AssertionError("never full");
    }
}
