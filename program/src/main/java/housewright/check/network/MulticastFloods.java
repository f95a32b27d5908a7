package housewright.check.network;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.finding.Value;
import housewright.model.NetworkSend;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.network.Load;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** Multicast over a switch that does not do IGMP snooping: it comes out of every port. */
public final class MulticastFloods implements Rule {
    private static final Card CARD = new Card(
            "multicast-floods",
            "Does every switch on the way of a multicast send it only where it is asked for?",
            Set.of(Severity.FIX, Severity.NOTE),
            new Source.FromMemory("RFC 4541"),
            Stage.DESIGN);

    private static final class Flood {
        private final Set<String> sends = new LinkedHashSet<>();
        private final Set<String> reached = new LinkedHashSet<>();
        private double most;
    }

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        Map<String, Flood> floods = new LinkedHashMap<>();
        for (Load load : evidence.networks().loads()) {
            if (!load.flooded().isEmpty() && evidence.networks().isSwitch(load.out())) {
                Flood flood = floods.computeIfAbsent(load.out(), key -> new Flood());
                flood.sends.addAll(load.flooded());
                flood.reached.add(load.link().far(load.out()).at().thing());
                flood.most = Math.max(flood.most, load.bitsPerSecond());
            }
        }
        return floods.entrySet().stream().map(each -> finding(evidence, each.getKey(), each.getValue()));
    }

    private static Finding finding(Evidence evidence, String hub, Flood flood) {
        boolean media = flood.sends.stream().anyMatch(send -> isMedia(evidence, send));
        List<Subject> subjects = new ArrayList<>();
        subjects.add(Subject.equipment(hub));
        flood.sends.forEach(send -> subjects.add(new Subject("network-send", send)));
        return CARD.finding(
                media ? Severity.FIX : Severity.NOTE,
                subjects,
                Words.said(hub) + " does no IGMP snooping, so the multicast " + Said.some(flood.sends, 4)
                        + " also comes to " + Said.things(flood.reached, 4) + " (up to " + Said.rate(flood.most)
                        + " on one port).",
                List.of(new Value("on a port that did not ask", flood.most / 1e6, 0.0, "Mbit/s")),
                List.of(Fix.of("Take a switch with IGMP snooping and a querier there, or put these sends on a switch of"
                        + " their own.")));
    }

    private static boolean isMedia(Evidence evidence, String id) {
        NetworkSend send = evidence.project().networkSends().get(id);
        return send == null || !"lighting-data".equals(send.as());
    }
}
