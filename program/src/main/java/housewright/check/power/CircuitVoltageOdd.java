package housewright.check.power;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Value;
import housewright.model.Mains;
import housewright.model.RuleSet;
import housewright.model.Stage;
import housewright.power.CircuitLoad;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** A circuit at a voltage that no supply here has: a slip of the pen on which every figure in amperes rests. */
public final class CircuitVoltageOdd implements Rule {
    static final List<Double> METRIC = List.of(230.0, 400.0);
    static final List<Double> US = List.of(120.0, 208.0, 240.0, 277.0, 480.0);

    /** What people write for one of them: 110 V or 125 V for 120 V, 220 V or 240 V for 230 V. */
    private static final double AS_SPOKEN_V = 10;

    /** From 208 V up the voltages of the US lie close together, and 230 V is none of them. */
    private static final double AS_SPOKEN_HIGH_V = 8;

    private static final Card CARD = new Card(
            "circuit-voltage-odd",
            "Has every circuit a voltage that the supply here gives?",
            Set.of(Severity.FIX),
            new Source.ByRuleSet(
                    new Source.Published("IEC 60038, as quoted on a public page", "230/400 V at 50 Hz"),
                    new Source.Published(
                            "ANSI C84.1, as quoted on a public page", "120, 208, 240, 277 and 480 V at 60 Hz")),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        boolean us = evidence.ruleSet() == RuleSet.US;
        Mains mains = evidence.project().about().mains();
        List<Finding> findings = new ArrayList<>();
        for (CircuitLoad load : evidence.supplies().circuits()) {
            Double volts = load.circuit().voltage() == null
                    ? null
                    : load.circuit().voltage().volts();
            boolean house = mains != null
                    && mains.voltage() != null
                    && volts != null
                    && mains.voltage().volts() == volts;
            if (volts != null && !house && !isNominal(volts, us)) {
                findings.add(finding(load, volts, us));
            }
        }
        return findings.stream();
    }

    static boolean isNominal(double volts, boolean us) {
        return (us ? US : METRIC)
                .stream()
                        .anyMatch(each -> Math.abs(volts - each)
                                <= (us && each > US.getFirst() ? AS_SPOKEN_HIGH_V : AS_SPOKEN_V) + 1e-9);
    }

    private static Finding finding(CircuitLoad load, double volts, boolean us) {
        String id = load.circuit().id();
        List<String> things = Said.ids(load.on());
        return CARD.finding(
                Severity.FIX,
                Said.subjects(Said.circuit(id), things),
                id + " is entered at " + Said.number(volts) + " V, and a supply here gives "
                        + Said.some(
                                (us ? US : METRIC).stream().map(Said::number).toList())
                        + " V: the current of "
                        + (things.isEmpty() ? "whatever is put on it" : Said.things(things))
                        + " is reckoned from it, and what is not made for it burns.",
                List.of(new Value("voltage", volts, null, "V")),
                List.of(Fix.of("Have the electrician measure it, and write what it is. " + Said.ELECTRICIAN)));
    }
}
