package housewright.file;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.app.Demo;
import housewright.file.Mentions.Mention;
import housewright.library.BuiltInLibrary;
import housewright.model.Project;
import housewright.model.change.Change;
import housewright.model.change.Section;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class MentionsTest {
    private static final BuiltInLibrary LIBRARY = BuiltInLibrary.of(BuiltInLibrary.LATEST);
    private static final Project DEMO =
            ((ReadResult.Loaded) ProjectReader.read(Demo.FILE_NAME, Demo.bytes(), LIBRARY)).project();

    /** The reader finds by other means what names something that is not there. */
    @ParameterizedTest
    @EnumSource(
            mode = EnumSource.Mode.EXCLUDE,
            names = {"MODELS", "CABLE_TYPES", "ADAPTERS"})
    void whatNamesAThingIsWhatTheReaderMissesItIn(Section section) {
        for (String id : section.of(DEMO).keySet()) {
            Project without = Change.apply(DEMO, List.of(new Change.Drop(section, id)));
            Set<String> missed = new TreeSet<>();
            for (FileError error : ProjectReader.check("edit", without, LIBRARY)) {
                missed.add(entity(error.path()));
            }
            Set<String> named = new TreeSet<>();
            for (Mention mention : Mentions.of(DEMO, section, List.of(id))) {
                named.add(mention.subject());
            }
            assertThat(named).as(section.path() + "." + id).isEqualTo(missed);
        }
    }

    private static String entity(String path) {
        String[] steps = path.replaceAll("\\[\\d+]", "").split("\\.");
        int own = switch (steps[0]) {
            case "venue", "lighting" -> 3;
            case "exempt" -> 1;
            default -> 2;
        };
        return String.join(".", List.of(steps).subList(0, Math.min(own, steps.length)));
    }
}
