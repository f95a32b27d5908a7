package housewright.check.sound;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.model.LocalRef;
import housewright.model.LocalRef.Spot;
import housewright.model.PatchEntry;
import housewright.model.Ref;
import housewright.model.Ref.Address;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.model.change.Change;
import housewright.sound.Patched;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What passes the left side of one pair gets to the right side of the next only, and the other way round. Where one side goes to both it is mono, and no fault.
 */
final class StereoCrossed implements Rule {
    private static final Card CARD = new Card(
            "stereo-crossed",
            "Does the left side of every stereo pair go on by the left side of the next?",
            Set.of(Severity.FIX),
            new Source.TheProject(),
            Stage.DESIGN);

    private record Pair(String name, Address left, Address right, Set<Address> fromLeft, Set<Address> fromRight) {
        boolean isOther(Pair pair) {
            return !name.equals(pair.name);
        }

        boolean leadsTo(Pair other) {
            return fromLeft.contains(other.left)
                    || fromLeft.contains(other.right)
                    || fromRight.contains(other.left)
                    || fromRight.contains(other.right);
        }

        boolean crossedWith(Pair other) {
            return fromLeft.contains(other.right)
                    && fromRight.contains(other.left)
                    && !fromLeft.contains(other.left)
                    && !fromRight.contains(other.right);
        }
    }

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        List<Pair> pairs = new ArrayList<>();
        for (Map.Entry<String, List<Ref>> each : evidence.project().pairs().entrySet()) {
            List<Address> sides = each.getValue().stream()
                    .flatMap(ref -> ref.addresses().stream())
                    .toList();
            if (sides.size() == 2 && evidence.project().pairs().size() > 1) {
                pairs.add(new Pair(
                        each.getKey(),
                        sides.getFirst(),
                        sides.getLast(),
                        evidence.signals().reach(sides.getFirst()),
                        evidence.signals().reach(sides.getLast())));
            }
        }
        List<Finding> findings = new ArrayList<>();
        for (Pair from : pairs) {
            for (Pair to : pairs) {
                boolean next = pairs.stream()
                        .filter(between -> between.isOther(from) && between.isOther(to))
                        .noneMatch(between -> from.leadsTo(between) && between.leadsTo(to));
                if (from.isOther(to) && next && from.crossedWith(to)) {
                    findings.add(finding(evidence, from, to));
                }
            }
        }
        return findings.stream();
    }

    private static Finding finding(Evidence evidence, Pair from, Pair to) {
        return CARD.finding(
                Severity.FIX,
                List.of(
                        Subject.equipment(to.left().thing()),
                        Subject.equipment(from.left().thing())),
                "Left and right are swapped between the pairs " + Words.said(from.name()) + " and "
                        + Words.said(to.name()) + ": " + from.left().said() + " arrives at "
                        + to.right().said() + ".",
                List.of(),
                List.of(fix(evidence, from, to)));
    }

    /** The first device in which both sides are patched on their ways: there they change over. */
    private static Fix fix(Evidence evidence, Pair from, Pair to) {
        List<Patched> left = new ArrayList<>();
        List<Patched> right = new ArrayList<>();
        for (Patched each : evidence.sound().patched()) {
            Address at = new Address(each.device(), each.from());
            boolean fromLeft = at.equals(from.left()) || from.fromLeft().contains(at);
            boolean fromRight = at.equals(from.right()) || from.fromRight().contains(at);
            if (fromLeft && !fromRight && leads(evidence, each, to.right())) {
                left.add(each);
            } else if (fromRight && !fromLeft && leads(evidence, each, to.left())) {
                right.add(each);
            }
        }
        for (Patched one : left.reversed()) {
            for (Patched other : right.reversed()) {
                if (one.device().equals(other.device())) {
                    return new Fix(
                            "Patch " + one.from() + " to " + other.to() + " and " + other.from() + " to " + one.to()
                                    + " in " + Words.said(one.device()) + ".",
                            List.of(
                                    new Change.Unpatch(one.device(), one.from(), one.to()),
                                    new Change.Unpatch(other.device(), other.from(), other.to()),
                                    patch(one, other.to()),
                                    patch(other, one.to())));
                }
            }
        }
        return Fix.of("Swap the two cables between them.");
    }

    private static boolean leads(Evidence evidence, Patched patched, Address wanted) {
        Address to = new Address(patched.device(), patched.to());
        return to.equals(wanted) || evidence.signals().reach(to).contains(wanted);
    }

    private static Change patch(Patched set, Spot to) {
        PatchEntry old = set.entry();
        return new Change.Patch(
                set.device(),
                new PatchEntry(
                        new LocalRef(set.from().toString()),
                        List.of(new LocalRef(to.toString())),
                        old.tap(),
                        old.gain(),
                        old.delay(),
                        old.life(),
                        old.note()));
    }
}
