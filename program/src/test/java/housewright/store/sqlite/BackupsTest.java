package housewright.store.sqlite;

import static housewright.store.sqlite.Stores.HASTY;
import static housewright.store.sqlite.Stores.START;
import static housewright.store.sqlite.Stores.append;
import static housewright.store.sqlite.Stores.assertWhole;
import static housewright.store.sqlite.Stores.contents;
import static housewright.store.sqlite.Stores.make;
import static housewright.store.sqlite.Stores.sql;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import housewright.app.ProjectStore;
import housewright.app.ProjectStore.Backup;
import housewright.app.StoreException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.sql.Connection;
import java.sql.DriverManager;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BackupsTest {
    @TempDir
    Path folder;

    private Path file;

    @BeforeEach
    void makeStore() throws StoreException {
        file = folder.resolve("halls.db");
        make(file, 3);
    }

    @Test
    void openingMakesOneADayWhileSomethingChanges() throws Exception {
        long head = 3;
        for (int hours = 0; hours < 24 * 5; hours += 12) {
            try (ProjectStore store = SqliteStore.open(file, START.plus(Duration.ofHours(hours)))) {
                append(store, ++head);
            }
        }
        try (ProjectStore store = SqliteStore.open(file, START.plus(Duration.ofDays(30)))) {
            assertThat(store.listBackups()).extracting(Backup::at).contains(START, START.plus(Duration.ofDays(30)));
            assertThat(store.listBackups()).hasSize(5);
        }
        try (ProjectStore store = SqliteStore.open(file, START.plus(Duration.ofDays(60)))) {
            assertThat(store.listBackups()).as("nothing changed since").hasSize(5);
        }
    }

    @Test
    void backupTakenBackIsTheStoreAsItWas() throws Exception {
        Backup backup;
        try (ProjectStore store = SqliteStore.open(file, START)) {
            append(store, 4);
            backup = store.backUp(START.plusSeconds(9));
            append(store, 5);
        }
        assertThat(sql(backup.file(), "PRAGMA integrity_check")).isEqualTo("ok");
        Files.delete(file);
        Files.copy(backup.file(), file);
        try (ProjectStore store = SqliteStore.open(file, START)) {
            assertWhole(store, 4);
            append(store, 5);
        }
    }

    @Test
    void backupTakenBackIsReadAndWrittenAtOnceAsAnyStore() throws Exception {
        Backup backup;
        try (ProjectStore store = SqliteStore.open(file, START)) {
            backup = store.backUp(START.plusSeconds(9));
        }
        Files.delete(file);
        Files.copy(backup.file(), file);
        try (ProjectStore store = SqliteStore.open(file, START, HASTY);
                Connection reader = DriverManager.getConnection("jdbc:sqlite:" + file)) {
            sql(reader, "BEGIN", "SELECT count(*) FROM revision");
            append(store, 4);
            assertThat(sql(reader, "SELECT count(*) FROM revision"))
                    .as("what was there when it began to read")
                    .isEqualTo("3");
        }
    }

    /** SQLite itself opens the two as one; where their pages fit, its check finds nothing wrong with the mixture. */
    @Test
    void backupIsNotMixedWithTheNewestChangesOfTheStoreWhosePlaceItTook() throws Exception {
        Path left = folder.resolve("halls.db-wal");
        Backup backup;
        try (ProjectStore store = SqliteStore.open(file, START)) {
            backup = store.backUp(START.plusSeconds(9));
            append(store, 4);
            Files.copy(left, folder.resolve("left"));
        }
        Files.delete(file);
        Files.copy(backup.file(), file);
        Files.move(folder.resolve("left"), left);
        Map<String, String> before = contents(folder);
        assertThatThrownBy(() -> SqliteStore.open(file, START, HASTY))
                .isInstanceOf(StoreException.class)
                .hasMessageContaining("Move halls.db-wal and halls.db-shm to another folder");
        assertThat(contents(folder)).isEqualTo(before);
        Files.delete(left);
        try (ProjectStore store = SqliteStore.open(file, START, HASTY)) {
            assertWhole(store, 3);
        }
    }

    @Test
    void removedProjectIsInTheBackupThatNothingDrops() throws Exception {
        try (ProjectStore store = SqliteStore.open(file, START)) {
            store.remove("hall", START);
            for (int day = 1; day < 400; day += 30) {
                store.backUp(START.plus(Duration.ofDays(day)));
            }
            Path before = folder.resolve("halls-backups").resolve("2026-03-02T080000Z-before-removal.db");
            assertThat(store.listBackups()).extracting(Backup::file).contains(before);
            assertThat(sql(before, "SELECT name FROM project")).isEqualTo("Hall");
            assertThat(sql(store.listBackups().getFirst().file(), "SELECT count(*) FROM revision"))
                    .isEqualTo("0");
        }
    }

    @Test
    void whatElseLiesInTheFolderIsLeftAlone() throws Exception {
        Path others = Files.createDirectory(folder.resolve("halls-backups"));
        for (String name : List.of("notes.txt", "2026-02-31T000000Z.db", "2026-03-02T080000Z.db.zip", "halls.db")) {
            Files.writeString(others.resolve(name), "mine");
        }
        try (ProjectStore store = SqliteStore.open(file, START)) {
            for (int day = 1; day < 25; day++) {
                store.backUp(START.plus(Duration.ofDays(day)));
            }
            assertThat(store.listBackups()).hasSizeLessThan(14);
        }
        assertThat(others.resolve("notes.txt")).hasContent("mine");
        assertThat(others.resolve("2026-02-31T000000Z.db")).hasContent("mine");
        assertThat(others.resolve("2026-03-02T080000Z.db.zip")).hasContent("mine");
        assertThat(others.resolve("halls.db")).hasContent("mine");
    }

    @Test
    void backupThatFailsIsSaidAndStopsWhatNeedsIt() throws Exception {
        Path inTheWay = folder.resolve("halls-backups");
        Files.writeString(inTheWay, "a file where the folder should be");
        try (ProjectStore store = SqliteStore.open(file, START)) {
            assertThat(store.listRemarks())
                    .singleElement()
                    .asString()
                    .contains("The last backup failed", "halls-backups");
            append(store, 4);
            assertThatThrownBy(() -> store.remove("hall", START)).isInstanceOf(StoreException.class);
            assertWhole(store, 4);
            Files.delete(inTheWay);
            assertThat(store.backUpIfDue(START)).isPresent();
            assertThat(store.listRemarks()).isEmpty();
        }
    }

    @Test
    void damagedBackupIsNotTakenForOne() throws Exception {
        Path damaged = Files.createDirectory(folder.resolve("halls-backups")).resolve("2026-03-01T080000Z.db");
        Files.writeString(damaged, "not a store");
        try (ProjectStore store = SqliteStore.open(file, START.plus(Duration.ofDays(1)))) {
            assertThat(store.listBackups()).hasSize(2);
        }
    }

    @Test
    void clockThatWasWrongDropsNothingAndStopsNothing() throws Exception {
        try (ProjectStore store = SqliteStore.open(file, START)) {
            store.backUp(START.plus(Duration.ofDays(1)));
            store.backUp(Instant.parse("2099-01-01T00:00:00Z"));
            append(store, 4);
            assertThat(store.backUpIfDue(START.plus(Duration.ofDays(3)))).isPresent();
            assertThat(store.backUpIfDue(START.plus(Duration.ofDays(3)))).isEmpty();
            assertThat(store.listBackups()).hasSize(4);
        }
    }

    @Test
    void unfinishedCopyOfAKilledProcessIsNoBackup() throws Exception {
        Path backups = Files.createDirectory(folder.resolve("halls-backups"));
        Path old = Files.writeString(backups.resolve(".unfinished-1.db"), "half");
        Path young = Files.writeString(backups.resolve(".unfinished-2.db"), "half");
        Files.setLastModifiedTime(old, FileTime.from(START.minus(Duration.ofDays(2))));
        Files.setLastModifiedTime(young, FileTime.from(START.minus(Duration.ofMinutes(1))));
        try (ProjectStore store = SqliteStore.open(file, START)) {
            assertThat(store.listBackups()).hasSize(1);
        }
        assertThat(old).doesNotExist();
        assertThat(young).as("another process may be making it").exists();
    }

    /** Against the rule in its own words, one backup at a time. */
    @Test
    void keptAreAllOfSevenDaysAndTheNewestOfEachOfTwelveWeeksBefore() {
        for (int seed = 0; seed < 200; seed++) {
            Random random = new Random(seed);
            List<Backup> backups = new ArrayList<>();
            int count = random.nextInt(120);
            for (int number = 0; number < count; number++) {
                Instant at = START.minusSeconds(random.nextInt(60 * 60 * 24 * (1 + random.nextInt(400))));
                backups.add(new Backup(Path.of(number + ".db"), at, 1));
            }
            List<Backup> dropped = BackupsKept.toDrop(backups);
            List<Backup> kept =
                    backups.stream().filter(each -> !dropped.contains(each)).toList();
            List<Long> days = numbers(backups.stream(), 1);
            List<Long> lastDays = days.subList(0, Math.min(7, days.size()));
            List<Backup> older = backups.stream()
                    .filter(each -> !lastDays.contains(number(each, 1)))
                    .toList();
            List<Long> weeks = numbers(older.stream(), 7);
            List<Long> lastWeeks = weeks.subList(0, Math.min(12, weeks.size()));
            assertThat(kept)
                    .as("seed %d", seed)
                    .allSatisfy(each -> assertThat(lastDays.contains(number(each, 1))
                                    || lastWeeks.contains(number(each, 7))
                                            && older.stream()
                                                    .filter(other -> number(other, 7) == number(each, 7))
                                                    .noneMatch(
                                                            other -> other.at().isAfter(each.at())))
                            .isTrue());
            assertThat(kept.stream().filter(older::contains))
                    .as("seed %d", seed)
                    .hasSize(lastWeeks.size());
            assertThat(kept)
                    .containsAll(backups.stream()
                            .filter(each -> lastDays.contains(number(each, 1)))
                            .toList());
        }
    }

    private static List<Long> numbers(Stream<Backup> backups, int days) {
        return backups.map(each -> number(each, days))
                .distinct()
                .sorted(Comparator.reverseOrder())
                .toList();
    }

    /** The number of a day, or of a week from Monday: 1 January 1970 was a Thursday. */
    private static long number(Backup backup, int days) {
        long day = Math.floorDiv(backup.at().getEpochSecond(), 24 * 60 * 60L);
        return days == 1 ? day : Math.floorDiv(day + 3, 7);
    }
}
