package housewright.check.people;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.check.Wording;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Value;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.room.Obstacle;
import housewright.room.View;
import housewright.room.Workplace;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** The congregation between an operator and the stage, seated and on its feet. */
public final class HeadsHideStage implements Rule {
    /** Nobody's head is known to the centimetre. */
    private static final double KNOWN_TO_M = 0.01;

    private static final Card CARD = new Card(
            "heads-hide-stage",
            "Does whoever works at a desk see the stage over the heads between, seated and standing?",
            Set.of(Severity.FIX, Severity.NOTE),
            new Source.Published(
                    "NUREG-0700 Rev. 3, table 11.4",
                    "the lowest eye to see over something is that of the 5th percentile of women"),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        List<Finding> findings = new ArrayList<>();
        for (Workplace work : evidence.rooms().workplaces()) {
            List<View> views = work.views();
            List<View> never = hidden(views, work.high(), true);
            List<View> low = hidden(views, work.low(), true);
            boolean known = work.operator() != null;
            if (!never.isEmpty() && 2 * never.size() >= views.size()) {
                findings.add(finding(evidence, work, never, work.high(), Severity.FIX, ""));
            } else if (!low.isEmpty()) {
                findings.add(finding(
                        evidence,
                        work,
                        low,
                        work.low(),
                        Severity.NOTE,
                        known ? "" : "; nobody has said whether the operator sits or stands"));
            } else if (known) {
                List<View> standing = hidden(views, work.low(), false);
                if (!standing.isEmpty() && 2 * standing.size() >= views.size()) {
                    findings.add(standing(evidence, work, standing));
                }
            }
        }
        return findings.stream();
    }

    private static List<View> hidden(List<View> views, double eye, boolean seated) {
        return views.stream()
                .filter(view -> {
                    Obstacle worst = view.worst(eye, seated ? view.seated() : view.standing());
                    return worst != null && view.clear(eye, worst) < -KNOWN_TO_M;
                })
                .toList();
    }

    private static Finding finding(
            Evidence evidence, Workplace work, List<View> hidden, double eye, Severity severity, String unsaid) {
        Worst worst = Worst.of(hidden, eye, true);
        double riser = hidden.stream()
                        .mapToDouble(view -> view.eyeOver(view.seated()))
                        .max()
                        .orElse(eye)
                - eye;
        return CARD.finding(
                severity,
                Sight.subjects(work, null),
                "From " + Words.said(work.place().id()) + " seated heads hide " + Wording.things(names(hidden), 4)
                        + ": "
                        + Wording.length(evidence, worst.away()) + " away they stand "
                        + Wording.length(evidence, -worst.clear()) + " above the line from "
                        + Sight.eye(evidence, work, eye) + unsaid + ".",
                List.of(new Value("line above the heads", 1000 * worst.clear(), 0.0, "mm")),
                List.of(Fix.of(
                        work.operator() == null
                                ? "Say under operator: of the place whether they sit or stand, and on what floor; a floor "
                                        + Wording.length(evidence, riser) + " higher sees over."
                                : "Raise the floor there by " + Wording.length(evidence, riser)
                                        + ", let the operator stand, or keep seats free in front.")));
    }

    private static Finding standing(Evidence evidence, Workplace work, List<View> hidden) {
        Worst worst = Worst.of(hidden, work.low(), false);
        double riser = hidden.stream()
                        .mapToDouble(view -> view.eyeOver(view.standing()))
                        .max()
                        .orElse(0)
                - work.low();
        return CARD.finding(
                Severity.NOTE,
                Sight.subjects(work, null),
                "While the congregation stands, " + Words.said(work.place().id()) + " sees nothing of "
                        + Wording.things(names(hidden), 4) + ": heads " + Wording.length(evidence, worst.away())
                        + " away are " + Wording.length(evidence, -worst.clear()) + " above the line from "
                        + Sight.eye(evidence, work) + ".",
                List.of(new Value("line above standing heads", 1000 * worst.clear(), 0.0, "mm")),
                List.of(Fix.of("A floor " + Wording.length(evidence, riser)
                        + " higher sees over; a camera's picture at the desk helps where that cannot be.")));
    }

    private static List<String> names(List<View> views) {
        return views.stream().map(View::what).toList();
    }

    /** The head that is most in the way. */
    private record Worst(double away, double clear) {
        static Worst of(List<View> hidden, double eye, boolean seated) {
            Worst worst = new Worst(0, 0);
            for (View view : hidden) {
                Obstacle head = view.worst(eye, seated ? view.seated() : view.standing());
                if (head != null && view.clear(eye, head) < worst.clear()) {
                    worst = new Worst(head.away(), view.clear(eye, head));
                }
            }
            return worst;
        }
    }
}
