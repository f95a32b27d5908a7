package housewright.file;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.app.Demo;
import housewright.library.BuiltInLibrary;
import housewright.model.Project;
import housewright.sheet.Sheet;
import housewright.sheet.SheetWriter;
import housewright.testing.RandomProjects;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A project as a workbook reads back equal, whatever it is. */
class ProjectBookTest {
    private static final BuiltInLibrary LIBRARY = BuiltInLibrary.of(BuiltInLibrary.LATEST);

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 80);
    }

    static Stream<Path> examples() throws IOException {
        return java.nio.file.Files.list(Path.of("../examples"))
                .filter(file -> file.toString().endsWith(".yaml"))
                .sorted();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void randomProjectsComeBackEqual(long seed) {
        Project project = RandomProjects.of(seed);
        comesBack(project, new NoLibrary());
    }

    @ParameterizedTest
    @MethodSource("examples")
    void examplesComeBackEqual(Path file) throws IOException {
        comesBack(
                ((ReadResult.Loaded)
                                ProjectReader.read(file.toString(), java.nio.file.Files.readAllBytes(file), LIBRARY))
                        .project(),
                LIBRARY);
    }

    @Test
    void theDemoComesBackEqual() {
        comesBack(((ReadResult.Loaded) ProjectReader.read(Demo.FILE_NAME, Demo.bytes(), LIBRARY)).project(), LIBRARY);
    }

    private static void comesBack(Project project, housewright.model.Library library) {
        byte[] book = ProjectBook.write(project);
        assertThat(ProjectBook.write(project)).as("the same bytes again").isEqualTo(book);
        ReadResult read = ProjectReader.read("hall.xlsx", book, library);
        assertThat(read).isInstanceOf(ReadResult.Loaded.class);
        Project back = ((ReadResult.Loaded) read).project();
        assertThat(ProjectWriter.yaml(back).lines().toList())
                .as("in the same order, too")
                .containsExactlyElementsOf(ProjectWriter.yaml(project).lines().toList());
        assertThat(back.equals(project)).isTrue();
    }

    @Test
    void whatDoesNotReadIsNamedByRowAndColumn() {
        byte[] book = SheetWriter.workbook(List.of(
                sheet("project", List.of("key", "value"), List.of("housewright", "1"), List.of("project.name", "Hall")),
                sheet(
                        "cables",
                        List.of("id", "type", "length"),
                        List.of("C1", "mic-cable", "12 stone"),
                        List.of("C1", "mic-cable", "12 m"))));
        ReadResult read = ProjectReader.read("hall.xlsx", book, LIBRARY);
        assertThat(((ReadResult.Refused) read).errors())
                .extracting(FileError::text)
                .anySatisfy(text -> assertThat(text).startsWith("hall.xlsx:2:3  cables.C1.length: found \"12 stone\""))
                .anySatisfy(text -> assertThat(text).contains("\"C1\" a second time", "line 2"));
    }

    @Test
    void anotherWorkbookIsNoProject() {
        byte[] book = SheetWriter.workbook(List.of(sheet("Cables", List.of("id", "from", "to"))));
        assertThat(((ReadResult.Refused) ProjectReader.read("list.xlsx", book, LIBRARY))
                        .errors()
                        .getFirst()
                        .text())
                .contains("not written from a project", "import");
    }

    @SafeVarargs
    private static Sheet sheet(String name, List<String>... rows) {
        return new Sheet(
                name,
                Stream.iterate(0, n -> n + 1)
                        .limit(rows.length)
                        .map(n -> new Sheet.Row(n + 1, rows[n]))
                        .toList());
    }
}
