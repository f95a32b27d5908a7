package housewright.check.people;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.check.Wording;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.model.Hire;
import housewright.model.Person;
import housewright.model.Stage;
import housewright.model.Task;
import housewright.model.Words;
import housewright.model.change.Change;
import housewright.model.change.Section;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** A task with a hired machine, given to people who may not use it. */
public final class TaskWithoutSkill implements Rule {
    private static final Card CARD = new Card(
            "task-without-skill",
            "Has every task that needs a hired machine somebody who is trained for it?",
            Set.of(Severity.STOP),
            new Source.Published(
                    "29 CFR 1926.453, as quoted in OSHA slides; elsewhere local law",
                    "only authorised persons operate a lift"),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        List<Finding> findings = new ArrayList<>();
        for (Task task : evidence.project().tasks().values()) {
            for (String need : task.needs()) {
                Hire hire = evidence.project().hires().get(need);
                String skill = hire == null ? null : hire.skill();
                if (hire == null || skill == null || task.who().isEmpty() || hasSkill(evidence, task.who(), skill)) {
                    continue;
                }
                List<String> trained = evidence.project().people().values().stream()
                        .filter(person -> person.skills().contains(skill))
                        .map(Person::id)
                        .toList();
                if (!trained.isEmpty()) { // else nobody may at all, which another rule says
                    findings.add(finding(task, hire, skill, trained));
                }
            }
        }
        return findings.stream();
    }

    private static boolean hasSkill(Evidence evidence, List<String> who, String skill) {
        return who.stream()
                .map(each -> evidence.project().people().get(each))
                .anyMatch(person -> person != null && person.skills().contains(skill));
    }

    private static Finding finding(Task task, Hire hire, String skill, List<String> trained) {
        List<String> who = new ArrayList<>(task.who());
        who.add(trained.getFirst());
        Task with = task.by(who);
        return CARD.finding(
                Severity.STOP,
                List.of(new Subject("task", task.id()), new Subject("hire", hire.id())),
                Words.said(task.id()) + " needs " + Words.said(hire.id()) + ", and "
                        + Wording.things(task.who(), 3) + (task.who().size() == 1 ? " is" : " are")
                        + " not trained for it (" + Words.said(skill) + ").",
                List.of(),
                List.of(new Fix(
                        "Have " + Words.said(trained.getFirst()) + " with them, who is trained for it.",
                        List.of(new Change.Put(Section.TASKS, task.id(), with)))));
    }
}
