package housewright.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A box of a signal drawing with its size and its sockets, before it has a position.
 *
 * @param key names it in the drawing
 * @param box null for what is no equipment of this sheet
 * @param head lines at its top, the first its name
 * @param west rows of the sockets on its left edge, by name; a way through a box has the row of its number
 * @param east likewise on its right edge
 */
record Node(
        String key,
        Sort sort,
        @Nullable Box box,
        List<String> head,
        Map<String, Integer> west,
        Map<String, Integer> east,
        double width,
        double height) {
    static final double PITCH = 18;
    static final double TOP = 6;
    static final double PAD = 8;
    private static final double GAP = 18;
    private static final double NAME = 150;
    private static final double REASON = 220;

    enum Sort {
        BOX,
        /** Equipment that is on another sheet. */
        ELSEWHERE,
        /** The end of a cable that nobody knows yet. */
        LOOSE,
        /** Why a feed stops. */
        STOP
    }

    static Node of(Box box, Set<String> arriving, Set<String> leaving) {
        Map<String, Integer> west = new LinkedHashMap<>();
        Map<String, Integer> east = new LinkedHashMap<>();
        int row = 0;
        for (Box.Inside inside : box.insides()) {
            if (!inside.in().isEmpty()) {
                (leaving.contains(inside.in()) ? east : west).putIfAbsent(inside.in(), row);
            }
            if (!inside.out().isEmpty()) {
                (arriving.contains(inside.out()) ? west : east).putIfAbsent(inside.out(), row);
            }
            row++;
        }
        int westRow = row;
        for (String port : arriving) {
            if (west.putIfAbsent(port, westRow) == null) {
                westRow++;
            }
        }
        int eastRow = row;
        for (String port : leaving) {
            if (east.putIfAbsent(port, eastRow) == null) {
                eastRow++;
            }
        }
        double over = 0;
        for (Box.Inside inside : box.insides()) {
            over = Math.max(over, TextWidth.of(inside.over(), Svg.SMALL) + 2 * GAP);
        }
        double ports = widest(west.keySet()) + widest(east.keySet()) + over + GAP + 2 * PAD;
        double width = Math.max(ports, TextWidth.mono(box.id(), Svg.SMALL) + 2 * PAD);
        List<String> head = new ArrayList<>(List.of(box.id()));
        head.addAll(TextWidth.wrap(box.name(), Svg.SMALL, Math.max(width - 2 * PAD, NAME)));
        if (!box.note().isEmpty()) {
            head.addAll(TextWidth.wrap("(" + box.note() + ")", Svg.SMALL, Math.max(width - 2 * PAD, NAME)));
        }
        for (String line : head.subList(1, head.size())) {
            width = Math.max(width, TextWidth.of(line, Svg.SMALL) + 2 * PAD);
        }
        int rows = Math.max(row, Math.max(westRow, eastRow));
        return new Node(box.id(), Sort.BOX, box, head, west, east, Math.ceil(width), height(head.size(), rows));
    }

    static Node elsewhere(String key, String equipment, int sheet, Set<String> arriving, Set<String> leaving) {
        String second = "on sheet " + sheet;
        double width = Math.max(TextWidth.mono(equipment, Svg.SMALL), TextWidth.of(second, Svg.SMALL));
        width = Math.max(width, widest(arriving) + widest(leaving)) + 2 * PAD + 12;
        return new Node(
                key,
                Sort.ELSEWHERE,
                null,
                List.of(equipment, second),
                rows(arriving),
                rows(leaving),
                Math.ceil(width),
                height(2, Math.max(arriving.size(), leaving.size())));
    }

    static Node loose(String key, boolean arrives) {
        Set<String> port = Set.of("");
        String text = "end not known yet";
        return new Node(
                key,
                Sort.LOOSE,
                null,
                List.of(text),
                arrives ? rows(port) : Map.of(),
                arrives ? Map.of() : rows(port),
                Math.ceil(TextWidth.of(text, Svg.SMALL) + 2 * PAD),
                height(1, 0));
    }

    static Node stop(String key, String why, boolean reached, boolean leadsOn) {
        List<String> lines = new ArrayList<>(List.of("Stops here"));
        lines.addAll(TextWidth.wrap(why, Svg.SMALL, REASON));
        double width = 0;
        for (String line : lines) {
            width = Math.max(width, TextWidth.of(line, Svg.SMALL));
        }
        return new Node(
                key,
                Sort.STOP,
                null,
                lines,
                reached ? rows(Set.of("")) : Map.of(),
                leadsOn ? rows(Set.of("")) : Map.of(),
                Math.ceil(width + 2 * PAD),
                height(lines.size(), 0));
    }

    /** Where the text of its ways through begins, from its left edge. */
    double insideX() {
        return PAD + widest(west.keySet()) + GAP;
    }

    double portY(int row) {
        return sort == Sort.LOOSE || sort == Sort.STOP
                ? height / 2
                : TOP + head.size() * Svg.LINE + 6 + row * PITCH + PITCH / 2;
    }

    private static double height(int lines, int rows) {
        return TOP + lines * Svg.LINE + 6 + rows * PITCH + (rows > 0 ? 4 : 0);
    }

    private static Map<String, Integer> rows(Set<String> ports) {
        Map<String, Integer> rows = new LinkedHashMap<>();
        new LinkedHashSet<>(ports).forEach(port -> rows.put(port, rows.size()));
        return rows;
    }

    static double widest(Set<String> texts) {
        double widest = 0;
        for (String each : texts) {
            widest = Math.max(widest, TextWidth.of(each, Svg.SMALL));
        }
        return widest;
    }
}
