package housewright.file;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.library.BuiltInLibrary;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Files of every version of the format still open. They are never changed: where the format changes, its new files are
 * put beside them in a folder of that version.
 */
class OldFilesTest {
    static List<Path> files() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("src/test/resources/old-files"))) {
            return files.filter(Files::isRegularFile).sorted().toList();
        }
    }

    @ParameterizedTest
    @MethodSource("files")
    void anOldFileStillOpens(Path file) throws IOException {
        BuiltInLibrary library = BuiltInLibrary.of(1);

        ReadResult result = ProjectReader.read(file.getFileName().toString(), Files.readAllBytes(file), library);

        assertThat(result).isInstanceOf(ReadResult.Loaded.class);
    }
}
