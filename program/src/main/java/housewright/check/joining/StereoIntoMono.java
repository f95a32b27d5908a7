package housewright.check.joining;

import housewright.cable.Cabling;
import housewright.cable.Lead;
import housewright.cable.Plug;
import housewright.cable.SoundRun;
import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.model.Channels;
import housewright.model.Connector;
import housewright.model.Port;
import housewright.model.Stage;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A stereo jack on one mono input by a plain lead. A balanced input takes the difference of left and right, so whatever
 * is the same on both, the voice, is gone; an unbalanced plug shorts the right side. A lead that splits is in order.
 */
public final class StereoIntoMono implements Rule {
    private static final Card CARD = new Card(
            "stereo-into-mono",
            "Does every stereo jack go into a stereo input, or by a lead that splits it?",
            Set.of(Severity.FIX),
            new Source.CommonPractice(),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        List<Finding> findings = new ArrayList<>();
        for (SoundRun run : evidence.cabling().soundRuns()) {
            if (isStereoJack(run.out()) && isMono(run.in()) && !isSplit(evidence.cabling(), run.source())) {
                findings.add(finding(run));
            }
        }
        return findings.stream();
    }

    private static boolean isStereoJack(Port port) {
        Channels channels = port.channels();
        return (port.connector() == Connector.TRS || port.connector() == Connector.TRS_3_5)
                && port.out() != null
                && channels != null
                && channels.out() == 2;
    }

    private static boolean isMono(Port port) {
        Channels channels = port.channels();
        return channels == null || channels.in() == 1;
    }

    /** The lead in the socket has a way for each side. */
    private static boolean isSplit(Cabling cabling, Plug source) {
        for (Lead lead : cabling.in(source.socket())) {
            Integer ways = lead.type() == null ? null : lead.type().ways();
            if (lead.joints().size() > 1 || (ways != null && ways > 1)) {
                return true;
            }
        }
        return false;
    }

    private static Finding finding(SoundRun run) {
        boolean balanced = !Boolean.FALSE.equals(run.in().balanced());
        return CARD.finding(
                Severity.FIX,
                Subjects.of(run),
                run.source().at().saidPort() + " is a stereo jack on the mono input "
                        + run.input().at().saidPort()
                        + (balanced
                                ? ": the input takes left minus right, so the voice in the middle is gone."
                                : ": only the left side is heard, and the right is shorted."),
                List.of(),
                List.of(Fix.of("Take a lead that splits left and right into two inputs, or a DI box for a computer.")));
    }
}
