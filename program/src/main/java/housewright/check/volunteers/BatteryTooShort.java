package housewright.check.volunteers;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.check.Wording;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.finding.Value;
import housewright.model.Event;
import housewright.model.Kind;
import housewright.model.Model;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.signal.Present;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Things on batteries that do not last through an event, or through a day of them. */
public final class BatteryTooShort implements Rule {
    private static final Set<Kind> RADIO = EnumSet.of(Kind.RADIO_TRANSMITTER, Kind.RADIO_RECEIVER);

    private static final Card CARD = new Card(
            "battery-too-short",
            "Do the batteries last through every event?",
            Set.of(Severity.FIX, Severity.NOTE),
            new Source.TheProject(),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        Event longest = null;
        double event = 0;
        Map<LocalDate, Double> days = new TreeMap<>();
        for (Event each : evidence.project().events().values()) {
            LocalDateTime from = each.from();
            LocalDateTime to = each.to();
            if (from != null && to != null && each.at() == null) {
                double hours = Duration.between(from, to).toMinutes() / 60.0;
                days.merge(from.toLocalDate(), hours, Double::sum);
                if (hours > event) {
                    event = hours;
                    longest = each;
                }
            }
        }
        if (longest == null) {
            return Stream.empty();
        }
        double day = days.values().stream().mapToDouble(each -> each).max().orElse(0);
        List<Finding> findings = new ArrayList<>();
        List<String> short1 = empty(evidence, event);
        List<String> short2 = empty(evidence, day);
        if (!short1.isEmpty()) {
            findings.add(finding(
                    Severity.FIX,
                    short1,
                    " before " + Words.said(longest.id()) + " ends, which takes " + hours(event),
                    event,
                    "Take a type that lasts longer, or plan the moment at which batteries are changed."));
        } else if (!short2.isEmpty()) {
            findings.add(finding(
                    Severity.NOTE,
                    short2,
                    " before a day of " + hours(day) + " ends",
                    day,
                    "Put fresh batteries in between, and write it on the card."));
        }
        return findings.stream();
    }

    private static List<String> empty(Evidence evidence, double hours) {
        return evidence.pictures().things().stream()
                .filter(thing -> runs(thing) < hours * 3600)
                .map(Present::id)
                .toList();
    }

    /** In seconds; without end for what does not live on batteries by radio. */
    private static double runs(Present thing) {
        Model model = thing.model();
        if (model == null
                || model.battery() == null
                || model.battery().runs() == null
                || !RADIO.contains(model.kind())) {
            return Double.POSITIVE_INFINITY;
        }
        return model.battery().runs().seconds();
    }

    private static Finding finding(Severity severity, List<String> things, String when, double hours, String fix) {
        return CARD.finding(
                severity,
                things.stream().map(Subject::equipment).toList(),
                "The batteries of " + Wording.things(things, 5) + " run out" + when + ".",
                List.of(new Value("hours asked", hours, null, "h")),
                List.of(Fix.of(fix)));
    }

    private static String hours(double hours) {
        return String.format(Locale.ROOT, "%.1f h", hours).replace(".0 ", " ");
    }
}
