package housewright.work;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.PriorityQueue;
import java.util.Set;

/** Which task comes before which: without circles, and without what another order implies. */
final class Sequence {
    private final List<String> ids;
    private final Map<String, Integer> place = new HashMap<>();
    private final Map<String, Set<String>> after = new LinkedHashMap<>();

    Sequence(Collection<String> ids) {
        this.ids = List.copyOf(ids);
        for (String id : this.ids) {
            place.put(id, place.size());
            after.put(id, new LinkedHashSet<>());
        }
    }

    /** False where the other is later already: the two would wait for each other. Unknown tasks are left alone. */
    boolean add(String first, String then) {
        if (!place.containsKey(first) || !place.containsKey(then) || first.equals(then)) {
            return !first.equals(then);
        }
        if (waits(first, then)) {
            return false;
        }
        before(then).add(first);
        return true;
    }

    /** As {@link #add} for all of these, in order, where they make no circle together; else nothing is added. */
    boolean addAll(List<Pair> pairs) {
        Map<String, Set<String>> before = new LinkedHashMap<>();
        after.forEach((id, firsts) -> before.put(id, new LinkedHashSet<>(firsts)));
        for (Pair pair : pairs) {
            if (pair.first().equals(pair.then())) {
                after.putAll(before);
                return false;
            }
            if (place.containsKey(pair.first()) && place.containsKey(pair.then())) {
                before(pair.then()).add(pair.first());
            }
        }
        if (sorted().size() == ids.size()) {
            return true;
        }
        after.putAll(before);
        return false;
    }

    /** One before another. */
    record Pair(String first, String then) {}

    /** Whether one waits for another, by any way. */
    private boolean waits(String one, String other) {
        Deque<String> open = new ArrayDeque<>(List.of(one));
        Set<String> seen = new LinkedHashSet<>();
        while (!open.isEmpty()) {
            String next = open.pop();
            if (next.equals(other)) {
                return true;
            }
            if (seen.add(next)) {
                open.addAll(after.getOrDefault(next, Set.of()));
            }
        }
        return false;
    }

    /** Every task after those before it; else as they were given. */
    List<String> order() {
        List<String> order = sorted();
        if (order.size() != ids.size()) {
            throw new IllegalStateException("Tasks that wait for each other");
        }
        return order;
    }

    private Set<String> before(String id) {
        return after.computeIfAbsent(id, each -> new LinkedHashSet<>());
    }

    private int place(String id) {
        return Objects.requireNonNull(place.get(id));
    }

    private List<String> sorted() {
        Map<String, List<String>> then = new HashMap<>();
        int[] open = new int[ids.size()];
        after.forEach((id, firsts) -> firsts.forEach(first -> {
            then.computeIfAbsent(first, each -> new ArrayList<>()).add(id);
            open[place(id)]++;
        }));
        PriorityQueue<Integer> ready = new PriorityQueue<>();
        for (int i = 0; i < open.length; i++) {
            if (open[i] == 0) {
                ready.add(i);
            }
        }
        List<String> order = new ArrayList<>();
        while (!ready.isEmpty()) {
            String id = ids.get(ready.poll());
            order.add(id);
            for (String next : then.getOrDefault(id, List.of())) {
                if (--open[place(next)] == 0) {
                    ready.add(place(next));
                }
            }
        }
        return order;
    }

    /** For each task in order, those that come before it and are implied by no other of them. */
    Map<String, List<String>> reduced() {
        List<String> order = order();
        Map<String, Integer> at = new HashMap<>();
        order.forEach(id -> at.put(id, at.size()));
        BitSet[] before = new BitSet[order.size()];
        Map<String, List<String>> reduced = new LinkedHashMap<>();
        for (int i = 0; i < before.length; i++) {
            List<Integer> firsts = new ArrayList<>();
            for (String first : before(order.get(i))) {
                firsts.add(Objects.requireNonNull(at.get(first)));
            }
            firsts.sort((one, other) -> other - one);
            BitSet all = new BitSet();
            List<Integer> kept = new ArrayList<>();
            for (int first : firsts) {
                if (!all.get(first)) {
                    kept.add(first);
                    all.set(first);
                    all.or(before[first]);
                }
            }
            before[i] = all;
            kept.sort(null);
            reduced.put(order.get(i), kept.stream().map(order::get).toList());
        }
        return reduced;
    }
}
