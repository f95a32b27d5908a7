package housewright.signal;

import housewright.model.Feed;
import housewright.model.Ref;
import housewright.model.Ref.Address;
import java.util.ArrayList;
import java.util.List;

/** What a feed asks of a graph: its pairs, and the nodes where they begin, pass and end. */
final class Asked {
    final Feed feed;
    final List<Pair> pairs;
    /** Where a source may arrive instead of where it should: the destinations of a feed whose pairs go in order. */
    final List<Pair> instead;
    /** Places to pass, in order. */
    final List<Through> through = new ArrayList<>(0);

    /**
     * A source and a destination of a feed, and their nodes; -1 where a place is not there.
     *
     * @param source the node where it begins
     * @param destination the node where it must arrive
     */
    record Pair(Address from, Address to, int source, int destination) {}

    /** A place to pass; a channel may be passed on either side of its device. */
    record Through(Address place, List<Integer> nodes) {}

    Asked(Feed feed, SignalGraph graph) {
        this.feed = feed;
        List<Address> from = addresses(feed.from());
        List<Address> to = addresses(feed.to());
        boolean inOrder = !feed.never() && from.size() > 1 && from.size() == to.size();
        int[] sources = nodes(graph, from, true);
        int[] destinations = nodes(graph, to, false);
        this.pairs = new ArrayList<>(inOrder ? from.size() : from.size() * to.size());
        for (int i = 0; i < sources.length; i++) {
            for (int j = inOrder ? i : 0; j < (inOrder ? i + 1 : destinations.length); j++) {
                pairs.add(new Pair(from.get(i), to.get(j), sources[i], destinations[j]));
            }
        }
        this.instead = inOrder ? pairs : List.of();
        for (Address place : addresses(feed.through())) {
            through.add(new Through(place, sides(graph, place)));
        }
    }

    private static int[] nodes(SignalGraph graph, List<Address> places, boolean begins) {
        int[] nodes = new int[places.size()];
        for (int i = 0; i < nodes.length; i++) {
            nodes[i] = graph.end(places.get(i), begins);
        }
        return nodes;
    }

    private static List<Integer> sides(SignalGraph graph, Address place) {
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

    private static List<Address> addresses(List<Ref> refs) {
        if (refs.size() == 1) {
            return refs.getFirst().addresses();
        }
        List<Address> all = new ArrayList<>();
        for (Ref ref : refs) {
            all.addAll(ref.addresses());
        }
        return all;
    }
}
