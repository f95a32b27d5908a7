package housewright.check.light;

import housewright.cable.Chain;
import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.finding.Value;
import housewright.light.DmxLine;
import housewright.light.Lights;
import housewright.light.Receiver;
import housewright.model.Stage;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Fixtures that no controller reaches: on no line, on a line into which nothing sends, or into which another universe is
 * sent. What a feed to them says is not said twice.
 */
public final class UniverseNotFed implements Rule {
    private static final Card CARD = new Card(
            "universe-not-fed",
            "Does the universe of every fixture arrive on its line?",
            Set.of(Severity.FIX),
            new Source.TheProject(),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        Lights lights = evidence.lights();
        Set<String> told = Reached.missedAsLight(evidence);
        List<String> loose = new ArrayList<>();
        Set<String> after = new LinkedHashSet<>();
        Set<Chain> begun = Collections.newSetFromMap(new IdentityHashMap<>());
        for (Receiver each : lights.receivers()) {
            if (!Lights.takesDmx(each) || lights.findLine(each.id()).isPresent()) {
                continue;
            }
            List<DmxLine> on = lights.lines().stream()
                    .filter(line -> !line.fed() && each.id().equals(beginsAt(line)))
                    .toList();
            on.forEach(line -> begun.add(line.chain())); // what hangs on it is told with it
            List<String> behind =
                    on.stream().flatMap(line -> fixtures(lights, line).stream()).toList();
            if (!told.contains(each.id()) && behind.stream().noneMatch(told::contains)) {
                loose.add(each.id());
                after.addAll(behind);
            }
        }
        List<Finding> findings = new ArrayList<>();
        if (!loose.isEmpty()) {
            List<String> dark = new ArrayList<>(loose);
            dark.addAll(after);
            findings.add(CARD.finding(
                    Severity.FIX,
                    Said.equipment(dark),
                    "No DMX cable ends in " + Said.things(loose) + ": " + (loose.size() == 1 ? "it stays" : "they stay")
                            + " dark"
                            + (after.isEmpty()
                                    ? "."
                                    : ", and so " + (after.size() == 1 ? "does " : "do ") + Said.things(after)
                                            + " further on."),
                    List.of(new Value("fixtures without a line", dark.size(), 0.0, "")),
                    List.of(Fix.of("Draw the cable from the fixture before it, or from a node or a splitter."))));
        }
        for (DmxLine line : lights.lines()) {
            if (!begun.contains(line.chain())) {
                check(lights, line, told, findings);
            }
        }
        return findings.stream();
    }

    private static @Nullable String beginsAt(DmxLine line) {
        return line.source() == null ? null : line.source().at().thing();
    }

    private static List<String> fixtures(Lights lights, DmxLine line) {
        return line.loads().stream()
                .filter(each -> lights.findReceiver(each).isPresent())
                .toList();
    }

    private static void check(Lights lights, DmxLine line, Set<String> told, List<Finding> findings) {
        List<String> fixtures = fixtures(lights, line);
        if (fixtures.isEmpty()) {
            return;
        }
        String begin =
                line.source() == null ? "a loose end" : line.source().at().saidPort();
        if (!line.fed()) {
            if (fixtures.stream().anyMatch(told::contains)) {
                return; // a feed to one of them says where it stops, and what mends that feeds the whole line
            }
            findings.add(CARD.finding(
                    Severity.FIX,
                    subjects(line, fixtures),
                    "The line from " + begin + " leads to " + Said.things(fixtures) + ", and nothing sends into it.",
                    List.of(new Value("fixtures on the line", fixtures.size(), null, "")),
                    List.of(Fix.of("Join it to a controller: by cable, or by a network-send of the universe to its"
                            + " node."))));
            return;
        }
        if (line.universes().isEmpty()) {
            return;
        }
        List<String> wrong = new ArrayList<>();
        Integer said = null;
        for (String each : fixtures) {
            Integer universe = lights.findReceiver(each).orElseThrow().universe();
            if (universe != null && !line.universes().contains(universe)) {
                wrong.add(each);
                said = said == null ? universe : said;
            }
        }
        if (!wrong.isEmpty() && said != null) {
            String sent =
                    Said.some(line.universes().stream().map(String::valueOf).toList());
            findings.add(CARD.finding(
                    Severity.FIX,
                    subjects(line, wrong),
                    "Universe " + sent + " is sent into the line from " + begin + ", and " + Said.things(wrong) + " "
                            + Said.be(wrong.size()) + " set to universe " + said + ".",
                    List.of(),
                    List.of(Fix.of("Send universe " + said
                            + " to that socket, or plug the fixtures into a line that has" + " it."))));
        }
    }

    private static List<Subject> subjects(DmxLine line, List<String> fixtures) {
        List<Subject> subjects = new ArrayList<>(Said.equipment(fixtures));
        if (line.source() != null) {
            subjects.add(Subject.equipment(line.source().at().thing()));
        }
        return subjects;
    }
}
