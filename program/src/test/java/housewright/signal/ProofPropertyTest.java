package housewright.signal;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.model.Feed;
import housewright.model.Project;
import housewright.model.Ref.Address;
import housewright.signal.SlowGraph.State;
import housewright.signal.SlowGraph.Step;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** The engine against a search that tries every path, on systems made at random from fixed seeds. */
class ProofPropertyTest {
    private static final int SEEDS = Integer.getInteger("housewright.seeds", 400);

    private final Map<FeedState, Integer> states = new TreeMap<>();
    private int combed;
    private int carryOther;
    private int tooEntangled;

    @Test
    void proofsAgreeWithTryingEveryPath() {
        for (long seed = 1; seed <= SEEDS; seed++) {
            Project project = RandomHalls.of(seed);
            for (Moment moment : List.of(Moment.target(), Moment.today(), partly(project, seed))) {
                compare(project, moment, "seed " + seed + " " + moment);
            }
        }
        assertThat(states.keySet()).as("every state occurs").containsExactly(FeedState.values());
        assertThat(states.values()).as("and often").allMatch(count -> count >= SEEDS / 4);
        assertThat(combed).as("paths that meet others").isGreaterThan(SEEDS / 4);
        assertThat(carryOther).as("feeds led over what carries another thing").isGreaterThan(SEEDS / 10);
        assertThat(tooEntangled)
                .as("systems in which not every path could be tried")
                .isLessThan(SEEDS / 20);
    }

    private static Moment partly(Project project, long seed) {
        Random random = new Random(seed);
        Set<String> done = new LinkedHashSet<>();
        project.equipment().keySet().forEach(id -> add(done, "equipment." + id, random));
        project.equipment().keySet().forEach(id -> add(done, "patch." + id, random));
        project.cables().keySet().forEach(id -> add(done, "cables." + id, random));
        project.networkSends().keySet().forEach(id -> add(done, "network-sends." + id, random));
        project.radio().keySet().forEach(id -> add(done, "radio." + id, random));
        return new Moment.Partly(done);
    }

    private static void add(Set<String> done, String id, Random random) {
        if (random.nextBoolean()) {
            done.add(id);
        }
    }

    private void compare(Project project, Moment moment, String where) {
        Signals signals = Signals.of(project, Hall.EMPTY, moment);
        SlowProof slow = new SlowProof(project, moment);
        for (FeedProof proof : signals.proofs()) {
            String what = where + " feed " + proof.feed();
            List<SlowProof.Pair> expected;
            try {
                expected = slow.prove(proof.feed());
            } catch (SlowProof.TooEntangledException tooMany) {
                tooEntangled++;
                continue;
            }
            assertThat(proof.pairs()).as(what).hasSameSizeAs(expected);
            FeedState worst = expected.isEmpty() ? FeedState.BROKEN : FeedState.PROVEN;
            for (int i = 0; i < expected.size(); i++) {
                PairProof pair = proof.pairs().get(i);
                compare(slow, proof.feed(), pair, expected.get(i), what + " pair " + i + "\n" + pair);
                worst = pair.state().compareTo(worst) > 0 ? pair.state() : worst;
                states.merge(pair.state(), 1, Integer::sum);
            }
            assertThat(proof.state()).as(what).isEqualTo(worst);
        }
    }

    private void compare(SlowProof slow, Feed feed, PairProof pair, SlowProof.Pair expected, String what) {
        assertThat(pair.from()).as(what).isEqualTo(expected.from());
        assertThat(pair.to()).as(what).isEqualTo(expected.to());
        assertThat(pair.proven()).as(what).isEqualTo(pair.state() == FeedState.PROVEN);
        if (!feed.never() && !expected.arrivals().isEmpty()) {
            SlowProof.Arrival arrival = SlowProof.Arrival.of(pair.delayNanos(), pair.gainDb());
            assertThat(expected.arrivals()).as(what).contains(arrival);
            List<Step> walk = truePath(slow, pair, SlowProof.addresses(feed.through()), what);
            boolean other = slow.carriesOther(feed, walk);
            carryOther += other ? 1 : 0;
            assertThat(pair.state()).as(what).isEqualTo(other ? FeedState.BROKEN : expected.state());
            assertThat(pair.stop() == null).as(what).isEqualTo(pair.state() == FeedState.PROVEN);
            others(slow, feed, pair, expected, what);
            return;
        }
        assertThat(pair.state()).as(what).isEqualTo(expected.state());
        switch (pair.state()) {
            case PROVEN -> assertThat(pair.hops()).as(what).isEmpty();
            case ARRIVES -> truePath(slow, pair, List.of(), what);
            case LATE, CROSSED, BROKEN -> {
                assertThat(pair.hops()).as(what).isEmpty();
                assertThat(pair.stop()).as(what).isNotNull();
                assertThat(pair.stop().why()).as(what).isNotBlank();
                stopIsReached(slow, feed, pair, what);
            }
        }
    }

