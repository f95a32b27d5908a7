package housewright.check.picture;

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
import housewright.picture.Jack;
import housewright.picture.Stretch;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;

/** A picture that something on its way cannot take in any format that the source gives: the screen stays dark. */
public final class NoCommonPictureFormat implements Rule {
    private static final Card CARD = new Card(
            "no-common-picture-format",
            "Is there one picture format that everything on the way of a picture takes?",
            Set.of(Severity.STOP),
            new Source.TheProject(),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        return Troubles.gathered(
                        evidence.pictures().stretches(),
                        stretch -> stretch.findBreak().map(Stretch.Break::jack))
                .stream()
                .map(NoCommonPictureFormat::finding);
    }

    private static Finding finding(Stretch stretch) {
        Stretch.Break at = stretch.findBreak().orElseThrow();
        Jack where = at.jack();
        Jack source = stretch.jacks().getFirst();
        double given = LinkRates.least(at.before());
        double taken = LinkRates.most(where.port().formats());
        boolean tooFast = given > 0 && taken > 0 && given > taken;
        String rates = tooFast
                ? String.format(
                        Locale.ROOT, "; that needs a link of %.3g Gbit/s and this one ends at %.3g", given, taken)
                : "";
        String message = where.at().said() + " takes none of the formats in which the picture of "
                + source.at().said() + " can come that far (" + Said.formats(at.before()) + " against "
                + Said.formats(where.port().formats()) + rates + "): " + Said.feeds(stretch)
                + (stretch.feeds().size() == 1 ? " stays" : " stay") + " dark.";
        List<Subject> subjects = Said.subjects(where, stretch);
        return CARD.finding(
                Severity.STOP,
                subjects,
                message,
                tooFast ? List.of(new Value("link rate", given, taken, "Gbit/s")) : List.of(),
                List.of(Fix.of("Put a scaler before " + Words.said(where.at().thing())
                        + ", or change it for one that takes what "
                        + Words.said(source.at().thing()) + " sends.")));
    }
}
