package housewright.check.sound;

import housewright.cable.Line;
import housewright.cable.Plug;
import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.finding.Value;
import housewright.model.LocalRef.Spot;
import housewright.model.Port;
import housewright.model.Shape.Socket;
import housewright.model.Signal;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.sound.Patched;
import housewright.sound.Sound;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Channels patched onto a digital link that the other end of it does not have. */
final class LinkChannelsLost implements Rule {
    private static final Card CARD = new Card(
            "link-channels-lost",
            "Has the other end of every digital link all the channels that are used on it?",
            Set.of(Severity.FIX),
            new Source.TheProject(),
            Stage.DESIGN);

    private record Used(Set<String> sent, Set<String> taken) {
        Used() {
            this(new LinkedHashSet<>(), new LinkedHashSet<>());
        }
    }

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        Sound sound = evidence.sound();
        Map<String, Used> used = new HashMap<>();
        for (Patched each : sound.patched()) {
            note(used, each.device(), each.to(), true);
            note(used, each.device(), each.from(), false);
        }
        List<Finding> findings = new ArrayList<>();
        for (Line line : evidence.cabling().lines()) {
            Plug from = line.from();
            Plug to = line.to();
            if (from != null && to != null && speakAlike(from.port(), to.port())) {
                check(sound, line, from, to, used, findings);
                check(sound, line, to, from, used, findings);
            }
        }
        return findings.stream();
    }

    private static void note(Map<String, Used> used, String device, Spot spot, boolean sent) {
        if (spot.channel() != null) {
            Used own = used.computeIfAbsent(device + "." + spot.name(), key -> new Used());
            (sent ? own.sent() : own.taken()).add(spot.channel());
        }
    }

    private static boolean speakAlike(@Nullable Port one, @Nullable Port other) {
        return one != null
                && other != null
                && isLink(one.signal())
                && one.signal() == other.signal()
                && Objects.equals(one.protocol(), other.protocol());
    }

    private static boolean isLink(@Nullable Signal signal) {
        return signal == Signal.STAGE_LINK || signal == Signal.USB_AUDIO || signal == Signal.AES3;
    }

    private static void check(
            Sound sound, Line line, Plug here, Plug there, Map<String, Used> used, List<Finding> findings) {
        Used own = used.get(here.socket());
        Socket other = sound.findShape(there.at().thing())
                .flatMap(shape -> shape.findSocket(there.at().spot().name()))
                .orElse(null);
        if (own == null || other == null) {
            return;
        }
        lost(line, here, there, own.sent(), other.arriving(), true, findings);
        lost(line, here, there, own.taken(), other.leaving(), false, findings);
    }

    private static void lost(
            Line line,
            Plug here,
            Plug there,
            Set<String> wanted,
            List<String> has,
            boolean sent,
            List<Finding> findings) {
        List<String> lost =
                wanted.stream().filter(channel -> !has.contains(channel)).toList();
        if (lost.isEmpty()) {
            return;
        }
        String which = (lost.size() == 1 ? "channel " : "channels ")
                + (lost.size() == 1 ? lost.getFirst() : lost.getFirst() + " to " + lost.getLast());
        String count = has.size() + (has.size() == 1 ? " channel" : " channels");
        String message = sent
                ? here.at().saidPort() + " sends " + which + " to "
                        + Words.said(there.at().thing()) + ", which takes " + count + " there: what is on them is lost."
                : here.at().saidPort() + " takes " + which + " from "
                        + Words.said(there.at().thing()) + ", which sends " + count + " there: they stay silent.";
        findings.add(CARD.finding(
                Severity.FIX,
                List.of(
                        Subject.equipment(here.at().thing()),
                        Subject.equipment(there.at().thing()),
                        Subject.cable(line.leads().getFirst().id())),
                message,
                List.of(new Value("channels beyond what the other end has", lost.size(), 0.0, "")),
                List.of(Fix.of("Patch them to channels that both ends have, or take a "
                        + Words.said(there.at().thing()) + " with more."))));
    }
}
