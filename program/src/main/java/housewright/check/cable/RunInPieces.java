package housewright.check.cable;

import housewright.cable.Line;
import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Value;
import housewright.model.Signal;
import housewright.model.Stage;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** HDBaseT, HDMI and USB coupled in panels on the way: each joint takes from a reach that is short as it is. */
public final class RunInPieces implements Rule {
    static final Limit JOINTS = Limit.most("joints in a panel", 0, "");

    private static final Card CARD = new Card(
            "run-in-pieces",
            "Is every HDBaseT, HDMI and USB run one piece from end to end?",
            Set.of(Severity.NOTE),
            new Source.CommonPractice(),
            Stage.DESIGN,
            List.of(JOINTS));

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        return evidence.cabling().lines().stream()
                .filter(line -> line.leads().size() > 1 && wantsOnePiece(line.signal()))
                .map(RunInPieces::finding);
    }

    private static boolean wantsOnePiece(@Nullable Signal signal) {
        return signal == Signal.HDBASET || signal == Signal.HDMI || signal == Signal.USB || signal == Signal.USB_AUDIO;
    }

    private static Finding finding(Line line) {
        int joints = line.leads().size() - 1;
        String signal = line.signal() == null ? "" : line.signal().word();
        return CARD.finding(
                Severity.NOTE,
                Said.subjects(line.ids()),
                Said.all(line.ids()) + " make one " + signal + " run with " + Said.count(joints, "joint")
                        + " in panels, and each joint takes from its reach.",
                List.of(new Value("joints", joints, JOINTS.value(), "")),
                List.of(Fix.of("Pull it in one piece, or test it at the full rate before the wall is closed.")));
    }
}
