package housewright.check.light;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.model.Control;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.model.change.Change;
import housewright.model.change.Section;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** A button or a time for which nothing is said that it does, or a deed that nothing sets off. */
public final class ControlDoesNothing implements Rule {
    private static final Card CARD = new Card(
            "control-does-nothing",
            "Is it said of every control what sets it off and what it does?",
            Set.of(Severity.FIX),
            new Source.TheProject(),
            Stage.ORDER);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        List<Finding> findings = new ArrayList<>();
        for (Control each : evidence.project().controls().values()) {
            boolean starts = each.press() != null || each.at() != null;
            boolean does = each.calls() != null || each.does() != null;
            if (!starts || !does) {
                List<Change> drop = List.of(new Change.Drop(Section.CONTROLS, each.id()));
                findings.add(CARD.finding(
                        Severity.FIX,
                        List.of(Said.control(each.id())),
                        "The control " + Words.said(each.id()) + " says "
                                + (does
                                        ? "what it does and not what sets it off."
                                        : starts
                                                ? "what sets it off and not what it does."
                                                : "neither what sets it off nor what it does."),
                        List.of(),
                        List.of(
                                Fix.of("Write `press` or `at`, and `calls` or `does`."),
                                new Fix("Or take it away.", drop))));
            }
        }
        return findings.stream();
    }
}
