package housewright.network;

import housewright.model.Model;
import housewright.signal.Present;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Adds up what each direction of each link carries. */
final class Loads {
    /** One direction of a link; links are told apart by being the same, not alike. */
    private record Way(Link link, String out) {}

    private static final class Sum {
        private double bitsPerSecond;
        private final Set<String> sends = new LinkedHashSet<>();
        private final Set<String> flooded = new LinkedHashSet<>();
    }

    private final Networks networks;
    private final Map<String, List<Link>> byCable;
    private final Map<Way, Sum> sums = new LinkedHashMap<>();

    Loads(Networks networks) {
        this.networks = networks;
        this.byCable = networks.byCable();
    }

    List<Load> all() {
        Map<String, List<Sent>> multicasts = new LinkedHashMap<>();
        for (Sent sent : networks.sends()) {
            if (!sent.rateKnown()) {
                continue;
            }
            if (sent.send().multicast()) {
                // what leaves one place once, however many take it
                multicasts
                        .computeIfAbsent(sent.from() + " " + sent.send().from().local(), key -> new ArrayList<>())
                        .add(sent);
            } else {
                ways(sent).forEach(way -> add(way, sent, false));
            }
        }
        multicasts.values().forEach(this::multicast);
        List<Load> all = new ArrayList<>();
        sums.forEach((way, sum) -> all.add(new Load(way.link(), way.out(), sum.bitsPerSecond, sum.sends, sum.flooded)));
        return List.copyOf(all);
    }

    private void add(Way way, Sent sent, boolean flooded) {
        Sum sum = sums.computeIfAbsent(way, key -> new Sum());
        sum.bitsPerSecond += sent.bitsPerSecond();
        sum.sends.add(sent.send().id());
        if (flooded) {
            sum.flooded.add(sent.send().id());
        }
    }

    /** The links of a send with their directions, in order. */
    private List<Way> ways(Sent sent) {
        List<Way> ways = new ArrayList<>();
        String at = sent.from();
        Link last = null;
        for (String each : sent.over()) {
            Link link = networks.find(byCable, each, at);
            if (link != null && !link.equals(last)) {
                ways.add(new Way(link, at));
                at = link.far(at).at().thing();
                last = link;
            }
        }
        return ways;
    }

    private void multicast(List<Sent> sents) {
        Sent stream = sents.getFirst();
        Set<Way> wanted = new LinkedHashSet<>();
        sents.forEach(sent -> wanted.addAll(ways(sent)));
        Set<Way> all = new LinkedHashSet<>(wanted);
        ArrayDeque<Way> queue = new ArrayDeque<>(wanted);
        Set<String> crossed = new HashSet<>();
        while (!queue.isEmpty()) {
            Way way = queue.remove();
            String hub = way.link().far(way.out()).at().thing();
            if (networks.isSwitch(hub) && isBlind(hub) && crossed.add(hub)) {
                for (Link link : networks.linksOf(hub)) {
                    Way onward = new Way(link, hub);
                    if (!link.equals(way.link()) && carries(link, way.link(), stream) && all.add(onward)) {
                        queue.add(onward);
                    }
                }
            }
        }
        all.forEach(way -> add(way, stream, !wanted.contains(way)));
    }

    /** It is known not to keep multicast to those who ask for it. */
    private boolean isBlind(String hub) {
        Present present = networks.thing(hub);
        Model model = present == null ? null : present.model();
        return model != null && Boolean.FALSE.equals(model.igmp());
    }

    private boolean carries(Link link, Link came, Sent stream) {
        Integer vlan = stream.send().vlan();
        Set<Integer> vlans = networks.vlans(link);
        return vlan != null
                ? vlans.contains(vlan)
                : networks.vlans(came).stream().anyMatch(vlans::contains);
    }
}
