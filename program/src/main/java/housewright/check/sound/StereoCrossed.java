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
import housewright.model.Ref.Address;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.model.change.Change;
import housewright.sound.Patched;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
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
        Map<String, List<Address>> both = new LinkedHashMap<>();
        Set<Address> all = new HashSet<>();
        evidence.project().pairs().forEach((name, refs) -> {
            List<Address> sides =
                    refs.stream().flatMap(ref -> ref.addresses().stream()).toList();
            if (sides.size() == 2) {
                both.put(name, sides);
                all.addAll(sides);
            }
        });
        List<Pair> pairs = new ArrayList<>();
        if (both.size() > 1) {
            both.forEach((name, sides) -> {
                Address left = sides.getFirst();
                Address right = sides.getLast();
                pairs.add(new Pair(name, left, right, among(evidence, left, all), among(evidence, right, all)));
            });
        }
        List<Finding> findings = new ArrayList<>();
        for (Pair from : pairs) {
            for (Pair to : pairs) {
                if (from.isOther(to) && from.crossedWith(to) && isNext(from, to, pairs)) {
                    findings.add(finding(evidence, from, to));
                }
            }
        }
        return findings.stream();
    }

    /** No other pair lies on the way. */
    private static boolean isNext(Pair from, Pair to, List<Pair> pairs) {
        return pairs.stream()
                .filter(between -> between.isOther(from) && between.isOther(to))
                .noneMatch(between -> from.leadsTo(between) && between.leadsTo(to));
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

    private static Set<Address> among(Evidence evidence, Address from, Set<Address> all) {
        Set<Address> reached = new HashSet<>();
        evidence.signals().reaches(from, at -> {
            if (all.contains(at)) {
                reached.add(at);
            }
            return false;
        });
        return reached;
    }

    /** The last device in which both sides are patched on their ways: there they change over. */
    private static Fix fix(Evidence evidence, Pair from, Pair to) {
        List<Patched> left = new ArrayList<>();
        List<Patched> right = new ArrayList<>();
        for (Patched each : evidence.sound().patched()) {
            Address at = new Address(each.device(), each.from());
            if (leads(evidence, from.left(), at) && leads(evidence, to(each), to.right())) {
                left.add(each);
            } else if (leads(evidence, from.right(), at) && leads(evidence, to(each), to.left())) {
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

    private static Address to(Patched patched) {
        return new Address(patched.device(), patched.to());
    }

    private static boolean leads(Evidence evidence, Address from, Address wanted) {
        return from.equals(wanted) || evidence.signals().reaches(from, wanted::equals);
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
