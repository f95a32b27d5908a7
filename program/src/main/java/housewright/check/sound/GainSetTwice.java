package housewright.check.sound;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.finding.Value;
import housewright.model.Ref.Address;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.sound.Voice;
import housewright.sound.Voice.GainAt;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The preamplifier's gain written down at the box and again at the desk that only remembers it: it counts twice. */
final class GainSetTwice implements Rule {
    static final Limit AGAIN = Limit.most("gain set once more behind the preamplifier", 20, "dB");

    private static final Card CARD = new Card(
            "gain-set-twice",
            "Is the gain of every microphone set in one place only?",
            Set.of(Severity.FIX),
            new Source.CommonPractice(),
            Stage.DESIGN,
            List.of(AGAIN));

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        double most = evidence.limit(CARD, AGAIN);
        return evidence.sound().voices().stream()
                .filter(voice -> large(voice, most).size() > 1)
                .map(voice -> finding(evidence, voice, large(voice, most), most));
    }

    private static List<GainAt> large(Voice voice, double most) {
        return voice.gains().stream().filter(gain -> gain.db() > most).toList();
    }

    private static Finding finding(Evidence evidence, Voice voice, List<GainAt> gains, double most) {
        Set<Subject> subjects = new LinkedHashSet<>();
        gains.reversed()
                .forEach(gain -> subjects.add(Subject.equipment(gain.at().thing())));
        subjects.add(Subject.equipment(voice.source().thing()));
        String all = gains.stream()
                .map(gain -> GainEdit.said(gain.db()) + " at " + gain.at().said())
                .collect(Collectors.joining(" and "));
        Map<Address, @Nullable Double> gone = new LinkedHashMap<>();
        gains.stream().skip(1).forEach(gain -> gone.put(gain.at(), null));
        return CARD.finding(
                Severity.FIX,
                List.copyOf(subjects),
                "The gain of " + Words.said(voice.source().thing()) + " is set twice: " + all + ".",
                List.of(new Value("gain set once more", gains.get(1).db(), most, "dB")),
                List.of(new Fix(
                        "Keep the gain at " + gains.getFirst().at().said() + " and take the other away.",
                        GainEdit.set(evidence.project(), gone))));
    }
}
