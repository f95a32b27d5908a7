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
import housewright.app.ProjectStore.Backup;
import housewright.app.StoreException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A store of this version, opened by invented programs of later ones. */
class MigrationTest {
    private static final int NOW = Settings.USUAL.version();
    private static final Settings NEXT = later(NOW + 1, "housewright/store", "housewright/store-next");
    private static final Settings BROKEN =
            later(NOW + 2, "housewright/store", "housewright/store-next", "housewright/store-broken");

    @TempDir
    Path folder;

    private Path file;

    private static Settings later(int version, String... migrations) {
        return new Settings(Duration.ofSeconds(5), 0, version, List.of(migrations));
    }

    @BeforeEach
    void makeStore() throws StoreException {
        file = folder.resolve("halls.db");
        make(file, 30);
    }

    @Test
    void olderStoreIsBackedUpAndBroughtUpToDate() throws Exception {
        try (ProjectStore store = SqliteStore.open(file, START, NEXT)) {
            assertWhole(store, 30);
            append(store, 31);
            Backup before = store.listBackups().getFirst();
            assertThat(before.file().getFileName()).hasToString("2026-03-02T080000Z-before-update.db");
            assertThat(sql(before.file(), "PRAGMA user_version")).isEqualTo(String.valueOf(NOW));
        }
        assertThat(sql(file, "PRAGMA user_version")).isEqualTo(String.valueOf(NOW + 1));
        assertThat(sql(file, "SELECT colour FROM project")).isEqualTo("white");
        assertThat(sql(file, "PRAGMA journal_mode")).isEqualTo("wal");
        assertThatThrownBy(() -> SqliteStore.open(file, START)).hasMessageContaining("newer Housewright");
    }

    @Test
    void backupOfTheOlderFormIsAWholeStore() throws Exception {
        SqliteStore.open(file, START, NEXT).close();
        Path backup = folder.resolve("halls-backups").resolve("2026-03-02T080000Z-before-update.db");
        Path taken = folder.resolve("taken back.db");
        Files.copy(backup, taken);
        try (ProjectStore store = SqliteStore.open(taken, START)) {
            assertWhole(store, 30);
            append(store, 31);
        }
    }

    @Test
    void migrationThatGoesWrongLeavesTheStoreAsItWas() throws Exception {
        assertThatThrownBy(() -> SqliteStore.open(file, START, BROKEN))
                .isInstanceOf(StoreException.class)
                .hasMessageContaining("could not be brought up to date, and is as it was");
        assertThat(sql(file, "PRAGMA user_version"))
                .as("not even the first of the two")
                .isEqualTo(String.valueOf(NOW));
        try (ProjectStore store = SqliteStore.open(file, START)) {
            assertWhole(store, 30);
            append(store, 31);
        }
    }

    /** One made before those who came in were kept. */
    @Test
    void storeOfTheFirstVersionIsBroughtUpToDate() throws Exception {
        Path first = folder.resolve("first.db");
        Settings settings = later(1, "housewright/store");
        try (ProjectStore store = SqliteStore.open(first, START, settings)) {
            store.create("Hall", null, step(1), document(1));
            append(store, 2);
        }
        assertThat(sql(first, "PRAGMA user_version")).isEqualTo("1");
        try (ProjectStore store = SqliteStore.open(first, START)) {
            assertWhole(store, 2);
            assertThat(store.listEntrances()).isEmpty();
        }
        assertThat(sql(first, "PRAGMA user_version")).isEqualTo(String.valueOf(NOW));
    }

    @Test
    void storeThatCannotBeBackedUpIsNotBroughtUpToDate() throws Exception {
        Files.writeString(folder.resolve("halls-backups"), "a file where the folder should be");
        assertThatThrownBy(() -> SqliteStore.open(file, START, NEXT))
                .isInstanceOf(StoreException.class)
                .hasMessageContaining("halls-backups");
        assertThat(sql(file, "PRAGMA user_version")).isEqualTo(String.valueOf(NOW));
    }

    @Test
    void manyWhoBringItUpToDateAtOnceDoItOnce() throws Exception {
        int openers = 4;
        List<ProjectStore> stores = new ArrayList<>();
        try (ExecutorService threads = Executors.newFixedThreadPool(openers)) {
            Callable<ProjectStore> opening = () -> SqliteStore.open(file, START, NEXT);
            for (Future<ProjectStore> each : threads.invokeAll(Collections.nCopies(openers, opening))) {
                stores.add(each.get());
            }
        }
        for (ProjectStore each : stores) {
            assertWhole(each, 30);
            each.close();
        }
    }
}
