package housewright.check.picture;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.model.LocalRef.Spot;
import housewright.model.Model;
import housewright.model.Ref;
import housewright.model.Ref.Address;
import housewright.model.Shape;
import housewright.model.Shape.Socket;
import housewright.model.Signal;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.signal.Present;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A stereo pair in SDI that is not an odd channel and the even one after it. SDI carries sound in four groups of two
 * AES pairs: recorders and de-embedders take it in pairs, embedders replace it in groups.
 */
public final class EmbeddedPairSplit implements Rule {
    private static final int IN_A_GROUP = 4;

    private static final Card CARD = new Card(
            "embedded-pair-split",
            "Does every stereo pair in SDI lie on an odd channel and the even one after it?",
            Set.of(Severity.NOTE),
            new Source.Published("SMPTE ST 299-1, as quoted", "four groups of two AES pairs"),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        List<Finding> findings = new ArrayList<>();
        Map<String, Present> things = new HashMap<>();
        for (Map.Entry<String, List<Ref>> pair : evidence.project().pairs().entrySet()) {
            List<Address> sides = pair.getValue().stream()
                    .flatMap(ref -> ref.addresses().stream())
                    .toList();
            if (sides.size() != 2
                    || !sides.getFirst().thing().equals(sides.getLast().thing())
                    || channel(sides.getFirst().spot()) == 0
                    || channel(sides.getLast().spot()) == 0) {
                continue;
            }
            int left = channel(sides.getFirst().spot());
            int right = channel(sides.getLast().spot());
            if (left % 2 == 1 && right == left + 1) {
                continue;
            }
            if (things.isEmpty()) {
                evidence.pictures().things().forEach(each -> things.put(each.id(), each));
            }
            if (isSdi(things.get(sides.getFirst().thing()), sides)) {
                findings.add(finding(pair.getKey(), sides.getFirst(), left, right));
            }
        }
        return findings.stream();
    }

    /** The number of a channel of sound; 0 where it is not a number, such as the picture's. */
    static int channel(Spot spot) {
        String channel = spot.channel();
        boolean number = channel != null && channel.matches("[0-9]{1,9}");
        return number ? Integer.parseInt(channel) : 0;
    }

    private static boolean isSdi(@Nullable Present present, List<Address> sides) {
        Model model = present == null ? null : present.model();
        return model != null
                && sides.stream()
                        .allMatch(side -> Shape.of(model)
                                .findSocket(side.spot().name())
                                .map(Socket::port)
                                .filter(port -> port.signal() == Signal.SDI)
                                .isPresent());
    }

    /** The group of a channel, from 1. */
    static int group(int channel) {
        return (channel - 1) / IN_A_GROUP + 1;
    }

    private static Finding finding(String pair, Address at, int left, int right) {
        String groups = group(left) == group(right) ? "" : ", in groups " + group(left) + " and " + group(right);
        return CARD.finding(
                Severity.NOTE,
                List.of(new Subject("pair", pair), Subject.equipment(at.thing())),
                "The pair " + Words.said(pair) + " lies on channels " + left + " and " + right + " of " + at.saidPort()
                        + groups + ": what takes the sound in pairs takes it apart.",
                List.of(),
                List.of(Fix.of("Put it on an odd channel and the even one after it, such as 1 and 2 or 3 and 4.")));
    }
}
