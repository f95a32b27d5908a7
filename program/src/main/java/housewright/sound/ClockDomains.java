package housewright.sound;

import housewright.cable.Cabling;
import housewright.cable.Line;
import housewright.cable.Plug;
import housewright.model.Clock;
import housewright.model.Equipment;
import housewright.model.Kind;
import housewright.model.LocalRef.Spot;
import housewright.model.Model;
import housewright.model.NetworkSend;
import housewright.model.Port;
import housewright.model.Project;
import housewright.model.Ref.Address;
import housewright.model.Setting;
import housewright.model.Shape;
import housewright.model.Signal;
import housewright.signal.Moment;
import housewright.sound.ClockDomain.ClockedPort;
import housewright.sound.ClockDomain.RatedPort;
import housewright.unit.Frequency;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What is joined by a stage link, AES3 or sends between ports of one network-audio protocol shares a clock; USB is left
 * out, for there the computer follows. A converter resamples: each of its ports is a member of its own.
 */
final class ClockDomains {
    private final Ports ports;
    private final Project project;
    private final Moment moment;
    private final Map<String, String> head = new HashMap<>();

    private static final class Members {
        final Set<String> things = new LinkedHashSet<>();
        final List<ClockedPort> clocks = new ArrayList<>();
        final List<RatedPort> rates = new ArrayList<>();

        void note(String thing, String port, Setting setting) {
            Clock clock = setting.clock();
            Frequency rate = setting.sampleRate();
            if (clock != null) {
                clocks.add(new ClockedPort(thing, port, clock));
            }
            if (rate != null) {
                rates.add(new RatedPort(thing, port, rate));
            }
        }
    }

    ClockDomains(Ports ports, Project project, Moment moment) {
        this.ports = ports;
        this.project = project;
        this.moment = moment;
    }

    List<ClockDomain> find(Cabling cabling) {
        if (project.equipment().values().stream()
                .flatMap(each -> each.set().values().stream())
                .allMatch(set -> set.clock() == null && set.sampleRate() == null)) {
            return List.of();
        }
        for (Line line : cabling.lines()) {
            Plug from = line.from();
            Plug to = line.to();
            if (from != null && to != null && isClocked(from.port()) && isClocked(to.port())) {
                join(from.at(), to.at());
            }
        }
        for (NetworkSend send : project.networkSends().values()) {
            if (moment.isThere("network-sends", send.id(), send.life())) {
                Address from = send.from().addresses().getFirst();
                Address to = send.to().addresses().getFirst();
                Port one = ports.port(from);
                Port other = ports.port(to);
                if (one != null
                        && other != null
                        && one.protocol() != null
                        && one.protocol().equals(other.protocol())) {
                    join(from, to);
                }
            }
        }
        return domains();
    }

    private List<ClockDomain> domains() {
        Map<String, Members> byHead = new LinkedHashMap<>();
        for (String id : project.equipment().keySet()) {
            Equipment thing = ports.thing(id);
            if (thing == null) {
                continue;
            }
            boolean bridge = isBridge(id);
            for (String member : bridge ? portsOf(id) : List.of(id)) {
                if (head.containsKey(member)) {
                    Members own = byHead.computeIfAbsent(head(member), key -> new Members());
                    own.things.add(id);
                    thing.set()
                            .forEach((ref, setting) -> ref.spots().stream()
                                    .map(Spot::name)
                                    .filter(port -> !bridge || member.equals(id + "." + port))
                                    .forEach(port -> own.note(id, port, setting)));
                }
            }
        }
        return byHead.values().stream()
                .filter(each -> !each.clocks.isEmpty() || !each.rates.isEmpty())
                .map(each -> new ClockDomain(List.copyOf(each.things), each.clocks, each.rates))
                .toList();
    }

    private void join(Address from, Address to) {
        String one = member(from);
        String other = member(to);
        head.putIfAbsent(one, one);
        head.putIfAbsent(other, other);
        head.put(head(other), head(one));
    }

    private String head(String member) {
        String at = member;
        while (true) {
            String up = head.get(at);
            if (up == null || up.equals(at)) {
                return at;
            }
            at = up;
        }
    }

    private String member(Address at) {
        return isBridge(at.thing()) ? at.thing() + "." + at.spot().name() : at.thing();
    }

    private boolean isBridge(String thing) {
        Model model = ports.model(thing);
        return model != null && model.kind() == Kind.CONVERTER;
    }

    private List<String> portsOf(String thing) {
        Shape shape = ports.shape(thing);
        return shape == null
                ? List.of()
                : shape.sockets().keySet().stream()
                        .map(port -> thing + "." + port)
                        .toList();
    }

    private static boolean isClocked(@Nullable Port port) {
        return port != null && (port.signal() == Signal.STAGE_LINK || port.signal() == Signal.AES3);
    }
}
