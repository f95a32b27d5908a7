package housewright.check.picture;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Value;
import housewright.model.Kind;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.picture.Jack;
import housewright.picture.Stretch;
import housewright.unit.VideoFormat;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The source can send the house format, and something on the way cannot take it: a 1080p50 picture into a 1.5G path. A
 * camera or mixer sends one format to all, so it would have to come down for all; a computer may send less to this one
 * screen, which is worth knowing.
 */
public final class PathBelowHouseFormat implements Rule {
    private static final Card CARD = new Card(
            "path-below-house-format",
            "Does everything on the way of a picture take the house format?",
            Set.of(Severity.FIX, Severity.NOTE),
            new Source.Published(
                    "SMPTE ST 424 and ST 292-1, as quoted", "2.97 Gbit/s for 1080p50 to 60, 1.485 Gbit/s for less"),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        VideoFormat house = evidence.project().about().picture();
        if (house == null) {
            return Stream.empty();
        }
        return Troubles.gathered(evidence.pictures().stretches(), stretch -> find(stretch, house)).stream()
                .map(stretch -> finding(stretch, stretch.findWithout(house).orElseThrow(), house));
    }

    private static Optional<Jack> find(Stretch stretch, VideoFormat house) {
        Jack source = stretch.jacks().getFirst();
        return source.port().formats().contains(house)
                        && !(MixerFormats.isFed(stretch) && MixerFormats.takes(stretch, house))
                        && !stretch.common().isEmpty()
                ? stretch.findWithout(house)
                : Optional.empty();
    }

    private static Finding finding(Stretch stretch, Jack where, VideoFormat house) {
        boolean shared = stretch.first().is(Kind.CAMERA) || stretch.first().is(Kind.VISION_MIXER);
        double needed = LinkRates.least(List.of(house));
        double taken = LinkRates.most(where.port().formats());
        boolean tooFast = needed > taken && taken > 0;
        String most = tooFast ? String.format(Locale.ROOT, " (%.3g Gbit/s at most, %.3g needed)", taken, needed) : "";
        return CARD.finding(
                shared ? Severity.FIX : Severity.NOTE,
                Said.subjects(where, stretch),
                where.at().said() + " does not take the house format " + house.text() + most + ": "
                        + Said.feeds(stretch) + (stretch.feeds().size() == 1 ? " gets" : " get") + " through only as "
                        + Said.formats(stretch.common()) + ".",
                tooFast ? List.of(new Value("link rate", needed, taken, "Gbit/s")) : List.of(),
                List.of(Fix.of("Change " + Words.said(where.at().thing()) + " for one that takes " + house.text()
                        + ", or put a scaler before it.")));
    }
}
