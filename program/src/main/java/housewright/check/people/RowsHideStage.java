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
import housewright.model.Stage;
import housewright.model.Words;
import housewright.room.RowView;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** How one row of seats sees the faces on the stage over the next. */
public final class RowsHideStage implements Rule {
    static final Limit OVER = Limit.least("line of sight above the eyes of the row in front", 60, "mm");

    private static final Card CARD = new Card(
            "row-behind-row",
            "Does every row see the faces on the stage over the row in front?",
            Set.of(Severity.NOTE),
            new Source.Published(
                    "University of Bath worksheet on stadium sightlines (2012) and public articles on the C value",
                    "60 mm between heads, 90 mm well, 120 mm best"),
            Stage.DESIGN,
            List.of(OVER));

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        double limit = evidence.limit(CARD, OVER) / 1000;
        Map<String, List<RowView>> low = new LinkedHashMap<>();
        for (RowView view : evidence.rooms().rows()) {
            if (view.over() < limit) {
                low.computeIfAbsent(view.room(), key -> new ArrayList<>()).add(view);
            }
        }
        return low.entrySet().stream().map(each -> finding(evidence, each.getKey(), each.getValue(), limit));
    }

    private static Finding finding(Evidence evidence, String room, List<RowView> low, double limit) {
        RowView worst =
                low.stream().min(Comparator.comparingDouble(RowView::over)).orElseThrow();
        List<Subject> subjects = new ArrayList<>();
        subjects.add(new Subject("room", room));
        low.forEach(view -> subjects.add(new Subject(view.kind(), view.what())));
        return CARD.finding(
                Severity.NOTE,
                subjects,
                "In " + Words.said(room) + " row " + worst.row() + " sees " + Words.said(worst.what()) + " only "
                        + (worst.over() < 0
                                ? "past the heads in front"
                                : Wording.length(evidence, worst.over()) + " above the eyes in front")
                        + "; " + Wording.length(evidence, limit) + " sees between heads.",
                List.of(new Value("C value", 1000 * worst.over(), limit * 1000, "mm")),
                List.of(Fix.of("Raise what must be seen, stagger the seats, or show the faces on a screen.")));
    }
}
