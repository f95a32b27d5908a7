package housewright.signal;

import housewright.model.Cable;
import housewright.model.Equipment;
import housewright.model.Feed;
import housewright.model.Life;
import housewright.model.Project;
import housewright.model.change.Change;
import housewright.model.change.Section;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Finds mends of a feed: the cheapest by price, minutes, number of changes; and, where it is another, the single thing
 * that mends the most other feeds with it, which is as a rule what came apart.
 *
 * <p>For one pair see {@link PairMender}. Every change lies on the way of the feed itself; at most one converter stands
 * between two ports.
 *
 * <p>A mend by which a source of a feed arrives where another belongs, too, is only taken where there is none other, and
 * never where it is made of patch entries. What could damage gear or hurt somebody is never offered, see {@link SafeToOffer}.
 *
 * <p>For several pairs: one after the other, each using what the earlier ones added, in the best order (all orders of
 * up to {@value #MOST_ORDERED} broken pairs, else the order of the file).
 *
 * <p>For a never-feed that arrives: the cheapest cut, see {@link Cutter}.
 */
final class Mender {
    private static final int MOST_ORDERED = 4;

    /** Where one thing mends this many other feeds, a cheaper mend of the one feed is not looked for everywhere. */
    private static final int MANY = 3;

    private static final int KEEPING_MINUTES = 5;

    /** Single things tried that would close the gap. */
    private static final int MOST_CLOSERS = 16;

    private final Signals signals;
    private final Trials trials;
    /** Pairs mended already on the same state of the project: many orders begin alike. */
    private final Map<Signals, Map<Integer, Known>> tried = new HashMap<>();

    private boolean thorough = true;

    /** A search was ended before it had looked everywhere. */
    private boolean cutShort;

    Mender(Signals signals) {
        this.signals = signals;
        this.trials = signals.prospects().trials;
    }

    /** A feed or pair mended: the project after it. */
    private record Mended(Signals after, List<Change> changes, List<String> words, Set<String> assumed, long cost) {
        Mended and(Mended next) {
            List<Change> all = new ArrayList<>(changes);
            all.addAll(next.changes());
            List<String> said = new ArrayList<>(words);
            said.addAll(next.words());
            Set<String> granted = new LinkedHashSet<>(assumed);
            granted.addAll(next.assumed());
            return new Mended(next.after(), all, said, granted, cost + next.cost());
        }
    }

    /** What came of looking for a mend that costs less than a limit; no mend is only known for limits up to this. */
    private record Known(long below, @Nullable Mended mended) {}

    List<Mend> mends(FeedProof proof) {
        if (proof.proven() || !(signals.moment() instanceof Moment.Target)) {
            return List.of();
        }
        if (proof.state() == FeedState.ARRIVES) {
            return new Cutter(signals)
                    .cut(proof.feed()).stream()
                            .map(mend -> mend.alsoMending(also(proof.feed(), mend.changes())))
                            .toList();
        }
        if (proof.feed().never() || proof.pairs().isEmpty()) {
            return List.of();
        }
        Mended whole = sooner(proof);
        whole = whole == null ? closing(proof.feed()) : whole;
        thorough = whole == null || also(proof.feed(), whole.changes()).size() < MANY;
        // one that costs as much may be the likelier one
        Mended best = mend(signals, proof.feed(), whole == null ? Long.MAX_VALUE : whole.cost() + 1);
        if (best == null) {
            best = whole;
        }
        Mended kept = keeping(proof.feed(), best == null ? Long.MAX_VALUE : best.cost());
        best = kept == null ? best : kept;
        return best == null ? List.of() : listed(proof.feed(), best, whole);
    }

    private List<Mend> listed(Feed feed, Mended best, @Nullable Mended whole) {
        Mend first = mend(feed, best);
        if (whole == null || whole.changes().equals(best.changes())) {
            return List.of(first);
        }
        Mend second = mend(feed, whole);
        boolean wider = second.alsoMends().size() > first.alsoMends().size();
        boolean simpler = second.alsoMends().size() == first.alsoMends().size()
                && second.changes().size() < first.changes().size();
        return wider || simpler ? List.of(first, second) : List.of(first);
    }

    private Mend mend(Feed feed, Mended mended) {
        Set<String> assumed = new LinkedHashSet<>(mended.assumed());
        boolean severalAtOnce =
                mended.changes().size() > 1 && broken(signals, feed).size() > 1;
        if (severalAtOnce) {
            assumed.add("worked out for one way of the feed after the other; all at once may cost less");
        }
        if (cutShort) {
            assumed.add("a cheaper mend may exist: the search for one was ended early");
        }
        return new Mend(
                mended.changes(),
                mended.words(),
                Cost.price(mended.cost()),
                Cost.minutes(mended.cost()),
                List.copyOf(assumed),
                also(feed, mended.changes()));
    }

    /** Other feeds that these changes prove as well. */
    private List<String> also(Feed feed, List<Change> changes) {
        Signals after = signals.with(Change.apply(signals.project(), changes));
        List<String> also = new ArrayList<>();
        for (FeedProof proof : after.proofs()) {
            String id = proof.feed().id();
            boolean was = signals.findProof(id).map(FeedProof::proven).orElse(true);
            if (proof.proven() && !was && !id.equals(feed.id())) {
                also.add(id);
            }
        }
        return also;
    }

    /** A late feed in time, by a delay that was set too long. */
    private @Nullable Mended sooner(FeedProof proof) {
        Mended best = null;
        long limit = PairMender.limit(signals.graph(), proof.feed());
        for (Step step : PossibleDelays.of(signals.graph(), proof, limit)) {
            Trials.Outcome outcome = trials.of(List.of(step));
            if (outcome != null
                    && Closers.holdsAll(outcome.proven(), Trials.pairs(signals, proof.feed()))
                    && (best == null || outcome.cost() < best.cost())) {
                best = mended(signals, outcome);
            }
        }
        return best;
    }

    /** The single thing that mends the whole feed and closes the gap of the most others. */
    private @Nullable Mended closing(Feed feed) {
        BitSet broken = Trials.pairs(signals, feed);
        BitSet whole = (BitSet) broken.clone();
        broken.andNot(trials.proven());
        Mended best = null;
        int most = 0;
        int tries = 0;
        List<Closers.Closer> closers = isCrossed(feed)
                ? signals.prospects().closers().exchanging(broken.nextSetBit(0))
                : signals.prospects().closers().of(broken);
        for (Closers.Closer closer : closers) {
            if (tries++ == MOST_CLOSERS || closer.pairs().cardinality() <= most) {
                break;
            }
            Trials.Outcome outcome = trials.of(closer.steps());
            if (outcome != null && Closers.holdsAll(outcome.proven(), whole) && isUncrossed(outcome, feed)) {
                int mended = outcome.proven().cardinality() - trials.proven().cardinality();
                if (best == null || mended > most || (mended == most && outcome.cost() < best.cost())) {
                    best = mended(signals, outcome);
                    most = mended;
                }
            }
        }
        return best;
    }

    private static Mended mended(Signals from, Trials.Outcome outcome) {
        Set<String> assumed = new LinkedHashSet<>(outcome.assumed());
        if (outcome.crosses()) {
            assumed.add("a source may also arrive where another of its feed belongs");
        }
        return new Mended(from.with(outcome.project()), outcome.changes(), outcome.words(), assumed, outcome.cost());
    }

    /** All broken pairs, in the best order. */
    private @Nullable Mended mend(Signals from, Feed feed, long below) {
        Mended best = null;
        List<Integer> broken = broken(from, feed);
        cutShort |= broken.size() > MOST_ORDERED;
        for (List<Integer> order : orders(broken)) {
            Mended mended = inOrder(from, feed, order, best == null ? below : best.cost());
            best = mended == null ? best : mended;
        }
        return best;
    }

    private @Nullable Mended inOrder(Signals from, Feed feed, List<Integer> order, long below) {
        Mended sum = new Mended(from, List.of(), List.of(), Set.of(), 0);
        for (int pair : order) {
            if (proof(sum.after(), feed).pairs().get(pair).proven()) {
                continue;
            }
            Mended next = known(sum.after(), feed, pair, below - sum.cost());
            if (next == null) {
                return null;
            }
            sum = sum.and(next);
        }
        boolean whole =
                proof(sum.after(), feed).proven() && (!isCrossed(feed) || Trials.isUncrossed(sum.after(), feed));
        return whole ? sum : null;
    }

    /** A crossed feed is not mended while its sources still arrive in each other's places. */
    private boolean isUncrossed(Trials.Outcome outcome, Feed feed) {
        return !isCrossed(feed) || Trials.isUncrossed(signals.with(outcome.project()), feed);
    }

    private boolean isCrossed(Feed feed) {
        return proof(signals, feed).state() == FeedState.CROSSED;
    }

    private @Nullable Mended known(Signals from, Feed feed, int pair, long below) {
        Map<Integer, Known> own = tried.computeIfAbsent(from, key -> new HashMap<>());
        Known known = own.get(pair);
        if (known == null || (known.mended() == null && known.below() < below)) {
            known = new Known(below, pair(from, feed, pair, below));
            own.put(pair, known);
        }
        Mended mended = known.mended();
        return mended == null || mended.cost() >= below ? null : mended;
    }

    private static FeedProof proof(Signals at, Feed feed) {
        return at.findProof(feed.id()).orElseThrow(() -> new IllegalStateException(feed.id() + " is gone"));
    }

    private static List<Integer> broken(Signals at, Feed feed) {
        List<Integer> broken = new ArrayList<>();
        List<PairProof> pairs = proof(at, feed).pairs();
        for (int i = 0; i < pairs.size(); i++) {
            if (!pairs.get(i).proven()) {
                broken.add(i);
            }
        }
        return broken;
    }

    private static List<List<Integer>> orders(List<Integer> pairs) {
        if (pairs.size() > MOST_ORDERED || pairs.size() < 2) {
            return List.of(pairs);
        }
        List<List<Integer>> orders = new ArrayList<>();
        for (int i = 0; i < pairs.size(); i++) {
            int first = pairs.get(i);
            List<Integer> rest = new ArrayList<>(pairs.subList(0, i));
            rest.addAll(pairs.subList(i + 1, pairs.size()));
            for (List<Integer> order : orders(rest)) {
                List<Integer> whole = new ArrayList<>(List.of(first));
                whole.addAll(order);
                orders.add(whole);
            }
        }
        return orders;
    }

    private @Nullable Mended pair(Signals from, Feed feed, int pair, long below) {
        PairMender mender = new PairMender(from, feed, pair, thorough);
        Trials.Outcome outcome = mender.cheapest(below);
        cutShort |= mender.wasCutShort();
        return outcome == null ? null : mended(from, outcome);
    }

    /** A piece that was to be struck is kept, with the cables that join it to what stays. */
    private @Nullable Mended keeping(Feed feed, long below) {
        Mended best = null;
        BitSet whole = Trials.pairs(signals, feed);
        List<Trials.Outcome> helping = new ArrayList<>();
        for (Equipment struck : signals.project().equipment().values()) {
            Trials.Outcome kept = struck.life() == Life.STRIKE ? trials.of(List.of(keep(struck))) : null;
            if (kept == null || kept.cost() >= (best == null ? below : best.cost())) {
                continue;
            }
            if (Closers.holdsAll(kept.proven(), whole)) {
                best = mended(signals, kept);
            } else if (helps(signals.with(kept.project()), feed, struck.id())) {
                helping.add(kept);
            }
        }
        for (Trials.Outcome kept : below == Long.MAX_VALUE ? helping : List.<Trials.Outcome>of()) {
            Mended first = mended(signals, kept);
            long rest = (best == null ? below : best.cost()) - first.cost();
            Mended then = rest > 0 ? mend(first.after(), feed, rest) : null;
            best = then == null ? best : first.and(then);
        }
        return best;
    }

    /** A source of a broken pair arrives in the piece, or the piece leads on to a destination. */
    private static boolean helps(Signals kept, Feed feed, String piece) {
        SignalGraph graph = kept.graph();
        Search search = new Search(graph);
        for (int broken : broken(kept, feed)) {
            PairProof pair = proof(kept, feed).pairs().get(broken);
            int source = graph.end(pair.from(), true);
            int destination = graph.end(pair.to(), false);
            if (source < 0 || destination < 0) {
                continue;
            }
            search.from(source, false);
            for (int node : search.reached()) {
                if (graph.piece(node).id().equals(piece)) {
                    return true;
                }
            }
            if (new Backward(graph)
                    .reaching(destination).stream()
                            .anyMatch(node -> graph.piece(node).id().equals(piece))) {
                return true;
            }
        }
        return false;
    }

    private static Step keep(Equipment struck) {
        return new Step("keep " + struck.id(), Cost.of(0, KEEPING_MINUTES, 1), Set.of(), (now, ids) -> {
            Map<String, Change> cables = new LinkedHashMap<>();
            now.cables().values().forEach(cable -> {
                if (cable.life() == Life.STRIKE && touches(cable, struck.id()) && isFree(now, cable)) {
                    cables.put(cable.id(), new Change.Put(Section.CABLES, cable.id(), Lives.kept(cable)));
                }
            });
            List<Change> changes = new ArrayList<>();
            changes.add(new Change.Put(Section.EQUIPMENT, struck.id(), Lives.kept(struck)));
            changes.addAll(cables.values());
            List<String> words =
                    new ArrayList<>(List.of("Keep " + Said.name(struck.id()) + " instead of striking it."));
            if (!cables.isEmpty()) {
                words.add("Keep cable " + String.join(", ", cables.keySet()) + " with it.");
            }
            return new Step.Done(changes, words, List.of());
        });
    }

    /** No other cable takes a port of this one. */
    private static boolean isFree(Project now, Cable cable) {
        return now.cables().values().stream()
                .filter(other -> other.life() != Life.STRIKE)
                .flatMap(other -> SafeToOffer.ends(other).stream())
                .noneMatch(SafeToOffer.ends(cable)::contains);
    }

    private static boolean touches(Cable cable, String thing) {
        boolean from = cable.from() != null && cable.from().text().startsWith(thing + ".");
        boolean to = cable.to() != null && cable.to().text().startsWith(thing + ".");
        return from
                || to
                || cable.ways().stream()
                        .anyMatch(way -> way.from().thing().equals(thing)
                                || way.to().thing().equals(thing));
    }
}
