package housewright.paper;

import housewright.file.ProjectReader;
import housewright.file.ReadResult;
import housewright.library.BuiltInLibrary;
import housewright.model.Library;
import housewright.study.Study;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Projects to print. */
final class Halls {
    static final Library LIBRARY = BuiltInLibrary.of(1);
    static final PaperOptions OPTIONS = new PaperOptions(PageSize.A4, "Carrowfenn Hall refit", "3f9a1c2", "2027-01-11");

    private Halls() {}

    static Study demo() {
        try (InputStream in = Halls.class.getResourceAsStream("/housewright/demo/carrowfenn-hall.yaml")) {
            return of(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** One of the examples, such as {@code refit}. */
    static Study example(String name) {
        try {
            return of(Files.readString(Path.of("..", "examples", name + ".yaml")));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Study of(String yaml) {
        return switch (ProjectReader.read("hall.yaml", yaml.getBytes(StandardCharsets.UTF_8), LIBRARY)) {
            case ReadResult.Loaded loaded -> Study.of(loaded.project(), LIBRARY);
            case ReadResult.Refused refused -> throw new AssertionError(refused.errors().toString());
        };
    }
}
