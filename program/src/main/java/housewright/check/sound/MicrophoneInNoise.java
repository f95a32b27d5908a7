package housewright.check.sound;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.finding.Value;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.sound.Voice;
import housewright.sound.Voice.Preamp;
import housewright.unit.Level;
import housewright.unit.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What arrives is so low that the input's own noise is heard with it. Both are referred to the input, so the gain that
 * follows does not matter: noise of -127 dBu at an input becomes -77 dBu behind a gain of 50 dB, and so does the signal
 * rise by 50 dB.
 */
final class MicrophoneInNoise implements Rule {
    static final Limit OVER = Limit.least("microphone's level over the input's noise", 40, "dB");

    private static final Card CARD = new Card(
            "microphone-in-noise",
            "Does every microphone arrive well above the noise of its input?",
            Set.of(Severity.FIX, Severity.NOTE),
            new Source.CommonPractice(),
            Stage.DESIGN,
            List.of(OVER));

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        double least = evidence.limit(CARD, OVER);
        List<Finding> findings = new ArrayList<>();
        for (Voice voice : evidence.sound().voices()) {
            Preamp preamp = voice.preamp();
            Level noise = preamp == null ? null : preamp.noise();
            if (preamp != null && noise != null) {
                double over = preamp.arrives().value() - noise.to(Unit.DBU).value();
                if (over < least) {
                    findings.add(finding(voice, preamp, over, least));
                }
            }
        }
        return findings.stream();
    }

    private static Finding finding(Voice voice, Preamp preamp, double found, double least) {
        return CARD.finding(
                voice.stated() ? Severity.FIX : Severity.NOTE,
                List.of(
                        Subject.equipment(voice.source().thing()),
                        Subject.equipment(preamp.at().thing())),
                Words.said(voice.source().thing()) + " arrives at "
                        + preamp.at().said() + " only "
                        + GainEdit.said(found) + " above the noise of that input with "
                        + MicrophoneClips.pressure(voice) + " at it; " + GainEdit.said(least)
                        + " keeps the noise out of pauses.",
                List.of(new Value("level over noise", found, least, "dB")),
                List.of(Fix.of(
                        "Bring it nearer, take a microphone that gives more, or take out what loses level between"
                                + " the two.")));
    }
}
