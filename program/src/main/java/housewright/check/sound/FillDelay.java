package housewright.check.sound;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.finding.Value;
import housewright.model.LocalRef;
import housewright.model.PatchEntry;
import housewright.model.Ref.Address;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.model.change.Change;
import housewright.signal.Cause;
import housewright.signal.Hop;
import housewright.sound.Fill;
import housewright.sound.Patched;
import housewright.unit.Delay;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A fill loudspeaker must wait for the sound of the main one to come to it through the air, and some 10 ms more, so that
 * the ear still hears the platform. Sound makes 343.2 m/s at 20 degrees (331.3 times the root of 1 + T/273.15). Earlier,
 * it draws the ear to the wall; 40 to 50 ms later, it is an echo; some of that is left for seats further back.
 */
final class FillDelay implements Rule {
    static final Limit BEFORE = Limit.most("fill before the main loudspeaker's sound", 3, "ms");
    static final Limit AFTER = Limit.most("fill after the main loudspeaker's sound", 30, "ms");
    static final double WANTED_MS = 10;

    private static final Card CARD = new Card(
            "fill-delay",
            "Does every loudspeaker further back wait for the sound from the front?",
            Set.of(Severity.FIX),
            new Source.CommonPractice(),
            Stage.DESIGN,
            List.of(BEFORE, AFTER));

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        double before = evidence.limit(CARD, BEFORE);
        return evidence.sound().fills().stream()
                .filter(fill -> fill.behindMs() < -before || fill.behindMs() > AFTER.value())
                .map(fill -> finding(evidence, fill, before));
    }

    private static Finding finding(Evidence evidence, Fill fill, double before) {
        boolean early = fill.behindMs() < 0;
        String message = String.format(
                Locale.ROOT,
                "%s is heard %.1f ms %s %s: it is %.1f m further back, which sound takes %.1f ms for, and %s.",
                Words.said(fill.fill()),
                Math.abs(fill.behindMs()),
                early ? "before" : "after",
                Words.said(fill.main()),
                fill.metres(),
                fill.airMs(),
                plays(fill.laterMs()));
        return CARD.finding(
                Severity.FIX,
                List.of(Subject.equipment(fill.fill()), Subject.equipment(fill.main())),
                message,
                List.of(
                        new Value(
                                early ? "fill before the main" : "fill after the main",
                                Math.abs(fill.behindMs()),
                                early ? before : AFTER.value(),
                                "ms"),
                        new Value("way through the air", fill.airMs(), null, "ms")),
                List.of(fix(evidence, fill)));
    }

    private static String plays(double laterMs) {
        return Math.abs(laterMs) < 0.05
                ? "it plays no later"
                : String.format(
                        Locale.ROOT, "it plays %.1f ms %s", Math.abs(laterMs), laterMs < 0 ? "earlier" : "later");
    }

    private static Fix fix(Evidence evidence, Fill fill) {
        double more = Math.ceil(WANTED_MS - fill.behindMs());
        Set<Cause> shared = new HashSet<>();
        fill.mainWay().hops().forEach(hop -> shared.add(hop.cause()));
        Patched delayed = null;
        Patched free = null;
        for (Hop hop : fill.way().hops().reversed()) {
            if (hop.cause() instanceof Cause.ByPatch patch && !shared.contains(patch)) {
                Patched set = set(evidence, patch);
                if (set != null && set.entry().delay() != null && delayed == null) {
                    delayed = set;
                }
                free = free == null ? set : free;
            }
        }
        Patched at = delayed != null ? delayed : free;
        if (at != null && !evidence.sound().isDigital(at.device())) {
            at = null; // an analogue desk cannot wait
        }
        Delay old = at == null ? null : at.entry().delay();
        double ms = old == null ? more : old.base() * 1000 + more;
        if (at == null || (old != null && old.inFrames()) || ms < 0) {
            return Fix.of(String.format(
                    Locale.ROOT,
                    "Delay %s by %.0f ms %s than now.",
                    Words.said(fill.fill()),
                    Math.abs(more),
                    more < 0 ? "less" : "more"));
        }
        PatchEntry e = at.entry();
        PatchEntry entry = new PatchEntry(
                new LocalRef(at.from().toString()),
                List.of(new LocalRef(at.to().toString())),
                e.tap(),
                e.gain(),
                Delay.ofMilliseconds(Math.rint(ms)),
                e.life(),
                e.note());
        return new Fix(
                "Set the delay to " + new Address(at.device(), at.to()).said() + " to " + Math.round(ms)
                        + " ms: the way through the air, and " + GainEdit.number(WANTED_MS)
                        + " ms for the ear to stay at the front.",
                List.of(new Change.Unpatch(at.device(), at.from(), at.to()), new Change.Patch(at.device(), entry)));
    }

    private static @Nullable Patched set(Evidence evidence, Cause.ByPatch patch) {
        return evidence.sound().patched().stream()
                .filter(each -> each.device().equals(patch.equipment())
                        && each.from().equals(patch.from())
                        && each.to().equals(patch.to()))
                .findFirst()
                .orElse(null);
    }
}
