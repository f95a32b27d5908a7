package housewright.check.cable;

import housewright.cable.Chain;
import housewright.cable.Lead;
import housewright.cable.Line;
import housewright.cable.Losses;
import housewright.cable.Plug;
import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Value;
import housewright.model.CableType;
import housewright.model.Kind;
import housewright.model.Signal;
import housewright.model.Stage;
import housewright.unit.CrossSection;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Loudspeaker cable so long and thin that the loudspeaker gets too little. The drop is that of the level at the load, 20
 * log: tables that give the share of the power lost, 10 log, show half as many dB. A line of 100 V or 70 V, known by
 * loads of far more than any loudspeaker's own impedance, is held to the share of its power that stays in the cable.
 * Hearing-loop wire is driven by current and is left alone.
 */
public final class SpeakerCableLosesLevel implements Rule {
    static final Limit DROP = Limit.most("drop of the level at the loudspeaker", 0.5, "dB");
    static final Limit SHARE = Limit.most("share of its power lost in a 100 V or 70 V line", 10, "%");

    private static final Card CARD = new Card(
            "speaker-cable-loses-level",
            "Is every loudspeaker cable thick enough for its length and load?",
            Set.of(Severity.FIX),
            new Source.Published(
                    "A trade page on loudspeaker cable (0.5 dB), a sizing formula for 100 V lines (10 %)", ""),
            Stage.DESIGN,
            List.of(DROP, SHARE));

    /** No loudspeaker has so much; a tap on a 100 V line of 200 W has. */
    private static final double TAP_OHM = 50;

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        return evidence.cabling().chains(Signal.SPEAKER).stream().flatMap(chain -> finding(evidence, chain).stream());
    }

    private static Optional<Finding> finding(Evidence evidence, Chain chain) {
        int count = chain.lines().size();
        double[] ohms = new double[count];
        double[] load = new double[count]; // what the run sees at its far end, with all that hangs on it
        boolean taps = false;
        for (int i = count - 1; i >= 0; i--) {
            Line line = chain.lines().get(i);
            double loop = loopOhms(line);
            double own = ownOhms(line.sink(), chain.after().contains(i));
            if (Double.isNaN(loop) || Double.isNaN(own)) {
                return Optional.empty();
            }
            taps |= own > TAP_OHM && !Double.isInfinite(own);
            ohms[i] = loop;
            double siemens = 1 / own;
            for (int j = i + 1; j < count; j++) {
                siemens += chain.after().get(j) == i ? 1 / (ohms[j] + load[j]) : 0;
            }
            load[i] = 1 / siemens;
        }
        double[] drop = new double[count];
        int worst = 0;
        for (int i = 0; i < count; i++) {
            int before = chain.after().get(i);
            drop[i] = (before < 0 ? 0 : drop[before]) + Losses.dropDb(load[i], ohms[i]);
            worst = drop[i] > drop[worst] ? i : worst;
        }
        double share = 100 * Losses.lostShare(drop[worst]);
        double limit = taps ? SHARE.value() : evidence.limit(CARD, DROP);
        boolean good = (taps ? share : drop[worst]) <= limit;
        return good ? Optional.empty() : Optional.of(found(evidence, chain, ohms, load, drop, worst, taps));
    }

    private static Finding found(
            Evidence evidence, Chain chain, double[] ohms, double[] load, double[] drop, int worst, boolean taps) {
        Set<String> cables = new LinkedHashSet<>();
        int thinnest = worst;
        for (int i = worst; i >= 0; i = chain.after().get(i)) {
            boolean more = Losses.dropDb(load[i], ohms[i]) > Losses.dropDb(load[thinnest], ohms[thinnest]);
            thinnest = more ? i : thinnest;
        }
        cables.addAll(chain.lines().get(thinnest).ids());
        for (int i = worst; i >= 0; i = chain.after().get(i)) {
            cables.addAll(chain.lines().get(i).ids());
        }
        Line main = chain.lines().get(thinnest);
        Plug end = chain.lines().get(worst).sink();
        double limit = taps ? SHARE.value() : evidence.limit(CARD, DROP);
        String lost = taps
                ? String.format(Locale.ROOT, "%.0f %% of its power", 100 * Losses.lostShare(drop[worst]))
                : String.format(Locale.ROOT, "%.2f dB", drop[worst]);
        String message = String.format(
                Locale.ROOT,
                "%s is too thin for its length: %s gets %s less, %s %s is the limit (%s, %.2f ohm there and back, %s ohm"
                        + " of load).",
                Said.all(main.ids()),
                Said.end(end),
                lost,
                Said.number(limit),
                taps ? "%" : "dB",
                Said.length(main),
                ohms[thinnest],
                Said.number(load[thinnest]));
        List<Fix> fixes = new ArrayList<>();
        if (main.leads().size() == 1) {
            Lead lead = main.leads().getFirst();
            double dropLimit = taps ? -20 * Math.log10(1 - SHARE.value() / 100) : limit;
            double elsewhere = drop[worst] - Losses.dropDb(load[thinnest], ohms[thinnest]);
            double z = load[thinnest];
            Recut.otherType(
                            evidence,
                            lead,
                            type -> type.carries().contains(Signal.SPEAKER)
                                    && type.conductor() != null
                                    && lead.span() != null
                                    && elsewhere
                                                    + Losses.dropDb(
                                                            z,
                                                            Losses.loopOhms(
                                                                    type.conductor(),
                                                                    lead.span().metres()))
                                            <= dropLimit)
                    .ifPresent(fixes::add);
        }
        fixes.add(Fix.of("Take thicker cable, or put the amplifier nearer."));
        return CARD.finding(
                Severity.FIX,
                Said.subjects(cables),
                message,
                List.of(
                        taps
                                ? new Value("power lost", 100 * Losses.lostShare(drop[worst]), limit, "%")
                                : new Value("drop of the level", drop[worst], limit, "dB")),
                fixes);
    }

    private static double loopOhms(Line line) {
        double sum = 0;
        for (Lead lead : line.leads()) {
            CableType type = lead.type();
            CrossSection conductor = type == null ? null : type.conductor();
            if (conductor == null || lead.span() == null) {
                return Double.NaN;
            }
            sum += Losses.loopOhms(conductor, lead.span().metres());
        }
        return sum;
    }

    /** Not a number where it is not known; infinite at what only hands on to others. */
    private static double ownOhms(@Nullable Plug sink, boolean handsOn) {
        if (sink == null
                || sink.model() == null
                || sink.port() == null
                || sink.model().kind() == Kind.HEARING_LOOP) {
            return Double.NaN;
        }
        if (sink.port().impedance() != null && sink.port().impedance().ohms() > 0) {
            return sink.port().impedance().ohms();
        }
        return handsOn && sink.model().kind() != Kind.LOUDSPEAKER ? Double.POSITIVE_INFINITY : Double.NaN;
    }
}
