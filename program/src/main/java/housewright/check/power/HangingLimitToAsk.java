package housewright.check.power;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Value;
import housewright.model.Project;
import housewright.model.Question;
import housewright.model.Remarks;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.model.change.Change;
import housewright.model.change.Section;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** At the survey: the points of which it must be asked who states what they carry. */
public final class HangingLimitToAsk implements Rule {
    private static final Card CARD = new Card(
            "hanging-limit-to-ask",
            "At the survey: is it asked of every point overhead who states what it carries?",
            Set.of(Severity.NOTE),
            new Source.CommonPractice(),
            Stage.SURVEY);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        Project project = evidence.project();
        if (project.about().stage() != Stage.SURVEY) {
            return Stream.empty(); // by then it stops the job, see HangingDataMissing
        }
        Set<String> asked = new HashSet<>();
        project.questions().values().forEach(each -> asked.add(each.about() == null ? "" : each.about()));
        List<String> open = Overhead.points(evidence).stream()
                .filter(point -> point.limit() == null)
                .map(point -> point.place().id())
                .filter(place -> !asked.contains("places." + place))
                .toList();
        if (open.isEmpty()) {
            return Stream.empty();
        }
        List<Change> questions = new ArrayList<>();
        int number = 1;
        for (String place : open) {
            while (project.questions().containsKey("q" + number)) {
                number++;
            }
            String id = "q" + number++;
            questions.add(new Change.Put(
                    Section.QUESTIONS,
                    id,
                    new Question(
                            id,
                            null,
                            "places." + place,
                            "Who can state, in writing, what the fixing at " + Words.said(place) + " carries?",
                            null,
                            null,
                            Remarks.NONE)));
        }
        return Stream.of(CARD.finding(
                Severity.NOTE,
                open.stream().map(Said::place).toList(),
                "Ask today who states what " + Said.things(open) + (open.size() == 1 ? " carries" : " carry")
                        + ": without it nothing may be planned up there.",
                List.of(new Value("points without a stated limit", open.size(), 0.0, "")),
                List.of(new Fix("Write the question down for the lead. " + Said.RIGGING, questions))));
    }
}
