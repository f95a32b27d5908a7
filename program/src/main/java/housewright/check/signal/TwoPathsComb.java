package housewright.check.signal;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.finding.Value;
import housewright.model.Carries;
import housewright.model.Equipment;
import housewright.model.Kind;
import housewright.model.Ref.Address;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.signal.FeedProof;
import housewright.signal.Hop;
import housewright.signal.Media;
import housewright.signal.OtherPath;
import housewright.signal.PairProof;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The same sound summed with itself a little later. Two equal copies t apart cancel at 1/(2t) and every 1/t above: a
 * comb. With the later one 10 dB down or up the ripple is still 20·log((1 + 0.316)/(1 − 0.316)) = 5.7 dB; beyond that
 * it is mostly lost among all else that colours a sound. A copy 0.1 ms later cancels first at 5 kHz; closer ones only
 * soften the very top. From 40 ms on the ear hears it apart, as an echo. Where the second way leads through an effects
 * unit the delay may be wanted (and the copy be changed beyond combing), so that is a note.
 */
public final class TwoPathsComb implements Rule {
    static final Limit LATER = Limit.most("one way later than the other", 0.1, "ms");
    static final Limit APART = Limit.least("or else one way louder than the other", 10, "dB");
    static final double ECHO_MS = 40;

    private static final Card CARD = new Card(
            "two-paths-comb",
            "Does any sound meet itself a little later, so that it comes out hollow or as an echo?",
            Set.of(Severity.FIX, Severity.NOTE),
            new Source.CommonPractice(),
            Stage.DESIGN,
            List.of(LATER, APART));

    /** Where two ways meet, and by what; whatever comes by both shows the same fault. */
    private record Meeting(Address at, Address first, Address other) {}

    private record Met(PairProof pair, OtherPath other, boolean effect, Set<String> feeds) {}

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        double most = evidence.limit(CARD, LATER);
        Map<Meeting, Met> meetings = new LinkedHashMap<>();
        for (FeedProof proof : evidence.signals().proofs()) {
            if (proof.feed().never()) {
                continue;
            }
            for (PairProof pair : proof.pairs()) {
                for (OtherPath other : pair.others()) {
                    if (colours(other, most) && isSound(evidence, proof, other)) {
                        Meeting meeting = new Meeting(
                                other.meetsAt(),
                                before(pair, other.meetsAt()),
                                other.hops().getLast().from());
                        meetings.computeIfAbsent(
                                        meeting,
                                        at -> new Met(
                                                pair, other, byEffect(evidence, pair, other), new LinkedHashSet<>()))
                                .feeds()
                                .add(proof.feed().id());
                    }
                }
            }
        }
        return meetings.values().stream().map(met -> finding(met, most));
    }

    private static boolean colours(OtherPath other, double most) {
        return Math.abs(other.laterNanos()) / 1e6 >= most && Math.abs(other.louderDb()) <= APART.value();
    }

    private static Finding finding(Met met, double most) {
        OtherPath other = met.other();
        double later = Math.abs(other.laterNanos()) / 1e6; // a feed through a certain place may come by the slower way
        List<Subject> subjects = new ArrayList<>();
        met.feeds().forEach(feed -> subjects.add(Subject.feed(feed)));
        subjects.add(Subject.at(other.hops().getLast().cause().entity()));
        String first = met.feeds().iterator().next();
        String all =
                met.feeds().size() == 1 ? first : first + " and " + (met.feeds().size() - 1) + " more";
        String heard = later < ECHO_MS
                ? String.format(Locale.ROOT, "a comb whose first gap is at %.0f Hz", 500 / later)
                : "an echo";
        String message = String.format(
                Locale.ROOT,
                "%s: the sound meets itself at %s %.1f ms later, by way of %s: %s.",
                all,
                other.meetsAt().said(),
                later,
                Words.said(way(met.pair(), other)),
                heard);
        Fix fix = Fix.of("Keep one of the two ways, or delay the quicker one by the difference.");
        return CARD.finding(
                met.effect() ? Severity.NOTE : Severity.FIX,
                subjects,
                message,
                List.of(
                        new Value("later by", later, most, "ms"),
                        new Value("louder by", other.louderDb(), APART.value(), "dB")),
                List.of(fix));
    }

    /** Where the quicker way comes from. */
    private static Address before(PairProof pair, Address meetsAt) {
        for (Hop hop : pair.hops()) {
            if (hop.to().equals(meetsAt)) {
                return hop.from();
            }
        }
        return meetsAt;
    }

    /** The last thing that only the later way passes, or the last point of it where it is all inside one. */
    private static String way(PairProof pair, OtherPath other) {
        Set<String> own = things(pair.hops());
        for (Hop hop : other.hops().reversed()) {
            if (!own.contains(hop.from().thing())) {
                return hop.from().thing();
            }
        }
        return other.hops().getLast().from().spot().toString();
    }

    private static Set<String> things(List<Hop> hops) {
        Set<String> things = new LinkedHashSet<>();
        hops.forEach(hop -> things.add(hop.from().thing()));
        return things;
    }

    private static boolean isSound(Evidence evidence, FeedProof proof, OtherPath other) {
        Carries carries = proof.feed().carries();
        if (carries != null) {
            return carries == Carries.AUDIO;
        }
        return other.hops().stream()
                .flatMap(hop -> evidence.signals().findMedia(hop.to()).stream())
                .allMatch(media -> media == Media.AUDIO);
    }

    /** The later way leads through a processor that the quicker one does not pass. */
    private static boolean byEffect(Evidence evidence, PairProof pair, OtherPath other) {
        Set<String> own = things(pair.hops());
        return other.hops().stream()
                .map(hop -> hop.from().thing())
                .filter(thing -> !own.contains(thing))
                .anyMatch(thing -> isProcessor(evidence, thing));
    }

    private static boolean isProcessor(Evidence evidence, String thing) {
        Equipment equipment = evidence.project().equipment().get(thing);
        return equipment != null
                && evidence.types()
                        .findModel(equipment.model())
                        .filter(model -> model.kind() == Kind.PROCESSOR)
                        .isPresent();
    }
}
