package housewright.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import housewright.file.Node.Entry;
import housewright.file.Node.Mapping;
import housewright.model.Project;
import housewright.testing.RandomProjects;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ProjectTextTest {
    static LongStream seeds() {
        return LongStream.rangeClosed(1, 150);
    }

    /** The edit reads its result again and throws where that is not the project wanted, so that here is only called. */
    @ParameterizedTest
    @MethodSource("seeds")
    void anyChangeIsPlacedInTextOfAnyStyleAndWhatIsUnchangedStaysAsItWas(long seed) throws DocumentException {
        Random random = new Random(seed);
        Project before = RandomProjects.of(seed);
        String text = RandomYaml.document((Mapping) ModelNodes.of(before), random);
        Project after = RandomEdits.mix(before, RandomProjects.of(seed + 1000), random);

        String edited = ProjectText.edit(text, "random.yaml", before, after);

        Mapping document = (Mapping) YamlNodes.read(text);
        List<String> kept = unchanged(text, document, (Mapping) ModelNodes.of(before), (Mapping) ModelNodes.of(after));
        assertThat(kept).isNotEmpty();
        for (String each : kept) {
            assertThat(edited).contains(each);
        }
    }

    /** The texts of all entries of the top three levels that are the same before and after. */
    private static List<String> unchanged(String text, Mapping own, Mapping before, Mapping after) {
        List<String> texts = new ArrayList<>();
        Offsets offsets = new Offsets(text);
        for (Entry entry : own.entries()) {
            Node from = before.find(entry.key().text());
            Node to = after.find(entry.key().text());
            if (from != null && from.equals(to)) {
                int start = offsets.of(entry.key().span().start());
                texts.add(text.substring(start, offsets.of(entry.value().span().end()))
                        .stripTrailing());
            } else if (entry.value() instanceof Mapping inner
                    && from instanceof Mapping innerBefore
                    && to instanceof Mapping innerAfter) {
                texts.addAll(unchanged(text, inner, innerBefore, innerAfter));
            }
        }
        return texts;
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void withoutAChangeTheTextStaysAsItIs(long seed) {
        Random random = new Random(seed);
        Project project = RandomProjects.of(seed);
        String text = RandomYaml.document((Mapping) ModelNodes.of(project), random);

        assertThat(ProjectText.edit(text, "random.yaml", project, project)).isEqualTo(text);
    }

    private static final String HALL = """
            # Survey of March
            housewright: 1
            project: {name: Hall, stage: design}   # moved on in May

            equipment:          # what is there
              desk:   {model: desk-48, life: keep, note: "the old one"}   # to be sold
              # the boxes
              box-1:
                model: box-16     # counted twice
                at: stage         # left
              box-2:
              box-3: { life: new, set: { in-1: { gain: 32.0 dB } } }
            venue:
              places: {stage: {}}

            patch:
              desk:
              - link:1 -> ch-1       # pulpit
              - {from: ch-1, to: mix-3,
                 gain: -6 dB}
              - ch-1 -> main-L, main-R
            # the end
            models: {desk-48: {ports-known: no}, box-16: {ports-known: no}}
            """;

    /** The lines of HALL and of what an edit of the project makes of it, told apart by - and +. */
    private static String edited(String text, String from, String to) {
        Project before = Files.load("hall.yaml", text);
        String wanted = ProjectWriter.yaml(before);
        assertThat(wanted).contains(from);
        Project after = Files.load("wanted.yaml", wanted.replace(from, to));
        assertThat(after).isNotEqualTo(before);
        return difference(text, ProjectText.edit(text, "hall.yaml", before, after));
    }

    private static String difference(String before, String after) {
        List<String> from = List.of(before.split("(?<=\n)"));
        List<String> to = List.of(after.split("(?<=\n)"));
        StringBuilder difference = new StringBuilder();
        for (ListDiff.Step step : ListDiff.of(from, to)) {
            String old = step.from() < 0 ? "" : from.get(step.from());
            String now = step.to() < 0 ? "" : to.get(step.to());
            if (!old.equals(now)) {
                difference.append(old.isEmpty() ? "" : "-" + old).append(now.isEmpty() ? "" : "+" + now);
            }
        }
        return difference.toString();
    }

    @Test
    void aChangedValueIsPutInPlaceOfTheOldOne() {
        assertThat(edited(
                        HALL,
                        "{model: desk-48, note: the old one}",
                        "{model: desk-48, life: strike, note: the old one}"))
                .isEqualTo("""
                        -  desk:   {model: desk-48, life: keep, note: "the old one"}   # to be sold
                        +  desk:   {model: desk-48, life: strike, note: "the old one"}   # to be sold
                        """);
        assertThat(edited(HALL, "box-1: {model: box-16, at: stage}", "box-1: {model: desk-48, at: stage, life: new}"))
                .isEqualTo("""
                        -    model: box-16     # counted twice
                        +    model: desk-48     # counted twice
                        +    life: new
                        """);
        assertThat(edited(
                        HALL,
                        "box-3: {life: new, set: {in-1: {gain: 32 dB}}}",
                        "box-3: {life: new, set: {in-1: {gain: 32 dB}, in-2: off}}"))
                .isEqualTo("""
                        -  box-3: { life: new, set: { in-1: { gain: 32.0 dB } } }
                        +  box-3: { life: new, set: { in-1: { gain: 32.0 dB }, in-2: off } }
                        """);
        assertThat(edited(HALL, "box-2: {}", "box-2: {model: box-16}"))
                .isEqualTo("-  box-2:\n+  box-2: {model: box-16}\n");
    }

    @Test
    void aPatchChangesEntryByEntry() {
        assertThat(edited(HALL, "    - {from: ch-1, to: mix-3, gain: -6 dB}\n", ""))
                .isEqualTo("-  - {from: ch-1, to: mix-3,\n-     gain: -6 dB}\n");
        assertThat(edited(HALL, "main-L, main-R\n", "main-L, main-R\n    - main-L -> out-1\n"))
                .isEqualTo("+  - main-L -> out-1\n");
        assertThat(edited(HALL, "    - link:1 -> ch-1\n", "    - link:2 -> ch-2\n    - link:1 -> ch-1\n"))
                .isEqualTo("+  - link:2 -> ch-2\n");
        assertThat(edited(HALL, "gain: -6 dB", "gain: -9 dB")).isEqualTo("-     gain: -6 dB}\n+     gain: -9 dB}\n");
    }

    @Test
    void whatIsNewGoesToTheEndOfItsSectionAndWhatIsGoneTakesItsLineAlong() {
        assertThat(edited(HALL, "  box-2: {}\n", "  zoom: {note: new}\n"))
                .isEqualTo("-  box-2:\n+  zoom: {note: new}\n");
        assertThat(edited(HALL, "  box-1: {model: box-16, at: stage}\n", "")).isEqualTo("""
                        -  box-1:
                        -    model: box-16     # counted twice
                        -    at: stage         # left
                        """);
    }

    @Test
    void aSectionIsMadeAfterTheOneBeforeIt() {
        assertThat(edited(HALL, "\npatch:", "\ncables:\n  C1: {from: desk.a, to: box-1.b}\n\npatch:"))
                .isEqualTo("+\n+cables:\n+  C1: {from: desk.a, to: box-1.b}\n");
        assertThat(edited(HALL, "  places:\n", "  circuits:\n    c1: {dimmed: yes}\n  places:\n"))
                .isEqualTo("+  circuits:\n+    c1: {dimmed: yes}\n");
    }

    @Test
    void lineEndsStayWhatTheyAre() {
        String windows = HALL.replace("\n", "\r\n").stripTrailing();

        assertThat(edited(windows, "main-L, main-R\n", "main-L, main-R\n    - main-L -> out-1\n"))
                .isEqualTo("+  - main-L -> out-1\r\n");
        assertThat(edited(
                        windows,
                        "  box-16: {ports-known: no}\n",
                        "  box-16: {ports-known: no}\nevents:\n  first: {deadline: yes}\n"))
                .isEqualTo("+\r\n+events:\r\n+  first: {deadline: yes}\r\n");
        String open = "housewright: 1\nproject: {name: Hall}\nequipment:\n  a: {}";
        assertThat(edited(open, "  a: {}\n", "  a: {}\n  b: {label: B}\n"))
                .isEqualTo("-  a: {}+  a: {}\n+  b: {label: B}");
    }

    @Test
    void aJsonFileIsWrittenAnew() {
        Project before = Files.load("hall.yaml", HALL);
        Project after = Files.load("hall.yaml", HALL.replace("strike", "new").replace("stage: design", "stage: order"));

        assertThat(ProjectText.edit(ProjectWriter.json(before), "hall.json", before, after))
                .isEqualTo(ProjectWriter.json(after));
        assertThat(ProjectText.edit(ProjectWriter.json(before), "hall", before, after))
                .isEqualTo(ProjectWriter.json(after));
    }

    @Test
    void theTextMustBeThatOfTheProjectBefore() {
        Project other = Files.load("hall.yaml", HALL.replace("stage: design", "stage: order"));

        assertThatIllegalArgumentException()
                .isThrownBy(() -> ProjectText.edit(HALL, "hall.yaml", other, other))
                .withMessageContaining("not that of the project before");
        assertThatIllegalArgumentException().isThrownBy(() -> ProjectText.edit("a: [", "hall.yaml", other, other));
    }

    @Test
    void aListDiffersByTheFewestItems() {
        assertThat(ListDiff.of(List.of("a", "b", "c", "d"), List.of("x", "b", "d", "e")))
                .containsExactly(
                        new ListDiff.Step(0, 0),
                        new ListDiff.Step(1, 1),
                        new ListDiff.Step(2, -1),
                        new ListDiff.Step(3, 2),
                        new ListDiff.Step(-1, 3));
        assertThat(ListDiff.of(List.of(), List.of("a"))).containsExactly(new ListDiff.Step(-1, 0));
    }
}
