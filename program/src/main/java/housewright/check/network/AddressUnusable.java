package housewright.check.network;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.signal.Present;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** An address with a slip in it, or one that no single thing may have. */
public final class AddressUnusable implements Rule {
    private static final Card CARD = new Card(
            "address-unusable",
            "Is every network address one that a thing may have?",
            Set.of(Severity.FIX),
            new Source.CommonPractice(),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        return evidence.networks().things().stream()
                .filter(thing -> thing.equipment().ip() != null)
                .flatMap(thing -> find(thing, String.valueOf(thing.equipment().ip())));
    }

    private static Stream<Finding> find(Present thing, String text) {
        Ip ip = Ip.find(text);
        if (Ip.isOther(text) || (ip != null && ip.isHost())) {
            return Stream.empty();
        }
        return Stream.of(CARD.finding(
                Severity.FIX,
                List.of(Subject.equipment(thing.id())),
                Words.said(thing.id()) + " has the address " + text + ", which " + why(ip) + ".",
                List.of(),
                List.of(Fix.of(
                        "Give it four numbers from 0 to 255 with dots between, such as 192.168.10.21, that nothing"
                                + " else on its network has."))));
    }

    private static String why(@Nullable Ip ip) {
        if (ip == null) {
            return "is no address: four numbers from 0 to 255 are due";
        }
        if (ip.universe() > 0) {
            return "is where universe " + ip.universe() + " of lighting data is sent to, not a thing's own";
        }
        if (ip.isMulticast()) {
            return "is one that many listen to, not a thing's own";
        }
        return ip.first() > 0 && ip.first() < 224 && ip.first() != 127
                ? "stands for the whole network " + ip.networkText() + (ip.written() ? "" : " (no mask is given)")
                : "no thing on a network may have";
    }
}
