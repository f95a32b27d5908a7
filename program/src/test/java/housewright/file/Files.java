package housewright.file;

import housewright.model.Project;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Reading, as the tests of this package do it. */
final class Files {
    private Files() {}

    /** A file beside the tests. */
    static String resource(String name) {
        try (InputStream in = Files.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalArgumentException("There is no " + name);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static ReadResult read(String fileName, String text) {
        return ProjectReader.read(fileName, text.getBytes(StandardCharsets.UTF_8), new NoLibrary());
    }

    /** The project of a text that must be without errors. */
    static Project load(String fileName, String text) {
        return switch (read(fileName, text)) {
            case ReadResult.Loaded loaded -> loaded.project();
            case ReadResult.Refused refused -> throw new AssertionError(refused.errors() + "\n" + text);
        };
    }

    /** The errors of a text, in one line each; none where it has none. */
    static List<String> errors(String fileName, String text) {
        return switch (read(fileName, text)) {
            case ReadResult.Loaded loaded -> List.of();
            case ReadResult.Refused refused ->
                refused.errors().stream().map(FileError::text).toList();
        };
    }
}
