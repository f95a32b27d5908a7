package housewright.check.cable;

import housewright.cable.Joint;
import housewright.cable.Lead;
import housewright.cable.Line;
import housewright.cable.Plug;
import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Value;
import housewright.model.CableType;
import housewright.model.Connector;
import housewright.model.Signal;
import housewright.model.Stage;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Network and stage links on twisted pair: from one machine to the next over all panels, and of that the fixed part. A
 * cord is what joins a machine to a panel and is not laid along a pathway. Thin cable whose own longest run is less uses
 * up the run faster, in proportion.
 */
public final class NetworkRunTooLong implements Rule {
    static final Limit CHANNEL = Limit.most("channel, cords and all,", 100, "m");
    static final Limit LINK = Limit.most("permanent link between panels", 90, "m");

    private static final Card CARD = new Card(
            "network-run-too-long",
            "Is every network run short enough, its fixed part and all of it with the cords?",
            Set.of(Severity.FIX),
            new Source.Published("ANSI/TIA-568.2-D, as quoted on public pages", ""),
            Stage.DESIGN,
            List.of(CHANNEL, LINK));

    private static final double TWISTED_PAIR_OHM = 100;

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        return evidence.cabling().lines().stream()
                .filter(NetworkRunTooLong::isTwistedPair)
                .flatMap(line -> finding(evidence, line).stream());
    }

    /** A network or a stage link, or a spare that could be one, on twisted pair from end to end. */
    static boolean isTwistedPair(Line line) {
        Signal signal = line.signal();
        boolean network = signal == null || signal == Signal.ETHERNET || signal == Signal.STAGE_LINK;
        return network && line.leads().stream().allMatch(NetworkRunTooLong::isTwistedPair);
    }

    private static boolean isTwistedPair(Lead lead) {
        CableType type = lead.type();
        return type != null
                && type.impedance() != null
                && type.impedance().ohms() == TWISTED_PAIR_OHM
                && type.ends().contains(Connector.RJ45);
    }

    private static Optional<Finding> finding(Evidence evidence, Line line) {
        Double metres = line.metres();
        if (metres == null) {
            return Optional.empty();
        }
        double channel = evidence.limit(CARD, CHANNEL);
        double used = 0; // of the channel, in metres of cable that reaches all of it
        double fixed = 0;
        boolean panels = line.leads().size() > 1;
        for (Lead lead : line.leads()) {
            double each = lead.span() == null ? 0 : lead.span().metres();
            CableType type = lead.type();
            double own = type == null || type.longest() == null
                    ? CHANNEL.value()
                    : type.longest().metres();
            used += each * CHANNEL.value() / Math.min(own, CHANNEL.value());
            panels |= isBetweenPanels(lead);
            fixed += isBetweenPanels(lead) || !lead.pathways().isEmpty() ? each : 0;
        }
        String what = Said.are(line);
        if (metres > channel) {
            return found(
                    line,
                    Said.tooLong(line, metres - channel) + "a twisted-pair channel: " + Said.length(line) + ", "
                            + Said.metres(channel) + " is the limit.",
                    new Value("channel", metres, channel, "m"));
        }
        if (panels && fixed > LINK.value()) {
            return found(
                    line,
                    what + Said.metres(fixed - LINK.value()) + " too long in the fixed part, of which "
                            + Said.metres(LINK.value()) + " are allowed; in all " + Said.length(line) + ".",
                    new Value("permanent link", fixed, LINK.value(), "m"));
        }
        return used <= channel
                ? Optional.empty()
                : found(
                        line,
                        what + "too long for " + Said.types(line) + ": " + Said.length(line)
                                + ", which lose as much as " + Said.metres(used) + " of fixed cable; "
                                + Said.metres(channel) + " is the limit.",
                        new Value("channel, as fixed cable,", used, channel, "m"));
    }

    private static Optional<Finding> found(Line line, String message, Value value) {
        return Optional.of(CARD.finding(
                Severity.FIX,
                Said.subjects(line.ids()),
                message,
                List.of(value),
                List.of(Fix.of("Put a switch half way, shorten the cords, or go by fibre."))));
    }

    private static boolean isBetweenPanels(Lead lead) {
        for (Joint joint : lead.joints()) {
            List<Plug> plugs = joint.plugs();
            if (plugs.size() == 2 && plugs.stream().allMatch(Plug::isPassive)) {
                return true;
            }
        }
        return false;
    }
}
