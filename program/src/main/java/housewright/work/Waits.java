package housewright.work;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collection;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.IntStream;

/**
 * What waits for what, by number: tasks in the order in which they are known, of which several can be made one. What comes
 * before or behind one is looked for when it is asked.
 */
final class Waits {
    private final Map<String, Integer> numbers = new HashMap<>();
    private final int[] into; // the task that it is now a part of, or itself
    private final int[][] first; // of those that are no part of another, as they were when they were made one
    private int[][] then = {};
    private int[] rank = {};

    Waits(Collection<Draft> drafts) {
        drafts.forEach(each -> numbers.put(each.id, numbers.size()));
        into = IntStream.range(0, drafts.size()).toArray();
        first = drafts.stream()
                .map(draft -> draft.after.stream()
                        .map(numbers::get)
                        .filter(Objects::nonNull)
                        .mapToInt(Integer::intValue)
                        .toArray())
                .toArray(int[][]::new);
    }

    /** Puts all in order as they now are; false where they wait for each other. */
    boolean find() {
        int[] open = new int[into.length];
        int[] followers = new int[into.length];
        int alive = 0;
        for (int i = 0; i < into.length; i++) {
            if (into[i] == i) {
                alive++;
                first[i] = now(first[i]);
                open[i] = first[i].length;
                for (int each : first[i]) {
                    followers[each]++;
                }
            }
        }
        turn(followers);
        int[] order = new int[alive];
        int known = 0;
        for (int i = 0; i < into.length; i++) {
            if (into[i] == i && open[i] == 0) {
                order[known++] = i;
            }
        }
        for (int i = 0; i < known; i++) {
            for (int next : then[order[i]]) {
                if (--open[next] == 0) {
                    order[known++] = next;
                }
            }
        }
        rank = new int[into.length];
        for (int i = 0; i < known; i++) {
            rank[order[i]] = i;
        }
        return known == alive;
    }

    /** Each once, by what it is a part of. */
    private int[] now(int[] all) {
        boolean same = true;
        for (int each : all) {
            same &= into[each] == each;
        }
        return same
                ? all
                : Arrays.stream(all).map(each -> into[each]).distinct().toArray();
    }

    private void turn(int[] followers) {
        then = new int[into.length][];
        for (int i = 0; i < into.length; i++) {
            then[i] = new int[followers[i]];
        }
        int[] filled = new int[into.length];
        for (int i = 0; i < into.length; i++) {
            if (into[i] == i) {
                for (int each : first[i]) {
                    then[each][filled[each]++] = i;
                }
            }
        }
    }

    /** Makes them one, in the place of the one that was known first. It does not wait for itself where they waited. */
    void join(List<Draft> members) {
        BitSet all = new BitSet();
        members.forEach(each -> all.set(number(each)));
        int one = all.nextSetBit(0);
        first[one] = all.stream()
                .flatMap(each -> Arrays.stream(first[each]))
                .filter(each -> !all.get(into[each]))
                .distinct()
                .toArray();
        for (int i = 0; i < into.length; i++) {
            if (all.get(into[i])) {
                into[i] = one;
            }
        }
    }

    int number(Draft draft) {
        return Objects.requireNonNull(numbers.get(draft.id), draft.id);
    }

    /** By the order last found. */
    Comparator<Draft> inOrder() {
        return Comparator.comparingInt(each -> rank[number(each)]);
    }

    /** All that must be done before it, as last found. */
    BitSet before(int number) {
        return reached(number, first);
    }

    /** All that waits for it, as last found. */
    BitSet behind(int number) {
        return reached(number, then);
    }

    private static BitSet reached(int from, int[][] edges) {
        BitSet reached = new BitSet(edges.length);
        Deque<Integer> open = new ArrayDeque<>();
        open.add(from);
        while (!open.isEmpty()) {
            for (int next : edges[open.removeLast()]) {
                if (!reached.get(next)) {
                    reached.set(next);
                    open.addLast(next);
                }
            }
        }
        return reached;
    }
}
