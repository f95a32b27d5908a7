package housewright.signal;

import housewright.model.Join;
import housewright.model.Kind;
import housewright.model.LocalRef;
import housewright.model.LocalRef.Spot;
import housewright.model.PatchEntry;
import housewright.model.Shape.Socket;
import housewright.model.change.Change;
import housewright.signal.Layout.Side;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Patch entries a device allows; one that a leaving channel already has is taken out for it. */
final class PossiblePatches {
    private static final int PATCH_MINUTES = 2;
    private static final int UNPATCH_MINUTES = 1;

    /** Looked up in sets for every offer of every search, so its hash is worked out once. */
    private record Key(int hash, String device, Join.Pair pair) {
        static Key of(String device, Join.Pair pair) {
            return new Key(31 * device.hashCode() + pair.hashCode(), device, pair);
        }

        @Override
        public int hashCode() {
            return hash;
        }

        @Override
        public String toString() {
            return "patch " + device + " " + pair.from() + " -> " + pair.to();
        }
    }

    private final SignalGraph graph;

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
        String stem = Words.stem(graph.spot(node).name());
        for (int to = 0; to < layout.nodes.size(); to++) {
            if (layout.nodes.get(to).side() == Side.ARRIVING
                    || !layout.mayPatch(from, to)
                    || !sameMedia(layout, from, to)) {
                continue;
            }
            int target = piece.base() + to;
            boolean like = false;
            boolean there = false;
            int[] starts = graph.inStarts();
            int[] in = graph.inEdges();
            for (int i = starts[target]; i < starts[target + 1]; i++) {
                int other = graph.from[in[i]];
                there |= other == node;
                like |= Words.stem(graph.spot(other).name()).equals(stem);
            }
            if (!there) {
                int rank = like ? 0 : 100;
                offers.offer(
                        target,
                        List.of(step(piece, layout, node, target)),
                        graph.builder.insideDelay(graph.pieceNumber(node), node, target),
                        rank);
            }
        }
    }

    /** The least that an entry to this node costs: none of those it has may stay where it leaves the device. */
    long least(int to) {
        int replaced = graph.side(to) == Side.LEAVING ? graph.patchesInto(to).size() : 0;
        return cost(replaced);
    }

    private static long cost(int replaced) {
        return Cost.of(0, PATCH_MINUTES + UNPATCH_MINUTES * replaced, 1 + replaced);
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

    private Step step(Piece piece, Layout layout, int from, int to) {
        Join.Pair written = written(layout, from, to);
        Key key = Key.of(piece.id(), written);
        List<Cause.ByPatch> replaced = replaced(piece, layout, to, written);
        return new Step(key, cost(replaced.size()), Set.of(), (now, ids) -> {
            List<Change> changes = new ArrayList<>();
            List<String> words = new ArrayList<>();
            for (Cause.ByPatch old : replaced) {
                changes.add(new Change.Unpatch(piece.id(), old.from(), old.to()));
                words.add("In " + Said.name(piece.id()) + ", take out the patch from " + old.from() + " to " + old.to()
                        + ".");
            }
            changes.add(new Change.Patch(piece.id(), entry(written)));
            words.add("In " + Said.name(piece.id()) + ", patch " + written.from() + " to " + written.to() + ".");
            return new Step.Done(changes, words, List.of());
        });
    }

    private static PatchEntry entry(Join.Pair pair) {
        return new PatchEntry(
                new LocalRef(pair.from().toString()),
                List.of(new LocalRef(pair.to().toString())),
                null,
                null,
                null,
                null,
                null);
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

    private static boolean isWide(@org.jspecify.annotations.Nullable Socket socket) {
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
