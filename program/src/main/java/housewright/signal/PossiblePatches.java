package housewright.signal;

import housewright.model.Join;
import housewright.model.Kind;
import housewright.model.LocalRef.Spot;
import housewright.model.PatchEntry;
import housewright.model.Shape.Socket;
import housewright.model.change.Change;
import housewright.signal.Layout.Side;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** Patch entries a device allows; one that a leaving channel already has is taken out for it. */
final class PossiblePatches {
    private static final int PATCH_MINUTES = 2;
    private static final int UNPATCH_MINUTES = 1;

    /** Looked up for every offer of every search, so its hash is worked out once and tells most from one another. */
    private record Key(int hash, String device, Join.Pair pair, String how) {
        static Key of(String device, Join.Pair pair, String how) {
            return new Key(31 * device.hashCode() + pair.hashCode(), device, pair, how);
        }

        @Override
        public boolean equals(Object other) {
            return other instanceof Key key
                    && hash == key.hash
                    && device.equals(key.device)
                    && pair.equals(key.pair)
                    && how.equals(key.how);
        }

        @Override
        public int hashCode() {
            return hash;
        }

        @Override
        public String toString() {
            return "patch " + device + " " + pair.from() + " -> " + pair.to() + how;
        }
    }

    /** Where the channels of a desk are summed, by the stem of their names. */
    private static final Set<String> BUSES = Set.of("main", "mono", "mix", "aux", "matrix", "group");

    /** Rank of an entry whose like the target does not have. */
    private static final int UNLIKE = 100;

    private final SignalGraph graph;
    private final Map<String, Boolean> straight = new HashMap<>();
    private final Map<String, Boolean> channelled = new HashMap<>();

    PossiblePatches(SignalGraph graph) {
        this.graph = graph;
    }

    void from(int node, Possible.Offers offers) {
        Piece piece = graph.piece(node);
        Layout layout = piece.layout();
        if (layout == null || layout.model.patch() == null || graph.side(node) == Side.LEAVING) {
            return;
        }
        int from = node - piece.base();
        if (from < 0 || from >= layout.nodes.size()) {
            return; // a channel of a network port that only a network-send names
        }
        for (int to = 0; to < layout.nodes.size(); to++) {
            if (mayBeSet(piece, layout, from, to) && sameMedia(layout, from, to)) {
                offer(piece, layout, node, piece.base() + to, offers);
            }
        }
    }

    private void offer(Piece piece, Layout layout, int node, int target, Possible.Offers offers) {
        String stem = Words.stem(graph.spot(node).name());
        boolean like = false;
        boolean there = false;
        int[] starts = graph.inStarts();
        int[] in = graph.inEdges();
        for (int i = starts[target]; i < starts[target + 1]; i++) {
            int other = graph.from[in[i]];
            there |= other == node;
            like |= Words.stem(graph.spot(other).name()).equals(stem);
        }
        if (there) {
            return;
        }
        long delay = graph.builder.insideDelay(graph.pieceNumber(node), node, target);
        int rank = like ? 0 : UNLIKE;
        boolean taken = isTakenChannel(layout, node, target);
        if (!taken) {
            offers.offer(target, List.of(step(piece, layout, node, target, List.of(), "")), delay, rank);
        }
        if (graph.side(target) == Side.POINT && graph.patchesInto(target).size() == 1) {
            List<Cause.ByPatch> only = List.copyOf(graph.patchesInto(target));
            offers.offer(target, List.of(step(piece, layout, node, target, only, " instead")), delay, rank);
        }
        Cause.ByPatch elsewhere = toItsLike(node, target);
        if (elsewhere != null && !taken) {
            offers.offer(target, List.of(step(piece, layout, node, target, List.of(elsewhere), " moved")), delay, rank);
        }
    }

    /** A channel of a desk takes one input: where it has one, another may come instead of it, never beside it. */
    private boolean isTakenChannel(Layout layout, int node, int target) {
        return layout.model.kind() == Kind.MIXER
                && graph.side(node) == Side.ARRIVING
                && graph.side(target) == Side.POINT
                && graph.spot(target).name().startsWith("ch-")
                && graph.patchesInto(target).stream()
                        .anyMatch(each ->
                                layout.shape.findSocket(each.from().name()).isPresent());
    }

    /** The one entry from here to another place named like the target: the left bus instead of the right. */
    private Cause.@Nullable ByPatch toItsLike(int node, int target) {
        String stem = Words.stem(graph.spot(target).name());
        Cause.ByPatch found = null;
        for (int e = graph.start[node]; e < graph.start[node + 1]; e++) {
            if (graph.cause[e] instanceof Cause.ByPatch by
                    && graph.to[e] != target
                    && Words.stem(graph.spot(graph.to[e]).name()).equals(stem)) {
                if (found != null && !found.equals(by)) {
                    return null;
                }
                found = by;
            }
        }
        return found;
    }

    /**
     * What the type lets be set and a person would: in a desk no input is led straight to an output or a bus, past
     * channels and faders, unless the desk is used that way already; and no channel is led into another.
     */
    private boolean mayBeSet(Piece piece, Layout layout, int from, int to) {
        if (layout.nodes.get(to).side() == Side.ARRIVING || !layout.mayPatch(from, to)) {
            return false;
        }
        if (layout.model.kind() != Kind.MIXER) {
            return true;
        }
        if (isChannel(layout, from)) {
            return !isChannel(layout, to);
        }
        return layout.nodes.get(from).side() != Side.ARRIVING
                || !passesChannels(layout, to)
                || straight.computeIfAbsent(piece.id(), this::isUsedStraight);
    }

    private static boolean isChannel(Layout layout, int local) {
        Layout.Local place = layout.nodes.get(local);
        return place.side() == Side.POINT && place.spot().name().startsWith("ch-");
    }

