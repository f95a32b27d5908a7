package housewright.file;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.model.Project;
import housewright.testing.RandomProjects;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is written reads as the same, in the same order, whatever it is. */
class RoundTripTest {
    static LongStream seeds() {
        return LongStream.rangeClosed(1, 300);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void randomProjectsSurviveYamlAndJson(long seed) {
        Project project = RandomProjects.of(seed);

        String yaml = ProjectWriter.yaml(project);
        Project fromYaml = Files.load("random.yaml", yaml);
        assertThat(fromYaml).isEqualTo(project);
        assertThat(ProjectWriter.yaml(fromYaml))
                .isEqualTo(yaml); // the order of entries, which equality of maps ignores

        String json = ProjectWriter.json(project);
        Project fromJson = Files.load("random.json", json);
        assertThat(fromJson).isEqualTo(project);
        assertThat(ProjectWriter.json(fromJson)).isEqualTo(json);
        assertThat(ProjectWriter.yaml(fromJson)).isEqualTo(yaml);
    }
}
