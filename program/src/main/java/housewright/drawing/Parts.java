package housewright.drawing;

import housewright.model.Place;
import housewright.model.Project;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Cuts a net into sheets by places: those with the most between them go together, rooms before anything else, until a
 * sheet is full. A place is never cut.
 */
final class Parts {
    /** Boxes on a sheet that can still be read on A1. */
    private static final int FULL = 26;

    private final Project project;
    private final Net net;

    /** Places that go on one sheet. */
    private static final class Group {
        final List<String> places = new ArrayList<>();
        final Set<String> rooms = new LinkedHashSet<>();
        final Map<Group, Integer> links = new LinkedHashMap<>();
        int order;
        int boxes;
    }

    private record Pair(Group one, Group other) {}

    private Parts(Project project, Net net) {
        this.project = project;
        this.net = net;
    }

    static List<Part> of(Project project, Net net) {
        if (net.boxes().isEmpty()) {
            return List.of();
        }
        return new Parts(project, net).cut();
    }

    private List<Part> cut() {
        List<Group> groups = groups();
        for (Pair next = next(groups); next != null; next = next(groups)) {
            join(groups, next);
        }
        groups.sort(Comparator.comparingInt(group -> group.order));
        Map<String, Integer> sheetOf = new LinkedHashMap<>();
        for (Box box : net.boxes().values()) {
            for (int n = 0; n < groups.size(); n++) {
                if (groups.get(n).places.contains(box.place())) {
                    sheetOf.put(box.id(), n + 1);
                }
            }
        }
        List<Part> parts = new ArrayList<>();
        for (int n = 1; n <= groups.size(); n++) {
            parts.add(part(groups.get(n - 1), n, sheetOf));
        }
        return parts;
    }

    private Part part(Group group, int sheet, Map<String, Integer> sheetOf) {
        Map<String, Box> boxes = new LinkedHashMap<>();
        net.boxes().values().stream()
                .filter(box -> group.places.contains(box.place()))
                .forEach(box -> boxes.put(box.id(), box));
        List<Link> links = net.links().stream()
                .filter(link -> boxes.containsKey(link.from().box())
                        || boxes.containsKey(link.to().box()))
                .toList();
        Map<String, Integer> elsewhere = new TreeMap<>();
        for (Link link : links) {
            for (Link.End end : List.of(link.from(), link.to())) {
                Integer there = sheetOf.get(end.box());
                if (there != null && there != sheet) {
                    elsewhere.put(end.box(), there);
                }
            }
        }
        return new Part(group.places, new Net(boxes, links), elsewhere, Map.of());
    }

    private List<Group> groups() {
        Map<String, Group> byPlace = new LinkedHashMap<>();
        List<String> order = new ArrayList<>(project.venue().places().keySet());
        for (Box box : net.boxes().values()) {
            Group group = byPlace.computeIfAbsent(box.place(), place -> {
                Group made = new Group();
                made.places.add(place);
                int at = order.indexOf(place);
                made.order = at < 0 ? order.size() : at;
                Place known = project.venue().places().get(place);
                made.rooms.add(known == null || known.room() == null ? "" : known.room());
                return made;
            });
            group.boxes++;
        }
        for (Link link : net.links()) {
            Box from = net.boxes().get(link.from().box());
            Box to = net.boxes().get(link.to().box());
            Group one = from == null ? null : byPlace.get(from.place());
            Group other = to == null ? null : byPlace.get(to.place());
            if (one != null && other != null && one != other) {
                one.links.merge(other, 1, Integer::sum);
                other.links.merge(one, 1, Integer::sum);
            }
        }
        List<Group> groups = new ArrayList<>(byPlace.values());
        groups.sort(Comparator.comparingInt(group -> group.order));
        return groups;
    }

    /** The two groups to join next: most links for their size first, then any of one room, then any that fit. */
    private static @Nullable Pair next(List<Group> groups) {
        Pair best = null;
        double most = 0;
        for (Group one : groups) {
            for (Map.Entry<Group, Integer> each : one.links.entrySet()) {
                Group other = each.getKey();
                if (one.order < other.order && one.boxes + other.boxes <= FULL) {
                    double worth = each.getValue()
                            * (shareRoom(one, other) ? 2.0 : 1.0)
                            / Math.sqrt((double) one.boxes * other.boxes);
                    if (worth > most) {
                        most = worth;
                        best = new Pair(one, other);
                    }
                }
            }
        }
        if (best != null) {
            return best;
        }
        for (boolean room : new boolean[] {true, false}) {
            for (int i = 0; i < groups.size(); i++) {
                for (int j = i + 1; j < groups.size(); j++) {
                    Group one = groups.get(i);
                    Group other = groups.get(j);
                    if (one.boxes + other.boxes <= FULL && (!room || shareRoom(one, other))) {
                        return new Pair(one, other);
                    }
                }
            }
        }
        return null;
    }

    private static boolean shareRoom(Group one, Group other) {
        return one.rooms.stream().anyMatch(other.rooms::contains);
    }

    private static void join(List<Group> groups, Pair pair) {
        Group one = pair.one();
        Group other = pair.other();
        one.places.addAll(other.places);
        one.rooms.addAll(other.rooms);
        one.boxes += other.boxes;
        one.links.remove(other);
        other.links.forEach((third, count) -> {
            if (third != one) {
                one.links.merge(third, count, Integer::sum);
                third.links.remove(other);
                third.links.merge(one, count, Integer::sum);
            }
        });
        groups.remove(other);
    }
}
