package housewright.card;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import housewright.card.Card.Step;
import housewright.file.ProjectReader;
import housewright.file.ReadResult;
import housewright.library.BuiltInLibrary;
import housewright.model.Library;
import housewright.operation.PowerOrder;
import housewright.study.Study;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CardsTest {
    private static final Library LIBRARY = BuiltInLibrary.of(1);
    private static final Map<String, Study> STUDIES = studies();

    private static Map<String, Study> studies() {
        Map<String, Study> studies = new LinkedHashMap<>();
        try (InputStream in = CardsTest.class.getResourceAsStream("/housewright/demo/carrowfenn-hall.yaml");
                Stream<Path> examples = Files.list(Path.of("..", "examples"))) {
            studies.put("demo", study(new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8)));
            for (Path example : examples.sorted().toList()) {
                studies.put(example.getFileName().toString(), study(Files.readString(example)));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return studies;
    }

    private static Study study(String yaml) {
        return switch (ProjectReader.read("hall.yaml", yaml.getBytes(StandardCharsets.UTF_8), LIBRARY)) {
            case ReadResult.Loaded loaded -> Study.of(loaded.project(), LIBRARY);
            case ReadResult.Refused refused ->
                throw new AssertionError(refused.errors().toString());
        };
    }

    static Set<String> halls() {
        return STUDIES.keySet();
    }

    private static List<Card> cards(String hall) {
        return Cards.of(Objects.requireNonNull(STUDIES.get(hall)));
    }

    private static List<String> sentences(Card card) {
        List<String> sentences = new ArrayList<>(card.first());
        for (Step step : card.steps()) {
            sentences.add(step.act());
            if (step.see() != null) {
                sentences.add(step.see());
            }
        }
        sentences.addAll(card.cautions());
        return sentences;
    }

    @Test
    void theFormulaGivesThePublishedExample() {
        // 13 words and 24 syllables are an 11.3 (Wikipedia, Flesch–Kincaid readability tests)
        String platypus = "The Australian platypus is seemingly a hybrid of a mammal and reptilian creature.";
        assertThat(Readability.words(platypus)).hasSize(13);
        assertThat(Readability.grade(List.of(platypus))).isGreaterThan(10);
        assertThat(0.39 * 13 + 11.8 * 24 / 13 - 15.59).isCloseTo(11.3, within(0.05));
        assertThat(Readability.grade(List.of("Go on. Go on. Go on."))).isCloseTo(0.39 * 2 + 11.8 - 15.59, within(1e-9));
    }

    @Test
    void countsSyllablesMostlyAsTheDictionaryDoes() {
        long same = Readability.KNOWN.entrySet().stream()
                .filter(each -> Readability.counted(each.getKey()) == each.getValue())
                .count();
        assertThat(Readability.KNOWN).hasSizeGreaterThan(150);
        assertThat((double) same / Readability.KNOWN.size()).isGreaterThan(0.9);
    }

    /** A child of twelve is in grade 6 or 7; each card by itself is held to 6. */
    @ParameterizedTest
    @MethodSource("halls")
    void areReadAtTwelve(String hall) {
        for (Card card : cards(hall)) {
            List<String> sentences = sentences(card);
            if (!sentences.isEmpty()) {
                assertThat(Readability.grade(sentences))
                        .as("%s, %s: %s", hall, card.id(), sentences)
                        .isLessThanOrEqualTo(6);
                for (String each : sentences) {
                    for (String sentence : each.split("(?<=[.?!:]) ")) {
                        assertThat(Readability.words(sentence))
                                .as("a sentence of %s in %s: %s", card.id(), hall, sentence)
                                .hasSizeLessThanOrEqualTo(20);
                    }
                }
            }
        }
    }

    @Test
    void nobodyIsSentToAFaderThatIsNotThere() {
        Study direct = study("""
                housewright: 1
                project: {name: Hall}
                models:
                  talk: {kind: microphone, ports: {out: {out: analog-audio, connector: XLR-3M}}, points: [voice], routes: ["voice -> out:1"]}
                  box: {kind: loudspeaker, ports: {in: {in: analog-audio, connector: XLR-3F}, mains: {in: mains, connector: C14}}, points: [sound], routes: ["in:1 -> sound"]}
                venue: {rooms: {hall: {}}, places: {front: {room: hall}}}
                equipment: {mic: {model: talk, at: front}, speaker: {model: box, at: front}}
                cables: {C1: {from: mic.out, to: speaker.in}}
                feeds: {talk: {from: mic.voice, to: speaker.sound, carries: audio}}
                """);
        List<String> acts = Cards.of(direct).stream()
                .flatMap(card -> card.steps().stream())
                .map(Step::act)
                .filter(act -> act.contains("Is one off?"))
                .toList();
        assertThat(acts)
                .isNotEmpty()
                .allSatisfy(
                        act -> assertThat(act).contains("Turn the sound down.").doesNotContain("fader"));
        assertThat(cards("demo").stream().flatMap(card -> card.steps().stream()).map(Step::act))
                .anyMatch(act -> act.contains("Is one off? Pull the fader down."));
    }

    @ParameterizedTest
    @MethodSource("halls")
    void areToldApart(String hall) {
        Set<String> ids = new HashSet<>();
        for (Card card : cards(hall)) {
            assertThat(ids.add(card.id())).as(card.id()).isTrue();
            assertThat(card.title()).isNotBlank();
            card.tables()
                    .forEach(
                            table -> table.rows().forEach(row -> assertThat(row).hasSameSizeAs(table.heads())));
        }
    }

    @ParameterizedTest
    @MethodSource("halls")
    void startUpNamesEachThingOnceInTheOrderOfTheHallAndShutDownBackwards(String hall) {
        List<String> order = Objects.requireNonNull(STUDIES.get(hall)).operation().order().steps().stream()
                .map(PowerOrder.Step::thing)
                .map(Names::thing)
                .toList();
        List<String> up = named(hall, "start-up");
        List<String> down = named(hall, "shut-down");
        assertThat(up).isEqualTo(order);
        assertThat(down).isEqualTo(order.reversed());
    }

    /** The first thing that each step names; a button for the light is no such thing. */
    private static List<String> named(String hall, String card) {
        Pattern label = Pattern.compile("“([^”]*)”");
        return cards(hall).stream()
                .filter(each -> each.id().startsWith(card))
                .flatMap(each -> each.steps().stream())
                .filter(step -> !step.act().startsWith("Press"))
                .map(step -> label.matcher(step.act())
                        .results()
                        .findFirst()
                        .orElseThrow()
                        .group(1))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("halls")
    void whatNobodyHasSaidIsABlankAndListed(String hall) {
        for (Card card : cards(hall)) {
            boolean blank = card.steps().stream().anyMatch(step -> step.blank() != null)
                    || card.calls().stream().anyMatch(call -> call.person() == null);
            assertThat(card.toFillIn().isEmpty()).as(card.id()).isEqualTo(!blank);
        }
    }

    /** All cables and sockets that the demo's cards name are those of its file. */
    @Test
    void theDemosCardsNameOnlyWhatIsThere() {
        Study demo = Objects.requireNonNull(STUDIES.get("demo"));
        Pattern plug = Pattern.compile("(C\\d{3}|M\\d)( \\([^)]*\\))? in ([a-z0-9 ]+), ([a-z0-9 A-Z]+?)(;|$)");
        Set<String> plugs = new TreeSet<>();
        for (Card card : cards("demo")) {
            for (Card.Lookup table : card.tables()) {
                for (List<String> row : table.rows()) {
                    for (String cell : row) {
                        var found = plug.matcher(cell);
                        while (found.find()) {
                            String id = found.group(1);
                            plugs.add(id);
                            String end = found.group(3) + ", " + found.group(4);
                            assertThat(demo.cabling().findLead(id).orElseThrow().joints())
                                    .as(id)
                                    .anyMatch(joint -> joint.plugs().stream()
                                            .anyMatch(
                                                    each -> each.at().saidPort().equals(end)));
                        }
                    }
                }
            }
        }
        assertThat(plugs).contains("C101", "C304", "C606", "C641");
    }

    /** Where nobody has said how high a point is, it is taken to be out of reach. */
    @Test
    void nobodyClimbsToWhatHangsAtAHeightThatNobodyHasSaid() {
        String hall = """
                housewright: 1
                project: {name: Test hall, library: 1}
                venue: {rooms: {hall: {}}, places: {bar: {room: hall%s}}}
                equipment: {view: {model: display-24-sdi, at: bar}}
                """;
        for (String known : List.of(", hang: {}", ", hang: {}, at: [1 m, 2 m, 4 m]")) {
            Card start = Cards.of(study(hall.formatted(known))).getFirst();
            assertThat(start.cautions()).as(known).anyMatch(text -> text.contains("Do not climb"));
            assertThat(start.steps().getFirst().blank()).as(known).isEqualTo("Its remote");
        }
        Card low = Cards.of(study(hall.formatted(", hang: {}, at: [1 m, 2 m, 1 m]")))
                .getFirst();
        assertThat(low.cautions()).noneMatch(text -> text.contains("Do not climb"));
    }

    @Test
    void aHallWithNothingInItHasNoCards() {
        assertThat(Cards.of(study("housewright: 1\nproject: {name: Empty}\n"))).isEmpty();
    }
}
