package housewright.check.picture;

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
import housewright.picture.Jack;
import housewright.picture.Stretch;
import java.util.HashSet;
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

    private record Seen(Address from, Address at) {}

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        Set<Seen> seen = new HashSet<>();
        return evidence.pictures().stretches().stream()
                .flatMap(stretch -> stretch
                        .findBreak()
                        .filter(jack ->
                                seen.add(new Seen(stretch.jacks().getFirst().at(), jack.at())))
                        .map(jack -> finding(stretch, jack))
                        .stream());
    }

    private static Finding finding(Stretch stretch, Jack where) {
        Jack source = stretch.jacks().getFirst();
        double given = LinkRates.least(source.port().formats());
        double taken = LinkRates.most(where.port().formats());
        boolean tooFast = given > 0 && taken > 0 && given > taken;
        String rates = tooFast
                ? String.format(
                        Locale.ROOT, "; that needs a link of %.3g Gbit/s and this one ends at %.3g", given, taken)
                : "";
        String message = where.at().said() + " takes none of the formats that "
                + source.at().said() + " can send it ("
                + Said.formats(source.port().formats()) + " against "
                + Said.formats(where.port().formats()) + rates + "): " + Said.feeds(stretch) + " stays dark.";
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
