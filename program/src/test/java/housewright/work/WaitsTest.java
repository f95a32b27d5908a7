package housewright.work;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.model.TaskKind;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** {@link Waits} against a version that is slow and obviously right: a table of what waits for what, closed step by step. */
class WaitsTest {
    private static final int GRAPHS = 400;

    @Test
    void whatIsMadeOneKeepsAllThatItWaitsForAndAllThatWaitsForIt() {
        Random random = new Random(20_240_611);
        int joined = 0;
        int neighbours = 0;
        for (int graph = 0; graph < GRAPHS; graph++) {
            List<Draft> drafts = forwards(random, 2 + random.nextInt(14));
            Waits waits = new Waits(drafts);
            Slow slow = new Slow(drafts);
            same(waits, slow, drafts);
            for (int turn = 0; turn < 5; turn++) {
                List<Integer> members = slow.free(random);
                if (members.size() > 1) {
                    neighbours += slow.areNeighbours(members) ? 1 : 0;
                    joined++;
                    waits.join(members.stream().map(drafts::get).toList());
                    slow.join(members);
                    same(waits, slow, drafts);
                }
            }
        }
        assertThat(joined).isGreaterThan(GRAPHS);
        assertThat(neighbours).as("of which one waits for another").isGreaterThan(50);
    }

    @Test
    void whatWaitsForItselfIsFoundWhereverItIs() {
        Random random = new Random(7);
        int round = 0;
        for (int graph = 0; graph < GRAPHS; graph++) {
            List<Draft> drafts = anyhow(random, 1 + random.nextInt(8));
            boolean isRound = new Slow(drafts).isRound();
            round += isRound ? 1 : 0;
            assertThat(new Waits(drafts).find()).isEqualTo(!isRound);
        }
        assertThat(round).isBetween(GRAPHS / 10, GRAPHS * 9 / 10);
    }

    private static void same(Waits waits, Slow slow, List<Draft> drafts) {
        assertThat(slow.isRound()).isFalse();
        assertThat(waits.find()).isTrue();
        List<Integer> alive = slow.alive();
        for (int one : alive) {
            assertThat(waits.before(one)).isEqualTo(slow.before(one));
            assertThat(waits.behind(one)).isEqualTo(slow.behind(one));
        }
        List<Integer> order = alive.stream()
                .map(drafts::get)
                .sorted(waits.inOrder())
                .map(waits::number)
                .toList();
        assertThat(order).containsExactlyInAnyOrderElementsOf(alive);
        for (int i = 0; i < order.size(); i++) {
            assertThat(slow.before(order.get(i)).stream().boxed()).isSubsetOf(order.subList(0, i));
        }
    }

    /** Each waits only for some of those that stand before it in an order of its own. */
    private static List<Draft> forwards(Random random, int count) {
        List<Draft> drafts = drafts(count);
        List<Draft> order = new ArrayList<>(drafts);
        Collections.shuffle(order, random);
        int often = 2 + random.nextInt(5);
        for (int i = 0; i < count; i++) {
            for (int j = 0; j < i; j++) {
                if (random.nextInt(often) == 0) {
                    order.get(i).after.add(order.get(j).id);
                }
            }
            if (random.nextInt(8) == 0) {
                order.get(i).after.add("mount-nothing");
            }
        }
        return drafts;
    }

    private static List<Draft> anyhow(Random random, int count) {
        List<Draft> drafts = drafts(count);
        for (int i = random.nextInt(count + 2); i > 0; i--) {
            drafts.get(random.nextInt(count)).after.add(drafts.get(random.nextInt(count)).id);
        }
        return drafts;
    }

    private static List<Draft> drafts(int count) {
        return IntStream.range(0, count)
                .mapToObj(i -> new Draft("mount-" + i, TaskKind.MOUNT, "Mount " + i, "It is new."))
                .toList();
    }

    /** A table of what waits for what, of which all is worked out anew each time. */
    private static final class Slow {
        private final int count;
        private boolean[][] waits; // first the one that waits
        private final Set<Integer> gone = new HashSet<>();

        Slow(List<Draft> drafts) {
            count = drafts.size();
            waits = new boolean[count][count];
            for (int i = 0; i < count; i++) {
                for (int j = 0; j < count; j++) {
                    waits[i][j] = drafts.get(i).after.contains(drafts.get(j).id);
                }
            }
        }

        List<Integer> alive() {
            return IntStream.range(0, count)
                    .filter(each -> !gone.contains(each))
                    .boxed()
                    .toList();
        }

        /** Warshall's closure. */
        private boolean[][] closed() {
            boolean[][] closed = new boolean[count][];
            for (int i = 0; i < count; i++) {
                closed[i] = waits[i].clone();
            }
            for (int over = 0; over < count; over++) {
                for (int i = 0; i < count; i++) {
                    for (int j = 0; j < count; j++) {
                        closed[i][j] |= closed[i][over] && closed[over][j];
                    }
                }
            }
            return closed;
        }

        boolean isRound() {
            boolean[][] closed = closed();
            return IntStream.range(0, count).anyMatch(each -> closed[each][each]);
        }

        BitSet before(int one) {
            boolean[][] closed = closed();
            BitSet before = new BitSet();
            IntStream.range(0, count).filter(each -> closed[one][each]).forEach(before::set);
            return before;
        }

        BitSet behind(int one) {
            boolean[][] closed = closed();
            BitSet behind = new BitSet();
            IntStream.range(0, count).filter(each -> closed[each][one]).forEach(behind::set);
            return behind;
        }

        /** Some of those that are there, in any order, that make no ring as one; fewer than two where none was found. */
        List<Integer> free(Random random) {
            List<Integer> order = new ArrayList<>(alive());
            Collections.shuffle(order, random);
            List<Integer> free = new ArrayList<>();
            for (int each : order.subList(0, Math.min(order.size(), 2 + random.nextInt(3)))) {
                List<Integer> more = new ArrayList<>(free);
                more.add(each);
                if (!joined(more).isRound()) {
                    free = more;
                }
            }
            return free;
        }

        boolean areNeighbours(List<Integer> members) {
            return members.stream().anyMatch(one -> members.stream().anyMatch(other -> waits[one][other]));
        }

        private Slow joined(List<Integer> members) {
            Slow other = new Slow(drafts(count));
            other.waits = waits;
            other.gone.addAll(gone);
            other.join(members);
            return other;
        }

        void join(List<Integer> members) {
            int one = Collections.min(members);
            boolean[][] now = new boolean[count][count];
            for (int i = 0; i < count; i++) {
                for (int j = 0; j < count; j++) {
                    int from = members.contains(i) ? one : i;
                    int to = members.contains(j) ? one : j;
                    now[from][to] |= waits[i][j] && from != to;
                }
            }
            waits = now;
            members.stream().filter(each -> each != one).forEach(gone::add);
        }
    }
}
