package housewright.drawing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Where a long way from left to right is folded, so that a sheet does not grow wider than paper: the line at a fold is
 * laid out the other way round and leads back to the left edge.
 */
final class Folds {
    /** Boxes in a row. */
    private static final int ROW = 7;

    private final Map<String, List<String>> before = new LinkedHashMap<>();
    private final Map<String, Integer> depth = new HashMap<>();
    private final Set<String> open = new HashSet<>();

    Folds(Diagram diagram) {
        for (Diagram.Wire wire : diagram.wires()) {
            before.computeIfAbsent(wire.to().node(), each -> new ArrayList<>())
                    .add(wire.from().node());
        }
        diagram.nodes().keySet().forEach(this::depth);
    }

    /** Laid out from its destination to its source. */
    boolean isBack(Diagram.Wire wire) {
        int from = depth.getOrDefault(wire.from().node(), 0);
        int to = depth.getOrDefault(wire.to().node(), 0);
        return from / ROW < to / ROW;
    }

    /** Most boxes on a way to this one; ways round are cut where they are met. */
    private int depth(String key) {
        Integer known = depth.get(key);
        if (known != null) {
            return known;
        }
        open.add(key);
        int most = 0;
        for (String each : before.getOrDefault(key, List.of())) {
            if (!open.contains(each)) {
                most = Math.max(most, depth(each) + 1);
            }
        }
        open.remove(key);
        depth.put(key, most);
        return most;
    }
}
