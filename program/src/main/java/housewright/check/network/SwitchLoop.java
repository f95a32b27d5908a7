package housewright.check.network;

import housewright.cable.Lead;
import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.model.change.Change;
import housewright.model.change.Section;
import housewright.network.Link;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * A second way between switches that are joined already: a packet goes round for ever, and the network stands still.
 * Where a cable of it has a note somebody has thought of it.
 */
public final class SwitchLoop implements Rule {
    private static final Card CARD = new Card(
            "switch-loop",
            "Is there one way only between any two switches?",
            Set.of(Severity.FIX),
            new Source.CommonPractice(),
            Stage.DESIGN);

    private record Side(String thing, int vlan) {}

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        List<Link> between = new ArrayList<>();
        List<Link> noted = new ArrayList<>();
        for (Link link : evidence.networks().links()) {
            if (link.joinsSwitches()) {
                (isNoted(link) ? noted : between).add(link);
            }
        }
        Map<Side, Side> parents = new HashMap<>();
        Map<Link, Set<Integer>> closing = new LinkedHashMap<>();
        for (Link link : between) {
            for (int vlan : evidence.networks().vlans(link)) {
                Side one = top(parents, new Side(link.one().at().thing(), vlan));
                Side other = top(parents, new Side(link.other().at().thing(), vlan));
                if (one.equals(other)) {
                    closing.computeIfAbsent(link, key -> new TreeSet<>()).add(vlan);
                } else {
                    parents.put(other, one);
                }
            }
        }
        return closing.entrySet().stream().map(each -> finding(evidence, each.getKey(), each.getValue()));
    }

    private static boolean isNoted(Link link) {
        return link.line().leads().stream()
                .anyMatch(lead -> lead.cable().remarks().note() != null);
    }

    private static Side top(Map<Side, Side> parents, Side side) {
        Side top = side;
        while (parents.containsKey(top)) {
            top = parents.get(top);
        }
        return top;
    }

    private static Finding finding(Evidence evidence, Link link, Set<Integer> vlans) {
        List<Subject> subjects = new ArrayList<>(Said.cables(link));
        subjects.add(Subject.equipment(link.one().at().thing()));
        subjects.add(Subject.equipment(link.other().at().thing()));
        Lead first = link.line().leads().getFirst();
        String one = Words.said(link.one().at().thing());
        String other = Words.said(link.other().at().thing());
        String joins =
                one.equals(other) ? "joins " + one + " to itself" : "is a second way between " + one + " and " + other;
        List<Change> changes = evidence.moment().isDone("cables", first.id())
                ? List.of(new Change.Drop(Section.CABLES, first.id()))
                : List.of();
        return CARD.finding(
                Severity.FIX,
                subjects,
                link.said() + " " + joins + " in VLAN "
                        + Said.some(vlans.stream().map(String::valueOf).toList(), 4)
                        + ": packets go round in it and the network stands still.",
                List.of(),
                List.of(
                        new Fix("Take " + first.id() + " out.", changes),
                        Fix.of("Or switch on spanning tree in both switches, and say so in the cable's note.")));
    }
}
