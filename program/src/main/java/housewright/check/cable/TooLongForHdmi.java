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
import housewright.unit.VideoFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * HDMI over more copper than the rate allows. The specification sets no length; these are the lengths that makers of
 * extenders plan with. A type whose own longest run is beyond the longest of copper is active, and that run is its
 * limit; one of 5 m or less is certified for 18 Gbit/s.
 */
public final class TooLongForHdmi implements Rule {
    static final Limit TO_4_455 = Limit.most("copper up to 1080p60", 15, "m");
    static final Limit TO_6_7 = Limit.most("copper up to 6.7 Gbit/s (1080p60 at 12 bit)", 10, "m");
    static final Limit TO_10_2 = Limit.most("copper up to 10.2 Gbit/s (2160p30)", 5, "m");
    static final Limit TO_18 = Limit.most("copper up to 18 Gbit/s (2160p60)", 3, "m");
    static final Limit CERTIFIED = Limit.most("copper certified for 18 Gbit/s", 5, "m");

    private static final Card CARD = new Card(
            "cable-too-long-for-hdmi",
            "Is every HDMI run short enough for the picture it carries?",
            Set.of(Severity.FIX, Severity.NOTE),
            new Source.Published("Lengths in a maker's manual of HDMI extenders and a cable guide", ""),
            Stage.DESIGN,
            List.of(TO_4_455, TO_6_7, TO_10_2, TO_18, CERTIFIED));

    /** All pixels of a 1080p60 raster, blanking and all, by those that are shown; three lanes of ten bits each. */
    private static final double BITS_PER_PIXEL = 2200.0 * 1125 / (1920.0 * 1080) * 30;

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        return evidence.cabling().lines().stream()
                .filter(line -> line.signal() == Signal.HDMI)
                .flatMap(line -> finding(evidence, line).stream());
    }

    private static Optional<Finding> finding(Evidence evidence, Line line) {
        Double metres = line.metres();
        if (metres == null || metres <= Math.min(TO_18.value(), evidence.limit(CARD, TO_4_455))) {
            return Optional.empty();
        }
        Format format = Format.of(evidence, line).orElse(null);
        double limit = reach(evidence, line, format == null ? null : format.used());
        if (metres <= limit) {
            return format == null ? Optional.empty() : chosen(evidence, line, metres, format);
        }
        boolean sure = format == null || format.house() || metres > reach(evidence, line, format.least());
        String message = Said.tooLong(line, metres - limit) + "HDMI"
                + (format == null ? "" : " (" + format.said() + ")") + " on " + Said.types(line) + ": "
                + Said.length(line) + ", " + Said.metres(limit) + " is the limit.";
        Lead lead = line.leads().getFirst();
        List<Fix> fixes = new ArrayList<>();
        if (line.leads().size() == 1) {
            Recut.otherType(
                            evidence,
                            lead,
                            type -> type.carries().contains(Signal.HDMI)
                                    && metres <= reach(evidence, type, format == null ? null : format.used()))
                    .ifPresent(fixes::add);
        }
        fixes.add(Fix.of("Go by SDI, HDBaseT or active optical cable, or bring the two ends nearer."));
        return Optional.of(CARD.finding(
                sure ? Severity.FIX : Severity.NOTE,
                Said.subjects(line.ids()),
                message,
                List.of(new Value("length", metres, limit, "m")),
                fixes));
    }

    /** Both ends do more than the run carries, and by themselves they agree on the most that both do. */
    private static Optional<Finding> chosen(Evidence evidence, Line line, double metres, Format format) {
        double limit = reach(evidence, line, format.most());
        Plug source = line.source();
        if (metres <= limit || source == null) {
            return Optional.empty();
        }
        String sender = source.at().saidPort();
        return Optional.of(CARD.finding(
                Severity.NOTE,
                Said.subjects(line.ids()),
                Said.some(line.ids()) + " is good for " + format.used().text() + " and too long for "
                        + format.most().text() + ", which both its ends do: " + Said.length(line) + ", "
                        + Said.metres(limit) + " is the limit on " + Said.types(line)
                        + ". Left to themselves they choose the most that both do, and the picture drops out.",
                List.of(new Value("length", metres, limit, "m")),
                List.of(Fix.of("Set " + sender + " to " + format.used().text()
                        + ", and write it on the card; or take active optical cable."))));
    }

    private static double reach(Evidence evidence, Line line, @Nullable VideoFormat format) {
        double reach = Double.MAX_VALUE;
        for (Lead lead : line.leads()) {
            reach = Math.min(reach, reach(evidence, lead.type(), format));
        }
        return reach;
    }

    private static double reach(Evidence evidence, @Nullable CableType type, @Nullable VideoFormat format) {
        double farthest = evidence.limit(CARD, TO_4_455);
        double own = type == null || type.longest() == null
                ? Double.NaN
                : type.longest().metres();
        if (own > TO_4_455.value()) {
            return own; // active
        }
        boolean certified = own <= CERTIFIED.value();
        double rate = format == null ? 0 : Format.pixelRate(format) * BITS_PER_PIXEL / 1e9;
        double byRate = rate <= 4.455 + 1e-9
                ? farthest
                : rate <= 6.6825 ? TO_6_7.value() : rate <= 10.2 ? TO_10_2.value() : certified ? own : TO_18.value();
        double reach = Math.min(farthest, byRate); // a tightened limit holds at every rate
        return certified || Double.isNaN(own) ? reach : Math.min(own, reach);
    }
}
