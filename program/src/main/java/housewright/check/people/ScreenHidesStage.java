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
import housewright.room.Obstacle;
import housewright.room.View;
import housewright.room.Workplace;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The screen in front of an operator, and what it hides of the stage. */
public final class ScreenHidesStage implements Rule {
    static final Limit CLEAR = Limit.least("line of sight above the screen", 0, "mm");

    private static final Card CARD = new Card(
            "screen-hides-stage",
            "Does whoever works at a desk see the stage over the screen in front of them?",
            Set.of(Severity.FIX, Severity.NOTE),
            new Source.Published(
                    "NUREG-0700 Rev. 3, table 11.4",
                    "the lowest eye to see over something is that of the 5th percentile of women"),
            Stage.DESIGN,
            List.of(CLEAR));

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        List<Finding> findings = new ArrayList<>();
        for (Workplace work : evidence.rooms().workplaces()) {
            Finding stated = stated(evidence, work);
            if (stated != null) {
                findings.add(stated);
            } else if (work.operator() == null || work.operator().screen() == null) {
                onDesk(evidence, work, findings);
            }
        }
        return findings.stream();
    }

    /** Those whose place is known hide something, whoever works there. */
    private static @Nullable Finding stated(Evidence evidence, Workplace work) {
        double limit = evidence.limit(CARD, CLEAR) / 1000;
        List<String> hidden = new ArrayList<>();
        Obstacle screen = null;
        View worst = null;
        for (View view : work.views()) {
            for (Obstacle each : view.screens()) {
                if (view.clear(work.low(), each) < limit && view.clear(work.high(), each) < limit) {
                    hidden.add(view.what());
                    if (worst == null
                            || screen == null
                            || view.clear(work.low(), each) < worst.clear(work.low(), screen)) {
                        worst = view;
                        screen = each;
                    }
                }
            }
        }
        if (worst == null || screen == null) {
            return null;
        }
        double over = screen.top() + limit - Sight.line(work.low(), worst, screen);
        String where = Words.said(work.place().id());
        return CARD.finding(
                Severity.FIX,
                Sight.subjects(work, screen),
                "From " + where + (screen.what().equals("screen") ? " the screen" : " " + Words.said(screen.what()))
                        + " hides " + Wording.things(hidden, 4)
                        + ": its top is " + Wording.length(evidence, over) + " above the line from "
                        + Sight.eye(evidence, work) + ".",
                List.of(new Value("line above the screen", -1000 * (over - limit), limit * 1000, "mm")),
                List.of(Fix.of("Put the screen lower or to one side, or raise the floor there by "
                        + Wording.length(evidence, Math.max(0, worst.eyeOver(List.of(screen)) + limit - work.low()))
                        + ".")));
    }

    /** One stands somewhere on the desk: a word of caution where it must not stand in front. */
    private static void onDesk(Evidence evidence, Workplace work, List<Finding> findings) {
        for (Obstacle screen : work.onDesk()) {
            List<String> hidden = new ArrayList<>();
            double top = Double.POSITIVE_INFINITY;
            for (View view : work.views()) {
                double line = Sight.line(work.high(), view, screen);
                if (line < screen.top()) {
                    hidden.add(view.what());
                    top = Math.min(top, line);
                }
            }
            if (!hidden.isEmpty()) {
                findings.add(CARD.finding(
                        Severity.NOTE,
                        List.of(
                                Subject.equipment(screen.what()),
                                new Subject("place", work.place().id())),
                        Words.said(screen.what()) + " on "
                                + Words.said(work.place().id()) + " comes up to "
                                + Wording.length(evidence, screen.top() - work.floor())
                                + "; straight in front it would hide " + Wording.things(hidden, 4) + " from "
                                + Sight.eye(evidence, work, work.high()) + ".",
                        List.of(new Value("top of the screen", screen.top() - work.floor(), top - work.floor(), "m")),
                        List.of(Fix.of("Stand it to one side, or no higher than "
                                + Wording.length(evidence, top - work.floor())
                                + "; say its top edge under operator: screen."))));
            }
        }
    }
}
