package housewright.check.light;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.model.Circuit;
import housewright.model.Equipment;
import housewright.model.Kind;
import housewright.model.Model;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.model.change.Change;
import housewright.model.change.Section;
import housewright.power.Supplies;
import housewright.power.Supply;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** An LED lamp, a moving head or any electronic supply on mains that a dimmer chops: it flickers, fails, or burns. */
public final class NotForADimmer implements Rule {
    private static final Card CARD = new Card(
            "not-for-a-dimmer",
            "Does nothing hang on dimmed mains but lamps that are made for it?",
            Set.of(Severity.STOP),
            new Source.CommonPractice(),
            Stage.SURVEY);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        Map<String, List<Supply>> byDimmer = new LinkedHashMap<>();
        Supplies supplies = evidence.supplies();
        for (Supply each : supplies.supplies()) {
            String dimmer = Dimmed.by(evidence, each);
            Model model = each.thing().model();
            boolean itself = model != null
                    && model.kind() == Kind.DIMMER
                    && evidence.project()
                            .venue()
                            .circuits()
                            .containsKey(String.valueOf(dimmer)); // it may be what dims it
            if (dimmer != null && !Supplies.handsOn(model) && !itself && !Dimmed.isMadeForIt(model)) {
                byDimmer.computeIfAbsent(dimmer, key -> new ArrayList<>()).add(each);
            }
        }
        List<Finding> findings = new ArrayList<>();
        byDimmer.forEach((dimmer, these) -> findings.add(finding(evidence, dimmer, these)));
        return findings.stream();
    }

    private static Finding finding(Evidence evidence, String dimmer, List<Supply> these) {
        List<String> known = new ArrayList<>();
        List<String> unknown = new ArrayList<>();
        for (Supply each : these) {
            Model model = each.thing().model();
            (model == null || !model.portsKnown() ? unknown : known).add(each.id());
        }
        List<String> ids = these.stream().map(Supply::id).toList();
        boolean circuit = evidence.project().venue().circuits().containsKey(dimmer)
                && !evidence.project().equipment().containsKey(dimmer);
        List<Subject> subjects = new ArrayList<>(Said.equipment(ids));
        subjects.add(circuit ? new Subject("circuit", dimmer) : Subject.equipment(dimmer));
        String where = circuit ? "the dimmed circuit " + dimmer : "the dimmer " + Words.said(dimmer);
        String message = known.isEmpty()
                ? Said.things(unknown) + " " + Said.be(unknown.size()) + " on " + where
                        + ", and nobody has written what " + (unknown.size() == 1 ? "it is" : "they are")
                        + ": LED or electronics there may burn."
                : Said.things(known) + " " + Said.be(known.size()) + " on " + where
                        + ", and not made for chopped mains: electronics there flicker, fail or burn."
                        + (unknown.isEmpty() ? "" : " Of " + Said.things(unknown) + " nobody has written what it is.");
        return CARD.finding(Severity.STOP, subjects, message, List.of(), fixes(evidence, these, unknown.isEmpty()));
    }

    private static List<Fix> fixes(Evidence evidence, List<Supply> these, boolean known) {
        List<Fix> fixes = new ArrayList<>();
        List<Change> changes = new ArrayList<>();
        Set<String> circuits = new LinkedHashSet<>();
        for (Supply each : these) {
            Equipment equipment = evidence.getEquipment(each.id());
            Circuit plain = plain(evidence, equipment);
            if (plain != null && each.lead() == null) {
                circuits.add(plain.id());
                changes.add(new Change.Put(Section.EQUIPMENT, each.id(), equipment.poweredFrom(plain.id(), null)));
            }
        }
        if (known && changes.size() == these.size()) {
            fixes.add(new Fix(
                    "Power " + (these.size() == 1 ? "it" : "them") + " from " + Said.some(List.copyOf(circuits))
                            + ", which no dimmer feeds; who may change the mains is for local code to say.",
                    changes));
        }
        fixes.add(Fix.of(
                known
                        ? "Plug it into an outlet that no dimmer feeds; a new one is a licensed electrician's work."
                        : "Find out what it is before it is switched on."));
        return fixes;
    }

    private static @Nullable Circuit plain(Evidence evidence, Equipment equipment) {
        for (Circuit each : evidence.project().venue().circuits().values()) {
            if (!each.dimmed() && equipment.at() != null && each.places().contains(equipment.at())) {
                return each;
            }
        }
        return null;
    }
}
