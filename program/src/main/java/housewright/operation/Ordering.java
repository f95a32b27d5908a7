package housewright.operation;

import housewright.operation.PowerOrder.Must;
import housewright.operation.PowerOrder.Step;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Puts steps in an order that obeys what must come before what.
 *
 * <p>Method: the musts are taken in, the strongest kind first and within a kind in the order of the steps; one that would
 * close a circle with those taken before is given up. Of the steps for which nothing is waited any more the next is one
 * at the same place as the last, else in the same room, else the first in the file: few walks, though not proven the
 * fewest.
 */
final class Ordering {
    private final List<Step> steps;
    private final Map<String, Integer> index = new HashMap<>();
    private final List<Set<Integer>> later = new ArrayList<>();
    private final List<Must> kept = new ArrayList<>();
    private final List<Must> broken = new ArrayList<>();

    private Ordering(List<Step> steps) {
        this.steps = steps;
        for (Step step : steps) {
            index.put(step.thing(), index.size());
            later.add(new HashSet<>());
        }
    }

    /**
     * @param steps in the order of the file, each thing once
     * @param musts between things of the steps, in any order
     */
    static PowerOrder of(List<Step> steps, Set<Must> musts) {
        Ordering ordering = new Ordering(steps);
        musts.stream()
                .sorted(Comparator.comparing(Must::why)
                        .thenComparingInt(must -> ordering.at(must.before()))
                        .thenComparingInt(must -> ordering.at(must.after())))
                .forEach(ordering::take);
        return new PowerOrder(ordering.inOrder(), ordering.kept, ordering.broken);
    }

    private int at(String thing) {
        return Objects.requireNonNull(index.get(thing), thing);
    }

    private void take(Must must) {
        int before = at(must.before());
        int after = at(must.after());
        if (leads(after, before, new HashSet<>())) {
            broken.add(must);
        } else {
            kept.add(must);
            later.get(before).add(after);
        }
    }

    private boolean leads(int from, int to, Set<Integer> seen) {
        return from == to || (seen.add(from) && later.get(from).stream().anyMatch(next -> leads(next, to, seen)));
    }

    private List<Step> inOrder() {
        int[] waiting = new int[steps.size()];
        later.forEach(each -> each.forEach(after -> waiting[after]++));
        List<Step> order = new ArrayList<>();
        Set<Integer> open = new HashSet<>();
        for (int i = 0; i < waiting.length; i++) {
            open.add(i);
        }
        while (!open.isEmpty()) {
            Touch last = order.isEmpty() ? null : order.getLast().touch();
            int next = open.stream()
                    .filter(each -> waiting[each] == 0)
                    .min(Comparator.<Integer>comparingInt(
                                    each -> walk(last, steps.get(each).touch()))
                            .thenComparing(Comparator.naturalOrder()))
                    .orElseThrow();
            open.remove(next);
            order.add(steps.get(next));
            later.get(next).forEach(after -> waiting[after]--);
        }
        return order;
    }

    /** How far it is from one to the other: 0 to stay, 1 within the room, 2 to another. */
    private static int walk(@Nullable Touch from, Touch to) {
        if (from == null) {
            return 2;
        }
        if (from.place() != null && from.place().equals(to.place())) {
            return 0;
        }
        return from.room() != null && from.room().equals(to.room()) ? 1 : 2;
    }
}
