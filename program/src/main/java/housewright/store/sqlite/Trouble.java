package housewright.store.sqlite;

import housewright.app.StoreException;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.sqlite.NativeLibraryNotFoundException;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/** What went wrong with a file, in a sentence that says what holds now and what to do. */
final class Trouble {
    /** SQLite reports some writes that found no room as errors of the disk; below this they are believed to be that. */
    private static final long NEXT_TO_NO_ROOM_bytes = 256 * 1024;

    private static final int PRIMARY_CODE = 0xff;

    private final Path file;

    /** @param file the store, or a backup of it */
    Trouble(Path file) {
        this.file = file;
    }

    StoreException of(Exception e) {
        SQLiteException cause = sqlite(e);
        return told(cause == null ? other(e) : sentence(cause), e);
    }

    StoreException of(IOException e) {
        return told(sentence(e), e);
    }

    /** The file is not as SQLite left it. */
    StoreException damaged(String how) {
        return told(damagedSentence(how), null);
    }

    /** The sentence as it is, and without this machine's folders for people elsewhere. */
    StoreException told(String sentence, @Nullable Exception e) {
        String elsewhere = sentence.replace(String.valueOf(Backups.folderOf(file)), "its folder")
                .replace(file.toString(), "the projects' file")
                .replace(String.valueOf(System.getProperty("java.io.tmpdir")), "on the machine that serves");
        return new StoreException(
                sentence, elsewhere.substring(0, 1).toUpperCase(Locale.ROOT) + elsewhere.substring(1), e);
    }

    static boolean isCode(Exception e, SQLiteErrorCode code) {
        SQLiteException cause = sqlite(e);
        return cause != null && (cause.getResultCode().code & PRIMARY_CODE) == code.code;
    }

    private static @Nullable SQLiteException sqlite(Throwable e) {
        for (Throwable each = e; each != null; each = each.getCause()) {
            if (each instanceof SQLiteException found) {
                return found;
            }
        }
        return null;
    }

    private String sentence(SQLiteException e) {
        int code = e.getResultCode().code & PRIMARY_CODE;
        if (code == SQLiteErrorCode.SQLITE_FULL.code || (mayBeForRoom(code) && isFull())) {
            return full();
        }
        if (code == SQLiteErrorCode.SQLITE_BUSY.code || code == SQLiteErrorCode.SQLITE_LOCKED.code) {
            return file + " is locked by another program that is at work in it. Nothing was changed;"
                    + " try again when that has finished.";
        }
        if (code == SQLiteErrorCode.SQLITE_READONLY.code || code == SQLiteErrorCode.SQLITE_PERM.code) {
            return file + " may not be written: the file or its folder is read-only for you. Nothing was changed.";
        }
        if (code == SQLiteErrorCode.SQLITE_CORRUPT.code || code == SQLiteErrorCode.SQLITE_NOTADB.code) {
            return damagedSentence(String.valueOf(e.getMessage()));
        }
        if (code == SQLiteErrorCode.SQLITE_CANTOPEN.code) {
            return file + " cannot be opened: it or its folder is gone, or not yours to open. Nothing was changed.";
        }
        if (code == SQLiteErrorCode.SQLITE_IOERR.code) {
            return String.format(
                    Locale.ROOT,
                    "%s cannot be read or written: the disk reports an error (%s). Nothing of this step was kept;"
                            + " look after the disk before you go on.",
                    file,
                    e.getResultCode().name());
        }
        if (code == SQLiteErrorCode.SQLITE_TOOBIG.code) {
            return "This is too large to be kept in " + file + ": one thing may have up to 1 GB. Nothing was changed.";
        }
        return other(e);
    }

    private String sentence(IOException e) {
        if (isFull()) {
            return full();
        }
        if (e instanceof AccessDeniedException || e instanceof NoSuchFileException) {
            return file + " cannot be written: its folder is gone, or read-only for you.";
        }
        String reason = e instanceof FileSystemException known ? known.getReason() : e.getMessage();
        return file + " cannot be written: " + (reason == null ? e.getClass().getSimpleName() : reason) + ".";
    }

    private String damagedSentence(String how) {
        return String.format(
                Locale.ROOT,
                "%s is damaged (%s). Nothing was written. Keep it, and put the newest backup of %s in its place.",
                file,
                how.strip(),
                Backups.folderOf(file));
    }

    private String full() {
        return "The disk that holds " + file + " is full. Nothing of this step was kept; all before it was."
                + " Make room on the disk, then try again.";
    }

    private String other(Exception e) {
        Throwable root = e;
        while (root.getCause() != null) {
            root = root.getCause();
        }
        if (root instanceof NativeLibraryNotFoundException) {
            return file + " cannot be used, since SQLite cannot be loaded here. It is unpacked into the folder for"
                    + " temporary files, " + System.getProperty("java.io.tmpdir")
                    + ", which must be there, be writable and allow programs to run. Nothing was changed.";
        }
        String message = root.getMessage();
        String said = message == null ? root.getClass().getSimpleName() : message;
        return file + " cannot be used: " + said.lines().findFirst().orElse(said) + ".";
    }

    private static boolean mayBeForRoom(int code) {
        return code == SQLiteErrorCode.SQLITE_IOERR.code || code == SQLiteErrorCode.SQLITE_CANTOPEN.code;
    }

    private boolean isFull() {
        Path folder = file.toAbsolutePath().getParent();
        try {
            return folder != null
                    && !Files.getFileStore(folder).isReadOnly()
                    && Files.getFileStore(folder).getUsableSpace() < NEXT_TO_NO_ROOM_bytes;
        } catch (IOException e) {
            return false; // the folder is gone, which is told as such
        }
    }
}
