package housewright.check.cable;

import housewright.cable.Lead;
import housewright.cable.Line;
import housewright.cable.Plug;
import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Value;
import housewright.model.CableType;
import housewright.model.Signal;
import housewright.model.Stage;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * USB over more copper than its rate allows: 5 m at 480 Mbit/s, 3 m at 5 Gbit/s, 1 m at 10 Gbit/s. Where the rate is not
 * known, what is within 5 m but beyond the cable's own reach may still work as USB 2.0: a note. A type whose own longest
 * run is beyond 5 m is active, and that run is its limit.
 */
public final class TooLongForUsb implements Rule {
    static final Limit USB_2 = Limit.most("copper, USB 2.0", 5, "m");
    static final Limit USB_3 = Limit.most("copper, 5 Gbit/s", 3, "m");
    static final Limit USB_10 = Limit.most("copper, 10 Gbit/s", 1, "m");

    private static final Card CARD = new Card(
            "cable-too-long-for-usb",
            "Is every USB cable short enough for its rate?",
            Set.of(Severity.FIX, Severity.NOTE),
            new Source.Published("USB 2.0 specification and makers' tables for USB 3, as reported", ""),
            Stage.DESIGN,
            List.of(USB_2, USB_3, USB_10));

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        return evidence.cabling().lines().stream()
                .filter(line -> line.signal() == Signal.USB || line.signal() == Signal.USB_AUDIO)
                .flatMap(line -> finding(evidence, line).stream());
    }

    private static Optional<Finding> finding(Evidence evidence, Line line) {
        Double metres = line.metres();
        if (metres == null || metres <= Math.min(USB_10.value(), evidence.limit(CARD, USB_2))) {
            return Optional.empty();
        }
        double farthest = evidence.limit(CARD, USB_2);
        Double rate = slower(rate(line.source()), rate(line.sink()));
        double limit = Double.MAX_VALUE;
        boolean active = false;
        for (Lead lead : line.leads()) {
            CableType type = lead.type();
            double own = type == null || type.longest() == null
                    ? farthest
                    : type.longest().metres();
            boolean passive = own <= USB_2.value();
            active |= !passive;
            double byRate = rate == null
                    ? Math.min(own, farthest)
                    : Math.min(farthest, rate <= 0.48 ? farthest : rate <= 5 ? USB_3.value() : USB_10.value());
            limit = Math.min(limit, passive ? byRate : own);
        }
        if (metres <= limit) {
            return Optional.empty();
        }
        boolean sure = active || rate != null || metres > farthest;
        String message = Said.tooLong(line, metres - limit) + "USB on " + Said.types(line) + ": " + Said.length(line)
                + ", " + Said.metres(limit) + " is the limit"
                + (sure ? "." : " at its full rate; it may work as USB 2.0, which reaches 5 m.");
        return Optional.of(CARD.finding(
                sure ? Severity.FIX : Severity.NOTE,
                Said.subjects(line.ids()),
                message,
                List.of(new Value("length", metres, limit, "m")),
                fixes(evidence, line, metres)));
    }

    private static List<Fix> fixes(Evidence evidence, Line line, double metres) {
        Fix other = Fix.of("Bring the two ends nearer, or take an active cable or an extender made for the rate.");
        return line.leads().size() > 1
                ? List.of(other)
                : Recut.otherType(
                                evidence,
                                line.leads().getFirst(),
                                type -> type.carries().contains(Signal.USB)
                                        && type.longest() != null
                                        && type.longest().metres() > USB_2.value()
                                        && type.longest().metres() >= metres)
                        .map(fix -> List.of(fix, other))
                        .orElse(List.of(other));
    }

    private static @Nullable Double slower(@Nullable Double one, @Nullable Double other) {
        return one == null ? other : other == null ? one : (Double) Math.min(one, other);
    }

    /** In Gbit/s. */
    private static @Nullable Double rate(@Nullable Plug plug) {
        return plug == null || plug.port() == null || plug.port().rate() == null
                ? null
                : (Double) (plug.port().rate().bitsPerSecond() / 1e9);
    }
}
