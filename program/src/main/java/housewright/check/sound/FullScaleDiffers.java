package housewright.check.sound;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.finding.Value;
import housewright.model.LevelClass;
import housewright.model.Port;
import housewright.model.Ref.Address;
import housewright.model.Shape.Socket;
import housewright.model.Stage;
import housewright.sound.Alignment;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Full scale of one device is not that of the next. 0 dBFS is 18 dBu by EBU R 68 and 24 dBu by SMPTE RP 155; a desk at
 * 18 dBu into an input that clips at 16 dBu wants a pad of 2 dB. The other way round something arrives too low to be
 * used: a consumer output is 11.8 dB under a professional one.
 */
final class FullScaleDiffers implements Rule {
    static final Limit OVER = Limit.most("loudest output over what the input takes", 0, "dB");
    static final Limit MUCH = Limit.most("over it before it must be settled", 6, "dB");
    static final Limit UNDER = Limit.most("range of the input that is never used", 12, "dB");

    private static final Card CARD = new Card(
            "full-scale-differs",
            "Does the loudest that one device gives fit what the next one takes, neither clipping nor far too low?",
            Set.of(Severity.FIX, Severity.NOTE),
            new Source.Published("EBU R 68-2000 and SMPTE RP 155, as quoted", "alignment levels"),
            Stage.DESIGN,
            List.of(OVER, MUCH, UNDER));

    /** Figures are written with one place behind the point. */
    private static final double ROUNDING_DB = 0.05;

    private record Join(String out, String in, boolean over) {}

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        double most = evidence.limit(CARD, OVER);
        Map<Join, List<Alignment>> wrong = new LinkedHashMap<>();
        for (Alignment each : evidence.sound().alignments()) {
            boolean over = each.overDb() > most + ROUNDING_DB;
            if (over || each.overDb() < -UNDER.value()) {
                wrong.computeIfAbsent(new Join(each.out().thing(), each.in().thing(), over), key -> new ArrayList<>())
                        .add(each);
            }
        }
        return wrong.entrySet().stream().map(each -> finding(evidence, each.getKey(), each.getValue(), most));
    }

    private static Finding finding(Evidence evidence, Join join, List<Alignment> all, double most) {
        Alignment worst = all.stream()
                .max(Comparator.comparingDouble(each -> Math.abs(each.overDb())))
                .orElseThrow();
        String more = all.size() == 1 ? "" : " (and " + (all.size() - 1) + " more)";
        String gives = worst.out().said() + more + " comes to as much as " + GainEdit.number(worst.peakDbu())
                + " dBu at " + worst.in().said() + ", which clips at " + GainEdit.number(worst.clipsDbu()) + " dBu: ";
        String message = join.over()
                ? gives + "its peaks clip by " + GainEdit.said(worst.overDb()) + "."
                : gives + "even at full scale it arrives " + GainEdit.said(-worst.overDb()) + " too low.";
        boolean much = worst.overDb() > MUCH.value() + ROUNDING_DB;
        return CARD.finding(
                much ? Severity.FIX : Severity.NOTE,
                List.of(Subject.equipment(join.in()), Subject.equipment(join.out())),
                message,
                List.of(new Value(
                        "loudest over what the input takes",
                        worst.overDb(),
                        join.over() ? most : -UNDER.value(),
                        "dB")),
                List.of(join.over() ? down(evidence, all, most) : up(worst)));
    }

    /** Less gain where the input has some; a pad before a preamplifier; else a lower output. */
    private static Fix down(Evidence evidence, List<Alignment> all, double most) {
        Map<Address, Double> gains = new LinkedHashMap<>();
        List<String> words = new ArrayList<>();
        for (Alignment each : all) {
            double byDb = Math.ceil(each.overDb() - most - ROUNDING_DB);
            Address at =
                    evidence.sound().gain(each.in()) >= byDb || hasPreamp(evidence, each.in()) ? each.in() : each.out();
            gains.merge(at, evidence.sound().gain(at) - byDb, Math::min);
        }
        gains.forEach((at, gain) -> words.add(at.said() + " to " + GainEdit.said(gain)));
        return new Fix(
                "Set the gain of " + String.join(", ", words) + ", with a pad where it does not go so low.",
                GainEdit.set(evidence.project(), new LinkedHashMap<>(gains)));
    }

    private static Fix up(Alignment first) {
        return Fix.of("Turn " + first.in().said() + " up by " + GainEdit.said(Math.floor(-first.overDb()))
                + ", or take a professional output for it.");
    }

    private static boolean hasPreamp(Evidence evidence, Address in) {
        Port port = evidence.sound()
                .findShape(in.thing())
                .flatMap(shape -> shape.findSocket(in.spot().name()))
                .map(Socket::port)
                .orElse(null);
        return port != null && port.level() == LevelClass.MIC;
    }
}
