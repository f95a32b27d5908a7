package housewright.check.power;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.finding.Value;
import housewright.model.Battery;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.power.Supplies;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** A UPS whose battery is empty before anybody has shut a computer down. */
public final class UpsTimeShort implements Rule {
    static final Limit LEAST = Limit.least("time on battery", 5, "min");

    /** Of a small UPS, battery to mains. */
    static final double EFFICIENCY = 0.9;
    /** Of a lead battery emptied in less than half an hour (Peukert). */
    static final double USABLE = 0.5;

    private static final Card CARD = new Card(
            "ups-time-short",
            "Does every UPS last until somebody has shut down what hangs on it?",
            Set.of(Severity.FIX),
            new Source.FromMemory("Practice for lead batteries: half of the charge at a high rate"),
            Stage.DESIGN,
            List.of(LEAST));

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        double least = evidence.limit(CARD, LEAST);
        List<Finding> findings = new ArrayList<>();
        for (Upses.Ups each : Upses.all(evidence)) {
            Battery battery =
                    each.thing().model() == null ? null : each.thing().model().battery();
            Double wattHours = battery == null ? null : wattHours(battery);
            if (wattHours == null || each.watts() <= 0) {
                continue;
            }
            double minutes = Supplies.minutes(wattHours, EFFICIENCY, USABLE, each.watts());
            if (minutes < least) {
                findings.add(CARD.finding(
                        Severity.FIX,
                        Said.subjects(Subject.equipment(each.thing().id()), Said.ids(each.on())),
                        Words.said(each.thing().id()) + " lasts " + Said.number(minutes) + " min with "
                                + Said.watts(each.watts()) + " on its " + Said.number(wattHours) + " Wh, less than the "
                                + Said.number(least) + " min that shutting down takes.",
                        List.of(new Value("time on battery", minutes, least, "min")),
                        List.of(Fix.of(
                                "Take off it what may stop, or add a battery pack; put a date on the batteries."))));
            }
        }
        return findings.stream();
    }

    /** Read off words such as "lead 12 V 9 Ah"; null where they do not say it. */
    static @Nullable Double wattHours(Battery battery) {
        if (battery.type() == null) {
            return null;
        }
        List<String> words = List.of(battery.type().split(" "));
        Double volts = before(words, "V");
        Double ampereHours = before(words, "Ah");
        int count = battery.count() == null ? 1 : battery.count();
        return volts == null || ampereHours == null ? null : Double.valueOf(volts * ampereHours * count);
    }

    private static @Nullable Double before(List<String> words, String unit) {
        int at = words.indexOf(unit);
        if (at < 1) {
            return null;
        }
        try {
            return Double.valueOf(words.get(at - 1));
        } catch (NumberFormatException notANumber) {
            return null;
        }
    }
}
