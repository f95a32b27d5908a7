package housewright.check.sound;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.finding.Value;
import housewright.model.Equipment;
import housewright.model.Kind;
import housewright.model.LocalRef;
import housewright.model.Setting;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.model.change.Change;
import housewright.model.change.Section;
import housewright.sound.ClockDomain;
import housewright.sound.ClockDomain.RatedPort;
import housewright.unit.Frequency;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What is joined digitally at different sample rates: nothing passes, or it is noise. */
final class SampleRatesDiffer implements Rule {
    private static final Card CARD = new Card(
            "sample-rates-differ",
            "Is everything that is joined digitally set to the same sample rate?",
            Set.of(Severity.FIX),
            new Source.CommonPractice(),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        return evidence.sound().clockDomains().stream()
                .filter(domain -> domain.rates().stream()
                                .mapToDouble(each -> each.rate().hertz())
                                .distinct()
                                .count()
                        > 1)
                .map(domain -> finding(evidence, domain));
    }

    private static Finding finding(Evidence evidence, ClockDomain domain) {
        RatedPort leads = domain.rates().stream()
                .filter(each -> evidence.sound().isKind(each.equipment(), Kind.MIXER))
                .findFirst()
                .orElse(domain.rates().getFirst());
        List<RatedPort> others = domain.rates().stream()
                .filter(each -> each.rate().hertz() != leads.rate().hertz())
                .toList();
        Set<Subject> subjects = new LinkedHashSet<>();
        others.forEach(each -> subjects.add(Subject.equipment(each.equipment())));
        subjects.add(Subject.equipment(leads.equipment()));
        String wrong = others.stream()
                .map(each -> Words.said(each.equipment()) + " at " + each.rate().text())
                .distinct()
                .collect(Collectors.joining(", "));
        RatedPort first = others.getFirst();
        return CARD.finding(
                Severity.FIX,
                List.copyOf(subjects),
                Words.said(leads.equipment()) + " works at " + leads.rate().text() + " and is joined digitally to "
                        + wrong + ": no sound passes between them.",
                List.of(new Value(
                        "sample rate", first.rate().hertz() / 1000, leads.rate().hertz() / 1000, "kHz")),
                List.of(new Fix(
                        "Set all of them to " + leads.rate().text() + ".", set(evidence, others, leads.rate()))));
    }

    private static List<Change> set(Evidence evidence, List<RatedPort> others, Frequency rate) {
        Map<String, Equipment> changed = new LinkedHashMap<>();
        for (RatedPort port : others) {
            Equipment thing = changed.getOrDefault(
                    port.equipment(), evidence.project().equipment().get(port.equipment()));
            if (thing != null) {
                Map<LocalRef, Setting> set = new LinkedHashMap<>(thing.set());
                set.replaceAll((ref, setting) -> setting.sampleRate() == null
                                || ref.spots().stream()
                                        .noneMatch(spot -> spot.name().equals(port.port()))
                        ? setting
                        : setting.with(rate));
                changed.put(thing.id(), thing.with(set));
            }
        }
        return changed.values().stream()
                .<Change>map(each -> new Change.Put(Section.EQUIPMENT, each.id(), each))
                .toList();
    }
}
