package housewright.store.sqlite;

import housewright.app.ProjectStore.Backup;
import housewright.app.StoreException;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.time.format.ResolverStyle;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Dated copies of a store in a folder beside it.
 *
 * <p>They are made by {@code VACUUM INTO}: one read of one instant, however much others write meanwhile (SQLite's page
 * by page backup begins again whenever another connection writes); it reads every row, so that damage shows; and what
 * was removed is not in it. A copy gets its name only when it is complete, was checked, and is on the disk.
 */
final class Backups {
    private static final String UNFINISHED = ".unfinished-";
    private static final Duration AT_MOST_EVERY = Duration.ofDays(1);

    private static final DateTimeFormatter STAMP =
            DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HHmmss'Z'", Locale.ROOT).withResolverStyle(ResolverStyle.STRICT);

    private static final Pattern NAME =
            Pattern.compile("(\\d{4,}-\\d\\d-\\d\\dT\\d{6}Z)(-\\d+)?(-before-update|-before-removal)?\\.db");

    /** Why a copy is made. */
    enum Reason {
        ROUTINE(""),
        BEFORE_UPDATE("-before-update"),
        BEFORE_REMOVAL("-before-removal");

        private final String inName;

        Reason(String inName) {
            this.inName = inName;
        }
    }

    private final Path folder;
    private final Settings settings;

    Backups(Path store, Settings settings) {
        this.settings = settings;
        folder = folderOf(store);
    }

    /** For {@code halls.db} the folder {@code halls-backups} beside it. */
    static Path folderOf(Path store) {
        String name = String.valueOf(store.getFileName());
        int dot = name.lastIndexOf('.');
        return store.resolveSibling((dot > 0 ? name.substring(0, dot) : name) + "-backups");
    }

    /** Newest first; what else lies in the folder is left alone. */
    List<Backup> list() throws StoreException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            List<Backup> found = new ArrayList<>();
            for (Path file : files.toList()) {
                Optional<Instant> at = madeAt(file);
                if (at.isPresent()) {
                    attributesOf(file).ifPresent(each -> found.add(new Backup(file, at.get(), each.size())));
                }
            }
            found.sort(Comparator.comparing(Backup::at)
                    .reversed()
                    .thenComparing(backup -> backup.file().toString()));
            return List.copyOf(found);
        } catch (IOException e) {
            throw new Trouble(folder).of(e);
        }
    }

    /** Whether the newest is older than a day, or none is there, and something was written since. */
    boolean isDue(Database database, Instant now) throws StoreException {
        Optional<Backup> newest = list().stream()
                .filter(each -> !each.at().isAfter(now)) // one from the future comes of a clock that was wrong
                .findFirst();
        if (newest.isEmpty()) {
            return timesWritten(database) > 0;
        }
        return Duration.between(newest.get().at(), now).compareTo(AT_MOST_EVERY) > 0
                && !isSame(database, newest.get().file());
    }

    /** Makes a copy and then drops those that are not to be kept any more. */
    synchronized Backup make(Database database, Instant now, Reason reason) throws StoreException {
        Path unnamed = null;
        Instant at = now.truncatedTo(ChronoUnit.SECONDS);
        try {
            Files.createDirectories(folder);
            dropUnfinished(now);
            unnamed = Files.createTempFile(folder, UNFINISHED, ".db");
            String target = unnamed.toAbsolutePath().toString();
            database.outsideTransactions(handle -> handle.createUpdate("VACUUM INTO :file")
                    .bind("file", target)
                    .execute());
            Inspection.ofUntouched(unnamed, settings).requireWhole(unnamed);
            try (FileChannel written = FileChannel.open(unnamed, StandardOpenOption.WRITE)) {
                written.force(true);
            }
            Path named = name(unnamed, at, reason);
            Folders.force(folder);
            Backup made = new Backup(named, at, Files.size(named));
            drop();
            return made;
        } catch (IOException e) {
            throw new Trouble(folder).of(e);
        } finally {
            deleteQuietly(unnamed);
        }
    }

    private Path name(Path unnamed, Instant at, Reason reason) throws IOException {
        String stamp = STAMP.format(at.atOffset(ZoneOffset.UTC));
        for (int number = 1; ; number++) {
            String again = number == 1 ? "" : "-" + number;
            try {
                return Files.move(unnamed, folder.resolve(stamp + again + reason.inName + ".db"));
            } catch (FileAlreadyExistsException e) {
                // Another was made in the same second.
            }
        }
    }

    private void drop() throws StoreException {
        List<Backup> routine =
                list().stream().filter(each -> isRoutine(each.file())).toList();
        for (Backup each : BackupsKept.toDrop(routine)) {
            deleteQuietly(each.file());
        }
    }

    private boolean isSame(Database database, Path backup) {
        try (Database copy = new Database(backup, Connections.Mode.READ_UNTOUCHED, settings)) {
            return timesWritten(database) == timesWritten(copy);
        } catch (StoreException e) {
            return false; // one that cannot be read is no backup
        }
    }

    private static long timesWritten(Database database) throws StoreException {
        return database.read(handle -> handle.createQuery("SELECT times FROM written")
                .mapTo(long.class)
                .one());
    }

    private static boolean isRoutine(Path file) {
        Matcher name = NAME.matcher(String.valueOf(file.getFileName()));
        return name.matches() && name.group(3) == null;
    }

    private static Optional<Instant> madeAt(Path file) {
        Matcher name = NAME.matcher(String.valueOf(file.getFileName()));
        if (!name.matches()) {
            return Optional.empty();
        }
        try {
            return Optional.of(LocalDateTime.parse(name.group(1), STAMP).toInstant(ZoneOffset.UTC));
        } catch (DateTimeParseException e) {
            return Optional.empty(); // such as the 31st of February: not one of ours
        }
    }

    /** What a killed process left; what another makes just now is younger. */
    private void dropUnfinished(Instant now) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            for (Path each : files.toList()) {
                if (String.valueOf(each.getFileName()).startsWith(UNFINISHED)
                        && attributesOf(each)
                                .filter(file ->
                                        file.lastModifiedTime().toInstant().isBefore(now.minus(AT_MOST_EVERY)))
                                .isPresent()) {
                    deleteQuietly(each);
                }
            }
        }
    }

    /** Empty when another process has named or dropped the file since it was listed. */
    private static Optional<BasicFileAttributes> attributesOf(Path file) throws IOException {
        try {
            return Optional.of(Files.readAttributes(file, BasicFileAttributes.class));
        } catch (NoSuchFileException e) {
            return Optional.empty();
        }
    }

    /** What cannot be deleted now is left to the next time. */
    private static void deleteQuietly(@Nullable Path file) {
        try {
            if (file != null) {
                Files.deleteIfExists(file);
            }
        } catch (IOException e) {
            // A copy too many does no harm.
        }
    }
}
