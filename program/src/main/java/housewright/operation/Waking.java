package housewright.operation;

import housewright.cable.Cabling;
import housewright.cable.Line;
import housewright.cable.Plug;
import housewright.model.Kind;
import housewright.model.Model;
import housewright.model.Signal;
import housewright.operation.PowerOrder.Must;
import housewright.operation.PowerOrder.Step;
import housewright.operation.PowerOrder.Why;
import housewright.signal.FeedProof;
import housewright.signal.Hop;
import housewright.signal.PairProof;
import housewright.signal.Present;
import housewright.signal.Signals;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;

/** What must be up before what, read from the supply, the programs, the networks and the signal. */
final class Waking {
    private static final Set<Kind> LOUD = Set.of(Kind.AMPLIFIER, Kind.LOUDSPEAKER);
    private static final Set<Kind> NETWORK = Set.of(Kind.SWITCH, Kind.INTERNET_ROUTER);

    private final Map<String, Present> things;
    private final List<Step> steps;
    /** By thing, the step that wakes it. */
    private final Map<String, String> wakenBy = new HashMap<>();

    private final Set<Must> musts = new LinkedHashSet<>();

    Waking(Map<String, Present> things, List<Step> steps) {
        this.things = things;
        this.steps = steps;
        for (Step step : steps) {
            step.wakes().forEach(thing -> wakenBy.put(thing, step.thing()));
        }
    }

    /** @param mastersOf those that must be on before a thing gets its supply */
    Set<Must> musts(Map<String, List<String>> mastersOf, Cabling cabling, Signals signals) {
        mastersOf.forEach((thing, masters) -> masters.forEach(master -> must(master, thing, Why.SUPPLY)));
        for (Present each : things.values()) {
            String host = each.equipment().runsOn();
            if (host != null) {
                must(host, each.id(), Why.COMPUTER);
            }
        }
        network(cabling);
        loudLast();
        signal(cabling, signals);
        return musts;
    }

    /** Both by the step that wakes them; nothing where one is always on, or where one touch wakes both. */
    private void must(String before, String after, Why why) {
        String first = wakenBy.get(before);
        String then = wakenBy.get(after);
        if (first != null && then != null && !first.equals(then)) {
            musts.add(new Must(first, then, why));
        }
    }

    /** The switches of a network before what hangs on any of them. */
    private void network(Cabling cabling) {
        Map<String, Set<String>> beside = new LinkedHashMap<>();
        for (Line line : cabling.lines()) {
            Plug from = line.from();
            Plug to = line.to();
            if (line.signal() == Signal.ETHERNET && from != null && to != null) {
                join(beside, from.at().thing(), to.at().thing());
                join(beside, to.at().thing(), from.at().thing());
            }
        }
        for (String each : beside.keySet()) {
            if (is(each, NETWORK)) {
                for (String other : reach(each, beside, thing -> is(thing, NETWORK))) {
                    if (!is(other, NETWORK)) {
                        must(each, other, Why.NETWORK);
                    }
                }
            }
        }
    }

    private void loudLast() {
        for (Step loud : steps) {
            if (isLoud(loud)) {
                for (Step other : steps) {
                    if (!isLoud(other)) {
                        must(other.thing(), loud.thing(), Why.AMPLIFIER);
                    }
                }
            }
        }
    }

    private boolean isLoud(Step step) {
        return step.wakes().stream().anyMatch(thing -> is(thing, LOUD));
    }

    /** From each thing that is waked on to the next one that is, through all that is on already. */
    private void signal(Cabling cabling, Signals signals) {
        Map<String, Set<String>> onTo = new LinkedHashMap<>();
        for (FeedProof proof : signals.proofs()) {
            if (!proof.feed().never()) {
                for (PairProof pair : proof.pairs()) {
                    for (Hop hop : signals.way(pair)) {
                        join(onTo, hop.from().thing(), hop.to().thing());
                    }
                }
            }
        }
        for (Line line : cabling.lines()) {
            Plug source = line.source();
            Plug sink = line.sink();
            if (source != null && sink != null && isOneWay(source, sink)) {
                join(onTo, source.at().thing(), sink.at().thing());
            }
        }
        for (String each : wakenBy.keySet()) {
            for (String other : reach(each, onTo, thing -> !wakenBy.containsKey(thing))) {
                must(each, other, Why.SIGNAL);
            }
        }
    }

    private static boolean isOneWay(Plug source, Plug sink) {
        return source.port() != null
                && sink.port() != null
                && source.port().out() != null
                && sink.port().in() != null
                && source.port().out() != Signal.MAINS
                && source.port().out() != Signal.CONTACT;
    }

    private static void join(Map<String, Set<String>> joins, String from, String to) {
        if (!from.equals(to)) {
            joins.computeIfAbsent(from, key -> new LinkedHashSet<>()).add(to);
        }
    }

    /** What is come to from a thing; on from those that let through. */
    private static Set<String> reach(String from, Map<String, Set<String>> joins, Predicate<String> through) {
        Set<String> reached = new LinkedHashSet<>();
        Deque<String> next = new ArrayDeque<>(List.of(from));
        while (!next.isEmpty()) {
            for (String to : joins.getOrDefault(next.remove(), Set.of())) {
                if (reached.add(to) && through.test(to)) {
                    next.add(to);
                }
            }
        }
        return reached;
    }

    private boolean is(String thing, Set<Kind> kinds) {
        Present present = things.get(thing);
        Model model = present == null ? null : present.model();
        return model != null && kinds.contains(model.kind());
    }
}
