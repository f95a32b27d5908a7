package housewright.check.people;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.check.Wording;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.model.Free;
import housewright.model.Hire;
import housewright.model.Person;
import housewright.model.Stage;
import housewright.model.Words;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** A hired machine on days on which nobody who may drive it is free. */
public final class LiftOperatorNotFree implements Rule {
    /** A hire on offer for longer than this always has a day. */
    private static final int MOST_DAYS = 60;

    private static final Card CARD = new Card(
            "lift-operator-not-free",
            "Is somebody who is trained for it free on a day on which a hire can be had?",
            Set.of(Severity.FIX),
            new Source.TheProject(),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        return evidence.project().hires().values().stream()
                .map(hire -> finding(evidence, hire))
                .flatMap(Stream::ofNullable);
    }

    private static @Nullable Finding finding(Evidence evidence, Hire hire) {
        String skill = hire.skill();
        if (skill == null || hire.offered().isEmpty()) {
            return null;
        }
        List<Person> trained = evidence.project().people().values().stream()
                .filter(person -> person.skills().contains(skill))
                .toList();
        LocalDate first = hire.offered().getFirst();
        LocalDate last = hire.offered().getLast();
        if (trained.isEmpty() || trained.stream().anyMatch(person -> isFree(person, first, last))) {
            return null; // nobody may drive it at all, which is another rule's; or somebody can
        }
        List<Subject> subjects = new ArrayList<>();
        subjects.add(new Subject("hire", hire.id()));
        trained.forEach(person -> subjects.add(new Subject("person", person.id())));
        String who = Wording.things(trained.stream().map(Person::id).toList(), 3);
        return CARD.finding(
                Severity.FIX,
                subjects,
                Words.said(hire.id()) + " can be had from " + first + " to " + last + ", and " + who
                        + (trained.size() == 1 ? " is" : " are") + " not free on any of these days.",
                List.of(),
                List.of(Fix.of("Hire it for days on which " + who + (trained.size() == 1 ? " is" : " are")
                        + " free, or find somebody else who is trained (" + Words.said(skill) + ").")));
    }

    /** True, too, where nobody has said when they are free. */
    private static boolean isFree(Person person, LocalDate first, LocalDate last) {
        if (person.free().isEmpty() || first.plusDays(MOST_DAYS).isBefore(last)) {
            return true;
        }
        for (LocalDate day = first; !day.isAfter(last); day = day.plusDays(1)) {
            for (Free free : person.free()) {
                boolean within = free.between().isEmpty()
                        || (!day.isBefore(free.between().getFirst())
                                && !day.isAfter(free.between().getLast()));
                if (within && free.days().days().contains(day.getDayOfWeek())) {
                    return true;
                }
            }
        }
        return false;
    }
}