    /** What leaves the desk, or a bus of one that has channels. */
    private boolean passesChannels(Layout layout, int local) {
        Layout.Local place = layout.nodes.get(local);
        return place.side() == Side.LEAVING
                || (place.side() == Side.POINT
                        && BUSES.contains(Words.stem(place.spot().name()))
                        && channelled.computeIfAbsent(
                                layout.model.id(),
                                id -> IntStream.range(0, layout.nodes.size())
                                        .anyMatch(each -> isChannel(layout, each))));
    }

    boolean mayBeSet(int node, int to) {
        Piece piece = graph.piece(node);
        Layout layout = piece.layout();
        int from = node - piece.base();
        return layout != null
                && from >= 0
                && from < layout.nodes.size()
                && mayBeSet(piece, layout, from, to - piece.base());
    }

    /** Sound is not patched to a picture, nor the other way round; what a point takes is not said. */
    boolean isSameMedia(int node, int to) {
        Piece piece = graph.piece(node);
        Layout layout = piece.layout();
        return layout != null && sameMedia(layout, node - piece.base(), to - piece.base());
    }

    private boolean isUsedStraight(String device) {
        Integer index = graph.pieceIndex.get(device);
        if (index == null) {
            return false;
        }
        for (PatchEntry entry : graph.project.patch().getOrDefault(device, List.of())) {
            for (Join.Pair pair : entry.join().pairs()) {
                int from = graph.builder.nodeIfKnown(index, pair.from(), true);
                int to = graph.builder.nodeIfKnown(index, pair.to(), false);
                Layout layout = graph.pieces.get(index).layout();
                if (from >= 0
                        && to >= 0
                        && layout != null
                        && graph.side(from) == Side.ARRIVING
                        && passesChannels(layout, to - graph.piece(to).base())) {
                    return true;
                }
            }
        }
        return false;
    }

    /** The least that an entry to this node costs: none of those it has may stay where it leaves the device. */
    long least(int to) {
        int replaced = graph.side(to) == Side.LEAVING ? graph.patchesInto(to).size() : 0;
        return cost(replaced);
    }

    private static long cost(int replaced) {
        return Cost.of(0, PATCH_MINUTES + UNPATCH_MINUTES * replaced, 1 + replaced);
    }

    boolean replacesNothing(int to) {
        return graph.side(to) != Side.LEAVING || least(to) == cost(0);
    }

    boolean isFree(int node) {
        Layout layout = graph.piece(node).layout();
        return layout != null
                && layout.model.patch() != null
                && layout.model.patch().free();
    }

    private static boolean sameMedia(Layout layout, int from, int to) {
        Media one = layout.nodes.get(from).media();
        Media other = layout.nodes.get(to).media();
        return one == null || other == null || one == other;
    }

    /**
     * @param away entries taken out for it besides those that an output has
     * @param how in a word, to tell it from the plain entry
     */
    private Step step(Piece piece, Layout layout, int from, int to, List<Cause.ByPatch> away, String how) {
        Join.Pair written = written(layout, from, to);
        Key key = Key.of(piece.id(), written, how);
        Set<Cause.ByPatch> all = new LinkedHashSet<>(replaced(piece, layout, to, written));
        all.addAll(away);
        List<Cause.ByPatch> replaced = List.copyOf(all);
        return new Step(key, cost(replaced.size()), Set.of(), (now, ids) -> {
            List<Change> changes = new ArrayList<>();
            List<String> words = new ArrayList<>();
            PatchEntry like = replaced.size() == 1
                    ? Lives.entry(
                            now,
                            piece.id(),
                            new Join.Pair(
                                    replaced.getFirst().from(),
                                    replaced.getFirst().to()))
                    : null;
            for (Cause.ByPatch old : replaced) {
                changes.addAll(Lives.unpatched(now, piece.id(), new Join.Pair(old.from(), old.to())));
                words.add("In " + Said.name(piece.id()) + ", take out the patch from " + old.from() + " to " + old.to()
                        + ".");
            }
            changes.addAll(Lives.patched(now, piece.id(), written, like));
            words.add("In " + Said.name(piece.id()) + ", patch " + written.from() + " to " + written.to() + ".");
            return new Step.Done(changes, words, List.of());
        });
    }

    /** Whole ports in a matrix, which switches picture and sound together; else channel by channel. */
    private Join.Pair written(Layout layout, int from, int to) {
        Spot one = graph.address(from).spot();
        Spot other = graph.address(to).spot();
        if (layout.model.kind() == Kind.MATRIX && isWide(graph.socket(from)) && isWide(graph.socket(to))) {
            return new Join.Pair(new Spot(one.name(), null), new Spot(other.name(), null));
        }
        return new Join.Pair(one, other);
    }

    private static boolean isWide(@Nullable Socket socket) {
        return socket != null
                && Math.max(socket.arriving().size(), socket.leaving().size()) > 1;
    }

    private List<Cause.ByPatch> replaced(Piece piece, Layout layout, int to, Join.Pair written) {
        Set<Cause.ByPatch> replaced = new LinkedHashSet<>();
        if (graph.side(to) != Side.LEAVING) {
            return List.of();
        }
        int first = to;
        int last = to;
        Socket socket = graph.socket(to);
        if (written.to().channel() == null
                && socket != null
                && !socket.leaving().isEmpty()) {
            int own = layout.leaving(new Spot(socket.name(), socket.leaving().getFirst()));
            first = piece.base() + own;
            last = first + socket.leaving().size() - 1;
        }
        for (int node = first; node <= last; node++) {
            replaced.addAll(graph.patchesInto(node));
        }
        return List.copyOf(replaced);
    }
}
