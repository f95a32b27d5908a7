package housewright.check.people;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.check.Wording;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.finding.Value;
import housewright.model.Control;
import housewright.model.Kind;
import housewright.model.Life;
import housewright.model.Place;
import housewright.model.Room;
import housewright.model.RuleSet;
import housewright.model.SpacePoint;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.model.change.Change;
import housewright.model.change.Section;
import housewright.signal.Present;
import housewright.unit.Length;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** Panels and buttons that are mounted too high or too low for everybody to reach. */
public final class ControlOutOfReach implements Rule {
    static final Limit HIGH = Limit.most("button above the floor", 1200, "mm");
    static final Limit HIGH_US = Limit.most("button above the floor (US, 48 in)", 1219.2, "mm");
    static final Limit LOW = Limit.least("button above the floor (15 in)", 381, "mm");

    private static final Card CARD = new Card(
            "control-out-of-reach",
            "Can everybody reach the buttons, standing or in a wheelchair?",
            Set.of(Severity.FIX, Severity.NOTE),
            new Source.ByRuleSet(
                    new Source.Published("Approved Document M, as quoted on public pages", "4.30, not above 1200 mm"),
                    new Source.Published("2010 ADA Standards for Accessible Design", "308.2.1, 15 to 48 in")),
            Stage.DESIGN,
            List.of(HIGH, HIGH_US, LOW));

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        List<Finding> findings = new ArrayList<>();
        Set<String> pressed = new HashSet<>();
        for (Control control : evidence.project().controls().values()) {
            if (control.press() != null) {
                pressed.add(control.press().thing());
            }
        }
        boolean us = evidence.ruleSet() == RuleSet.US;
        double high = us ? Math.min(HIGH_US.value(), evidence.limit(CARD, HIGH)) : evidence.limit(CARD, HIGH);
        high = us && high == HIGH.value() ? HIGH_US.value() : high;
        Map<String, Place> places = evidence.project().venue().places();
        for (Present thing : evidence.pictures().things()) {
            Place place = places.get(String.valueOf(thing.equipment().at()));
            if (place == null || place.at() == null || place.rack() != null || isCarried(thing)) {
                continue;
            }
            boolean button = thing.model() != null
                    && (thing.model().kind() == Kind.CONTROL_PANEL
                            || thing.model().kind() == Kind.BUTTON_PAD);
            if (button || pressed.contains(thing.id())) {
                double up = 1000 * (place.at().z().metres() - floor(evidence, place));
                if (up > high + 0.5 || up < LOW.value() - 0.5) {
                    findings.add(finding(evidence, thing, place, up, up > high ? high : LOW.value()));
                }
            }
        }
        return findings.stream();
    }

    private static boolean isCarried(Present thing) {
        return thing.model() != null && thing.model().battery() != null;
    }

    private static double floor(Evidence evidence, Place place) {
        if (place.operator() != null && place.operator().floor() != null) {
            return place.operator().floor().metres();
        }
        Room room = evidence.project().venue().rooms().get(String.valueOf(place.room()));
        return room == null || room.floor() == null ? 0 : room.floor().metres();
    }

    private static Finding finding(Evidence evidence, Present thing, Place place, double up, double limit) {
        return CARD.finding(
                thing.equipment().life() == Life.KEEP ? Severity.NOTE : Severity.FIX,
                List.of(Subject.equipment(thing.id()), new Subject("place", place.id())),
                Words.said(thing.id()) + " is " + Wording.length(evidence, up / 1000) + " above the floor, "
                        + Wording.length(evidence, Math.abs(up - limit) / 1000)
                        + (up > limit ? " too high" : " too low")
                        + " to be reached from a wheelchair.",
                List.of(new Value("height above the floor", up, limit, "mm")),
                List.of(fix(evidence, place, up, limit)));
    }

    private static Fix fix(Evidence evidence, Place place, double up, double limit) {
        String words = "Mount it " + Wording.length(evidence, limit / 1000) + " above the floor"
                + (up > limit ? " or lower" : " or higher") + "; ask what local code asks.";
        SpacePoint at = place.at();
        boolean alone = evidence.project().equipment().values().stream()
                        .filter(each -> place.id().equals(each.at()))
                        .count()
                == 1;
        if (at == null || !alone) {
            return Fix.of(words);
        }
        Length moved = Length.ofMetres(Math.round(at.z().metres() * 1000 + limit - up) / 1000.0);
        Place lower = new Place(
                place.id(),
                place.room(),
                new SpacePoint(at.x(), at.y(), moved),
                place.rack(),
                place.hang(),
                place.operator(),
                place.remarks());
        return new Fix(words, List.of(new Change.Put(Section.PLACES, place.id(), lower)));
    }
}
