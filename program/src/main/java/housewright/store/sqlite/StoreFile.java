package housewright.store.sqlite;

import housewright.app.StoreException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import java.util.concurrent.locks.LockSupport;
import org.flywaydb.core.api.FlywayException;
import org.jspecify.annotations.Nullable;
import org.sqlite.SQLiteErrorCode;

/** A file on its way to being used as a store: looked at first, then made or brought up to date. */
final class StoreFile {
    private static final Duration BETWEEN_TRIES = Duration.ofMillis(50);
    private static final int SMALLEST_PAGE_bytes = 512;
    /** In SQLite's file format (sqlite.org/fileformat.html, 1.3). */
    private static final int WRITE_VERSION_AT = 18;

    private static final int WRITES_AHEAD = 2;
    private static final int ROOM_FOR_A_NEW_ONE_bytes = 256 * 1024;

    private final Path file;
    private final Path folder;
    private final Settings settings;

    StoreFile(Path file, Settings settings) throws StoreException {
        this.file = file;
        this.settings = settings;
        Path parent = file.toAbsolutePath().getParent();
        if (parent == null || Files.isDirectory(file)) {
            throw new StoreException(file + " is a folder; name a file in it.");
        }
        folder = parent;
        if (!Files.isDirectory(folder)) {
            throw new StoreException("There is no folder " + folder + " to keep " + file.getFileName()
                    + " in. Make it, or name a file elsewhere.");
        }
    }

    /** SQLite keeps what belongs to a file beside the file that a symbolic link leads to. */
    static Path behindLinks(Path given) throws StoreException {
        try {
            return Files.isSymbolicLink(given) ? given.toRealPath() : given;
        } catch (IOException e) {
            throw new StoreException(given + " is a link that leads nowhere. Nothing was changed.", e);
        }
    }

    /** Refuses, and leaves as it is, what is not a whole store of this version; makes one where there is none. */
    Connections.Mode open(Instant now) throws StoreException {
        if (!Files.exists(file)) {
            make();
        }
        if (sizeOf(file) == 0) {
            throw new StoreException(file + " is empty, which no store is. Nothing was changed. If it was a store, put"
                    + " the newest backup of " + Backups.folderOf(file) + " in its place; if not, delete it.");
        }
        Inspection header = Inspection.ofHeader(file, settings);
        header.requireOurs(file);
        header.requireNotNewer(file, settings);
        requireOwnWriteAhead();
        Inspection all = inspect();
        all.requireNotNewer(file, settings);
        if (whyReadOnly() != null) {
            requireUpToDate(all);
            return isAlone() ? Connections.Mode.READ_UNTOUCHED : Connections.Mode.READ;
        }
        if (all.version() < settings.version()) {
            bringUpToDate(now);
        }
        return Connections.Mode.READ_WRITE;
    }

    /**
     * SQLite would take the write-ahead file of another store for this one's, and mix the two without a word. Only a
     * backup shows that it is not: its header says that it has none.
     */
    private void requireOwnWriteAhead() throws StoreException {
        if (isBeside("-wal") && !writesAhead()) {
            throw new StoreException(String.format(
                    Locale.ROOT,
                    "%1$s is a backup that was put in the place of another store, whose newest changes are still beside"
                            + " it in %2$s-wal. They do not belong to it, and nothing was changed. Move %2$s-wal and"
                            + " %2$s-shm to another folder, then open it again.",
                    file,
                    file.getFileName()));
        }
    }

    private boolean writesAhead() throws StoreException {
        try (InputStream in = Files.newInputStream(file)) {
            byte[] header = in.readNBytes(WRITE_VERSION_AT + 1);
            return header.length > WRITE_VERSION_AT && header[WRITE_VERSION_AT] == WRITES_AHEAD;
        } catch (IOException e) {
            throw new Trouble(file).of(e);
        }
    }

    private Inspection inspect() throws StoreException {
        if (isAlone()) {
            try {
                if (sizeOf(file) % SMALLEST_PAGE_bytes != 0) {
                    throw new Trouble(file).damaged("it was cut short");
                }
                Inspection found = Inspection.ofAll(file, Connections.Mode.READ_UNTOUCHED, settings);
                found.requireWhole(file);
                return found;
            } catch (StoreException e) {
                if (isAlone()) {
                    throw e;
                } // else another process began to work in it under our eyes, and what looked wrong may be right
            }
        }
        Inspection found = inspectWithWriteAhead();
        found.requireWhole(file);
        return found;
    }

