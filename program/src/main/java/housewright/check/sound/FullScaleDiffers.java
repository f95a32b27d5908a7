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
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Full scale of one device is not that of the next. 0 dBFS is 18 dBu by EBU R 68 and 24 dBu by SMPTE RP 155; a desk at
 * 18 dBu into an input that clips at 16 dBu wants a pad of 2 dB. The other way round something arrives too low to be
 * used: a consumer output is 11.8 dB under a professional one.
 */
final class FullScaleDiffers implements Rule {
    static final Limit OVER = Limit.most("loudest output over what the input takes", 0, "dB");
    static final Limit UNDER = Limit.most("range of the input that is never used", 12, "dB");

    private static final Card CARD = new Card(
            "full-scale-differs",
            "Does the loudest that one device gives fit what the next one takes, neither clipping nor far too low?",
            Set.of(Severity.FIX, Severity.NOTE),
            new Source.Published("EBU R 68-2000 and SMPTE RP 155", "alignment levels"),
            Stage.DESIGN,
            List.of(OVER, UNDER));

    private record Join(String out, String in, boolean over) {}

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        Map<Join, List<Alignment>> wrong = new LinkedHashMap<>();
        for (Alignment each : evidence.sound().alignments()) {
            boolean over = each.overDb() > OVER.value() + 0.05;
            if (over || each.overDb() < -UNDER.value()) {
                wrong.computeIfAbsent(new Join(each.out().thing(), each.in().thing(), over), key -> new ArrayList<>())
                        .add(each);
            }
        }
        return wrong.entrySet().stream().map(each -> finding(evidence, each.getKey(), each.getValue()));
    }

    private static Finding finding(Evidence evidence, Join join, List<Alignment> all) {
        Alignment first = all.getFirst();
        String more = all.size() == 1 ? "" : " (and " + (all.size() - 1) + " more)";
        String gives = first.out().said() + more + " gives up to " + GainEdit.number(first.peakDbu()) + " dBu into "
                + first.in().said() + ", which clips at " + GainEdit.number(first.clipsDbu()) + " dBu: ";
        String message = join.over()
                ? gives + "its peaks clip by " + GainEdit.said(first.overDb()) + "."
                : gives + "even at full scale it arrives " + GainEdit.said(-first.overDb()) + " too low.";
        return CARD.finding(
                join.over() ? Severity.FIX : Severity.NOTE,
                List.of(Subject.equipment(join.in()), Subject.equipment(join.out())),
                message,
                List.of(new Value(
                        "loudest over what the input takes",
                        first.overDb(),
                        join.over() ? OVER.value() : -UNDER.value(),
                        "dB")),
                List.of(join.over() ? down(evidence, first, all) : up(first)));
    }

    private static Fix down(Evidence evidence, Alignment first, List<Alignment> all) {
        Map<Address, @Nullable Double> gains = new LinkedHashMap<>();
        for (Alignment each : all) {
            double set = evidence.sound().gain(each.in());
            if (set == 0 && !hasPreamp(evidence, each.in())) {
                return Fix.of("Turn the output down, or put a pad of " + GainEdit.said(Math.ceil(each.overDb() - 0.05))
                        + " before " + each.in().said() + ".");
            }
            gains.put(each.in(), set - Math.ceil(each.overDb() - 0.05));
        }
        Double gain = gains.get(first.in());
        return new Fix(
                "Set the input's gain to " + GainEdit.said(gain == null ? 0 : gain)
                        + ", with its pad where it has one.",
                GainEdit.set(evidence.project(), gains));
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
