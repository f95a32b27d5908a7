package housewright.check.cable;

import housewright.cable.Lead;
import housewright.cable.Line;
import housewright.cable.Losses;
import housewright.cable.SdiRate;
import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Value;
import housewright.model.Attenuation;
import housewright.model.CableType;
import housewright.model.Signal;
import housewright.model.Stage;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * SDI whose coax loses more than a receiver is sure to make up for. The loss counts at half the clock, summed over the
 * run. At the limit there is no picture breaking up yet: it is about half way to where it does, and the way from good to
 * nothing is short.
 */
public final class TooLongForSdi implements Rule {
    static final Limit HD = Limit.most("loss at half the clock, HD and 3G,", 20, "dB");
    static final Limit ABOVE = Limit.most("loss at half the clock, 6G and 12G,", 40, "dB");
    static final Limit SD = Limit.most("loss at half the clock, SD (from memory),", 30, "dB");

    private static final Card CARD = new Card(
            "cable-too-long-for-sdi",
            "Does every SDI run keep within the loss at half the clock that a receiver is sure to make up for?",
            Set.of(Severity.FIX, Severity.NOTE),
            new Source.Published("SMPTE ST 292-1, ST 2081-1 and ST 2082-1, as quoted on public pages", ""),
            Stage.DESIGN,
            List.of(HD, ABOVE, SD));

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        return evidence.cabling().lines().stream()
                .filter(line -> line.signal() == Signal.SDI)
                .flatMap(line -> finding(evidence, line).stream());
    }

    private static Optional<Finding> finding(Evidence evidence, Line line) {
        Double metres = line.metres();
        if (metres == null || !line.leads().stream().allMatch(TooLongForSdi::isCoax)) {
            return Optional.empty();
        }
        Format format = Format.of(evidence, line).orElse(null);
        SdiRate rate = format == null ? null : SdiRate.of(format.used()).orElse(null);
        if (format == null || rate == null) {
            return Optional.empty();
        }
        double loss = lossDb(line, rate);
        double limit = limit(evidence, rate);
        if (loss <= limit) {
            return Optional.empty();
        }
        boolean sure = format.house()
                || SdiRate.of(format.least())
                        .filter(least -> lossDb(line, least) > limit(evidence, least))
                        .isPresent();
        String message = String.format(
                Locale.ROOT,
                "%s%s (%s) on %s: the loss at half the clock is %.1f dB, %s dB is the limit;" + " %s.",
                Said.tooLong(line, Math.ceil(metres * (1 - limit / loss))),
                rate.said(),
                format.said(),
                Said.types(line),
                loss,
                Said.number(limit),
                Said.length(line));
        return Optional.of(CARD.finding(
                sure ? Severity.FIX : Severity.NOTE,
                Said.subjects(line.ids()),
                message,
                List.of(
                        new Value("loss at half the clock", loss, limit, "dB"),
                        new Value("length", metres, metres * limit / loss, "m")),
                fixes(evidence, line, rate, limit)));
    }

    private static List<Fix> fixes(Evidence evidence, Line line, SdiRate rate, double limit) {
        Fix other = Fix.of("Take better coax, put an amplifier that reclocks half way, or go by fibre.");
        Lead lead = line.leads().getFirst();
        Double metres = line.metres();
        return line.leads().size() > 1 || metres == null
                ? List.of(other)
                : Recut.otherType(
                                evidence,
                                lead,
                                type -> type.carries().contains(Signal.SDI)
                                        && type.attenuation() != null
                                        && lossDb(type.attenuation(), rate, metres) <= limit)
                        .map(fix -> List.of(fix, other))
                        .orElse(List.of(other));
    }

    private static boolean isCoax(Lead lead) {
        CableType type = lead.type();
        return type != null && type.attenuation() != null;
    }

    private static double limit(Evidence evidence, SdiRate rate) {
        return switch (rate) {
            case SD -> SD.value();
            case HD, THREE -> evidence.limit(CARD, HD);
            case SIX, TWELVE -> ABOVE.value();
        };
    }

    private static double lossDb(Line line, SdiRate rate) {
        double sum = 0;
        for (Lead lead : line.leads()) {
            if (lead.type() != null && lead.type().attenuation() != null && lead.span() != null) {
                sum += lossDb(lead.type().attenuation(), rate, lead.span().metres());
            }
        }
        return sum;
    }

    private static double lossDb(Attenuation attenuation, SdiRate rate, double metres) {
        return Losses.coaxDb(attenuation, rate.halfClockMegahertz(), metres);
    }
}
