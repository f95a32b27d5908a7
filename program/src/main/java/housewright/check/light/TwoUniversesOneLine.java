package housewright.check.light;

import housewright.cable.Plug;
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
import housewright.model.Kind;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.model.change.Change;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** Fixtures on one line, or behind one splitter, that are set to different universes: a line carries one. */
public final class TwoUniversesOneLine implements Rule {
    private static final Card CARD = new Card(
            "two-universes-one-line",
            "Are all fixtures on one line of DMX set to the same universe?",
            Set.of(Severity.FIX),
            new Source.Published("ANSI E1.11 (DMX512-A), as quoted", "one line carries 512 slots"),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        Lights lights = evidence.lights();
        Map<String, Map<Integer, List<String>>> byRoot = new LinkedHashMap<>();
        for (DmxLine line : lights.lines()) {
            Plug source = line.source();
            if (source == null) {
                continue;
            }
            boolean split = source.model() != null && source.model().kind() == Kind.DMX_SPLITTER;
            String root = split ? source.at().thing() : source.socket();
            for (String load : line.loads()) {
                Integer universe =
                        lights.findReceiver(load).map(Receiver::universe).orElse(null);
                if (universe != null) {
                    byRoot.computeIfAbsent(root, key -> new LinkedHashMap<>())
                            .computeIfAbsent(universe, key -> new ArrayList<>())
                            .add(load);
                }
            }
        }
        List<Finding> findings = new ArrayList<>();
        byRoot.forEach((root, universes) -> {
            if (universes.size() > 1) {
                findings.add(finding(evidence, root, universes));
            }
        });
        return findings.stream();
    }

    private static Finding finding(Evidence evidence, String root, Map<Integer, List<String>> universes) {
        int most = universes.entrySet().stream()
                .max(Comparator.comparingInt(each -> each.getValue().size()))
                .orElseThrow()
                .getKey();
        List<String> odd = new ArrayList<>();
        List<String> each = new ArrayList<>();
        universes.forEach((universe, things) -> {
            each.add(universe + " (" + Said.things(things) + ")");
            if (universe != most) {
                odd.addAll(things);
            }
        });
        int dot = root.indexOf('.');
        String thing = dot < 0 ? root : root.substring(0, dot);
        List<Change> changes = new ArrayList<>();
        for (String id : odd) {
            Receiver receiver = evidence.lights().findReceiver(id).orElseThrow();
            changes.add(Addresses.put(evidence, receiver, most, receiver.address()));
        }
        List<Subject> subjects = new ArrayList<>(Said.equipment(odd));
        subjects.add(Subject.equipment(thing));
        return CARD.finding(
                Severity.FIX,
                subjects,
                "One line from " + Words.said(thing) + " has fixtures of universes " + Said.some(each)
                        + "; it carries one universe, so the others hear channels that are not theirs.",
                List.of(new Value("universes on the line", universes.size(), 1.0, "")),
                List.of(
                        new Fix(
                                "Write universe " + most + " for " + Said.things(odd) + " too; look for clashes then.",
                                changes),
                        Fix.of("Or give the others a line of their own from a socket that sends their universe.")));
    }
}
