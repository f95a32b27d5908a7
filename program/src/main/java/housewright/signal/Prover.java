package housewright.signal;

import housewright.model.Feed;
import housewright.model.Ref;
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
    private final Search onward;
    private final Explainer explainer;

    Prover(SignalGraph graph, boolean brief) {
        this.brief = brief;
        this.graph = graph;
        this.search = new Search(graph);
        this.onward = new Search(graph);
        this.explainer = new Explainer(graph);
    }

    /** A source and a destination of a feed. */
    record Pair(Address from, Address to) {}

    /** The pairs of a feed: lists of equal length above 1 in order, else every source with every destination. */
    static List<Pair> pairs(Feed feed) {
        List<Address> from = addresses(feed.from());
        List<Address> to = addresses(feed.to());
        List<Pair> pairs = new ArrayList<>();
        if (isPaired(feed, from, to)) {
            for (int i = 0; i < from.size(); i++) {
                pairs.add(new Pair(from.get(i), to.get(i)));
            }
        } else {
            for (Address source : from) {
                for (Address destination : to) {
                    pairs.add(new Pair(source, destination));
                }
            }
        }
        return pairs;
    }

    private static boolean isPaired(Feed feed, List<Address> from, List<Address> to) {
        return !feed.never() && from.size() > 1 && from.size() == to.size();
    }

    private static List<Address> addresses(List<Ref> refs) {
        if (refs.size() == 1 && !refs.getFirst().isRange()) {
            return refs.getFirst().addresses();
        }
        List<Address> all = new ArrayList<>();
        for (Ref ref : refs) {
            all.addAll(ref.addresses());
        }
        return all;
    }

    FeedProof prove(Feed feed) {
        List<PairProof> proofs = new ArrayList<>();
        FeedState worst = FeedState.PROVEN;
        List<Pair> pairs = pairs(feed);
        List<Address> to = pairs.size() > 1 ? addresses(feed.to()) : List.of();
        boolean paired = pairs.size() > 1 && isPaired(feed, addresses(feed.from()), to);
        for (Pair pair : pairs) {
            PairProof proof = feed.never() ? never(pair) : arrives(feed, pair, paired ? to : List.of());
            proofs.add(proof);
            if (proof.state().compareTo(worst) > 0) {
                worst = proof.state();
            }
        }
        if (pairs.isEmpty()) {
            worst = FeedState.BROKEN;
        }
        return new FeedProof(feed, worst, proofs);
    }

    private PairProof arrives(Feed feed, Pair pair, List<Address> destinations) {
        int source = graph.end(pair.from(), true);
        int destination = graph.end(pair.to(), false);
        if (source < 0 || destination < 0) {
            return stopped(
                    pair, FeedState.BROKEN, explainer.notThere(source < 0 ? pair.from() : pair.to(), source < 0));
        }
        search.from(source, false);
        int @Nullable [] path = feed.through().isEmpty()
                ? (search.reaches(destination) ? search.path(destination) : null)
                : through(feed, source, destination);
        if (path == null) {
            boolean arrives = search.reaches(destination); // only not through what it should
            for (Address other : arrives ? List.<Address>of() : destinations) {
                if (!other.equals(pair.to()) && search.reaches(graph.end(other, false))) {
                    Stop stop = brief ? UNSAID : explainer.crossed(search, source, destination, other);
                    return stopped(pair, FeedState.CROSSED, stop);
                }
            }
            return stopped(pair, FeedState.BROKEN, brief ? UNSAID : stop(feed, source, destination));
        }
        List<String> lacking = new ArrayList<>();
        List<String> assumed = new ArrayList<>();
        long delay = explainer.startDelay(source, path, lacking, assumed);
        double gain = 0;
        List<Hop> hops = new ArrayList<>(path.length);
        for (int edge : path) {
            delay += graph.delay[edge];
            gain += graph.gain[edge];
            hops.add(hop(edge));
            explainer.note(edge, lacking, assumed);
        }
        List<OtherPath> others = feed.through().isEmpty() && !brief ? others(source, path) : List.of();
        Stop wrong = explainer.wrongMedia(path, feed.carries());
        Stop late = wrong != null ? wrong : late(feed, pair, delay, lacking);
        return new PairProof(
                pair.from(),
                pair.to(),
                late == null,
                wrong != null ? FeedState.BROKEN : late == null ? FeedState.PROVEN : FeedState.LATE,
                delay,
                gain,
                hops,
                others,
                late,
                distinct(assumed),
                distinct(lacking));
    }

    private @Nullable Stop late(Feed feed, Pair pair, long delay, List<String> lacking) {
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
    private int @Nullable [] through(Feed feed, int source, int destination) {
        List<Way> ways = List.of(new Way(source, 0, List.of()));
        for (Address place : addresses(feed.through())) {
            List<Way> further = new ArrayList<>(2);
            for (int node : sides(place)) {
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

    /** A path may pass a point, or a channel on whichever side of the device it is. */
    private List<Integer> sides(Address place) {
        int arriving = graph.end(place, false);
        int leaving = graph.end(place, true);
        List<Integer> sides = new ArrayList<>(2);
        if (arriving >= 0) {
            sides.add(arriving);
        }
        if (leaving >= 0 && leaving != arriving) {
            sides.add(leaving);
        }
        return sides;
    }

    private Search searchFrom(int source, int from) {
        Search by = from == source ? search : onward;
        by.from(from, false);
        return by;
    }

    private Stop stop(Feed feed, int source, int destination) {
        int at = source;
        for (Address place : addresses(feed.through())) {
            List<Integer> sides = sides(place);
            if (sides.isEmpty()) {
                return explainer.notThere(place, false);
            }
            Search by = searchFrom(source, at);
            int next = sides.stream().filter(by::reaches).findFirst().orElse(-1);
            if (next < 0) {
                return explainer.stop(by, at, sides.getFirst());
            }
            at = next;
        }
        return explainer.stop(searchFrom(source, at), at, destination);
    }

    /** Ways into a place of the path by another edge than the path's own, that do not pass what follows. */
    private List<OtherPath> others(int source, int[] path) {
        List<OtherPath> others = new ArrayList<>(0);
        int[] starts = graph.inStarts();
        int[] in = graph.inEdges();
        for (int own : path) {
            int meets = graph.to[own];
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
                    long later = by.delayTo(before) + graph.delay[edge] - search.delayTo(meets);
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
        onward.around(source, after);
        return onward;
    }

    private OtherPath other(int meets, long later, int[] before, int edge, int[] path) {
        List<Hop> hops = new ArrayList<>(before.length + 1);
        double gain = graph.gain[edge];
        for (int each : before) {
            hops.add(hop(each));
            gain += graph.gain[each];
        }
        hops.add(hop(edge));
        for (int own : path) {
            gain -= graph.gain[own];
            if (graph.to[own] == meets) {
                break;
            }
        }
        return new OtherPath(graph.address(meets), later, gain, hops);
    }

    private PairProof never(Pair pair) {
        int source = graph.end(pair.from(), true);
        int destination = graph.end(pair.to(), false);
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
            List<String> lacking = new ArrayList<>();
            List<String> assumed = new ArrayList<>();
            long delay = explainer.startDelay(source, path, lacking, assumed);
            double gain = 0;
            List<Hop> hops = new ArrayList<>(path.length);
            for (int edge : path) {
                delay += graph.delay[edge];
                gain += graph.gain[edge];
                hops.add(hop(edge));
            }
            return new PairProof(
                    pair.from(),
                    pair.to(),
                    false,
                    FeedState.ARRIVES,
                    delay,
                    gain,
                    hops,
                    List.of(),
                    null,
                    List.of(),
                    List.of());
        }
        Stop doubt = explainer.doubt(search);
        return doubt == null ? held(pair, List.of()) : stopped(pair, FeedState.BROKEN, doubt);
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
        List<Hop> hops = new ArrayList<>(path.length);
        for (int edge : path) {
            hops.add(hop(edge));
        }
        return hops;
    }

    private static PairProof held(Pair pair, List<String> assumed) {
        return new PairProof(
                pair.from(), pair.to(), true, FeedState.PROVEN, 0, 0, List.of(), List.of(), null, assumed, List.of());
    }

    private static PairProof stopped(Pair pair, FeedState state, Stop stop) {
        return new PairProof(
                pair.from(), pair.to(), false, state, 0, 0, List.of(), List.of(), stop, List.of(), List.of());
    }

    Hop hop(int edge) {
        return new Hop(
                graph.cause[edge],
                graph.address(graph.from[edge]),
                graph.address(graph.to[edge]),
                graph.delay[edge],
                graph.gain[edge]);
    }

    private static List<String> distinct(List<String> words) {
        if (words.size() < 2) {
            return words;
        }
        Set<String> seen = new LinkedHashSet<>(words);
        return List.copyOf(seen);
    }
}
