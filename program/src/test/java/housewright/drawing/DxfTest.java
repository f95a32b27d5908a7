package housewright.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.app.Demo;
import housewright.file.ProjectReader;
import housewright.file.ReadResult;
import housewright.library.BuiltInLibrary;
import housewright.model.FloorPoint;
import housewright.model.Project;
import housewright.study.Study;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * The DXF read back by its published structure: pairs of a group code and a value, sections that open and close, what
 * each entity must have, layers and blocks that are declared before they are named. Autodesk, DXF Reference, release 12
 * (from memory).
 */
class DxfTest {
    private static final BuiltInLibrary LIBRARY = BuiltInLibrary.of(BuiltInLibrary.LATEST);

    private record Group(int code, String value) {}

    private static List<Group> groups(String text) {
        String[] lines = text.split("\n", -1);
        assertThat(lines.length % 2).as("pairs of lines, and an end").isEqualTo(1);
        List<Group> groups = new ArrayList<>();
        for (int i = 0; i + 1 < lines.length; i += 2) {
            groups.add(new Group(Integer.parseInt(lines[i].strip()), lines[i + 1]));
        }
        return groups;
    }

    private static Project demo() {
        return ((ReadResult.Loaded) ProjectReader.read(Demo.FILE_NAME, Demo.bytes(), LIBRARY)).project();
    }

    private static String dxf(Project project) {
        return Drawings.of(Study.of(project, LIBRARY), Imprint.NONE).floorPlanDxf(State.TARGET);
    }

    @Test
    void itKeepsToTheStructureOfTheFormat() {
        List<Group> groups = groups(dxf(demo()));
        assertThat(groups.getLast()).isEqualTo(new Group(0, "EOF"));
        Deque<String> open = new ArrayDeque<>();
        List<String> sections = new ArrayList<>();
        Set<String> layers = new HashSet<>();
        Set<String> blocks = new HashSet<>();
        String entity = "";
        for (int i = 0; i < groups.size(); i++) {
            Group group = groups.get(i);
            if (group.code() == 0) {
                entity = group.value();
                switch (entity) {
                    case "SECTION", "TABLE", "BLOCK", "POLYLINE" -> open.push(entity);
                    case "ENDSEC" -> assertThat(open.pop()).isEqualTo("SECTION");
                    case "ENDTAB" -> assertThat(open.pop()).isEqualTo("TABLE");
                    case "ENDBLK" -> assertThat(open.pop()).isEqualTo("BLOCK");
                    case "SEQEND" -> assertThat(open.pop()).isEqualTo("POLYLINE");
                    case "VERTEX" -> assertThat(open.peek()).isEqualTo("POLYLINE");
                    case "LAYER", "LTYPE" -> assertThat(open.peek()).isEqualTo("TABLE");
                    default -> assertThat(entity).isIn("LINE", "CIRCLE", "TEXT", "INSERT", "EOF");
                }
            } else if (group.code() == 2) {
                switch (entity) {
                    case "SECTION" -> sections.add(group.value());
                    case "LAYER" -> layers.add(group.value());
                    case "BLOCK" -> blocks.add(group.value());
                    case "INSERT" -> assertThat(blocks).contains(group.value());
                    default -> assertThat(entity).isIn("TABLE", "LTYPE");
                }
            } else if (group.code() == 8) {
                assertThat(layers).contains(group.value());
            } else if (group.code() >= 10 && group.code() < 60) {
                assertThat(group.value()).matches("-?\\d+(\\.\\d+)?");
            } else if (group.code() >= 60 && group.code() < 80) {
                assertThat(group.value()).matches("-?\\d+");
            }
        }
        assertThat(open).isEmpty();
        assertThat(sections).containsExactly("HEADER", "TABLES", "BLOCKS", "ENTITIES");
    }

    @Test
    void everyCornerPlaceAndThingIsOnItInMetres() {
        Project project = demo();
        List<Group> groups = groups(dxf(project));
        List<FloorPoint> corners = project.venue().rooms().get("hall").outline();
        List<double[]> vertices = new ArrayList<>();
        Set<String> words = new HashSet<>();
        String entity = "";
        String layer = "";
        for (int i = 0; i < groups.size(); i++) {
            Group group = groups.get(i);
            entity = group.code() == 0 ? group.value() : entity;
            layer = group.code() == 8 ? group.value() : layer;
            if (entity.equals("VERTEX") && layer.equals("ROOMS") && group.code() == 10) {
                vertices.add(new double[] {
                    Double.parseDouble(group.value()),
                    Double.parseDouble(groups.get(i + 1).value())
                });
            }
            if (entity.equals("TEXT") && group.code() == 1) {
                words.add(group.value());
            }
        }
        for (FloorPoint corner : corners) {
            assertThat(vertices)
                    .anyMatch(vertex -> Math.abs(vertex[0] - corner.x().metres()) < 1e-3
                            && Math.abs(vertex[1] - corner.y().metres()) < 1e-3);
        }
        project.venue().places().values().stream()
                .filter(place -> place.at() != null)
                .forEach(place -> assertThat(words).contains(place.id()));
        assertThat(words).contains("hall", "desk", "stage-box", "key-1");
    }

    @Test
    void aProjectOfNothingIsAnEmptyDrawing() {
        Project empty = ((ReadResult.Loaded) ProjectReader.read(
                        "a.yaml",
                        "housewright: 1\nproject: {name: Größe}\n".getBytes(java.nio.charset.StandardCharsets.UTF_8),
                        LIBRARY))
                .project();
        assertThat(dxf(empty)).contains("Gr\\U+00F6\\U+00DFe").endsWith("EOF\n");
    }
}
