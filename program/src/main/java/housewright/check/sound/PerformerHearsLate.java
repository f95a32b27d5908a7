package housewright.check.sound;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.finding.Value;
import housewright.model.Kind;
import housewright.model.Place;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.signal.FeedProof;
import housewright.signal.PairProof;
import housewright.sound.Fill;
import housewright.sound.Sound;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A voice that comes back late to whoever speaks or sings: in his own ears, where bone conduction gives the undelayed
 * one, from 5 to 10 ms on; from a loudspeaker in the same room from 15 to 30 ms on. Fill loudspeakers are late on
 * purpose.
 */
final class PerformerHearsLate implements Rule {
    static final Limit EARS = Limit.most("from a microphone to its performer's own ears", 10, "ms");
    static final Limit ROOM = Limit.most("from a microphone to a loudspeaker in the same room", 30, "ms");

    private static final Card CARD = new Card(
            "performer-hears-late",
            "Does everybody hear their own voice soon enough to speak and sing by it?",
            Set.of(Severity.FIX),
            new Source.Published(
                    "churchproduction.com on latency", "performers feel 5 to 10 ms, listeners notice 15 to 30 ms"),
            Stage.DESIGN,
            List.of(EARS, ROOM));

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        double ears = evidence.limit(CARD, EARS);
        Set<String> fills = new HashSet<>();
        for (Fill fill : evidence.sound().fills()) {
            fills.add(fill.fill());
        }
        List<Finding> findings = new ArrayList<>();
        for (FeedProof proof : evidence.signals().proofs()) {
            PairProof worst = null;
            double limit = 0;
            int late = 0;
            for (PairProof pair : proof.feed().never() ? List.<PairProof>of() : proof.pairs()) {
                Double allowed = allowed(evidence, pair, fills, ears);
                if (allowed != null && pair.delayNanos() / 1e6 > allowed) {
                    late++;
                    if (worst == null || pair.delayNanos() / allowed > worst.delayNanos() / limit) {
                        worst = pair;
                        limit = allowed;
                    }
                }
            }
            if (worst != null) {
                findings.add(finding(proof, worst, limit, late));
            }
        }
        return findings.stream();
    }

    /** The limit for this pair; null where it is nobody's own voice. */
    private static @Nullable Double allowed(Evidence evidence, PairProof pair, Set<String> fills, double ears) {
        Sound sound = evidence.sound();
        String mic = pair.from().thing();
        String heard = pair.to().thing();
        if (pair.hops().isEmpty()
                || !pair.from().spot().name().startsWith("pickup")
                || !sound.isKind(mic, Kind.MICROPHONE, Kind.RADIO_TRANSMITTER)) {
            return null;
        }
        Place at = place(evidence, mic);
        Place there = place(evidence, heard);
        if (at == null || there == null) {
            return null;
        }
        if (sound.isKind(heard, Kind.HEADPHONES)) {
            return at.id().equals(there.id()) ? ears : null;
        }
        boolean sameRoom = at.room() != null && at.room().equals(there.room());
        return sameRoom && sound.isKind(heard, Kind.LOUDSPEAKER) && !fills.contains(heard) ? ROOM.value() : null;
    }

    private static @Nullable Place place(Evidence evidence, String thing) {
        return evidence.sound()
                .findThing(thing)
                .map(each -> each.at())
                .map(at -> evidence.project().venue().places().get(at))
                .orElse(null);
    }

    private static Finding finding(FeedProof proof, PairProof worst, double limit, int late) {
        double ms = worst.delayNanos() / 1e6;
        String more =
                late == 1 ? "" : " (and " + (late - 1) + (late == 2 ? " more way is late)" : " more ways are late)");
        return CARD.finding(
                Severity.FIX,
                List.of(
                        Subject.feed(proof.feed().id()),
                        Subject.equipment(worst.from().thing()),
                        Subject.equipment(worst.to().thing())),
                String.format(
                        Locale.ROOT,
                        "%s comes back from %s %.1f ms late%s; beyond %s ms it throws off whoever speaks or sings.",
                        Words.said(worst.from().thing()),
                        Words.said(worst.to().thing()),
                        ms,
                        more,
                        GainEdit.number(limit)),
                List.of(new Value("delay", ms, limit, "ms")),
                List.of(Fix.of("Take a shorter way to " + Words.said(worst.to().thing())
                        + ", with fewer devices that convert, or without the delay that is set on it.")));
    }
}
