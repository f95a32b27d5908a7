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
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;

/** A computer that goes, with whatever is on it. */
public final class ComputerNotCopied implements Rule {
    private static final Set<Kind> KEEPS = EnumSet.of(Kind.COMPUTER, Kind.RECORDER);

    /** What people call it. */
    private static final List<String> SAVES =
            List.of("copy", "copied", "copies", "back up", "backup", "save", "migrat", "transfer", "rescue");

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
        return evidence.project().equipment().values().stream()
                .filter(each -> each.life() == Life.STRIKE && !isCopied(evidence, each))
                .filter(each -> evidence.types()
                        .findModel(each.model())
                        .filter(model -> KEEPS.contains(model.kind()))
                        .isPresent())
                .map(each -> finding(evidence, each));
    }

    /** A task stands for the one that copies it, or needs it and says that it copies. */
    private static boolean isCopied(Evidence evidence, Equipment old) {
        String copy = "copy-" + old.id();
        for (Task task : evidence.project().tasks().values()) {
            if (task.id().equals(copy) || task.covers().contains(copy)) {
                return true; // one that is skipped says so on purpose
            }
            String name = (task.name() == null ? task.id() : task.name()).toLowerCase(Locale.ROOT);
            if (!task.skip()
                    && task.needs().contains(old.id())
                    && SAVES.stream().anyMatch(name::contains)) {
                return true;
            }
        }
        return false;
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
