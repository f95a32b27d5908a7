package housewright.check.complete;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.model.Equipment;
import housewright.model.Kind;
import housewright.model.Life;
import housewright.model.Stage;
import housewright.model.Task;
import housewright.model.Where;
import housewright.model.Words;
import housewright.model.change.Change;
import housewright.model.change.Section;
import housewright.unit.TimeSpan;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** A computer that goes, with whatever is on it. */
public final class ComputerNotCopied implements Rule {
    private static final Set<Kind> KEEPS = EnumSet.of(Kind.COMPUTER, Kind.RECORDER);

    private static final Card CARD = new Card(
            "computer-not-copied",
            "Is everything copied from a computer before it goes?",
            Set.of(Severity.FIX),
            new Source.CommonPractice(),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        Set<String> copied = new HashSet<>();
        for (Task task : evidence.project().tasks().values()) {
            copied.addAll(task.needs());
        }
        return evidence.project().equipment().values().stream()
                .filter(each -> each.life() == Life.STRIKE && !copied.contains(each.id()))
                .filter(each -> evidence.types()
                        .findModel(each.model())
                        .filter(model -> KEEPS.contains(model.kind()))
                        .isPresent())
                .map(each -> finding(evidence, each));
    }

    private static Finding finding(Evidence evidence, Equipment old) {
        String id = "copy-" + old.id();
        List<String> who =
                evidence.project().people().keySet().stream().limit(1).toList();
        Task task = Task.of(
                id,
                "Copy what is on " + Words.said(old.id()) + " before it goes",
                TimeSpan.parse("2 h"),
                who,
                List.of(old.id()),
                Where.ROOM);
        return CARD.finding(
                Severity.FIX,
                List.of(Subject.equipment(old.id())),
                Words.said(old.id()) + " goes, and no task says that what is on it is copied before.",
                List.of(),
                List.of(new Fix(
                        "Enter a task that copies it; two hours are a guess, so is who does it.",
                        List.of(new Change.Put(Section.TASKS, id, task)))));
    }
}
