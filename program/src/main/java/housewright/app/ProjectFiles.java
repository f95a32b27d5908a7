package housewright.app;

import housewright.file.LogReader;
import housewright.file.ProjectReader;
import housewright.file.ReadResult;
import housewright.model.Library;
import housewright.sheet.SheetReader;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermission;
import java.util.Arrays;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Opens project files and writes them back, whole or not at all. */
public final class ProjectFiles {
    /** The name that stands for standard input. */
    public static final String STANDARD_INPUT = "-";

    /** One more than the reader takes, so that it says itself that a file is too large. */
    private static final int MOST_BYTES = 16 * 1024 * 1024 + 1;

    private final Library library;
    private final InputStream input;

    /** @param input read when a file is called {@value #STANDARD_INPUT} */
    public ProjectFiles(Library library, InputStream input) {
        this.library = library;
        this.input = input;
    }

    public Opening open(String name) {
        if (name.equals(STANDARD_INPUT)) {
            try {
                return read("standard input", null, input.readNBytes(MOST_BYTES));
            } catch (IOException e) {
                return new Opening.Unreadable("Standard input cannot be read: " + e.getMessage() + ".");
            }
        }
        return switch (load(name, MOST_BYTES)) {
            case Loading.NotLoaded not -> new Opening.Unreadable(not.why());
            case Loading.Loaded loaded ->
                read(name, SheetReader.isWorkbook(loaded.bytes()) ? null : Path.of(name), loaded.bytes());
        };
    }

    /** What came of reading a file of any kind. */
    public sealed interface Loading {
        @SuppressWarnings("ArrayRecordComponent") // never compared
        record Loaded(byte[] bytes) implements Loading {}

        /** @param why as a sentence */
        record NotLoaded(String why) implements Loading {}
    }

    /** Reads no more than so many bytes of a file. */
    public Loading load(String name, int most) {
        try {
            Path path = Path.of(name);
            if (Files.isDirectory(path)) {
                return new Loading.NotLoaded(name + " is a folder; name a file in it.");
            }
            try (InputStream in = Files.newInputStream(path)) {
                return new Loading.Loaded(in.readNBytes(most));
            }
        } catch (NoSuchFileException | InvalidPathException e) {
            return new Loading.NotLoaded("There is no file " + name + ".");
        } catch (AccessDeniedException e) {
            return new Loading.NotLoaded(name + " may not be read: you have no permission to.");
        } catch (IOException e) {
            return new Loading.NotLoaded(name + " cannot be read: " + e.getMessage() + ".");
        }
    }

    /** Reads what happened on site from a file of its own; the project opened is the given one with that log. */
    public Opening openLog(String name, ProjectFile file) {
        try {
            Path path = Path.of(name);
            byte[] bytes = Files.readAllBytes(path);
            return switch (LogReader.read(name, bytes, file.project(), library)) {
                case ReadResult.Refused refused -> new Opening.Refused(refused.errors());
                case ReadResult.Loaded loaded ->
                    new Opening.Opened(new ProjectFile(
                            name, path, loaded.project(), loaded.source().text(), isMarked(bytes)));
            };
        } catch (NoSuchFileException | InvalidPathException e) {
            return new Opening.Unreadable("There is no file " + name + ".");
        } catch (IOException e) {
            return new Opening.Unreadable(name + " cannot be read: " + e.getMessage() + ".");
        }
    }

    /** Writes files into a folder, which is made where it is not there; those of the same names are replaced. */
    public Saving writeAll(String folder, Map<String, String> textByName) {
        try {
            Path path = Path.of(folder);
            Files.createDirectories(path);
            for (Map.Entry<String, String> each : textByName.entrySet()) {
                Files.writeString(path.resolve(each.getKey()), each.getValue());
            }
            return new Saving.Saved();
        } catch (InvalidPathException e) {
            return new Saving.NotSaved(folder + " is no folder.");
        } catch (AccessDeniedException e) {
            return new Saving.NotSaved(folder + " may not be written: you have no permission to.");
        } catch (IOException e) {
            return new Saving.NotSaved(folder + " cannot be written: " + e.getMessage() + ".");
        }
    }

