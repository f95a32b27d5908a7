package housewright.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * One sheet's boxes and lines, before it is laid out.
 *
 * @param nodes by key
 * @param frames the places, each with the keys of what stands in it
 */
record Diagram(Map<String, Node> nodes, Map<Frame, List<String>> frames, List<Wire> wires) {
    /**
     * A line between two sockets.
     *
     * @param text written beside it, in lines
     */
    record Wire(Link link, List<String> text, Spot from, Spot to) {}

    /**
     * What stands at a place and plays one part there: a place that gives and takes is drawn twice, so that signal runs
     * from left to right.
     */
    record Frame(String place, Roles.Role role) {}

    /**
     * A socket on an edge of a node.
     *
     * @param east on its right edge
     */
    record Spot(String node, String port, boolean east) {}

    static Diagram of(Part part, Map<String, String> numbers) {
        return new Builder(part, numbers).build();
    }

    private static final class Builder {
        private static final double TEXT = 112;

        private final Part part;
        private final Map<String, String> numbers;
        private final Map<String, Node> nodes = new LinkedHashMap<>();
        private final Map<Frame, List<String>> frames = new LinkedHashMap<>();
        /** The side of a socket that is used both ways is that of its first use. */
        private final Map<String, Boolean> east = new HashMap<>();

        private final Map<String, Set<String>> arriving = new HashMap<>();
        private final Map<String, Set<String>> leaving = new HashMap<>();

        Builder(Part part, Map<String, String> numbers) {
            this.part = part;
            this.numbers = numbers;
        }

        Diagram build() {
            List<Wire> wires = new ArrayList<>();
            for (Link link : part.net().links()) {
                String number = numbers.get(link.sort().kind + ":" + link.id());
                wires.add(new Wire(
                        link,
                        text((number == null ? "" : number + " ") + link.text()),
                        spot(link, link.from(), true),
                        spot(link, link.to(), false)));
            }
            Roles roles = new Roles(part.net());
            for (Box box : part.net().boxes().values()) {
                nodes.put(box.id(), Node.of(box, ports(arriving, box.id()), ports(leaving, box.id())));
                frames.computeIfAbsent(new Frame(box.place(), roles.of(box.id())), frame -> new ArrayList<>())
                        .add(box.id());
            }
            for (Map.Entry<String, Integer> each : part.elsewhere().entrySet()) {
                for (boolean arrives : new boolean[] {true, false}) {
                    String key = elsewhere(each.getKey(), !arrives);
                    Set<String> in = ports(arriving, key);
                    Set<String> out = ports(leaving, key);
                    if (!in.isEmpty() || !out.isEmpty()) {
                        nodes.put(key, Node.elsewhere(key, each.getKey(), each.getValue(), in, out));
                    }
                }
            }
            part.stops()
                    .forEach((key, why) -> nodes.put(
                            key,
                            Node.stop(
                                    key,
                                    why,
                                    !ports(arriving, key).isEmpty(),
                                    !ports(leaving, key).isEmpty())));
            for (Wire wire : wires) {
                loose(wire.from());
                loose(wire.to());
            }
            return new Diagram(nodes, frames, wires);
        }

        /** Long names of types in lines of their own: the room for a line's text makes a drawing wide. */
        private static List<String> text(String text) {
            return text.isEmpty() ? List.of() : TextWidth.wrap(text, Svg.SMALL, TEXT);
        }

        private void loose(Spot spot) {
            if (!nodes.containsKey(spot.node())) {
                nodes.put(spot.node(), Node.loose(spot.node(), !spot.east()));
            }
        }

        private static String elsewhere(String equipment, boolean leaves) {
            return equipment + (leaves ? " from elsewhere" : " elsewhere");
        }

        private Spot spot(Link link, Link.End end, boolean leaves) {
            if (end.isLoose()) {
                return new Spot(link.sort().kind + " " + link.id() + (leaves ? " from" : " to"), "", leaves);
            }
            boolean here =
                    part.net().boxes().containsKey(end.box()) || part.stops().containsKey(end.box());
            String node = here ? end.box() : elsewhere(end.box(), leaves);
            String port = end.port();
            boolean stop = part.stops().containsKey(node);
            boolean side = stop ? leaves : east.computeIfAbsent(node + "." + port, each -> leaves);
            (side ? leaving : arriving)
                    .computeIfAbsent(node, each -> new TreeSet<>(PANEL))
                    .add(port);
            return new Spot(node, port, side);
        }

        private static Set<String> ports(Map<String, Set<String>> by, String node) {
            return by.getOrDefault(node, new LinkedHashSet<>());
        }
    }

    /** Names as on a panel: numbers in them by size, so that in-2 comes before in-10. */
    static final Comparator<String> PANEL = (one, other) -> {
        int i = 0;
        int j = 0;
        while (i < one.length() && j < other.length()) {
            if (isDigit(one.charAt(i)) && isDigit(other.charAt(j))) {
                int iEnd = end(one, i);
                int jEnd = end(other, j);
                String a = one.substring(i, iEnd).replaceFirst("^0+(?=.)", "");
                String b = other.substring(j, jEnd).replaceFirst("^0+(?=.)", "");
                int by = a.length() != b.length() ? Integer.compare(a.length(), b.length()) : a.compareTo(b);
                if (by != 0) {
                    return by;
                }
                i = iEnd;
                j = jEnd;
            } else if (one.charAt(i) != other.charAt(j)) {
                return Character.compare(one.charAt(i), other.charAt(j));
            } else {
                i++;
                j++;
            }
        }
        int rest = Integer.compare(one.length() - i, other.length() - j);
        return rest != 0 ? rest : one.compareTo(other);
    };

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    private static int end(String text, int from) {
        int end = from;
        while (end < text.length() && isDigit(text.charAt(end))) {
            end++;
        }
        return end;
    }
}
