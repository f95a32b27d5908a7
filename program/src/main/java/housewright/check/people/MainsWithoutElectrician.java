package housewright.check.people;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.check.Wording;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.model.Connector;
import housewright.model.Equipment;
import housewright.model.Model;
import housewright.model.Person;
import housewright.model.Signal;
import housewright.model.Stage;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Equipment that is wired in, and nobody on the job who may do it. */
public final class MainsWithoutElectrician implements Rule {
    private static final Card CARD = new Card(
            "mains-without-electrician",
            "Is a licensed electrician on the job wherever something is wired in?",
            Set.of(Severity.STOP),
            new Source.CommonPractice(),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        Collection<Person> people = evidence.project().people().values();
        if (people.isEmpty() || people.stream().anyMatch(MainsWithoutElectrician::isElectrician)) {
            return Stream.empty();
        }
        List<String> wired = evidence.project().equipment().values().stream()
                .filter(MainsWithoutElectrician::isTouched)
                .filter(each -> isWired(evidence, each.model())
                        || isWired(evidence, each.today().model())) // a plug in its place: it has to come off
                .map(Equipment::id)
                .toList();
        return wired.isEmpty()
                ? Stream.empty()
                : Stream.of(CARD.finding(
                        Severity.STOP,
                        wired.stream().map(Subject::equipment).toList(),
                        Wording.things(wired, 4) + (wired.size() == 1 ? " is" : " are")
                                + " wired to the mains, and nobody on the job is an electrician: putting in, moving and"
                                + " taking off wait.",
                        List.of(),
                        List.of(Fix.of("Engage a licensed electrician and enter them under people with the skill mains;"
                                + " they decide, test and certify by local code."))));
    }

    /** Put in, taken off, or kept and elsewhere, on another circuit or another type afterwards. */
    private static boolean isTouched(Equipment thing) {
        Equipment was = thing.today();
        return switch (thing.life()) {
            case NEW, STRIKE, MOVE -> true;
            case KEEP ->
                !Objects.equals(was.at(), thing.at())
                        || !Objects.equals(was.unit(), thing.unit())
                        || !Objects.equals(was.model(), thing.model())
                        || !Objects.equals(was.circuit(), thing.circuit())
                        || !Objects.equals(was.poweredBy(), thing.poweredBy());
            case HIRE -> false;
        };
    }

    private static boolean isElectrician(Person person) {
        String role = person.role() == null ? "" : person.role().toLowerCase(Locale.ROOT);
        return person.skills().contains("mains") || role.contains("electrician");
    }

    private static boolean isWired(Evidence evidence, @Nullable String type) {
        Model model = evidence.types().findModel(type).orElse(null);
        return model != null
                && model.ports().values().stream()
                        .anyMatch(port -> port.in() == Signal.MAINS && port.connector() == Connector.TERMINALS);
    }
}
