package housewright.check.sound;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.finding.Value;
import housewright.model.Kind;
import housewright.model.LocalRef;
import housewright.model.Setting;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.model.change.Change;
import housewright.model.change.Section;
import housewright.sound.ClockDomain.Mismatch;
import housewright.unit.Frequency;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** Two ends of one digital link at different sample rates: nothing passes, or it is noise. */
final class SampleRatesDiffer implements Rule {
    private static final Card CARD = new Card(
            "sample-rates-differ",
            "Are both ends of every digital link set to the same sample rate?",
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
                .flatMap(domain -> domain.mismatches().stream())
                .map(mismatch -> finding(evidence, mismatch));
    }

    private static Finding finding(Evidence evidence, Mismatch m) {
        boolean otherLeads = evidence.sound().isKind(m.other(), Kind.MIXER);
        String changed = otherLeads ? m.one() : m.other();
        Frequency rate = otherLeads ? m.otherRate() : m.oneRate();
        Frequency wrong = otherLeads ? m.oneRate() : m.otherRate();
        List<Subject> subjects = new ArrayList<>(List.of(Subject.equipment(m.one()), Subject.equipment(m.other())));
        if (m.cable() != null) {
            subjects.add(Subject.cable(m.cable()));
        }
        return CARD.finding(
                Severity.FIX,
                subjects,
                Words.said(m.one()) + " is set to " + m.oneRate().text() + " and "
                        + Words.said(m.other()) + ", to which it is joined, to "
                        + m.otherRate().text() + ": no sound passes.",
                List.of(new Value(
                        "sample rate", m.otherRate().hertz(), m.oneRate().hertz(), "Hz")),
                List.of(new Fix(
                        "Set " + Words.said(changed) + " to " + rate.text() + ".",
                        set(evidence, changed, wrong, rate))));
    }

    private static List<Change> set(Evidence evidence, String thing, Frequency wrong, Frequency rate) {
        return evidence.project().equipment().values().stream()
                .filter(each -> each.id().equals(thing))
                .<Change>map(each -> {
                    Map<LocalRef, Setting> set = new LinkedHashMap<>(each.set());
                    set.replaceAll((ref, setting) ->
                            setting.sampleRate() != null && setting.sampleRate().hertz() == wrong.hertz()
                                    ? setting.with(rate)
                                    : setting);
                    return new Change.Put(Section.EQUIPMENT, thing, each.with(set));
                })
                .toList();
    }
}
