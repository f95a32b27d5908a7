package housewright.app.table;

import housewright.app.Demo;
import housewright.file.FileError;
import housewright.file.ProjectReader;
import housewright.file.ReadResult;
import housewright.library.BuiltInLibrary;
import housewright.model.Project;
import housewright.model.change.Change;
import housewright.study.Study;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Projects to edit. */
final class Halls {
    static final BuiltInLibrary LIBRARY = BuiltInLibrary.of(BuiltInLibrary.LATEST);

    private Halls() {}

    static Project demo() {
        return read(new String(Demo.bytes(), StandardCharsets.UTF_8));
    }

    /** A hall of nothing but what these lines say. */
    static Project of(String lines) {
        return read("housewright: 1\nproject: {name: Test hall, library: " + LIBRARY.version() + "}\n" + lines);
    }

    static Project read(String text) {
        return switch (ProjectReader.read("hall.yaml", text.getBytes(StandardCharsets.UTF_8), LIBRARY)) {
            case ReadResult.Loaded loaded -> loaded.project();
            case ReadResult.Refused refused ->
                throw new AssertionError(refused.errors().toString());
        };
    }

    private static @Nullable Study last;

    /** The same study for the same project, as an open project keeps it. */
    static synchronized Study study(Project project) {
        if (last == null || last.project() != project) {
            last = Study.of(project, LIBRARY);
        }
        return last;
    }

    static Edits edits(Project project, Table table) {
        return Edits.of(study(project), table);
    }

    /** The project with the edit made; it must be one that a file may hold. */
    static Project made(Project project, Edit edit) {
        if (!(edit instanceof Edit.Made made)) {
            throw new AssertionError("Not made: " + edit);
        }
        Project after = Change.apply(project, made.changes());
        List<FileError> errors = ProjectReader.check("edit", after, LIBRARY);
        if (!errors.isEmpty()) {
            throw new AssertionError("The edit leaves what no file may hold: " + errors);
        }
        return after;
    }
}
