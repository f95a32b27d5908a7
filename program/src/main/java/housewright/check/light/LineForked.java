package housewright.check.light;

import housewright.cable.Joint;
import housewright.cable.Lead;
import housewright.cable.Plug;
import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.finding.Value;
import housewright.model.Signal;
import housewright.model.Stage;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** DMX through a lead that forks: half of the line reflects into the other half, and two senders talk at once. */
public final class LineForked implements Rule {
    private static final Card CARD = new Card(
            "dmx-line-forked",
            "Does DMX go from one socket to one socket, and fork in splitters only?",
            Set.of(Severity.FIX),
            new Source.Published("Trade notes on DMX512", "no Y leads; a stub of 0.3 m at most"),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        List<Finding> findings = new ArrayList<>();
        for (Lead lead : evidence.cabling().leads()) {
            if (lead.joints().size() < 2) {
                continue;
            }
            Map<String, List<Joint>> bySocket = new LinkedHashMap<>();
            for (Joint joint : lead.joints()) {
                for (Plug plug : joint.plugs()) {
                    if (plug.port() != null && plug.port().signal() == Signal.DMX) {
                        bySocket.computeIfAbsent(plug.socket(), key -> new ArrayList<>(1))
                                .add(joint);
                    }
                }
            }
            bySocket.values().stream()
                    .filter(joints -> joints.size() > 1)
                    .findFirst()
                    .ifPresent(joints -> findings.add(finding(lead, joints)));
        }
        return findings.stream();
    }

    private static Finding finding(Lead lead, List<Joint> joints) {
        Set<Subject> things = new LinkedHashSet<>();
        Set<String> sources = new LinkedHashSet<>();
        for (Joint joint : joints) {
            for (Plug plug : joint.plugs()) {
                things.add(Subject.equipment(plug.at().thing()));
                if (plug.port() != null && plug.port().out() == Signal.DMX) {
                    sources.add(plug.at().saidPort());
                }
            }
        }
        boolean merges = sources.size() > 1;
        return CARD.finding(
                Severity.FIX,
                Said.subjects(Subject.cable(lead.id()), things),
                lead.id()
                        + (merges
                                ? " puts " + Said.some(List.copyOf(sources))
                                        + " together on one line: both send at once, and" + " what arrives is neither."
                                : " forks the line from " + Said.some(List.copyOf(sources)) + " in " + joints.size()
                                        + ": the branches reflect into each other, and lamps flicker."),
                List.of(new Value("ways on one socket", joints.size(), 1.0, "")),
                List.of(Fix.of(
                        merges
                                ? "Put a merger in between, and decide which of the two wins."
                                : "Run from fixture to fixture instead, or put an isolated splitter in.")));
    }
}
