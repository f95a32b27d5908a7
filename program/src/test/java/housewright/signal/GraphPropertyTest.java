package housewright.signal;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.model.Feed;
import housewright.model.Project;
import housewright.model.Ref.Address;
import housewright.model.Signal;
import housewright.signal.SlowGraph.State;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jgrapht.Graph;
import org.jgrapht.alg.cycle.JohnsonSimpleCycles;
import org.jgrapht.graph.DefaultDirectedGraph;
import org.jgrapht.traverse.BreadthFirstIterator;
import org.junit.jupiter.api.Test;

/** The signal graph and its loops against JGraphT and the slow graph, on systems made at random. */
class GraphPropertyTest {
    private static final int SEEDS = Integer.getInteger("housewright.seeds", 400);

    /** Gains of the random systems are whole tenths of a dB; sums of them are told apart by less. */
    private static final double SAME_DB = 0.01;

    private static Graph<Integer, Object> graph(Signals signals) {
        Graph<Integer, Object> graph = new DefaultDirectedGraph<>(Object.class);
        for (int node = 0; node < signals.nodeCount(); node++) {
            graph.addVertex(node);
        }
        int[] starts = signals.linkStarts();
        int[] targets = signals.linkTargets();
        for (int node = 0; node < signals.nodeCount(); node++) {
            for (int e = starts[node]; e < starts[node + 1]; e++) {
                graph.addEdge(node, targets[e]);
            }
        }
        return graph;
    }

    private static Set<Integer> reached(Graph<Integer, Object> graph, int from) {
        Set<Integer> reached = new HashSet<>();
        new BreadthFirstIterator<>(graph, from).forEachRemaining(reached::add);
        return reached;
    }

    /** A never-feed arrives exactly where there is a way; a feed that arrives has one. */
    @Test
    void reachabilityAgreesWithJGraphT() {
        int reachable = 0;
        for (long seed = 1; seed <= SEEDS; seed++) {
            Signals signals = Signals.of(RandomHalls.of(seed), Hall.EMPTY, Moment.target());
            Graph<Integer, Object> graph = graph(signals);
            for (FeedProof proof : signals.proofs()) {
                Feed feed = proof.feed();
                int[] from = signals.startNodes(feed);
                int[] to = signals.endNodes(feed);
                for (int i = 0; i < from.length; i++) {
                    PairProof pair = proof.pairs().get(i);
                    boolean way = from[i] >= 0
                            && to[i] >= 0
                            && reached(graph, from[i]).contains(to[i]);
                    String what = "seed " + seed + " " + pair;
                    reachable += way ? 1 : 0;
                    if (feed.never()) {
                        assertThat(pair.state() == FeedState.ARRIVES).as(what).isEqualTo(way);
                    } else if (feed.through().isEmpty() && signals.contested().isEmpty()) {
                        assertThat(!pair.hops().isEmpty() || (way && from[i] == to[i]))
                                .as(what)
                                .isEqualTo(way);
                    } else if (!pair.hops().isEmpty()) {
                        assertThat(way).as(what).isTrue();
                    }
                }
            }
        }
        assertThat(reachable).isGreaterThan(SEEDS);
    }

    /** From every place of a system the same places are reached in both graphs, feeds or no feeds. */
    @Test
    void fromEveryPlaceTheSamePlacesAreReached() {
        for (long seed = 1; seed <= SEEDS; seed++) {
            Project project = RandomHalls.of(seed);
            Moment moment = seed % 2 == 0 ? Moment.target() : Moment.today();
            SignalGraph graph = Signals.of(project, Hall.EMPTY, moment).graph();
            SlowProof slow = new SlowProof(project, moment);
            Search search = new Search(graph);
            for (int node = 0; node < graph.nodes; node++) {
                Address address = graph.address(node);
                State begin =
                        graph.side(node) == Layout.Side.ARRIVING ? slow.graph.end(address) : slow.graph.begin(address);
                if (begin == null) {
                    assertThat(graph.socket(node).port().signal())
                            .as("a passive port")
                            .isNull();
                    continue;
                }
                for (boolean contestedToo : List.of(true, false)) {
                    search.from(node, contestedToo);
                    Set<String> expected = new TreeSet<>();
                    slow.reached(begin, contestedToo).forEach(state -> expected.add(state.side() + state.place()));
                    Set<String> found = new TreeSet<>();
                    for (int each : search.reached()) {
                        found.add(place(graph, each));
                    }
                    assertThat(found).as("seed " + seed + " from " + address).isEqualTo(expected);
                }
            }
        }
    }

