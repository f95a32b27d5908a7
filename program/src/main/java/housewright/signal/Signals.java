package housewright.signal;

import housewright.model.Feed;
import housewright.model.Library;
import housewright.model.Model;
import housewright.model.Project;
import housewright.model.Ref;
import housewright.model.Ref.Address;
import housewright.model.Remarks;
import housewright.model.Shape;
import housewright.model.Signal;
import housewright.model.Types;
import housewright.signal.GraphBuilder.PortKey;
import housewright.unit.Level;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * The signal graph of one project at one moment, and what it shows. Everything is worked out on first asking and
 * kept; safe to ask from several threads.
 */
public final class Signals {
    private final Types types;
    private final SignalGraph graph;
    private final Layouts layouts;
    /** What holds is asked, not why: for trying out a mend. */
    private final boolean brief;

    private @Nullable Map<String, FeedProof> proofs;
    private @Nullable Prospects prospects;
    private final Work work;
    private @Nullable List<Hop> sends;
    /** For each node the number of the last search that came to it, so that none has to clear what others left. */
    private int @Nullable [] searched;

    private int searches;
    private @Nullable Prover reaching;

    private Signals(Project project, Types types, Moment moment, Layouts layouts, boolean brief, Work work) {
        this.work = work;
        this.brief = brief;
        this.types = types;
        this.layouts = layouts;
        this.graph = new GraphBuilder(project, types, moment, layouts).finish();
    }

    public static Signals of(Project project, Library library, Moment moment) {
        return of(new Types(project, library), moment, new Layouts());
    }

    /** @param layouts what is known of types already; what is found of others is added to it */
    public static Signals of(Types types, Moment moment, Layouts layouts) {
        return new Signals(types.project(), types, moment, layouts, false, new Work());
    }

    /** The same question on a changed project, with what is known of its types kept. */
    Signals with(Project changed) {
        return new Signals(changed, new Types(changed, types.library()), graph.moment, layouts, true, work);
    }

    public Project project() {
        return graph.project;
    }

    public Moment moment() {
        return graph.moment;
    }

    /** Every feed's proof, in the order of the file. */
    public List<FeedProof> proofs() {
        return List.copyOf(all().values());
    }

    public Optional<FeedProof> findProof(String feed) {
        return Optional.ofNullable(all().get(feed));
    }

    private synchronized Map<String, FeedProof> all() {
        Map<String, FeedProof> known = proofs;
        if (known == null) {
            known = new Proofs(graph, brief).all();
            proofs = known;
        }
        return known;
    }

    /** Every way round with a gain of 0 dB or more, one for each part of the graph that has any. */
    public List<Loop> loops() {
        return new Loops(graph).find();
    }

    /** Where sound and picture of one happening meet. */
    public List<SoundToPicture> soundToPicture() {
        return LipSync.find(graph, proofs());
    }

    /** The level at the end of each hop of a proof's path. */
    public List<LevelAt> levels(PairProof proof) {
        return new Levels(graph).along(proof.hops());
    }

    /** The same along any way where the level that the source itself gives is known and the first output states none. */
    public List<LevelAt> levels(List<Hop> way, Level atSource) {
        return new Levels(graph, atSource).along(way);
    }

    /**
     * Whether a signal from here gets to any place that is wanted. The places are asked about once each, the fewest
     * steps first, until one is; asking must not begin another search.
     */
    public synchronized boolean reaches(Address from, Predicate<Address> wanted) {
        int source = graph.end(from, true);
        if (source < 0) {
            return false;
        }
        int[] seen = searched == null ? new int[graph.nodes] : searched;
        searched = seen;
        int search = ++searches;
        int[] next = new int[64];
        int count = 1;
        next[0] = source;
        seen[source] = search;
        for (int at = 0; at < count; at++) {
            for (int edge = graph.start[next[at]], end = graph.start[next[at] + 1]; edge < end; edge++) {
                int to = graph.to[edge];
                if (seen[to] == search) {
                    continue;
                }
                if (wanted.test(graph.address(to))) {
                    return true;
                }
                seen[to] = search;
                if (count == next.length) {
                    next = Arrays.copyOf(next, count * 2);
                }
                next[count++] = to;
            }
        }
        return false;
    }

    /** The path of least delay between two places, whether a feed asks for it or not; empty where there is none. */
    public Optional<PairProof> findWay(Address from, Address to) {
        Feed feed = new Feed(
                "",
                false,
                List.of(new Ref(from.toString())),
                List.of(new Ref(to.toString())),
                null,
                null,
                List.of(),
                null,
                Remarks.NONE);
        Asked asked = new Asked(feed, graph);
        return asked.pairs.stream()
                .map(pair -> new Prover(graph, true).prove(asked, pair))
                .filter(proof -> !proof.hops().isEmpty())
                .findFirst();
    }

    /**
     * How signal gets to a point or to an arriving channel: for each place where one could begin, be it a source or a
     * socket with nothing in it, a way of the fewest hops; the fewest first.
     */
    public List<List<Hop>> waysInto(Address place) {
        return new Upstream(graph).ways(place);
    }

    /** The way to where a pair stops; empty where it does not begin, and where the pair has a path. */
    public synchronized List<Hop> reached(PairProof pair) {
        Prover known = reaching;
        if (known == null) {
            known = new Prover(graph, false);
            reaching = known;
        }
        return known.reached(pair);
    }

