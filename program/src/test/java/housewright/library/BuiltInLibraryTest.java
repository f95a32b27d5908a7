package housewright.library;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import housewright.file.LibraryText;
import housewright.file.ProjectWriter;
import housewright.model.CableType;
import housewright.model.Model;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class BuiltInLibraryTest {
    private static final BuiltInLibrary LIBRARY = BuiltInLibrary.of(1);

    static List<String> files() {
        return LibraryIndex.files(1);
    }

    @Test
    void theListOfFilesIsThatOfTheFolder() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("src/main/resources/housewright/library/1"))) {
            assertThat(files())
                    .as("src/main/resources/housewright/library/1/files names every file beside it")
                    .containsExactlyInAnyOrderElementsOf(
                            files.map(file -> file.getFileName().toString())
                                    .filter(name -> !name.equals("files"))
                                    .toList());
        }
    }

    @ParameterizedTest
    @MethodSource("files")
    void everyFileIsWithoutErrors(String file) {
        assertThat(LibraryText.listErrors(file, LibraryIndex.resource(1, file))).isEmpty();
    }

    @Test
    void everyTypeReadsByItselfAsItIsWritten() {
        assertThat(LIBRARY.modelIds()).isNotEmpty();
        for (String id : LIBRARY.modelIds()) {
            Model model = LIBRARY.findModel(id).orElseThrow();
            assertThat(model.id()).isEqualTo(id);
            assertThat(LibraryText.readModel("again", id, ProjectWriter.yaml(id, model)))
                    .isEqualTo(model);
        }
        for (String id : LIBRARY.cableTypeIds()) {
            CableType type = LIBRARY.findCableType(id).orElseThrow();
            assertThat(LibraryText.readCableType("again", id, ProjectWriter.yaml(id, type)))
                    .isEqualTo(type);
        }
        for (String id : LIBRARY.adapterIds()) {
            assertThat(LIBRARY.findAdapter(id).orElseThrow().id()).isEqualTo(id);
        }
    }

    @Test
    void aTypeIsReadOnceHoweverOftenItIsAskedFor() {
        assertThat(LIBRARY.findCableType("mic-cable").orElseThrow())
                .isSameAs(LIBRARY.findCableType("mic-cable").orElseThrow());
    }

    @Test
    void severalThreadsGetTheSameTypes() throws InterruptedException, ExecutionException {
        try (ExecutorService threads = Executors.newFixedThreadPool(4)) {
            List<Callable<List<Model>>> readers = new ArrayList<>();
            for (int i = 0; i < 4; i++) {
                readers.add(() -> LIBRARY.modelIds().stream()
                        .map(id -> LIBRARY.findModel(id).orElseThrow())
                        .toList());
            }
            List<List<Model>> read = new ArrayList<>();
            for (Future<List<Model>> each : threads.invokeAll(readers)) {
                read.add(each.get());
            }
            for (List<Model> each : read) {
                for (int i = 0; i < each.size(); i++) {
                    assertThat(each.get(i)).isSameAs(read.getFirst().get(i));
                }
            }
        }
    }

    @Test
    void theTextOfATypeIsThatOfItsFile() {
        String text = LIBRARY.text("mic-cable");

        assertThat(LibraryIndex.files(1).stream().map(file -> LibraryIndex.resource(1, file)))
                .anyMatch(file -> file.contains(text));
        assertThat(LibraryText.readCableType("text", "mic-cable", text))
                .isEqualTo(LIBRARY.findCableType("mic-cable").orElseThrow());
        assertThat(LIBRARY.findText("no-such-type")).isEmpty();
        assertThatIllegalArgumentException().isThrownBy(() -> LIBRARY.text("no-such-type"));
    }

    @Test
    void thereIsNoOtherVersion() {
        assertThat(BuiltInLibrary.find(1)).containsSame(LIBRARY);
        assertThat(BuiltInLibrary.find(2)).isEmpty();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> BuiltInLibrary.of(2))
                .withMessage("There is no version 2 of the built-in library; the newest is 1");
    }

    @Test
    void idsAreUniqueAmongTheTypesOfOneSection() {
        LibraryCutter cutter = new LibraryCutter();
        cutter.cut("one.yaml", "models:\n  a: {}\n");
        assertThatIllegalStateException()
                .isThrownBy(() -> cutter.cut("two.yaml", "models:\n  b: {}\n  a: {}\n"))
                .withMessage("two.yaml has a, which is in the library already");
    }

    @Test
    void commentsStayWithTheEntryTheyStandBefore() {
        LibraryCutter cutter = new LibraryCutter();
        cutter.cut("one.yaml", """
                # the file
                models:
                  # about a
                  a:
                    name: A    # named

                    # inside
                    kind: mixer

                  # of nothing

                  # about b
                  # and more
                  b: {kind: di}
                # after
                adapters:
                  c: {from: TS, to: TRS}
                """);
        LibraryIndex index = cutter.index();
        assertThat(index.models().keySet()).isEqualTo(Set.of("a", "b"));
        assertThat(index.models().get("a").text())
                .isEqualTo("  # about a\n  a:\n    name: A    # named\n\n    # inside\n    kind: mixer\n");
        assertThat(index.models().get("b").text()).isEqualTo("  # about b\n  # and more\n  b: {kind: di}\n");
        assertThat(index.adapters().get("c").text()).isEqualTo("  c: {from: TS, to: TRS}\n");
    }

    @Test
    void aBrokenTypeIsAProgrammersMistake() {
        assertThatIllegalStateException()
                .isThrownBy(() -> LibraryText.readModel("sound.yaml", "a", "  a: {kind: mixr}\n"))
                .withMessageContaining("sound.yaml:1:13  models.a.kind: found \"mixr\"");
        assertThat(LibraryText.listErrors("x.yaml", "models:\n  a: {points: [p], routes: [p -> q]}\n"))
                .extracting(Object::toString)
                .containsExactly("x.yaml:2:29  models.a.routes[1]: found \"q\", expected a port or point of a");
    }
}
