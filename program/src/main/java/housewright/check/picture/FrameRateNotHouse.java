package housewright.check.picture;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Value;
import housewright.model.Kind;
import housewright.model.Ref.Address;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.picture.Jack;
import housewright.picture.Stretch;
import housewright.unit.VideoFormat;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A picture that can only come at another rate than the house's: 59.94 into a house of 50. A mixer without a scaler at
 * that input does not take it; a recording or a screen jumps ten times a second, and a camera flickers under lamps on
 * 50 Hz mains.
 */
public final class FrameRateNotHouse implements Rule {
    private static final Card CARD = new Card(
            "frame-rate-not-house",
            "Do all pictures come at the frame rate of the house?",
            Set.of(Severity.FIX, Severity.NOTE),
            new Source.CommonPractice(),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        List<Finding> findings = new ArrayList<>();
        Set<Address> seen = new HashSet<>();
        for (MixerFormats.Off off : MixerFormats.off(evidence)) {
            if (!off.sameRate() && seen.add(off.stretch().jacks().getFirst().at())) {
                findings.add(finding(off.stretch(), off.mixer(), Severity.FIX));
            }
        }
        VideoFormat house = evidence.project().about().picture();
        for (Stretch stretch : evidence.pictures().stretches()) {
            if (house != null
                    && isOffRate(stretch, house)
                    && seen.add(stretch.jacks().getFirst().at())) {
                findings.add(finding(stretch, house, Severity.NOTE));
            }
        }
        return findings.stream();
    }

    /** A camera anywhere but in a mixer; anything that is streamed or recorded. */
    private static boolean isOffRate(Stretch stretch, VideoFormat house) {
        boolean matters = stretch.first().is(Kind.CAMERA)
                || stretch.last().is(Kind.ENCODER)
                || stretch.last().is(Kind.CAPTURE)
                || stretch.last().is(Kind.RECORDER);
        return matters
                && !stretch.last().is(Kind.VISION_MIXER)
                && !stretch.common().isEmpty()
                && !new MixerFormats.Off(stretch, house).sameRate();
    }

    private static Finding finding(Stretch stretch, VideoFormat house, Severity severity) {
        Jack source = stretch.jacks().getFirst();
        double rate = stretch.common().iterator().next().rate();
        String into = Words.said(stretch.last().thing());
        return CARD.finding(
                severity,
                Said.subjects(source, stretch),
                source.at().said() + " can reach " + into + " only as " + Said.formats(stretch.common()) + ", and "
                        + (severity == Severity.FIX
                                ? into + " works in " + house.text() + " and has no scaler there."
                                : "the house runs at " + house.text() + ": movement jumps."),
                List.of(new Value("rate", rate, house.rate(), "Hz")),
                List.of(Fix.of("Take a source that gives " + house.text() + " in place of "
                        + Words.said(stretch.first().thing()) + ", or put a converter of frame rates behind it.")));
    }
}
