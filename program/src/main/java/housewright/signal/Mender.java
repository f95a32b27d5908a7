package housewright.signal;

import housewright.model.Equipment;
import housewright.model.Feed;
import housewright.model.Life;
import housewright.model.Project;
import housewright.model.Ref.Address;
import housewright.model.change.Change;
import housewright.model.change.Section;
import housewright.signal.GraphBuilder.PortKey;
import housewright.unit.Delay;
import housewright.unit.VideoFormat;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Finds the cheapest mend of a feed, by price, minutes, number of changes.
 *
 * <p>For one pair: the cheapest way through what could be (see {@link Possible}) is tried on the project. Where it
 * does not hold (two steps want one port, another feed would break, a never-feed would be let through), each of its
 * steps in turn is forbidden and the next cheapest way is tried (Lawler's way of listing solutions in order). A step
 * that may serve a way more than once is also tried as bought beforehand. Every change lies on the way of the feed
 * itself; at most one converter stands between two ports.
 *
 * <p>What could damage gear or hurt somebody is never offered, see {@link SafeToOffer}.
 *
 * <p>For several pairs: one after the other, each using what the earlier ones added, in the best order (all orders of
 * up to {@value #MOST_ORDERED} broken pairs, else the order of the file).
 *
 * <p>For a never-feed that arrives: the cheapest cut, see {@link Cutter}.
 */
final class Mender {
    private static final int MOST_ORDERED = 4;

    /** Ways tried on the project before giving up on a pair. */
    private static final int MOST_TRIES = 40;

    /** Parts of the solutions looked into before giving up on a pair. */
    private static final int MOST_PARTS = 120;

    private final Signals signals;
    /** Pairs mended already on the same state of the project: many orders begin alike. */
    private final Map<Signals, Map<Integer, Optional<Mended>>> tried = new HashMap<>();

    Mender(Signals signals) {
        this.signals = signals;
    }

    /** A pair mended: the project after it. */
    private record Mended(Signals after, List<Change> changes, List<String> words, Set<String> assumed, long cost) {}

    List<Mend> mends(FeedProof proof) {
        if (proof.proven() || !(signals.moment() instanceof Moment.Target)) {
            return List.of();
        }
        if (proof.state() == FeedState.ARRIVES) {
            return new Cutter(signals).cut(proof.feed());
        }
        if (proof.feed().never() || proof.pairs().isEmpty()) {
            return List.of();
        }
        Mended best = mend(signals, proof.feed());
        if (best == null) {
            best = keeping(proof.feed());
        }
        return best == null ? List.of() : List.of(mend(best));
    }

    private static Mend mend(Mended mended) {
        return new Mend(
                mended.changes(),
                mended.words(),
                Cost.price(mended.cost()),
                Cost.minutes(mended.cost()),
                List.copyOf(mended.assumed()));
    }

    /** All broken pairs, in the best order. */
    private @Nullable Mended mend(Signals from, Feed feed) {
        Mended best = null;
        for (List<Integer> order : orders(broken(from, feed))) {
            Mended mended = inOrder(from, feed, order, best == null ? Long.MAX_VALUE : best.cost());
            if (mended != null && (best == null || mended.cost() < best.cost())) {
                best = mended;
            }
        }
        return best;
    }

    private @Nullable Mended inOrder(Signals from, Feed feed, List<Integer> order, long limit) {
        Mended sum = new Mended(from, List.of(), List.of(), Set.of(), 0);
        for (int pair : order) {
            if (proof(sum.after(), feed).pairs().get(pair).proven()) {
                continue;
            }
            Mended next = known(sum.after(), feed, pair);
            if (next == null || sum.cost() + next.cost() >= limit) {
                return null;
            }
            sum = joined(sum, next);
        }
        return proof(sum.after(), feed).proven() ? sum : null;
    }

    private @Nullable Mended known(Signals from, Feed feed, int pair) {
        return tried.computeIfAbsent(from, key -> new HashMap<>())
                .computeIfAbsent(pair, key -> Optional.ofNullable(pair(from, feed, pair)))
                .orElse(null);
    }

    private static Mended joined(Mended one, Mended next) {
        List<Change> changes = new ArrayList<>(one.changes());
        changes.addAll(next.changes());
        List<String> words = new ArrayList<>(one.words());
        words.addAll(next.words());
        Set<String> assumed = new LinkedHashSet<>(one.assumed());
        assumed.addAll(next.assumed());
        return new Mended(next.after(), changes, words, assumed, one.cost() + next.cost());
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

    /** A part of all solutions: those that use none of the forbidden steps, with one step bought beforehand. */
    private record Part(Set<Step> forbidden, @Nullable Step bought, CheapestPath.@Nullable Found best, long atLeast) {}

    /** First without boxes; then with those cheaper than what was found, for only they can do better. */
    private static @Nullable Mended pair(Signals from, Feed feed, int pair) {
        Mended plain = pair(from, feed, pair, 0);
        long limit = plain == null ? Long.MAX_VALUE : Cost.hundredths(Cost.price(plain.cost()));
        Mended boxed = limit == 0 ? null : pair(from, feed, pair, limit);
        return plain == null || (boxed != null && boxed.cost() < plain.cost()) ? boxed : plain;
    }

    private static @Nullable Mended pair(Signals from, Feed feed, int pair, long boxesBelow) {
        SignalGraph graph = from.graph();
        CheapestPath.Question question =
                question(graph, feed, proof(from, feed).pairs().get(pair));
        if (question == null) {
            return null;
        }
        Possible possible = new Possible(from, boxesBelow);
        CheapestPath path = new CheapestPath(graph, possible);
        PriorityQueue<Part> parts =
                new PriorityQueue<>(Comparator.comparingLong(Part::atLeast).thenComparing(Mender::keys));
        Set<Set<Step>> seen = new HashSet<>();
        add(parts, path, question, Set.of(), null);
        for (Step shared : possible.shared()) {
            parts.add(new Part(Set.of(), shared, null, shared.cost()));
        }
        int tries = 0;
        for (int looked = 0; !parts.isEmpty() && tries < MOST_TRIES && looked < MOST_PARTS; looked++) {
            Part part = parts.remove();
            if (boxesBelow != 0
                    && boxesBelow != Long.MAX_VALUE
                    && Cost.hundredths(Cost.price(part.atLeast())) > boxesBelow) {
                return null; // dearer than what is known already
            }
            CheapestPath.Found best = part.best();
            if (best == null) {
                add(parts, path, question, part.forbidden(), part.bought());
                continue;
            }
            List<Step> steps = best.steps();
            if (seen.add(Set.copyOf(steps))) {
                tries++;
                Mended mended = tried(from, feed, pair, steps, best.cost());
                if (mended != null) {
                    return mended;
                }
            }
            for (Step step : steps) {
                if (!step.equals(part.bought())) {
                    Set<Step> forbidden = new HashSet<>(part.forbidden());
                    forbidden.add(step);
                    add(parts, path, question, forbidden, part.bought());
                }
            }
        }
        return null;
    }

    private static String keys(Part part) {
        CheapestPath.Found best = part.best();
        return best == null
                ? ""
                : String.join(
                        "\n",
                        best.steps().stream().map(step -> step.key().toString()).toList());
    }

    private static void add(
            PriorityQueue<Part> parts,
            CheapestPath path,
            CheapestPath.Question question,
            Set<Step> forbidden,
            @Nullable Step bought) {
        CheapestPath.Found found = path.find(question, forbidden, bought);
        if (found != null
                && !found.steps().isEmpty()
                && (bought == null || found.steps().contains(bought))) {
            parts.add(new Part(forbidden, bought, found, found.cost()));
        }
    }

    private static CheapestPath.@Nullable Question question(SignalGraph graph, Feed feed, PairProof pair) {
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
        return new CheapestPath.Question(source, destination, through, start, limit(graph, feed));
    }

    private static long limit(SignalGraph graph, Feed feed) {
        Delay within = feed.within();
        VideoFormat picture = graph.project.about().picture();
        if (within == null || (within.inFrames() && picture == null)) {
            return Long.MAX_VALUE;
        }
        return within.inFrames() && picture != null ? within.nanos(picture) : Math.round(within.base() * 1e9);
    }

    /** The project with the steps taken, where that mends the pair and harms nothing. */
    private static @Nullable Mended tried(Signals from, Feed feed, int pair, List<Step> steps, long cost) {
        Set<PortKey> taken = new HashSet<>();
        List<Change> changes = new ArrayList<>();
        List<String> words = new ArrayList<>();
        Set<String> assumed = new LinkedHashSet<>();
        NewIds ids = new NewIds(from.project());
        Project changed = from.project();
        for (Step step : steps) {
            for (PortKey port : step.takes()) {
                if (!taken.add(port)) {
                    return null;
                }
            }
            Step.Done done = step.done().on(changed, ids);
            changed = Change.apply(changed, done.changes());
            changes.addAll(done.changes());
            words.addAll(done.words());
            assumed.addAll(done.assumed());
        }
        Signals after = from.with(changed);
        boolean mends = proof(after, feed).pairs().get(pair).proven();
        return mends && harmsNothing(from, after) && SafeToOffer.is(changes, after)
                ? new Mended(after, changes, words, assumed, cost)
                : null;
    }

    /** Every pair that was proven still is. */
    static boolean harmsNothing(Signals before, Signals after) {
        List<FeedProof> were = before.proofs();
        List<FeedProof> are = after.proofs();
        for (int f = 0; f < were.size(); f++) {
            List<PairProof> then = were.get(f).pairs();
            List<PairProof> now = are.get(f).pairs();
            for (int p = 0; p < then.size(); p++) {
                if (then.get(p).proven() && !now.get(p).proven()) {
                    return false;
                }
            }
        }
        return true;
    }

    /** A piece that was to be struck is kept, with the cables that join it to what stays. */
    private @Nullable Mended keeping(Feed feed) {
        Mended best = null;
        Project project = signals.project();
        for (Equipment struck : project.equipment().values()) {
            if (struck.life() != Life.STRIKE) {
                continue;
            }
            List<Change> changes = new ArrayList<>();
            changes.add(new Change.Put(Section.EQUIPMENT, struck.id(), Lives.kept(struck)));
            Map<String, Change> cables = new LinkedHashMap<>();
            project.cables().values().forEach(cable -> {
                if (cable.life() == Life.STRIKE && touches(cable, struck.id())) {
                    cables.put(cable.id(), new Change.Put(Section.CABLES, cable.id(), Lives.kept(cable)));
                }
            });
            changes.addAll(cables.values());
            Signals kept = signals.with(Change.apply(project, changes));
            if (!harmsNothing(signals, kept) || !SafeToOffer.is(changes, kept)) {
                continue;
            }
            List<String> words =
                    new ArrayList<>(List.of("Keep " + Said.name(struck.id()) + " instead of striking it."));
            if (!cables.isEmpty()) {
                words.add("Keep cable " + String.join(", ", cables.keySet()) + " with it.");
            }
            Mended first = new Mended(kept, changes, words, Set.of(), Cost.of(0, 5, changes.size()));
            Mended rest =
                    proof(kept, feed).proven() ? new Mended(kept, List.of(), List.of(), Set.of(), 0) : mend(kept, feed);
            if (rest != null && (best == null || first.cost() + rest.cost() < best.cost())) {
                best = joined(first, rest);
            }
        }
        return best;
    }

    private static boolean touches(housewright.model.Cable cable, String thing) {
        boolean from = cable.from() != null && cable.from().text().startsWith(thing + ".");
        boolean to = cable.to() != null && cable.to().text().startsWith(thing + ".");
        return from
                || to
                || cable.ways().stream()
                        .anyMatch(way -> way.from().thing().equals(thing)
                                || way.to().thing().equals(thing));
    }
}
