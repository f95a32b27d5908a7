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
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Too much gain for how loud it is. EBU R 68 leaves 18 dB between the usual level and full scale; programme peaks reach
 * 9 dB over the usual level, so with less than that left they clip. Where nobody has said how loud it is at the
 * microphone, that is a note: a talker is assumed.
 */
final class MicrophoneClips implements Rule {
    static final Limit LEFT = Limit.least("left over the usual level for peaks", 18, "dB");
    static final double PEAKS_DB = 9;

    private static final Card CARD = new Card(
            "microphone-clips",
            "Is enough left above every microphone's usual level before its input or the desk clips?",
            Set.of(Severity.FIX, Severity.NOTE),
            new Source.Published(
                    "EBU R 68-2000, as quoted", "alignment level 18 dB below full scale, peaks 9 dB over it"),
            Stage.DESIGN,
            List.of(LEFT));

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        double least = evidence.limit(CARD, LEFT);
        return evidence.sound().voices().stream()
                .filter(voice -> voice.tight() != null && voice.headroomDb() < least)
                .map(voice -> finding(evidence, voice, voice.tight(), least));
    }

    private static Finding finding(Evidence evidence, Voice voice, Address tight, double least) {
        double left = voice.headroomDb();
        String mic = Words.said(voice.source().thing());
        String message = (left < 0
                        ? mic + " clips at " + tight.said() + " by " + GainEdit.said(-left)
                        : mic + " has only " + GainEdit.said(left) + " left at " + tight.said())
                + " with "
                + pressure(voice)
                + " at it"
                + (left < 0 ? "." : "; " + GainEdit.said(least) + " is usual, for peaks.");
        List<Subject> subjects =
                new ArrayList<>(List.of(Subject.equipment(voice.source().thing()), Subject.equipment(tight.thing())));
        GainAt most = voice.gains().stream()
                .max(Comparator.comparingDouble(GainAt::db))
                .orElse(null);
        if (most != null && !subjects.contains(Subject.equipment(most.at().thing()))) {
            subjects.add(Subject.equipment(most.at().thing()));
        }
        return CARD.finding(
                voice.stated() && left < PEAKS_DB ? Severity.FIX : Severity.NOTE,
                subjects,
                message,
                List.of(new Value("left before it clips", left, least, "dB")),
                List.of(fix(evidence, tight, most, Math.ceil(least - left))));
    }

    private static Fix fix(Evidence evidence, Address tight, @Nullable GainAt most, double byDb) {
        if (most == null || most.db() < byDb) {
            return Fix.of("Put a pad of " + GainEdit.said(byDb) + " before " + tight.said() + ".");
        }
        double less = most.db() - byDb;
        Map<Address, @Nullable Double> gains = new LinkedHashMap<>();
        gains.put(most.at(), less);
        return new Fix(
                "Turn the gain at " + most.at().said() + " down from " + GainEdit.said(most.db()) + " to "
                        + GainEdit.said(less) + ".",
                GainEdit.set(evidence.project(), gains));
    }

    /** "120 dB SPL", "72 dB SPL (assumed: a talker)". */
    static String pressure(Voice voice) {
        return voice.pressure().text() + (voice.stated() ? "" : " (assumed: a talker)");
    }
}
