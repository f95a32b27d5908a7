package housewright.sound;

import housewright.cable.Cabling;
import housewright.cable.Line;
import housewright.cable.Plug;
import housewright.model.Clock;
import housewright.model.Equipment;
import housewright.model.Kind;
import housewright.model.LocalRef;
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
import housewright.sound.ClockDomain.Mismatch;
import housewright.unit.Frequency;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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

    private record Join(
            String one,
            @Nullable Frequency oneRate,
            String other,
            @Nullable Frequency otherRate,
            @Nullable String cable) {}

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
        List<Join> joins = new ArrayList<>();
        for (Line line : cabling.lines()) {
            Plug from = line.from();
            Plug to = line.to();
            if (from != null && to != null && isClocked(from.port()) && isClocked(to.port())) {
                join(from.at(), to.at(), line.leads().getFirst().id(), joins);
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
                    join(from, to, null, joins);
                }
            }
        }
        return domains(joins);
    }

    private List<ClockDomain> domains(List<Join> joins) {
        Map<String, List<String>> members = new LinkedHashMap<>();
        Map<String, List<ClockedPort>> clocked = new HashMap<>();
        for (String id : project.equipment().keySet()) {
            Equipment thing = ports.thing(id);
            if (thing == null) {
                continue;
            }
            List<ClockedPort> own = new ArrayList<>();
            thing.set().forEach((ref, setting) -> clocked(id, ref, setting, own));
            for (String member : isBridge(id) ? portsOf(id) : List.of(id)) {
                if (head.containsKey(member)) {
                    String domain = head(member);
                    List<String> all = members.computeIfAbsent(domain, key -> new ArrayList<>());
                    if (!all.contains(id)) {
                        all.add(id);
                    }
                    own.stream()
                            .filter(each -> !isBridge(id) || member.equals(id + "." + each.port()))
                            .forEach(each -> clocked.computeIfAbsent(domain, key -> new ArrayList<>())
                                    .add(each));
                }
            }
        }
        Map<String, List<Mismatch>> mismatches = new HashMap<>();
        for (Join join : joins) {
            Frequency one = join.oneRate();
            Frequency other = join.otherRate();
            if (one != null && other != null && one.hertz() != other.hertz()) {
                mismatches
                        .computeIfAbsent(head(join.one()), key -> new ArrayList<>())
                        .add(new Mismatch(thing(join.one()), one, thing(join.other()), other, join.cable()));
            }
        }
        List<ClockDomain> domains = new ArrayList<>();
        members.forEach((domain, all) -> {
            List<ClockedPort> own = clocked.getOrDefault(domain, List.of());
            List<Mismatch> wrong = mismatches.getOrDefault(domain, List.of());
            if (!own.isEmpty() || !wrong.isEmpty()) {
                domains.add(new ClockDomain(all, own, wrong));
            }
        });
        return List.copyOf(domains);
    }

    private static void clocked(String id, LocalRef ref, Setting setting, List<ClockedPort> own) {
        Clock clock = setting.clock();
        if (clock != null) {
            for (Spot spot : ref.spots()) {
                own.add(new ClockedPort(id, spot.name(), clock));
            }
        }
    }

    private void join(Address from, Address to, @Nullable String cable, List<Join> joins) {
        String one = member(from);
        String other = member(to);
        joins.add(new Join(one, rate(from), other, rate(to), cable));
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

    private static String thing(String member) {
        int dot = member.indexOf('.');
        return dot < 0 ? member : member.substring(0, dot);
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

    /** The rate set on the port, else on any port of the thing where it does not resample. */
    private @Nullable Frequency rate(Address at) {
        Equipment thing = ports.thing(at.thing());
        Frequency any = null;
        if (thing != null) {
            for (Map.Entry<LocalRef, Setting> each : thing.set().entrySet()) {
                Frequency rate = each.getValue().sampleRate();
                if (rate != null
                        && each.getKey().spots().stream()
                                .anyMatch(spot -> spot.name().equals(at.spot().name()))) {
                    return rate;
                }
                any = any == null ? rate : any;
            }
        }
        return isBridge(at.thing()) ? null : any;
    }

    private static boolean isClocked(@Nullable Port port) {
        return port != null && (port.signal() == Signal.STAGE_LINK || port.signal() == Signal.AES3);
    }
}
