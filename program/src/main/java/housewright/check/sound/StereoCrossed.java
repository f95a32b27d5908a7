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
import housewright.signal.Cause;
import housewright.signal.FeedProof;
import housewright.signal.Hop;
import housewright.signal.PairProof;
import housewright.sound.Patched;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What passes the left side of one pair goes on by the right side of the next, and the other way round, on every way
 * that is known. Where one side goes to both it is mono, and no fault.
 */
final class StereoCrossed implements Rule {
    private static final Card CARD = new Card(
            "stereo-crossed",
            "Does the left side of every stereo pair go on by the left side of the next?",
            Set.of(Severity.FIX),
            new Source.TheProject(),
            Stage.DESIGN);

    private record Side(String pair, boolean left, Address at) {}

    private record Next(String from, String to) {}

    /** How the sides of two pairs are joined; the way of each that goes over. */
    private static final class Joined {
        boolean straight;

        @Nullable
        List<Hop> leftOver;

        @Nullable
        List<Hop> rightOver;
    }

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        Map<Address, Side> sides = new HashMap<>();
        evidence.project().pairs().forEach((name, refs) -> {
            List<Address> both =
                    refs.stream().map(Ref::addresses).flatMap(List::stream).toList();
            if (both.size() == 2) {
                sides.putIfAbsent(both.getFirst(), new Side(name, true, both.getFirst()));
                sides.putIfAbsent(both.getLast(), new Side(name, false, both.getLast()));
            }
        });
        if (sides.size() < 4) {
            return Stream.empty();
        }
        Map<Next, Joined> joined = new LinkedHashMap<>();
        for (FeedProof proof : evidence.signals().proofs()) {
            for (PairProof pair : proof.pairs()) {
                follow(pair.hops(), sides, joined);
            }
        }
        return joined.entrySet().stream()
                .filter(each -> !each.getValue().straight
                        && each.getValue().leftOver != null
                        && each.getValue().rightOver != null)
                .map(each -> finding(evidence, each.getKey(), each.getValue().leftOver, each.getValue().rightOver));
    }

    private static void follow(List<Hop> hops, Map<Address, Side> sides, Map<Next, Joined> joined) {
        Side last = null;
        int since = 0;
        for (int i = 0; i < hops.size(); i++) {
            Side side = sides.get(hops.get(i).to());
            if (side == null || (last != null && side.pair().equals(last.pair()))) {
                continue;
            }
            if (last != null) {
                Joined own = joined.computeIfAbsent(new Next(last.pair(), side.pair()), key -> new Joined());
                List<Hop> way = hops.subList(since + 1, i + 1);
                if (last.left() == side.left()) {
                    own.straight = true;
                } else if (last.left()) {
                    own.leftOver = own.leftOver == null ? way : own.leftOver;
                } else {
                    own.rightOver = own.rightOver == null ? way : own.rightOver;
                }
            }
            last = side;
            since = i;
        }
    }

    private static Finding finding(Evidence evidence, Next next, @Nullable List<Hop> left, @Nullable List<Hop> right) {
        List<Hop> leftWay = left == null ? List.of() : left;
        List<Hop> rightWay = right == null ? List.of() : right;
        List<Subject> subjects = new ArrayList<>();
        for (Hop hop : leftWay) {
            Subject subject = Subject.at(hop.cause().entity());
            if (!subjects.contains(subject)) {
                subjects.add(subject);
            }
        }
        String where = leftWay.getLast().to().said();
        return CARD.finding(
                Severity.FIX,
                subjects,
                "Left and right are swapped between the pairs " + Words.said(next.from()) + " and "
                        + Words.said(next.to()) + ": the left one arrives at " + where + ".",
                List.of(),
                List.of(fix(evidence, leftWay, rightWay)));
    }

    /** The first place where both ways are patched in one device: there they change over. */
    private static Fix fix(Evidence evidence, List<Hop> left, List<Hop> right) {
        for (Hop one : left) {
            for (Hop other : right) {
                if (one.cause() instanceof Cause.ByPatch a
                        && other.cause() instanceof Cause.ByPatch b
                        && a.equipment().equals(b.equipment())) {
                    List<Change> changes = new ArrayList<>();
                    changes.add(new Change.Unpatch(a.equipment(), a.from(), a.to()));
                    changes.add(new Change.Unpatch(b.equipment(), b.from(), b.to()));
                    changes.add(patch(evidence, a, b.to()));
                    changes.add(patch(evidence, b, a.to()));
                    return new Fix(
                            "Patch " + a.from() + " to " + b.to() + " and " + b.from() + " to " + a.to() + " in "
                                    + Words.said(a.equipment()) + ".",
                            changes);
                }
            }
        }
        return Fix.of("Swap the two cables between them.");
    }

    private static Change patch(Evidence evidence, Cause.ByPatch set, Spot to) {
        PatchEntry old = evidence.sound().patched().stream()
                .filter(each -> each.device().equals(set.equipment())
                        && each.from().equals(set.from())
                        && each.to().equals(set.to()))
                .map(Patched::entry)
                .findFirst()
                .orElse(null);
        return new Change.Patch(
                set.equipment(),
                new PatchEntry(
                        new LocalRef(set.from().toString()),
                        List.of(new LocalRef(to.toString())),
                        old == null ? null : old.tap(),
                        old == null ? null : old.gain(),
                        old == null ? null : old.delay(),
                        old == null ? null : old.life(),
                        old == null ? null : old.note()));
    }
}
