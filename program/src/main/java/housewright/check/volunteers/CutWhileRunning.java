package housewright.check.volunteers;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.check.Wording;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.operation.Cut;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** Computers, recorders and projectors whose supply is switched with a group. */
public final class CutWhileRunning implements Rule {
    private static final Card CARD = new Card(
            "cut-while-running",
            "Does nothing lose its supply that must be shut down first?",
            Set.of(Severity.FIX),
            new Source.CommonPractice(),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        Map<String, List<String>> byMaster = new LinkedHashMap<>();
        for (Cut cut : evidence.operation().cuts()) {
            byMaster.computeIfAbsent(cut.master(), key -> new ArrayList<>()).add(cut.thing());
        }
        return byMaster.entrySet().stream().map(each -> {
            List<String> cut = each.getValue();
            List<Subject> subjects = new ArrayList<>();
            cut.forEach(thing -> subjects.add(Subject.equipment(thing)));
            subjects.add(Subject.equipment(each.getKey()));
            return CARD.finding(
                    Severity.FIX,
                    subjects,
                    "Whoever switches " + Words.said(each.getKey()) + " off cuts " + Wording.things(cut, 4)
                            + " while " + (cut.size() == 1 ? "it runs" : "they run")
                            + ": files are lost, lamps are not cooled.",
                    List.of(),
                    List.of(Fix.of("Take " + (cut.size() == 1 ? "it" : "them")
                            + " from an outlet that stays on, and have the volunteer shut down first.")));
        });
    }
}