    private Inspection inspectWithWriteAhead() throws StoreException {
        try {
            return Inspection.ofAll(file, Connections.Mode.READ, settings);
        } catch (StoreException e) {
            if (whyReadOnly() != null && Trouble.isCode(e, SQLiteErrorCode.SQLITE_CANTOPEN)) {
                throw new StoreException(
                        file + " was not closed when it was last worked in: its newest changes are in "
                                + file.getFileName() + "-wal, and it must be opened once where it can be written."
                                + " Nothing was changed; copy both to where you may write.",
                        e);
            }
            throw e;
        }
    }

    /** A sentence; null where it can be written. */
    @Nullable
    String whyReadOnly() {
        if (!Files.isWritable(file)) {
            return file + " can only be looked at: the file is read-only for you. Nothing can be changed in it.";
        }
        if (!Files.isWritable(folder)) {
            return file + " can only be looked at: its folder is read-only for you, and changes need files beside it.";
        }
        return null;
    }

    /** Whole or not at all, and never in the place of another. */
    private void make() throws StoreException {
        if (isBeside("-wal")) {
            throw new StoreException(file + " is gone, but " + file.getFileName()
                    + "-wal, which holds its newest changes, is there. Nothing was changed. Put the file back;"
                    + " or move the other away to begin anew.");
        }
        Path unnamed = null;
        try {
            unnamed = Files.createTempFile(folder, ".housewright-", ".new");
            Files.write(unnamed, new byte[ROOM_FOR_A_NEW_ONE_bytes]); // Flyway would try for ten seconds to find room
            Files.write(unnamed, new byte[0]);
            Schema.bringUpToDate(unnamed, settings);
            Connections.beginWritingAhead(unnamed, settings);
            name(unnamed);
            Folders.force(folder);
        } catch (FileAlreadyExistsException e) {
            // Another process made it at the same time, and this one uses that.
        } catch (IOException e) {
            throw new Trouble(file).of(e);
        } catch (FlywayException | SQLException e) {
            throw new Trouble(file).of(e);
        } finally {
            deleteQuietly(unnamed);
        }
    }

    private void name(Path unnamed) throws IOException {
        try {
            Files.createLink(file, unnamed); // in one step, and never in another's place
        } catch (FileAlreadyExistsException e) {
            throw e;
        } catch (UnsupportedOperationException | IOException e) {
            Files.move(unnamed, file); // a disk without links, such as a memory stick
        }
    }

    private void requireUpToDate(Inspection found) throws StoreException {
        if (found.version() < settings.version()) {
            throw new StoreException(
                    file + " was made by an older Housewright and must be brought up to date, but it is read-only for"
                            + " you. Nothing was changed; copy it to where you may write.");
        }
    }

    private void bringUpToDate(Instant now) throws StoreException {
        try (Database old = new Database(file, Connections.Mode.READ_WRITE, settings)) {
            new Backups(file, settings).make(old, now, Backups.Reason.BEFORE_UPDATE);
            migrate();
        }
    }

    /** SQLite does not wait for another that began to write after this one began to read: that is tried again. */
    private void migrate() throws StoreException {
        long until = System.nanoTime() + settings.patience().toNanos();
        while (true) {
            try {
                Schema.bringUpToDate(file, settings);
                return;
            } catch (FlywayException e) {
                if (Inspection.ofAll(file, Connections.Mode.READ, settings).version() >= settings.version()) {
                    return; // another process has done it at the same time
                }
                if (!Trouble.isCode(e, SQLiteErrorCode.SQLITE_BUSY) || System.nanoTime() - until >= 0) {
                    throw new StoreException(
                            file + " could not be brought up to date, and is as it was. "
                                    + new Trouble(file).of(e).why(),
                            e);
                }
                LockSupport.parkNanos(BETWEEN_TRIES.toNanos());
            }
        }
    }

    /** Nothing belongs to it that is not in the file itself. */
    private boolean isAlone() throws StoreException {
        return !isBeside("-wal") && !isBeside("-journal");
    }

    private boolean isBeside(String ending) throws StoreException {
        Path other = file.resolveSibling(file.getFileName() + ending);
        return Files.exists(other) && sizeOf(other) > 0;
    }

    private long sizeOf(Path any) throws StoreException {
        try {
            return Files.size(any);
        } catch (IOException e) {
            throw new Trouble(file).of(e);
        }
    }

    private static void deleteQuietly(@Nullable Path file) {
        try {
            if (file != null) {
                Files.deleteIfExists(file);
            }
        } catch (IOException e) {
            // An empty store under a hidden name does no harm.
        }
    }
}
