package housewright.signal;

import housewright.model.Carries;
import housewright.model.Feed;
import housewright.model.Project;
import housewright.model.Ref;
import housewright.model.Ref.Address;
import housewright.signal.SlowGraph.State;
import housewright.signal.SlowGraph.Step;
import housewright.unit.Delay;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Proofs by trying every simple path. */
final class SlowProof {
    /** More steps than this and the system is too entangled to try every path. */
    private static final int BUDGET = 2_000_000;

    final SlowGraph graph;
    private final Project project;
    private int steps;

    SlowProof(Project project, Moment moment) {
        this.project = project;
        this.graph = new SlowGraph(project, moment);
    }

    /** What is known of a pair; several paths may be as short, each with its gain. */
    record Pair(Address from, Address to, FeedState state, Set<Arrival> arrivals, int paths) {}

    /** Delay and gain of a path of least delay. */
    record Arrival(long nanos, long milliDecibels) {
        static Arrival of(long nanos, double gain) {
            return new Arrival(nanos, Math.round(gain * 1000));
        }
    }

    static List<Address> addresses(List<Ref> refs) {
        return refs.stream().flatMap(ref -> ref.addresses().stream()).toList();
    }

    /** Everything reached from a place, itself included. */
    Set<State> reached(State from, boolean contestedToo) {
        Set<State> seen = new LinkedHashSet<>(List.of(from));
        List<State> work = new ArrayList<>(seen);
        while (!work.isEmpty()) {
            for (Step step : graph.steps(work.removeLast())) {
                if ((contestedToo || !step.contested()) && seen.add(step.to())) {
                    work.add(step.to());
                }
            }
        }
        return seen;
    }

    /** Every path that passes no place twice and no contested patch. */
    List<List<Step>> paths(State from, State to) {
        steps = 0;
        List<List<Step>> paths = new ArrayList<>();
        walk(from, to, new HashSet<>(Set.of(from)), new ArrayList<>(), paths);
        return paths;
    }

    private void walk(State at, State to, Set<State> seen, List<Step> path, List<List<Step>> paths) {
        if (++steps > BUDGET) {
            throw new TooEntangledException();
        }
        if (at.equals(to)) {
            paths.add(List.copyOf(path));
            return;
        }
        for (Step step : graph.steps(at)) {
            if (!step.contested() && seen.add(step.to())) {
                path.add(step);
                walk(step.to(), to, seen, path, paths);
                path.removeLast();
                seen.remove(step.to());
            }
        }
    }

    static final class TooEntangledException extends RuntimeException {
        private static final long serialVersionUID = 1;
    }

    private record Leg(State at, List<Step> steps) {
        long nanos() {
            return steps.stream().mapToLong(Step::nanos).sum();
        }
    }

    /** The paths of least delay between two places. */
    private List<Leg> shortest(Leg before, State to) {
        List<List<Step>> paths = paths(before.at(), to);
        long least = paths.stream().mapToLong(SlowProof::nanos).min().orElse(0);
        List<Leg> legs = new ArrayList<>();
        for (List<Step> path : paths) {
            if (nanos(path) == least) {
                List<Step> whole = new ArrayList<>(before.steps());
                whole.addAll(path);
                legs.add(new Leg(to, whole));
            }
        }
        return legs;
    }

    /** How many ways there are, an entry written twice taken once. */
    private static int different(List<List<Step>> paths) {
        Set<String> ways = new HashSet<>();
        for (List<Step> path : paths) {
            StringBuilder way = new StringBuilder();
            path.forEach(step ->
                    way.append(step.cause()).append(' ').append(step.to()).append('\n'));
            ways.add(way.toString());
        }
        return ways.size();
    }

    private static long nanos(List<Step> path) {
        return path.stream().mapToLong(Step::nanos).sum();
    }

    List<Pair> prove(Feed feed) {
        List<Address> from = addresses(feed.from());
        List<Address> to = addresses(feed.to());
        boolean inOrder = !feed.never() && from.size() == to.size() && from.size() > 1;
        List<Pair> pairs = new ArrayList<>();
        for (int i = 0; i < from.size(); i++) {
            for (int j = 0; j < to.size(); j++) {
                if (!inOrder || i == j) {
                    pairs.add(
                            feed.never()
                                    ? never(from.get(i), to.get(j))
                                    : arrives(feed, from.get(i), to.get(j), inOrder ? to : List.of()));
                }
            }
        }
        return pairs;
    }

