package housewright.store.sqlite;

import static housewright.store.sqlite.Stores.HASTY;
import static housewright.store.sqlite.Stores.START;
import static housewright.store.sqlite.Stores.append;
import static housewright.store.sqlite.Stores.assertWhole;
import static housewright.store.sqlite.Stores.contents;
import static housewright.store.sqlite.Stores.make;
import static housewright.store.sqlite.Stores.sql;
import static housewright.store.sqlite.Stores.step;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import housewright.app.ProjectStore;
import housewright.app.StoreException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A file that is not a good store gets a sentence, and nothing is changed in it or beside it. */
class OpeningTest {
    @TempDir
    Path folder;

    private Path file;

    @BeforeEach
    void nameFile() {
        file = folder.resolve("halls.db");
    }

    private String refusal() throws IOException {
        Map<String, String> before = contents(folder);
        StoreException refused = catchThrowableOfType(
                StoreException.class, () -> SqliteStore.open(file, START, HASTY).close());
        assertThat(refused).as("refused").isNotNull();
        assertThat(contents(folder)).as("files afterwards").isEqualTo(before);
        assertThat(refused.why()).contains(file.toString()).endsWith(".");
        return refused.why();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"housewright: 1\nproject:\n  name: Hall\n", "\u0000", "SQLite format 3", "SQLite format 3\u0000"
            })
    void whatIsNoDatabaseIsRefused(String text) throws IOException {
        Files.writeString(file, text.repeat(40), StandardCharsets.UTF_8);
        assertThat(refusal()).contains("is no store of projects", "newest backup", "halls-backups");
    }

    @Test
    void emptyFileIsRefused() throws IOException {
        Files.createFile(file);
        assertThat(refusal()).contains("is empty", "delete it");
    }

    @Test
    void databaseOfAnotherProgramIsRefused() throws Exception {
        sql(file, "CREATE TABLE song (title TEXT)");
        assertThat(refusal()).contains("another program made it");
        sql(file, "PRAGMA journal_mode = WAL", "PRAGMA application_id = 7", "PRAGMA user_version = 1");
        assertThat(refusal()).contains("another program made it");
    }

    @Test
    void databaseOfAnotherProgramThatIsAtWorkIsLeftAlone() throws Exception {
        try (Connection other = DriverManager.getConnection("jdbc:sqlite:" + file)) {
            sql(other, "PRAGMA journal_mode = WAL", "CREATE TABLE song (title TEXT)");
            assertThatThrownBy(() -> SqliteStore.open(file, START, HASTY))
                    .isInstanceOf(StoreException.class)
                    .hasMessageContaining("another program made it");
            sql(other, "INSERT INTO song VALUES ('a')");
        }
        assertThat(sql(file, "SELECT title FROM song")).isEqualTo("a");
    }

    @Test
    void storeOfANewerProgramIsRefused() throws Exception {
        make(file, 3);
        sql(file, "PRAGMA user_version = 99");
        assertThat(refusal()).contains("newer Housewright", "99", "up to " + Settings.USUAL.version());
    }

    @Test
    void storeThatANewerProgramIsBringingUpToDateIsRefused() throws Exception {
        make(file, 3);
        try (Connection newer = DriverManager.getConnection("jdbc:sqlite:" + file)) {
            sql(newer, "PRAGMA wal_autocheckpoint = 0", "PRAGMA user_version = 99"); // not yet in the file itself
            assertThatThrownBy(() -> SqliteStore.open(file, START, HASTY))
                    .isInstanceOf(StoreException.class)
                    .hasMessageContaining("newer Housewright");
        }
    }

    @Test
    void storeCutShortIsRefused() throws Exception {
        make(file, 40);
        byte[] whole = Files.readAllBytes(file);
        for (int bytes : new int[] {1, 16, 99, 100, 4095, 4096, 8192, whole.length / 2, whole.length - 1}) {
            Files.write(file, Arrays.copyOf(whole, bytes));
            assertThat(refusal()).as("cut to %d bytes", bytes).containsAnyOf("is damaged", "is no store of projects");
        }
    }

    @Test
    void damagedPageIsRefused() throws Exception {
        make(file, 40);
        byte[] bytes = Files.readAllBytes(file);
        Arrays.fill(bytes, 4096, 8192, (byte) 0x5a);
        Files.write(file, bytes);
        assertThat(refusal()).contains("is damaged", "newest backup", "halls-backups");
    }

    @Test
    void damageOfAStoreThatWasNotClosedIsRefusedBeforeItIsWritten() throws Exception {
        Path copied = folder.resolve("live.db");
        make(copied, 40);
        try (Connection open = DriverManager.getConnection("jdbc:sqlite:" + copied)) {
            sql(open, "UPDATE project SET name = 'in the write-ahead file'");
            Files.copy(folder.resolve("live.db-wal"), folder.resolve("halls.db-wal"));
            byte[] bytes = Files.readAllBytes(copied); // drops the locks of this process, which does no harm here
            Arrays.fill(bytes, 4096, bytes.length, (byte) 0x5a);
            Files.write(file, bytes);
        }
        Map<String, String> before = contents(folder);
        assertThatThrownBy(() -> SqliteStore.open(file, START, HASTY)).hasMessageContaining("is damaged");
        assertThat(contents(folder)).containsAllEntriesOf(before);
    }

    /** Whatever is wrong with a file: a sentence and the file as it was, or it opens; never another exception. */
    @Test
    void randomDamageIsRefusedOrDoesNoHarm() throws Exception {
        make(file, 40);
        byte[] whole = Files.readAllBytes(file);
        int refused = 0;
        for (int seed = 0; seed < 120; seed++) {
            Random random = new Random(seed);
            byte[] damaged = whole.clone();
            int from = random.nextInt(3) == 0 ? random.nextInt(100) : random.nextInt(damaged.length);
            int bytes = 1 << random.nextInt(11);
            for (int i = from; i < Math.min(damaged.length, from + bytes); i++) {
                damaged[i] = (byte) random.nextInt(256);
            }
            Path one = Files.createDirectory(folder.resolve("seed" + seed)).resolve("halls.db");
            Files.write(one, damaged);
            Map<String, String> before = contents(one.getParent());
            try (ProjectStore store = SqliteStore.open(one, START, HASTY)) {
                store.listProjects();
            } catch (StoreException e) {
                refused++;
                assertThat(e.why()).as("seed %d", seed).contains(one.toString());
                if (contents(one.getParent()).containsKey("halls.db-wal")) {
                    continue; // it was opened, and the damage found later
                }
                assertThat(contents(one.getParent())).as("seed %d", seed).containsAllEntriesOf(before);
            }
        }
        assertThat(refused).isBetween(20, 119);
    }

    @Test
    void folderThatIsMissingIsSaid() {
        file = folder.resolve("no such folder").resolve("halls.db");
        assertThatThrownBy(() -> SqliteStore.open(file, START))
                .isInstanceOf(StoreException.class)
                .hasMessageContaining("There is no folder " + file.getParent());
        assertThat(file.getParent()).doesNotExist();
        assertThatThrownBy(() -> SqliteStore.open(folder, START)).hasMessageContaining("is a folder");
    }

    @Test
    void writeAheadFileWithoutItsStoreIsNotTakenForTheNewOnes() throws IOException {
        Files.writeString(folder.resolve("halls.db-wal"), "changes of the store that is gone");
        assertThat(refusal()).contains("is gone", "halls.db-wal", "Put the file back");
    }

    @ParameterizedTest
    @ValueSource(strings = {"100% #1 & ?.db", "Höfe ü 漢.db", "a'b;c.db", "no ending", "file:x.db"})
    void anyNameOfAFileWillDo(String name) throws Exception {
        file = Files.createDirectory(folder.resolve("a b?c=d#")).resolve(name);
        make(file, 3);
        try (ProjectStore store = SqliteStore.open(file, START)) {
            append(store, 4);
            store.backUp(START);
            assertThat(store.listBackups()).hasSizeGreaterThanOrEqualTo(1);
        }
        assertThat(contents(file.getParent()).keySet())
                .allMatch(each -> each.equals(name) || each.contains("-backups"));
    }

    @Test
    void linkLeadsToTheStoreAndWhatBelongsToIt() throws Exception {
        make(file, 3);
        Path link = Files.createDirectory(folder.resolve("desk")).resolve("link.db");
        try {
            Files.createSymbolicLink(link, file);
        } catch (IOException | UnsupportedOperationException e) {
            assumeFalse(true, "no links here");
        }
        try (ProjectStore store = SqliteStore.open(link, START)) {
            append(store, 4);
            assertThat(store.listBackups().getFirst().file().getParent().getParent())
                    .isEqualTo(file.toRealPath().getParent());
        }
        assertThat(contents(link.getParent()))
                .as("beside the link, that itself is read as the file")
                .hasSize(1);
        Files.delete(file);
        assertThatThrownBy(() -> SqliteStore.open(link, START)).hasMessageContaining("leads nowhere");
    }

    @Test
    void relativeNameWillDo() throws Exception {
        file = Path.of("").toAbsolutePath().relativize(folder.toRealPath().resolve("halls.db"));
        make(file, 3);
        try (ProjectStore store = SqliteStore.open(file, START)) {
            assertWhole(store, 3);
        }
    }

    @Test
    void storeLockedByAnotherProgramIsSaidToBe() throws Exception {
        make(file, 3);
        try (Connection other = DriverManager.getConnection("jdbc:sqlite:" + file)) {
            sql(other, "PRAGMA locking_mode = EXCLUSIVE", "BEGIN EXCLUSIVE", "UPDATE written SET times = times");
            assertThatThrownBy(() -> SqliteStore.open(file, START, HASTY))
                    .isInstanceOf(StoreException.class)
                    .hasMessageContaining("is locked by another program");
        }
        try (ProjectStore store = SqliteStore.open(file, START, HASTY)) {
            assertWhole(store, 3);
        }
    }

    @Test
    void stepWhileAnotherProgramWritesIsRefusedAndCanBeTakenLater() throws Exception {
        make(file, 3);
        try (ProjectStore store = SqliteStore.open(file, START, HASTY);
                Connection other = DriverManager.getConnection("jdbc:sqlite:" + file)) {
            sql(other, "BEGIN IMMEDIATE", "UPDATE written SET times = times");
            assertThatThrownBy(() -> store.append("hall", 3, step(4), () -> "text"))
                    .isInstanceOf(StoreException.class)
                    .hasMessageContaining("is locked by another program");
            assertWhole(store, 3);
            sql(other, "ROLLBACK");
            append(store, 4);
        }
    }

    @Test
    void manyWhoOpenANewStoreAtOnceShareIt() throws Exception {
        int openers = 6;
        List<ProjectStore> stores = new ArrayList<>();
        try (ExecutorService threads = Executors.newFixedThreadPool(openers)) {
            Callable<ProjectStore> opening = () -> SqliteStore.open(file, START);
            for (Future<ProjectStore> each : threads.invokeAll(Collections.nCopies(openers, opening))) {
                stores.add(each.get());
            }
        }
        stores.getFirst().create("Hall", null, step(1), Stores.document(1));
        for (ProjectStore each : stores) {
            assertWhole(each, 1);
            each.close();
        }
        assertThat(contents(folder).keySet()).containsExactly("halls.db");
    }

    @Test
    void fileThatIsReadOnlyCanBeLookedAt() throws Exception {
        make(file, 110);
        assertThat(file.toFile().setWritable(false)).isTrue();
        assumeFalse(Files.isWritable(file), "root writes read-only files, too");
        looksOnly();
        assertThat(file.toFile().setWritable(true)).isTrue();
    }

    @Test
    void storeOnAReadOnlyDiskCanBeLookedAt() throws Exception {
        try (SmallDisk disk = SmallDisk.mounted(folder, 4096)) {
            make(file, 110);
            disk.makeReadOnly();
            looksOnly();
            disk.makeWritable();
            try (ProjectStore store = SqliteStore.open(file, START)) {
                append(store, 111);
            }
        }
    }

    @ParameterizedTest(name = "shared memory file too: {0}")
    @ValueSource(booleans = {true, false})
    void storeThatWasNotClosedOnAReadOnlyDiskIsShownWholeOrRefused(boolean shared) throws Exception {
        Path live = folder.resolve("live.db");
        try (SmallDisk disk = SmallDisk.mounted(folder, 4096)) {
            make(live, 5);
            try (ProjectStore store = SqliteStore.open(live, START)) {
                append(store, 6); // in the write-ahead file only
                new ProcessBuilder("cp", live.toString(), file.toString())
                        .start()
                        .waitFor();
                for (String ending : shared ? List.of("-wal", "-shm") : List.of("-wal")) {
                    new ProcessBuilder("cp", live + ending, file + ending)
                            .start()
                            .waitFor();
                }
            }
            disk.makeReadOnly();
            Map<String, String> before = contents(folder);
            try (ProjectStore store = SqliteStore.open(file, START)) {
                assertWhole(store, 6);
            } catch (StoreException e) {
                assertThat(e.why()).contains("was not closed", "halls.db-wal");
            }
            assertThat(contents(folder)).isEqualTo(before);
            disk.makeWritable();
            try (ProjectStore store = SqliteStore.open(file, START)) {
                assertWhole(store, 6);
                append(store, 7);
            }
        }
    }

    private void looksOnly() throws Exception {
        Map<String, String> before = contents(folder);
        try (ProjectStore store = SqliteStore.open(file, START.plusSeconds(1_000_000))) {
            assertThat(store.isReadOnly()).isTrue();
            assertThat(store.listRemarks()).singleElement().asString().contains("can only be looked at");
            assertWhole(store, 110);
            assertThat(store.findAt("hall", 105)).isPresent();
            assertThat(store.listLinks()).isEmpty();
            assertThatThrownBy(() -> store.append("hall", 110, step(111), () -> "text"))
                    .isInstanceOf(StoreException.class)
                    .hasMessageContaining("can only be looked at");
            assertThatThrownBy(() -> store.create("Other", null, step(1), "text"))
                    .hasMessageContaining("can only be looked at");
            assertThatThrownBy(() -> store.remove("hall", START)).hasMessageContaining("can only be looked at");
            assertThatThrownBy(() -> store.see("hall", "Ines", 1)).hasMessageContaining("can only be looked at");
        }
        assertThat(contents(folder)).isEqualTo(before);
    }

    @Test
    void readOnlyDiskWithoutAStoreIsSaid() {
        try (SmallDisk disk = SmallDisk.mounted(folder, 1024)) {
            disk.makeReadOnly();
            assertThatThrownBy(() -> SqliteStore.open(file, START))
                    .isInstanceOf(StoreException.class)
                    .hasMessageContaining("cannot be written")
                    .hasMessageContaining(file.toString());
        }
    }

    @Test
    void storeWritesAheadAndWaitsForTheDisk() throws Exception {
        make(file, 1);
        assertThat(sql(file, "PRAGMA journal_mode")).isEqualTo("wal");
        assertThat(sql(file, "PRAGMA application_id")).isEqualTo(String.valueOf(0x48575254));
        try (Connections connections = new Connections(file, Connections.Mode.READ_WRITE, Settings.USUAL);
                Connection connection = connections.openConnection()) {
            assertThat(sql(connection, "PRAGMA synchronous")).as("FULL").isEqualTo("2");
            assertThat(sql(connection, "PRAGMA foreign_keys")).isEqualTo("1");
            assertThat(sql(connection, "PRAGMA fullfsync")).isEqualTo("1");
        }
    }
}