    /** The path of a pair, else as much of it as there is: the way to where it stops. */
    public List<Hop> way(PairProof pair) {
        return pair.hops().isEmpty() ? reached(pair) : pair.hops();
    }

    /** Leaving channels to which several sources are patched. */
    public List<Contested> contested() {
        return graph.contestedAt.stream()
                .mapToObj(node -> new Contested(graph.address(node), List.copyOf(graph.patchesInto(node))))
                .toList();
    }

    /** Every network-send that holds, channel by channel: where it begins and ends and what it runs over. */
    public synchronized List<Hop> sends() {
        List<Hop> known = sends;
        if (known == null) {
            known = new ArrayList<>();
            for (int e = 0; e < graph.to.length; e++) {
                if (graph.cause[e] instanceof Cause.BySend) {
                    known.add(new Hop(
                            graph.cause[e],
                            graph.address(graph.from[e]),
                            graph.address(graph.to[e]),
                            graph.delay[e],
                            graph.gain[e]));
                }
            }
            known = List.copyOf(known);
            sends = known;
        }
        return known;
    }

    /** What is there and joins nothing. */
    public List<Unjoined> unjoined() {
        return List.copyOf(graph.unjoined);
    }

    /**
     * Mends of a feed that is not proven: the cheapest by price, then minutes, then number of changes, then what a person would rather
     * do, then the order of the file; after
     * it, where that is another, the one thing that mends more feeds with it. None where the feed is proven, or where
     * nothing within reach mends it.
     */
    public synchronized List<Mend> mends(FeedProof proof) {
        return new Mender(this).mends(proof);
    }

    /** What could be joined to a port of a thing, and by which cable. */
    public JoinOffers joinOffers(Address port) {
        return new Joinable(graph, types).of(port);
    }

    /** The cables that are in a port. */
    public List<String> listCables(Address port) {
        Integer piece = graph.pieceIndex.get(port.thing());
        return piece == null
                ? List.of()
                : List.copyOf(graph.builder.plugged.getOrDefault(
                        new PortKey(piece, port.spot().name()), List.of()));
    }

    /**
     * What the type of a thing lets be patched from a place of it: points and outputs, those without a patch of their
     * own in front; none where nothing may be patched there.
     *
     * @param from whether the place is the one a signal comes from; else what may be patched to it is asked for
     */
    public List<PatchOffer> patchOffers(Address place, boolean from) {
        return new Patchables(graph).of(place, from);
    }

    /** What a channel of a port carries; empty at a point, and where the signal at hand may carry anything. */
    public Optional<Media> findMedia(Address at) {
        Integer index = graph.pieceIndex.get(at.thing());
        Layout layout = index == null ? null : graph.pieces.get(index).layout();
        if (layout == null) {
            return Optional.empty();
        }
        String channel = at.spot().channel();
        return layout.shape
                .findSocket(at.spot().name())
                .flatMap(socket -> Optional.ofNullable(socket.port().signal()))
                .filter(signal -> signal != Signal.ETHERNET && signal != Signal.USB && signal != Signal.RADIO)
                .map(signal -> Media.of(signal, channel == null ? "" : channel));
    }

    public int nodeCount() {
        return graph.nodes;
    }

    public int edgeCount() {
        return graph.to.length;
    }

    /** Where the out-edges of each node start in {@link #linkTargets}; one more entry than there are nodes. */
    public int[] linkStarts() {
        return graph.start.clone();
    }

    /** The nodes that out-edges lead to: for measuring, and for checking against other programs. */
    public int[] linkTargets() {
        return graph.to.clone();
    }

    /** The nodes where a feed begins: for measuring, and for checking against other programs. */
    public int[] startNodes(Feed feed) {
        return new Asked(feed, graph)
                .pairs.stream().mapToInt(Asked.Pair::source).toArray();
    }

    /** The nodes where a feed must arrive, in the order of {@link #startNodes}. */
    public int[] endNodes(Feed feed) {
        return new Asked(feed, graph)
                .pairs.stream().mapToInt(Asked.Pair::destination).toArray();
    }

    /** What mends are looked for in; to be asked only while one is being looked for. */
    Prospects prospects() {
        Prospects known = prospects;
        if (known == null) {
            known = new Prospects(this);
            prospects = known;
        }
        return known;
    }

    Work work() {
        return work;
    }

    SignalGraph graph() {
        return graph;
    }

    Types types() {
        return types;
    }

    /**
     * What is known of types, made once for each: a project has many pieces of few types, a mend asks for many graphs, and an
     * edit leaves most types as they are. Safe to ask from several threads.
     */
    public static final class Layouts {
        private final IdentityHashMap<Model, Layout> known = new IdentityHashMap<>();

        /** The same, for a project of which these may be another version: of types that it no longer has, nothing is kept. */
        @SuppressWarnings("ReferenceEquality") // a type that an edit left alone is the same object
        public synchronized Layouts keptFor(Types types) {
            Layouts kept = new Layouts();
            known.forEach((model, layout) -> {
                if (types.findModel(model.id()).orElse(null) == model) {
                    kept.known.put(model, layout);
                }
            });
            return kept;
        }

        synchronized Layout of(Model model) {
            return known.computeIfAbsent(model, Layout::new);
        }

        /** The type with its ranges written out. */
        Shape shape(Model model) {
            return model.portsKnown() ? of(model).shape : Shape.of(model);
        }
    }
}