    /** Reads what is not in a file of its own. */
    public Opening read(String name, byte[] bytes) {
        return read(name, null, bytes);
    }

    private Opening read(String name, @Nullable Path path, byte[] bytes) {
        return switch (ProjectReader.read(name, bytes, library)) {
            case ReadResult.Refused refused -> new Opening.Refused(refused.errors());
            case ReadResult.Loaded loaded ->
                new Opening.Opened(new ProjectFile(
                        name, path, loaded.project(), loaded.source().text(), isMarked(bytes)));
        };
    }

    /**
     * Puts another text in place of the file's, in one step: whoever opens it finds the old text or the new one. Refuses
     * where the file is not what was read any more.
     */
    public Saving replace(ProjectFile file, String text) {
        Path path = file.path();
        if (path == null) {
            return new Saving.NotSaved(
                    file.name().endsWith(".xlsx")
                            ? file.name() + " is a workbook, which is not written back to; apply it to a project file."
                            : "What came through standard input cannot be written back; name a file.");
        }
        String name = file.name();
        Path temporary = null;
        try {
            Path real = path.toRealPath(); // through a link: the file it leads to
            if (!Arrays.equals(Files.readAllBytes(real), file.bytes())) {
                return new Saving.NotSaved(
                        name + " was changed by somebody else meanwhile. Nothing was written; run it again.");
            }
            if (!Files.isWritable(real)) {
                return new Saving.NotSaved(name + " may not be written: it is read-only for you. Nothing was changed.");
            }
            temporary = Files.createTempFile(real.getParent(), ".housewright-", ".tmp");
            Files.write(temporary, file.bytes(text), StandardOpenOption.WRITE, StandardOpenOption.SYNC);
            copyPermissions(real, temporary);
            Files.move(temporary, real, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            temporary = null;
            return new Saving.Saved();
        } catch (NoSuchFileException e) {
            return new Saving.NotSaved(name + " is not there any more. Nothing was written.");
        } catch (AccessDeniedException e) {
            return new Saving.NotSaved("The folder of " + name + " may not be written. Nothing was changed.");
        } catch (IOException e) {
            return new Saving.NotSaved(name + " cannot be written: " + e.getMessage() + ". Nothing was changed.");
        } finally {
            remove(temporary);
        }
    }

    /** Writes a file that is not there yet; one that is there stays as it is. */
    public Saving create(String name, String text) {
        return create(name, text.getBytes(StandardCharsets.UTF_8));
    }

    /** As above, of any kind. */
    public Saving create(String name, byte[] bytes) {
        try {
            Files.write(Path.of(name), bytes, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
            return new Saving.Saved();
        } catch (FileAlreadyExistsException e) {
            return new Saving.NotSaved(name + " is there already, and is left as it is; choose another name.");
        } catch (NoSuchFileException | InvalidPathException e) {
            return new Saving.NotSaved(name + " cannot be written: there is no such folder.");
        } catch (AccessDeniedException e) {
            return new Saving.NotSaved(name + " may not be written: you have no permission to.");
        } catch (IOException e) {
            return new Saving.NotSaved(name + " cannot be written: " + e.getMessage() + ".");
        }
    }

    private static boolean isMarked(byte[] bytes) {
        return bytes.length >= 3 && bytes[0] == (byte) 0xEF && bytes[1] == (byte) 0xBB && bytes[2] == (byte) 0xBF;
    }

    private static void copyPermissions(Path from, Path to) throws IOException {
        PosixFileAttributeView view = Files.getFileAttributeView(from, PosixFileAttributeView.class);
        if (view != null) {
            Set<PosixFilePermission> permissions = view.readAttributes().permissions();
            Files.setPosixFilePermissions(to, permissions);
        }
    }

    private static void remove(@Nullable Path temporary) {
        if (temporary != null) {
            try {
                Files.deleteIfExists(temporary);
            } catch (IOException e) {
                // it stays behind beside the file, which is whole
            }
        }
    }
}
