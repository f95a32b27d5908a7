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
import housewright.model.Equipment;
import housewright.model.Life;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.room.ScreenView;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;

/** The size of the screens, seen from the seat that is worst off. */
public final class WordsTooSmall implements Rule {
    static final Limit READING = Limit.most("distance in picture heights, for reading", 6, "");
    static final Limit WATCHING = Limit.most("distance in picture heights, for anything (from memory)", 8, "");

    private static final Card CARD = new Card(
            "words-too-small",
            "Can the words on the screen be read from the seat that is furthest from one?",
            Set.of(Severity.FIX, Severity.NOTE),
            new Source.Published(
                    "Trade articles on the 4/6/8 rule; element height by AVIXA V202.01:2016, as taught at aetm.org",
                    "6 picture heights for reading"),
            Stage.DESIGN,
            List.of(READING, WATCHING));

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        double limit = evidence.limit(CARD, READING);
        return evidence.rooms().screens().stream()
                .filter(view -> view.ratio() > limit)
                .map(view -> finding(evidence, view, limit));
    }

    /** Element height by the basic-decision formula: distance = picture height x part of it x 200. */
    private static Finding finding(Evidence evidence, ScreenView view, double limit) {
        double part = 100 * view.ratio() / 200;
        return CARD.finding(
                isToSettle(evidence, view) ? Severity.FIX : Severity.NOTE,
                List.of(Subject.equipment(view.screen()), new Subject("room", view.room())),
                "The seat that is worst off sits " + Wording.length(evidence, view.distance()) + " from "
                        + Words.said(view.screen()) + ", " + number(view.ratio())
                        + " times the height of its picture; up to "
                        + number(limit) + " is good for reading.",
                List.of(new Value("distance in picture heights", view.ratio(), limit, "")),
                List.of(Fix.of("Set words at least " + number(part)
                        + " % of the picture's height, or use a larger or a second screen.")));
    }

    /** What has hung there for years is no more than worth knowing. */
    private static boolean isToSettle(Evidence evidence, ScreenView view) {
        Equipment screen = evidence.project().equipment().get(view.screen());
        return view.ratio() > WATCHING.value() && screen != null && screen.life() != Life.KEEP;
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.1f", value).replace(".0", "");
    }
}
