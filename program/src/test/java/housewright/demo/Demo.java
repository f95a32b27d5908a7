package housewright.demo;

import housewright.file.ProjectReader;
import housewright.file.ReadResult;
import housewright.library.BuiltInLibrary;
import housewright.model.Library;
import housewright.model.Project;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The demo project as it is packed with the program. */
final class Demo {
    static final Library LIBRARY = BuiltInLibrary.of(1);
    static final String FILE = "carrowfenn-hall.yaml";
    static final String TEXT = text("/housewright/demo/" + FILE);

    private Demo() {}

    static Project project() {
        return read(TEXT);
    }

    /** The demo with its text changed. */
    static Project read(String text) {
        return switch (ProjectReader.read(FILE, text.getBytes(StandardCharsets.UTF_8), LIBRARY)) {
            case ReadResult.Loaded loaded -> loaded.project();
            case ReadResult.Refused refused ->
                throw new AssertionError(String.join(
                        "\n", refused.errors().stream().map(Object::toString).toList()));
        };
    }

    static String text(String resource) {
        try (InputStream in = Demo.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new AssertionError(resource + " is not on the class path");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
