package housewright.signal;

import housewright.model.Feed;
import housewright.model.Ref.Address;
import housewright.unit.Delay;
import housewright.unit.VideoFormat;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.PriorityQueue;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Finds the cheapest mend of one pair of a feed: the cheapest way through what could be (see {@link Possible}) is tried
 * on the project. Where it does not hold (two steps want one port, another feed would break, a never-feed would be let
 * through), each of its steps in turn is forbidden and the next cheapest way is tried (Lawler's way of listing solutions
 * in order). A step that may serve a way more than once is also tried as bought beforehand.
 *
 * <p>It is looked for twice. First without any step that does harm when it is taken alone, which leads soon to what a
 * person would do; then for something cheaper among all steps, since what one step breaks another may make whole.
 */
final class PairMender {
    /** Ways tried on the project before a search is given up. */
    private static final int MOST_TRIES = 40;

    /** Parts of the solutions looked into before a search is given up. */
    private static final int MOST_PARTS = 120;

    /** Things tried as bought beforehand before a search is given up. */
    private static final int MOST_BOUGHT = 120;

    private static final int MOST_CLOSERS = 16;

    private final Signals from;
    private final Trials trials;
    private final Feed feed;
    private final int pair;
    private final int number;
    private final boolean isCrossed;
    private final CheapestPath.@Nullable Question question;
    private final Set<Step> harmful = new HashSet<>();
    private final boolean thorough;
    private boolean cutShort;

    /**
     * Of the pair with this place in the feed.
     *
     * @param thorough something cheaper is looked for among what does harm when it is taken alone, too
     */
    PairMender(Signals from, Feed feed, int pair, boolean thorough) {
        this.thorough = thorough;
        this.from = from;
        this.trials = from.prospects().trials;
        this.feed = feed;
        this.pair = pair;
        this.number = Trials.pairs(from, feed).nextSetBit(0) + pair;
        this.isCrossed = from.findProof(feed.id())
                .filter(proof -> proof.pairs().get(pair).state() == FeedState.CROSSED)
                .isPresent();
        this.question = from.findProof(feed.id())
                .map(proof -> question(from, feed, proof.pairs().get(pair)))
                .orElse(null);
    }

    /** The search for something cheaper was ended before it had looked everywhere. */
    boolean wasCutShort() {
        return cutShort;
    }

    /** The cheapest that costs less than a limit; null for none, or none found before the search was cut short. */
    Trials.@Nullable Outcome cheapest(long below) {
        CheapestPath.Question asked = question;
        if (asked == null) {
            return null;
        }
        Trials.Outcome best = new Looking(asked, from.prospects().plain(), below, false).look();
        if (boxesMayDo(best, below)) {
            best = best == null ? closing(below) : best;
            best = cheaper(best, new Looking(asked, from.prospects().boxed(), limit(best, below), false));
        }
        cutShort = !thorough || from.work().isSpent();
        if (cutShort) {
            return best;
        }
        Prospects.Field all = boxesMayDo(best, below)
                ? from.prospects().boxed()
                : from.prospects().plain();
        return cheaper(best, new Looking(asked, all, limit(best, below), true));
    }

    /** The pair holds; where it was crossed, its source no longer arrives in another's place. */
    private boolean mends(Trials.Outcome outcome) {
        return outcome.proven().get(number) && (!isCrossed || trials.isUncrossed(outcome, feed, pair));
    }

    /** One box that closes the gap, where nothing else was found. */
    private Trials.@Nullable Outcome closing(long below) {
        BitSet own = new BitSet();
        own.set(number);
        return from.prospects().boxedClosers().of(own).stream()
                .limit(MOST_CLOSERS)
                .map(closer -> trials.of(closer.steps()))
                .filter(outcome -> outcome != null && outcome.cost() < below && mends(outcome))
                .findFirst()
                .orElse(null);
    }

    private static Trials.@Nullable Outcome cheaper(Trials.@Nullable Outcome known, Looking other) {
        Trials.Outcome found = other.look();
        boolean better = found != null && (known == null || known.crosses() || !found.crosses());
        return better ? found : known;
    }

    private static long limit(Trials.@Nullable Outcome known, long below) {
        return known == null || known.crosses() ? below : known.cost();
    }

    private boolean boxesMayDo(Trials.@Nullable Outcome known, long below) {
        long limit = limit(known, below);
        BigDecimal box = from.prospects().cheapestBox();
        return box != null && (limit == Long.MAX_VALUE || box.compareTo(Cost.price(limit)) <= 0);
    }

    /** A part of all solutions: those that use none of the forbidden steps, with one step bought beforehand. */
    private record Part(Set<Step> forbidden, @Nullable Step bought, CheapestPath.@Nullable Found best, long atLeast) {
        String keys() {
            return best == null
                    ? ""
                    : String.join(
                            "\n",
                            best.steps().stream()
                                    .map(step -> step.key().toString())
                                    .toList());
        }
    }

