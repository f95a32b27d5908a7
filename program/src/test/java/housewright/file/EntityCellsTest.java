package housewright.file;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.app.Demo;
import housewright.library.BuiltInLibrary;
import housewright.model.Equipment;
import housewright.model.Project;
import housewright.model.change.Section;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class EntityCellsTest {
    private static final BuiltInLibrary LIBRARY = BuiltInLibrary.of(BuiltInLibrary.LATEST);
    private static final Project DEMO =
            ((ReadResult.Loaded) ProjectReader.read(Demo.FILE_NAME, Demo.bytes(), LIBRARY)).project();

    @Test
    void everyEntityOfTheDemoReadsBackFromItsCells() {
        int read = 0;
        for (Section section : Section.values()) {
            for (Map.Entry<String, ? extends Record> entry : section.of(DEMO).entrySet()) {
                Map<String, String> cells = EntityCells.of(entry.getValue());
                if (cells.containsValue("")) {
                    continue; // an empty text, such as an answer to be given, reads as no text
                }
                assertThat(EntityCells.read(section, entry.getKey(), null, cells))
                        .as(section.path() + "." + entry.getKey() + " " + cells)
                        .isEqualTo(new EntityCells.Reading.Read(entry.getValue()));
                read++;
            }
        }
        assertThat(read).isGreaterThan(300);
    }

    @Test
    void everyCellHasAColumn() {
        for (Section section : Section.values()) {
            List<String> keys = EntityCells.columns(section).stream()
                    .map(EntityCells.Column::key)
                    .toList();
            section.of(DEMO)
                    .values()
                    .forEach(entity -> assertThat(keys)
                            .as(section.path())
                            .containsAll(EntityCells.of(entity).keySet()));
        }
    }

    @Test
    void aCellIsSetAndAnotherTakenAwayAndTheRestStays() {
        Equipment before = DEMO.equipment().get("interpreter-mic");
        EntityCells.Reading reading =
                EntityCells.read(Section.EQUIPMENT, "interpreter-mic", before, Map.of("note", "on the left", "at", ""));
        Equipment after = (Equipment) ((EntityCells.Reading.Read) reading).entity();
        assertThat(after.at()).isNull();
        Map<String, String> cells = new LinkedHashMap<>(EntityCells.of(before));
        cells.remove("at");
        cells.put("note", "on the left");
        assertThat(EntityCells.of(after)).containsExactlyInAnyOrderEntriesOf(cells);
    }

    @Test
    void aCellThatDoesNotReadSaysWhatBelongsThere() {
        EntityCells.Reading reading =
                EntityCells.read(Section.CABLES, "C900", null, Map.of("length", "12 stone", "type", "coax"));
        assertThat(reading).isInstanceOfSatisfying(EntityCells.Reading.Refused.class, refused -> {
            assertThat(refused.errors()).anySatisfy(error -> {
                assertThat(error.path()).isEqualTo("length");
                assertThat(error.found()).startsWith("\"12 stone\"");
                assertThat(error.expected()).contains("m");
            });
        });
    }

    @Test
    void anUnknownKeyIsNamedWithTheNearest() {
        EntityCells.Reading reading = EntityCells.read(Section.CABLES, "C900", null, Map.of("lenght", "12 m"));
        assertThat(reading)
                .isInstanceOfSatisfying(
                        EntityCells.Reading.Refused.class,
                        refused -> assertThat(refused.errors())
                                .anySatisfy(error -> assertThat(error.nearest()).isEqualTo("length")));
    }

    @Test
    void aListInACellIsWordsWithCommasAndMayHaveItsBrackets() {
        for (String text : List.of("sound, light", "[sound, light]")) {
            EntityCells.Reading reading = EntityCells.read(Section.PEOPLE, "ada", null, Map.of("skills", text));
            assertThat(EntityCells.of(((EntityCells.Reading.Read) reading).entity()))
                    .containsEntry("skills", "sound, light");
        }
    }
}
