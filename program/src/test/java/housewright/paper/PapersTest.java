package housewright.paper;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.study.Study;
import housewright.testing.Golden;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is on each paper, held to a file for the demo and for small examples. */
class PapersTest {
    private static final Map<String, Study> STUDIES =
            Map.of("demo", Halls.demo(), "refit", Halls.example("refit"), "planned", Halls.planned());

    static List<String> papers() {
        return Papers.all().stream().map(Paper::id).toList();
    }

    @ParameterizedTest
    @MethodSource("papers")
    void saysWhatItsGoldenFileSays(String id) {
        Paper paper = Papers.find(id).orElseThrow();
        StringBuilder all = new StringBuilder();
        for (String name : List.of("refit", "planned", "demo")) {
            Study study = STUDIES.get(name);
            all.append("---- ").append(name).append(" ----\n");
            all.append(PageText.of(paper.sheets(study, Halls.OPTIONS)));
        }
        Golden.hold(Path.of("src", "test", "resources", "housewright", "papers", id + ".txt"), all.toString());
    }

    @Test
    void tellsSheetsAndRowsApart() {
        for (Study study : STUDIES.values()) {
            Set<String> sheets = new HashSet<>();
            for (Paper paper : Papers.all()) {
                Map<String, List<Column>> columns = new java.util.HashMap<>();
                for (Sheet sheet : paper.sheets(study, Halls.OPTIONS)) {
                    assertThat(sheets.add(sheet.id())).as(sheet.id()).isTrue();
                    assertThat(sheet.id()).matches("[A-Za-z0-9-]+");
                    Set<String> rows = new HashSet<>();
                    for (Block.Table table : sheet.tables()) {
                        assertThat(columns.computeIfAbsent(table.name(), name -> table.columns()))
                                .as("%s: tables of one name are of one shape", table.name())
                                .isEqualTo(table.columns());
                        table.rows()
                                .forEach(row -> assertThat(rows.add(table.name() + " " + row.key()))
                                        .as(sheet.id() + " " + table.name() + " " + row.key())
                                        .isTrue());
                    }
                }
            }
        }
    }

    @Test
    void givesNothingForAnEmptyProject() {
        Study empty = Halls.of("housewright: 1\nproject: {name: Nothing yet, stage: survey, library: 1}\n");
        List<String> some = new ArrayList<>();
        for (Paper paper : Papers.all()) {
            if (!paper.sheets(empty, Halls.OPTIONS).isEmpty()) {
                some.add(paper.id());
            }
        }
        assertThat(some).isEmpty();
    }
}
