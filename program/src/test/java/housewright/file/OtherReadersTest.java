package housewright.file;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import housewright.testing.RandomProjects;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.Date;
import java.util.List;
import java.util.Map;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.schema.CoreSchema;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

/**
 * Our YAML says the same to general readers, of YAML 1.2 (core schema) and of YAML 1.1, as our JSON says to Jackson: no
 * text becomes a number, a truth value, a day or nothing on the way. Only what is meant as a truth value differs in
 * YAML 1.2, where yes and no are words, and what is meant as a day in YAML 1.1, which has days.
 */
class OtherReadersTest {
    static LongStream seeds() {
        return LongStream.rangeClosed(1, 100);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void yamlSaysToOthersWhatJsonSays(long seed) throws IOException {
        String yaml = ProjectWriter.yaml(RandomProjects.of(seed));
        JsonNode json = new ObjectMapper().readTree(ProjectWriter.json(RandomProjects.of(seed)));

        Object core = new Load(LoadSettings.builder()
                        .setSchema(new CoreSchema())
                        .setAllowDuplicateKeys(false)
                        .build())
                .loadFromString(yaml);
        LoaderOptions options = new LoaderOptions();
        options.setAllowDuplicateKeys(false);
        Object old = new Yaml(new SafeConstructor(options)).load(yaml);

        same(json, core, "");
        same(json, old, "");
    }

    private static void same(JsonNode json, Object yaml, String path) {
        if (json.isObject()) {
            assertThat(yaml).as(path).isInstanceOf(Map.class);
            Map<?, ?> map = (Map<?, ?>) yaml;
            assertThat(List.<Object>copyOf(map.keySet())).as(path).isEqualTo(fieldNames(json));
            map.forEach((key, value) -> same(json.get((String) key), value, path + "." + key));
        } else if (json.isArray()) {
            assertThat(yaml).as(path).isInstanceOf(List.class);
            List<?> list = (List<?>) yaml;
            assertThat(list).as(path).hasSize(json.size());
            for (int i = 0; i < list.size(); i++) {
                same(json.get(i), list.get(i), path + "[" + i + "]");
            }
        } else if (json.isTextual()) {
            if (yaml instanceof Date day) {
                String moment = day.toInstant().toString().replace('T', ' ');
                assertThat(moment).as(path).startsWith(json.textValue());
            } else {
                assertThat(yaml).as(path).isEqualTo(json.textValue());
            }
        } else if (json.isBoolean()) {
            boolean yes =
                    yaml instanceof Boolean truth ? truth : List.of("yes", "on").contains(yaml);
            boolean no = yaml instanceof Boolean truth
                    ? !truth
                    : List.of("no", "off").contains(yaml);
            assertThat(yes).as(path).isEqualTo(json.booleanValue()).isNotEqualTo(no);
        } else {
            assertThat(json.isNumber()).as(path).isTrue();
            assertThat(yaml).as(path).isInstanceOf(Number.class);
            assertThat(new BigDecimal(yaml.toString())).as(path).isEqualByComparingTo(json.decimalValue());
        }
    }

    private static List<Object> fieldNames(JsonNode json) {
        List<Object> names = new java.util.ArrayList<>();
        json.fieldNames().forEachRemaining(names::add);
        return names;
    }
}
