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
import housewright.model.Stage;
import housewright.model.Words;
import housewright.model.change.Change;
import housewright.model.change.Section;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** A hired machine that nobody on the job may drive. */
public final class LiftWithoutOperator implements Rule {
    private static final Card CARD = new Card(
            "lift-without-operator",
            "Is somebody on the job trained for everything that is hired?",
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
        for (Hire hire : evidence.project().hires().values()) {
            String skill = hire.skill();
            String what = Words.said(hire.id());
            if (skill == null) {
                if (hire.isLift()) {
                    findings.add(finding(
                            evidence,
                            hire,
                            "Nobody has said what the operator of " + what + " must be trained in",
                            named(hire)));
                }
            } else if (evidence.project().people().values().stream()
                    .noneMatch(person -> person.skills().contains(skill))) {
                findings.add(finding(
                        evidence,
                        hire,
                        "Nobody on the job is trained for " + what + " (" + Words.said(skill)
                                + "), so nobody may use it",
                        Fix.of("Find somebody who is trained and enter them under people with the skill " + skill
                                + ", or hire " + what + " with its operator. Never let somebody untrained try.")));
            }
        }
        return findings.stream();
    }

    private static Finding finding(Evidence evidence, Hire hire, String fault, Fix fix) {
        List<String> blocked = Overhead.blocked(evidence, hire);
        return CARD.finding(
                Severity.STOP,
                List.of(new Subject("hire", hire.id())),
                fault
                        + (blocked.isEmpty()
                                ? ""
                                : ": " + Wording.some(blocked, 4) + (blocked.size() == 1 ? " waits" : " wait"))
                        + ".",
                List.of(),
                List.of(fix));
    }

    private static Fix named(Hire hire) {
        return new Fix(
                "Say its skill: lift-operator, where that is what the hirer and local law ask.",
                List.of(new Change.Put(
                        Section.HIRES,
                        hire.id(),
                        new Hire(
                                hire.id(),
                                hire.kind(),
                                hire.perDay(),
                                hire.offered(),
                                "lift-operator",
                                hire.remarks()))));
    }
}
