package housewright.work;

import housewright.cable.Lead;
import housewright.cable.Plug;
import housewright.model.Equipment;
import housewright.model.Model;
import housewright.model.Port;
import housewright.model.Signal;
import housewright.model.TaskKind;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What must be done before a thing has power: its own place and plugs, and all that of what it is powered by. */
final class Supply {
    private static final List<TaskKind> PLACING =
            List.of(TaskKind.MOUNT, TaskKind.MOVE, TaskKind.WIRE, TaskKind.CONNECT, TaskKind.POWER);

    private final Job job;
    private final Map<String, Set<String>> poweredBy = new HashMap<>();

    Supply(Job job) {
        this.job = job;
        for (Equipment thing : job.project.equipment().values()) {
            if (thing.poweredBy() != null && thing.life().target()) {
                power(thing.id(), thing.poweredBy().thing());
            }
            if (thing.partOf() != null) {
                power(thing.id(), thing.partOf());
            }
            if (thing.runsOn() != null) {
                power(thing.id(), thing.runsOn());
            }
        }
        for (Lead lead : job.target.leads()) {
            lead.joints().forEach(joint -> {
                feeds(joint.from(), joint.to());
                feeds(joint.to(), joint.from());
            });
        }
    }

    private void power(String thing, String by) {
        poweredBy.computeIfAbsent(thing, each -> new LinkedHashSet<>()).add(by);
    }

    private void feeds(@Nullable Plug giving, @Nullable Plug taking) {
        if (giving == null || taking == null || giving.port() == null || taking.port() == null) {
            return;
        }
        Port port = taking.port();
        boolean mains = giving.port().out() == Signal.MAINS && port.in() == Signal.MAINS;
        boolean network = giving.port().poe() != null
                && giving.port().poe().gives() != null
                && takes(port, taking.model())
                && isAlone(taking.at().thing());
        if (mains || network) {
            power(taking.at().thing(), giving.at().thing());
        }
    }

    private static boolean takes(Port port, @Nullable Model model) {
        return (port.poe() != null && port.poe().takes() != null)
                || (model != null && model.poe() != null && model.poe().takes() != null);
    }

    /** Nothing else is said to power it. */
    private boolean isAlone(String equipment) {
        Equipment thing = job.project.equipment().get(equipment);
        return thing != null && thing.poweredBy() == null && thing.circuit() == null;
    }

    /** The things that power one, and what powers those; itself first. */
    Set<String> chain(String equipment) {
        Set<String> seen = new LinkedHashSet<>();
        List<String> open = new ArrayList<>(List.of(equipment));
        while (!open.isEmpty()) {
            String next = open.removeLast();
            if (seen.add(next)) {
                open.addAll(poweredBy.getOrDefault(next, Set.of()));
            }
        }
        return seen;
    }

    /** The tasks after which a thing stands in its place, is plugged in and has power. */
    List<Draft> alive(String equipment) {
        List<Draft> first = new ArrayList<>();
        for (String thing : chain(equipment)) {
            for (TaskKind kind : PLACING) {
                Draft draft = job.find(kind, thing);
                if (draft != null) {
                    first.add(draft);
                }
            }
        }
        return first;
    }

    /** The chains of TODAY, by the equipment they power. */
    static Map<String, Set<String>> today(Job job) {
        Map<String, Set<String>> by = new LinkedHashMap<>();
        for (Equipment each : job.project.equipment().values()) {
            Equipment was = each.today();
            if (each.life().today() && was.poweredBy() != null) {
                by.computeIfAbsent(each.id(), id -> new HashSet<>())
                        .add(was.poweredBy().thing());
            }
        }
        return by;
    }
}