    /** One search. */
    private final class Looking {
        private final CheapestPath.Question asked;
        private final CheapestPath path;
        private final long below;
        private final boolean everywhere;
        private final PriorityQueue<Part> parts =
                new PriorityQueue<>(Comparator.comparingLong(Part::atLeast).thenComparing(Part::keys));

        Looking(CheapestPath.Question asked, Prospects.Field field, long below, boolean everywhere) {
            this.asked = everywhere ? asked.anywhere() : asked;
            this.path = new CheapestPath(from.graph(), field);
            this.below = below;
            this.everywhere = everywhere;
            add(Set.of(), null);
            for (Step shared : field.possible().shared()) {
                long least = path.least(this.asked, shared);
                if (least < below) {
                    parts.add(new Part(Set.of(), shared, null, least));
                }
            }
        }

        private void add(Set<Step> forbidden, @Nullable Step bought) {
            Set<Step> not = forbidden;
            if (!everywhere && !harmful.isEmpty()) {
                not = new HashSet<>(forbidden);
                not.addAll(harmful);
            }
            from.work().way();
            CheapestPath.Found found = path.find(asked, not, bought, below);
            cutShort |= path.gaveUp();
            if (found != null
                    && !found.steps().isEmpty()
                    && (bought == null || found.steps().contains(bought))) {
                parts.add(new Part(forbidden, bought, found, found.cost()));
            }
        }

        Trials.@Nullable Outcome look() {
            Set<Set<Step>> seen = new HashSet<>();
            Trials.Outcome crossing = null;
            int looked = 0;
            int bought = 0;
            while (!parts.isEmpty()) {
                if (seen.size() == MOST_TRIES
                        || looked == MOST_PARTS
                        || bought == MOST_BOUGHT
                        || from.work().isSpent()) {
                    cutShort = true;
                    break;
                }
                Part part = parts.remove();
                CheapestPath.Found best = part.best();
                if (best == null || (!everywhere && best.steps().stream().anyMatch(harmful::contains))) {
                    bought += best == null ? 1 : 0;
                    add(part.forbidden(), part.bought());
                    continue;
                }
                looked++;
                List<Step> steps = best.steps();
                if (seen.add(Set.copyOf(steps))) {
                    Trials.Outcome outcome = trials.of(steps);
                    if (outcome != null && mends(outcome)) {
                        if (!outcome.crosses()) {
                            return outcome;
                        }
                        crossing = crossing == null ? outcome : crossing;
                    }
                    if (outcome == null && !everywhere && learn(steps)) {
                        add(part.forbidden(), part.bought());
                        continue;
                    }
                }
                for (Step step : steps) {
                    if (!step.equals(part.bought())) {
                        Set<Step> forbidden = new HashSet<>(part.forbidden());
                        forbidden.add(step);
                        add(forbidden, part.bought());
                    }
                }
            }
            return crossing;
        }

        /** Which of these steps does harm when it is taken alone. */
        private boolean learn(List<Step> steps) {
            boolean learnt = false;
            for (Step step : steps.size() > 1 ? steps : List.<Step>of()) {
                if (trials.of(List.of(step)) == null) {
                    learnt |= harmful.add(step);
                }
            }
            return learnt;
        }
    }

    private static CheapestPath.@Nullable Question question(Signals from, Feed feed, PairProof pair) {
        SignalGraph graph = from.graph();
        int source = graph.end(pair.from(), true);
        int destination = graph.end(pair.to(), false);
        List<Address> places =
                feed.through().stream().flatMap(ref -> ref.addresses().stream()).toList();
        List<Integer> through = new ArrayList<>();
        for (Address place : places) {
            int arriving = graph.end(place, false);
            int node = arriving >= 0 ? arriving : graph.end(place, true);
            if (node < 0) {
                return null;
            }
            through.add(node);
        }
        if (source < 0 || destination < 0) {
            return null;
        }
        long start = new Explainer(graph).startDelay(source, new int[0], new ArrayList<>(), new ArrayList<>());
        return new CheapestPath.Question(
                source,
                destination,
                through,
                from.prospects().keptApart().from(source, destination),
                start,
                limit(graph, feed));
    }

    /** The longest delay the feed may have, in nanoseconds; {@code Long.MAX_VALUE} for any. */
    static long limit(SignalGraph graph, Feed feed) {
        Delay within = feed.within();
        VideoFormat picture = graph.project.about().picture();
        if (within == null || (within.inFrames() && picture == null)) {
            return Long.MAX_VALUE;
        }
        return within.inFrames() && picture != null ? within.nanos(picture) : Math.round(within.base() * 1e9);
    }
}
