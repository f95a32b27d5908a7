package housewright.check.picture;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.picture.Jack;
import housewright.picture.Stretch;
import housewright.unit.VideoFormat;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** A source of a mixer that cannot come in in the mixer's size and scan, at an input without a scaler. */
public final class MixerSourceOffFormat implements Rule {
    private static final Card CARD = new Card(
            "mixer-source-off-format",
            "Does every source of a vision mixer come in in the mixer's own format, or by a scaler?",
            Set.of(Severity.FIX),
            new Source.CommonPractice(),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        return MixerFormats.off(evidence).stream()
                .filter(MixerFormats.Off::sameRate)
                .map(off -> finding(off.stretch(), off.mixer()));
    }

    private static Finding finding(Stretch stretch, VideoFormat mixer) {
        Jack where = stretch.findWithout(mixer).orElseThrow();
        String vision = stretch.last().thing();
        return CARD.finding(
                Severity.FIX,
                Said.subjects(where, stretch),
                where.at().said() + " does not do " + mixer.text() + ", in which " + Words.said(vision)
                        + " works, and that input has no scaler: "
                        + Words.said(stretch.first().thing())
                        + " could come in only as " + Said.formats(stretch.common()) + ".",
                List.of(),
                List.of(Fix.of("Plug it into an input of " + Words.said(vision)
                        + " that has a scaler, or put a scaler on the way.")));
    }
}
