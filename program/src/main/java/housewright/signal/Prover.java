package housewright.signal;

import housewright.model.Feed;
import housewright.model.Ref.Address;
import housewright.unit.Delay;
import housewright.unit.VideoFormat;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Proves feeds on one graph. Feeds that begin at the same place share a search. */
final class Prover {
    private static final Stop UNSAID = new Stop(null, "");

    private final SignalGraph graph;
    private final boolean brief;
    private final Search search;
    private final Explainer explainer;
    private final @Nullable Hop[] hops;
    private @Nullable Search onward;
    private @Nullable WhereItStops whereItStops;

    Prover(SignalGraph graph, boolean brief) {
        this.brief = brief;
        this.graph = graph;
        this.search = new Search(graph);
        this.explainer = new Explainer(graph);
        this.hops = new Hop[graph.to.length];
    }

    PairProof prove(Asked asked, Asked.Pair pair) {
        return asked.feed.never() ? never(pair) : arrives(asked, pair);
    }

    private PairProof arrives(Asked asked, Asked.Pair pair) {
        Feed feed = asked.feed;
        int source = pair.source();
        int destination = pair.destination();
        if (source < 0 || destination < 0) {
            return stopped(
                    pair, FeedState.BROKEN, explainer.notThere(source < 0 ? pair.from() : pair.to(), source < 0));
        }
        search.from(source, false);
        int @Nullable [] path = feed.through().isEmpty()
                ? (search.reaches(destination) ? search.path(destination) : null)
                : through(asked, source, destination);
        if (path == null) {
            boolean arrives = search.reaches(destination); // only not through what it should
            for (Asked.Pair other : arrives ? List.<Asked.Pair>of() : asked.instead) {
                if (!other.to().equals(pair.to()) && search.reaches(other.destination())) {
                    Stop stop = brief ? UNSAID : new Crossing(graph).find(search, asked, pair, other);
                    return stopped(pair, FeedState.CROSSED, stop);
                }
            }
            return stopped(pair, FeedState.BROKEN, brief ? UNSAID : stop(asked, pair));
        }
        List<String> lacking = new ArrayList<>(0);
        List<String> assumed = new ArrayList<>(0);
        long delay = explainer.startDelay(source, path, lacking, assumed) + delay(path);
        for (int edge : path) {
            explainer.note(edge, lacking, assumed);
        }
        List<OtherPath> others = brief ? List.of() : others(source, path);
        Stop wrong = explainer.wrongMedia(path, feed.carries());
        Stop late = wrong != null ? wrong : late(feed, pair, delay, lacking);
        return new PairProof(
                pair.from(),
                pair.to(),
                late == null,
                wrong != null ? FeedState.BROKEN : late == null ? FeedState.PROVEN : FeedState.LATE,
                delay,
                gain(path),
                hops(path),
                others,
                late,
                distinct(assumed),
                distinct(lacking));
    }

    private long delay(int[] path) {
        long delay = 0;
        for (int edge : path) {
            delay += graph.delay[edge];
        }
        return delay;
    }

    private double gain(int[] path) {
        double gain = 0;
        for (int edge : path) {
            gain += graph.gain[edge];
        }
        return gain;
    }

    private @Nullable Stop late(Feed feed, Asked.Pair pair, long delay, List<String> lacking) {
        Delay within = feed.within();
        if (within == null) {
            return null;
        }
        VideoFormat picture = graph.project.about().picture();
        if (within.inFrames() && picture == null) {
            lacking.add("the length of a frame: the project names no picture format");
            return null;
        }
        long limit = within.inFrames() && picture != null ? within.nanos(picture) : Math.round(within.base() * 1e9);
        return delay <= limit
                ? null
                : new Stop(
                        pair.to(), "it arrives after " + Words.milliseconds(delay) + "; allowed are " + within.text());
    }

    /** The path of least delay through the feed's places in order; null where there is none. */
    private int @Nullable [] through(Asked asked, int source, int destination) {
        List<Way> ways = List.of(new Way(source, 0, List.of()));
        for (Asked.Through place : asked.through) {
            List<Way> further = new ArrayList<>(2);
            for (int node : place.nodes()) {
                Way best = onward(source, ways, node);
                if (best != null) {
                    further.add(best);
                }
            }
            ways = further;
        }
        Way best = onward(source, ways, destination);
        return best == null
                ? null
                : best.edges().stream().mapToInt(Integer::intValue).toArray();
    }

    /** A path from the source so far. */
    private record Way(int at, long delay, List<Integer> edges) {}

    private @Nullable Way onward(int source, List<Way> ways, int to) {
        Way best = null;
        for (Way way : ways) {
            Search by = searchFrom(source, way.at());
            if (by.reaches(to) && (best == null || way.delay() + by.delayTo(to) < best.delay())) {
                List<Integer> edges = new ArrayList<>(way.edges());
                for (int edge : by.path(to)) {
                    edges.add(edge);
                }
                best = new Way(to, way.delay() + by.delayTo(to), edges);
            }
        }
        return best;
    }

    private Search searchFrom(int source, int from) {
        Search by = from == source ? search : onward();
        by.from(from, false);
        return by;
    }

    /** A second search, for the few paths that need one. */
    private Search onward() {
        Search known = onward;
        if (known == null) {
            known = new Search(graph);
            onward = known;
        }
        return known;
    }