    private Pair never(Address from, Address to) {
        State begin = graph.begin(from);
        State end = graph.end(to);
        if (begin == null || end == null) {
            String thing = begin == null ? from.thing() : to.thing();
            boolean unknown = graph.isThere(thing) && graph.inside(thing) == null;
            return new Pair(from, to, unknown ? FeedState.BROKEN : FeedState.PROVEN, Set.of(), 0);
        }
        Set<State> reached = reached(begin, true);
        FeedState state = FeedState.PROVEN;
        if (reached.contains(end)) {
            state = FeedState.ARRIVES;
        } else if (reached.stream().anyMatch(graph::leadsIntoUnknown) || mayComeFromUnknown(end)) {
            state = FeedState.BROKEN;
        }
        return new Pair(from, to, state, Set.of(), 0);
    }

    private boolean mayComeFromUnknown(State end) {
        return graph.unknownArrivals().stream()
                .anyMatch(state -> reached(state, false).contains(end));
    }

    private Pair arrives(Feed feed, Address from, Address to, List<Address> destinations) {
        State begin = graph.begin(from);
        State end = graph.end(to);
        if (begin == null || end == null) {
            return new Pair(from, to, FeedState.BROKEN, Set.of(), 0);
        }
        List<Leg> ways = List.of(new Leg(begin, List.of()));
        for (Address place : addresses(feed.through())) {
            List<Leg> further = new ArrayList<>();
            for (Leg way : ways) {
                for (State side : sides(place)) {
                    further.addAll(shortest(way, side));
                }
            }
            ways = further;
        }
        List<Leg> all = new ArrayList<>();
        for (Leg way : ways) {
            all.addAll(shortest(way, end));
        }
        if (all.isEmpty()) {
            return new Pair(from, to, crossed(begin, end, to, destinations), Set.of(), 0);
        }
        long least = all.stream().mapToLong(Leg::nanos).min().orElse(0);
        Set<Arrival> arrivals = new LinkedHashSet<>();
        for (Leg way : all) {
            if (way.nanos() == least) {
                double gain = way.steps().stream().mapToDouble(Step::gain).sum();
                arrivals.add(Arrival.of(least + graph.startNanos(begin, way.steps()), gain));
            }
        }
        boolean late = arrivals.stream().allMatch(each -> isLate(feed.within(), each.nanos()));
        int paths = feed.through().isEmpty() ? different(paths(begin, end)) : 0;
        return new Pair(from, to, late ? FeedState.LATE : FeedState.PROVEN, arrivals, paths);
    }

    /** A channel that is known to carry something is passed, and it is not what the feed says. */
    boolean carriesOther(Feed feed, List<Step> walk) {
        Carries said = feed.carries();
        return said != null && said != Carries.DATA && walk.stream().anyMatch(step -> isOther(step.to(), said));
    }

    private boolean isOther(State state, Carries said) {
        if (state.side() == '.') {
            return false;
        }
        String signal = state.carried().isEmpty() ? graph.signal(state) : "";
        boolean picture = "v".equals(state.channel());
        return switch (signal) {
            case "ANALOG_AUDIO", "AES3", "STAGE_LINK", "USB_AUDIO", "SPEAKER" -> said != Carries.AUDIO;
            case "SDI", "HDMI", "HDBASET" -> said != (picture ? Carries.PICTURE : Carries.AUDIO);
            case "DMX", "CONTACT", "MIDI" -> said != Carries.CONTROL && said != Carries.LIGHT;
            default -> false; // a network, radio or bare USB line carries whatever it is given
        };
    }

    /** A channel may be passed on either side of its device. */
    private List<State> sides(Address place) {
        List<State> sides = new ArrayList<>();
        for (@Nullable State each : new State[] {graph.end(place), graph.begin(place)}) {
            if (each != null && !sides.contains(each)) {
                sides.add(each);
            }
        }
        return sides;
    }

    private FeedState crossed(State begin, State end, Address own, List<Address> destinations) {
        Set<State> reached = reached(begin, false);
        if (reached.contains(end)) {
            return FeedState.BROKEN; // it does arrive, only not through what it should
        }
        for (Address other : destinations) {
            State there = graph.end(other);
            if (!other.equals(own) && there != null && reached.contains(there)) {
                return FeedState.CROSSED;
            }
        }
        return FeedState.BROKEN;
    }

    private boolean isLate(@Nullable Delay within, long nanos) {
        if (within == null || (within.inFrames() && project.about().picture() == null)) {
            return false;
        }
        double limit = within.inFrames()
                ? within.value() * 1e9 / project.about().picture().framesPerSecond()
                : within.base() * 1e9;
        return nanos > Math.round(limit);
    }
}
