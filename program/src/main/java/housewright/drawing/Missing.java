package housewright.drawing;

import housewright.finding.Subject;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;

/** What has no position, in words. */
final class Missing {
    private static final int NAMED = 30;

    private Missing() {}

    static List<String> said(List<Subject> missing) {
        Map<String, TreeSet<String>> byKind = new TreeMap<>();
        missing.forEach(each ->
                byKind.computeIfAbsent(each.kind(), kind -> new TreeSet<>()).add(each.id()));
        List<String> lines = new ArrayList<>();
        byKind.forEach((kind, ids) -> {
            String what = switch (kind) {
                case "room" -> "Rooms without an outline: ";
                case "place" -> "Places without a position: ";
                case "pathway" -> "Pathways with an end that has no position: ";
                default -> "Equipment without a place: ";
            };
            List<String> named = ids.stream().limit(NAMED).toList();
            lines.add(what + String.join(", ", named)
                    + (ids.size() > NAMED ? " and " + (ids.size() - NAMED) + " more" : "") + ".");
        });
        return lines;
    }
}
