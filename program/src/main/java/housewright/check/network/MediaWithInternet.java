package housewright.check.network;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.model.Kind;
import housewright.model.Model;
import housewright.model.Port;
import housewright.model.Signal;
import housewright.model.Stage;
import housewright.network.Segment;
import housewright.network.Sent;
import housewright.signal.Present;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Sound or pictures of the house on the same network as the internet router or the wireless of everybody. */
public final class MediaWithInternet implements Rule {
    private static final Set<String> MEDIA = Set.of("ip-video", "network-audio");

    private static final Card CARD = new Card(
            "media-with-internet",
            "Have sound and pictures on the network a VLAN apart from the internet and guests?",
            Set.of(Severity.NOTE),
            new Source.CommonPractice(),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        List<Finding> findings = new ArrayList<>();
        List<Sent> media = evidence.networks().sends().stream()
                .filter(sent ->
                        sent.send().as() != null && MEDIA.contains(sent.send().as()))
                .toList();
        for (Segment segment :
                media.isEmpty() ? List.<Segment>of() : evidence.networks().segments()) {
            Set<String> outward = new LinkedHashSet<>();
            Set<String> in = new HashSet<>();
            for (Present thing : segment.things()) {
                in.add(thing.id());
                if (leadsOut(thing.model())) {
                    outward.add(thing.id());
                }
            }
            Set<String> sends = new LinkedHashSet<>();
            for (Sent sent : outward.isEmpty() ? List.<Sent>of() : media) {
                Integer vlan = sent.send().vlan();
                boolean here = (vlan == null || vlan == segment.vlan()) && segment.vlan() != 0;
                if (here && in.contains(sent.from()) && in.contains(sent.to()) && !outward.contains(sent.to())) {
                    sends.add(sent.send().id());
                }
            }
            if (!sends.isEmpty()) {
                findings.add(finding(segment, outward, sends));
            }
        }
        return findings.stream();
    }

    private static boolean leadsOut(@Nullable Model model) {
        if (model == null) {
            return false;
        }
        if (model.kind() == Kind.INTERNET_ROUTER) {
            return true;
        }
        boolean network = false;
        boolean radio = false;
        for (Port port : model.ports().values()) {
            network |= port.signal() == Signal.ETHERNET;
            radio |= port.signal() == Signal.RADIO && "wifi".equals(port.protocol());
        }
        return network && radio;
    }

    private static Finding finding(Segment segment, Set<String> outward, Set<String> sends) {
        List<Subject> subjects = new ArrayList<>();
        sends.forEach(send -> subjects.add(new Subject("network-send", send)));
        subjects.addAll(Said.equipment(outward));
        return CARD.finding(
                Severity.NOTE,
                subjects,
                Said.some(sends, 4) + (sends.size() == 1 ? " shares " : " share ") + segment.said() + " with "
                        + Said.things(outward, 3)
                        + ": a guest's download or a stray update meets sound and pictures there.",
                List.of(),
                List.of(Fix.of("Put sound and pictures on a VLAN of their own.")));
    }
}