    /** The hops lead from the source to the destination, through what the feed names, and add up. */
    private static List<Step> truePath(SlowProof slow, PairProof pair, List<Address> through, String what) {
        State begin = slow.graph.begin(pair.from());
        List<List<Step>> walks = walks(slow.graph, begin, pair.hops());
        assertThat(walks).as(what).isNotEmpty();
        List<Step> walk = walks.getFirst();
        State last = walk.isEmpty() ? begin : walk.getLast().to();
        assertThat(last).as(what).isEqualTo(slow.graph.end(pair.to()));
        long edges = walk.stream().mapToLong(Step::nanos).sum();
        assertThat(pair.delayNanos()).as(what).isEqualTo(edges + slow.graph.startNanos(begin, walk));
        int at = -1;
        for (Address place : through) {
            while (!passes(slow.graph, begin, walk, at, place)) {
                at++;
                assertThat(at).as(what + " passes " + place).isLessThan(walk.size());
            }
        }
        return walk;
    }

    private static boolean passes(SlowGraph graph, State begin, List<Step> walk, int at, Address place) {
        State state = at < 0 ? begin : walk.get(at).to();
        return state.equals(graph.begin(place)) || state.equals(graph.end(place));
    }

    /** Every way to walk along these hops in the graph; more than one only where copper carries several kinds. */
    private static List<List<Step>> walks(SlowGraph graph, State begin, List<Hop> hops) {
        List<List<Step>> walks = List.of(List.of());
        for (Hop hop : hops) {
            List<List<Step>> further = new ArrayList<>();
            for (List<Step> walk : walks) {
                State at = walk.isEmpty() ? begin : walk.getLast().to();
                for (Step step : graph.steps(at)) {
                    if (isHop(graph, step, hop)) {
                        List<Step> longer = new ArrayList<>(walk);
                        longer.add(step);
                        further.add(longer);
                    }
                }
            }
            walks = further;
        }
        return walks;
    }

    static boolean isHop(SlowGraph graph, Step step, Hop hop) {
        return isAt(graph, step.from(), hop.from())
                && isAt(graph, step.to(), hop.to())
                && step.cause().equals(cause(hop.cause()))
                && step.nanos() == hop.delayNanos()
                && Math.abs(step.gain() - hop.gainDb()) < 1e-9;
    }

    private static boolean isAt(SlowGraph graph, State state, Address address) {
        String place = address.toString();
        return state.place().equals(place)
                || (address.spot().channel() == null
                        && (state.equals(graph.begin(address)) || state.equals(graph.end(address))));
    }

    private static String cause(Cause cause) {
        return switch (cause) {
            case Cause.ByCable cable -> "cable " + cable.id();
            case Cause.ByRoute route -> "route " + route.equipment();
            case Cause.ByTie tie -> "tie " + tie.equipment();
            case Cause.ByPatch patch -> "patch " + patch.equipment() + " " + patch.from() + " -> " + patch.to();
            case Cause.BySend send -> "send " + send.id() + " over " + send.over();
            case Cause.ByRadio radio -> "radio " + radio.id();
        };
    }

    /** Other ways are ways, meet the path where they say, and are there when there are several paths. */
    private void others(SlowProof slow, Feed feed, PairProof pair, SlowProof.Pair expected, String what) {
        if (!feed.through().isEmpty()) {
            return;
        }
        State begin = slow.graph.begin(pair.from());
        Map<String, long[]> met = new LinkedHashMap<>();
        long nanos = 0;
        double gain = 0;
        for (Hop hop : pair.hops()) {
            nanos += hop.delayNanos();
            gain += hop.gainDb();
            met.put(hop.to().toString(), new long[] {nanos, Math.round(gain * 1000)});
        }
        for (OtherPath other : pair.others()) {
            combed++;
            List<List<Step>> walks = walks(slow.graph, begin, other.hops());
            assertThat(walks).as(what + " other " + other).isNotEmpty();
            assertThat(walks.getFirst().getLast().contested()).isFalse();
            assertThat(other.hops().getLast().to()).isEqualTo(other.meetsAt());
            long[] own = met.get(other.meetsAt().toString());
            assertThat(own).as(what + " meets the path: " + other).isNotNull();
            long its = other.hops().stream().mapToLong(Hop::delayNanos).sum();
            double itsGain = other.hops().stream().mapToDouble(Hop::gainDb).sum();
            assertThat(other.laterNanos()).as(what).isEqualTo(its - own[0]).isNotNegative();
            assertThat(Math.round(other.louderDb() * 1000)).as(what).isEqualTo(Math.round(itsGain * 1000) - own[1]);
            assertThat(pair.hops()).as(what).isNotEqualTo(other.hops());
        }
        assertThat(pair.others().isEmpty())
                .as(what + " has " + expected.paths() + " paths")
                .isEqualTo(expected.paths() <= 1);
    }

    /** Where a signal stops is a place it reaches. */
    private static void stopIsReached(SlowProof slow, Feed feed, PairProof pair, String what) {
        Address at = pair.stop().at();
        if (at == null) {
            return;
        }
        State begin = slow.graph.begin(pair.from());
        assertThat(begin).as(what).isNotNull();
        Set<String> places = new LinkedHashSet<>();
        for (State state : slow.reached(begin, feed.never())) {
            places.add(state.place());
            places.add(state.thing() + "." + state.name());
        }
        if (feed.never()) { // or one where something may come in from where nobody knows
            for (State state : slow.graph.unknownArrivals()) {
                places.add(state.place());
                places.add(state.thing() + "." + state.name());
            }
        }
        assertThat(places).as(what).contains(at.toString());
    }
}