    private static String place(SignalGraph graph, int node) {
        String side = switch (graph.side(node)) {
            case ARRIVING -> "<";
            case LEAVING -> ">";
            case POINT -> ".";
        };
        return side + graph.piece(node).id() + "." + graph.spot(node);
    }

    @Test
    void loopsAreTheCyclesWithoutLoss() {
        int looping = 0;
        int silent = 0;
        for (long seed = 1; seed <= SEEDS; seed++) {
            Project project = RandomHalls.of(seed);
            Signals signals = Signals.of(project, Hall.EMPTY, Moment.target());
            Map<List<Integer>, Double> loudest = loudest(signals.graph());
            List<List<Integer>> cycles = new ArrayList<>();
            new JohnsonSimpleCycles<>(graph(signals)).findSimpleCycles(cycles::add);
            boolean expected = cycles.stream().anyMatch(cycle -> gain(loudest, cycle) >= -SAME_DB / 2);
            assertThat(!signals.loops().isEmpty())
                    .as("seed " + seed + " has " + cycles.size() + " cycles")
                    .isEqualTo(expected);
            looping += expected ? 1 : 0;
            silent += !expected && !cycles.isEmpty() ? 1 : 0;
            SlowGraph slow = new SlowGraph(project, Moment.target());
            signals.loops().forEach(loop -> isCycle(slow, loop));
        }
        assertThat(looping).as("systems with loops").isGreaterThan(SEEDS / 20);
        assertThat(silent).as("systems whose cycles all lose").isGreaterThan(SEEDS / 100);
    }

    private static Map<List<Integer>, Double> loudest(SignalGraph graph) {
        Map<List<Integer>, Double> loudest = new LinkedHashMap<>();
        for (int e = 0; e < graph.to.length; e++) {
            loudest.merge(List.of(graph.from[e], graph.to[e]), graph.gain[e], Math::max);
        }
        return loudest;
    }

    private static double gain(Map<List<Integer>, Double> loudest, List<Integer> cycle) {
        double gain = 0;
        for (int i = 0; i < cycle.size(); i++) {
            gain += loudest.get(List.of(cycle.get(i), cycle.get((i + 1) % cycle.size())));
        }
        return gain;
    }

    /** Hop by hop back to where it began, passing nothing twice, with the gain it says. */
    private static void isCycle(SlowGraph slow, Loop loop) {
        Set<State> at = new LinkedHashSet<>(starts(slow, loop.hops().getFirst().from()));
        Set<State> begins = Set.copyOf(at);
        double gain = 0;
        Set<Hop> seen = new HashSet<>();
        for (Hop hop : loop.hops()) {
            assertThat(seen.add(hop)).isTrue();
            Set<State> next = new LinkedHashSet<>();
            for (State each : at) {
                slow.steps(each).stream()
                        .filter(step -> ProofPropertyTest.isHop(slow, step, hop))
                        .forEach(step -> next.add(step.to()));
            }
            assertThat(next).as("%s of %s", hop, loop).isNotEmpty();
            at = next;
            gain += hop.gainDb();
        }
        assertThat(at).as("%s", loop).containsAnyElementsOf(begins);
        assertThat(loop.gainDb()).isCloseTo(gain, org.assertj.core.api.Assertions.within(SAME_DB));
        assertThat(loop.gainDb()).isNotNegative();
    }

    /** The states a place may mean; at a passive port, whatever kind of signal it may carry. */
    private static List<State> starts(SlowGraph slow, Address address) {
        State begin = slow.begin(address);
        State end = slow.end(address);
        List<State> starts = new ArrayList<>();
        if (begin != null) {
            starts.add(begin);
        }
        if (end != null) {
            starts.add(end);
        }
        for (Signal signal : starts.isEmpty() ? Signal.values() : new Signal[0]) {
            for (String protocol : List.of("null", "stage-a", "stage-b")) {
                for (char side : new char[] {'<', '>'}) {
                    String channel = address.spot().channel();
                    String carried = signal + "/" + protocol;
                    starts.add(new State(address.thing(), address.spot().name(), channel, side, carried));
                }
            }
        }
        return starts;
    }
}