    private Stop stop(Asked asked, Asked.Pair pair) {
        int at = pair.source();
        for (Asked.Through place : asked.through) {
            if (place.nodes().isEmpty()) {
                return explainer.notThere(place.place(), false);
            }
            Search by = searchFrom(pair.source(), at);
            int next = place.nodes().stream().filter(by::reaches).findFirst().orElse(-1);
            if (next < 0) {
                return whereItStops().find(by, at, place.nodes().getFirst(), List.of());
            }
            at = next;
        }
        Search by = searchFrom(pair.source(), at);
        List<Integer> siblings = asked.pairs.stream()
                .filter(each -> each.source() == pair.source() && by.reaches(each.destination()))
                .map(Asked.Pair::destination)
                .toList();
        return whereItStops().find(by, at, pair.destination(), siblings);
    }

    private WhereItStops whereItStops() {
        WhereItStops known = whereItStops;
        if (known == null) {
            known = new WhereItStops(graph);
            whereItStops = known;
        }
        return known;
    }

    /** Ways into a place of the path by another edge than the path's own, that do not pass what follows. */
    private List<OtherPath> others(int source, int[] path) {
        List<OtherPath> others = new ArrayList<>(0);
        int[] starts = graph.inStarts();
        int[] in = graph.inEdges();
        long along = 0;
        for (int own : path) {
            int meets = graph.to[own];
            along += graph.delay[own];
            if (starts[meets + 1] - starts[meets] < 2) {
                continue;
            }
            for (int i = starts[meets]; i < starts[meets + 1]; i++) {
                int edge = in[i];
                int before = graph.from[edge];
                if (isSame(edge, own) || !search.reaches(before) || graph.contested[edge]) {
                    continue;
                }
                Search by = search.comesBy(before, meets) ? around(source, path, meets) : search;
                if (by.reaches(before)) {
                    long later = by.delayTo(before) + graph.delay[edge] - along;
                    others.add(other(meets, later, by.path(before), edge, path));
                }
            }
        }
        return others;
    }

    /** The same join, or the same patch entry written twice. */
    private boolean isSame(int edge, int own) {
        return edge == own || (graph.from[edge] == graph.from[own] && graph.cause[edge].equals(graph.cause[own]));
    }

    /** What is reached without this place of the path and those after it. */
    private Search around(int source, int[] path, int meets) {
        BitSet after = new BitSet();
        for (int i = path.length - 1; i >= 0 && !after.get(meets); i--) {
            after.set(graph.to[path[i]]);
        }
        Search around = onward();
        around.around(source, after);
        return around;
    }

    private OtherPath other(int meets, long later, int[] before, int edge, int[] path) {
        int[] whole = java.util.Arrays.copyOf(before, before.length + 1);
        whole[before.length] = edge;
        double gain = gain(whole);
        for (int own : path) {
            gain -= graph.gain[own];
            if (graph.to[own] == meets) {
                break;
            }
        }
        return new OtherPath(graph.address(meets), later, gain, hops(whole));
    }

    private PairProof never(Asked.Pair pair) {
        int source = pair.source();
        int destination = pair.destination();
        if (source < 0 || destination < 0) {
            Address missing = source < 0 ? pair.from() : pair.to();
            if (explainer.isInsideUnknown(missing)) {
                return stopped(pair, FeedState.BROKEN, explainer.notThere(missing, source < 0));
            }
            String words = explainer.notThere(missing, source < 0).why() + ", so nothing can arrive";
            return held(pair, List.of(words));
        }
        search.from(source, true);
        if (search.reaches(destination)) {
            int[] path = search.path(destination);
            long delay = explainer.startDelay(source, path, new ArrayList<>(), new ArrayList<>()) + delay(path);
            return new PairProof(
                    pair.from(),
                    pair.to(),
                    false,
                    FeedState.ARRIVES,
                    delay,
                    gain(path),
                    hops(path),
                    List.of(),
                    null,
                    List.of(),
                    List.of());
        }
        Stop doubt = explainer.doubt(search, destination);
        if (doubt != null) {
            return stopped(pair, FeedState.BROKEN, doubt);
        }
        return held(pair, brief ? List.of() : explainer.keptOutBy(search, source, destination));
    }

    /** The way to where a pair stops; empty where it does not begin. */
    List<Hop> reached(PairProof pair) {
        Stop stop = pair.stop();
        int source = graph.end(pair.from(), true);
        if (stop == null || stop.at() == null || source < 0 || !pair.hops().isEmpty()) {
            return List.of();
        }
        search.from(source, false);
        int[] path = {};
        for (int node : new int[] {graph.end(stop.at(), true), graph.end(stop.at(), false)}) {
            if (node >= 0 && search.reaches(node) && search.path(node).length > path.length) {
                path = search.path(node);
            }
        }
        return hops(path);
    }

    private static PairProof held(Asked.Pair pair, List<String> assumed) {
        return new PairProof(
                pair.from(), pair.to(), true, FeedState.PROVEN, 0, 0, List.of(), List.of(), null, assumed, List.of());
    }

    private static PairProof stopped(Asked.Pair pair, FeedState state, Stop stop) {
        return new PairProof(
                pair.from(), pair.to(), false, state, 0, 0, List.of(), List.of(), stop, List.of(), List.of());
    }

    /** The hops of a path: edges that several paths share are one hop. */
    List<Hop> hops(int[] path) {
        Hop[] all = new Hop[path.length];
        for (int i = 0; i < path.length; i++) {
            all[i] = hop(path[i]);
        }
        return List.of(all);
    }

    private Hop hop(int edge) {
        Hop known = hops[edge];
        if (known == null) {
            known = new Hop(
                    graph.cause[edge],
                    graph.address(graph.from[edge]),
                    graph.address(graph.to[edge]),
                    graph.delay[edge],
                    graph.gain[edge]);
            hops[edge] = known;
        }
        return known;
    }

    private static List<String> distinct(List<String> words) {
        if (words.size() < 2) {
            return words;
        }
        Set<String> seen = new LinkedHashSet<>(words);
        return List.copyOf(seen);
    }
}
