package housewright.drawing;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What a signal drawing shows, before it is laid out: boxes by id and what runs between them. */
record Net(Map<String, Box> boxes, List<Link> links) {
    /** Only what is linked is drawn; a box that nothing of this drawing reaches says nothing. */
    Net onlyLinked() {
        Set<String> linked = new HashSet<>();
        for (Link link : links) {
            linked.add(link.from().box());
            linked.add(link.to().box());
        }
        Map<String, Box> used = new LinkedHashMap<>(boxes);
        used.keySet().retainAll(linked);
        return new Net(used, links);
    }

    /** Today's and the target's in one, with what becomes of each. */
    static Net change(Net today, Net target) {
        Map<String, Box> boxes = new LinkedHashMap<>();
        target.boxes.forEach((id, box) -> {
            Box old = today.boxes.get(id);
            boxes.put(
                    id,
                    new Box(
                            id,
                            box.name(),
                            box.place(),
                            note(old, box),
                            old == null ? Change.COMES : Change.STAYS,
                            insides(old, box)));
        });
        today.boxes.forEach((id, box) ->
                boxes.putIfAbsent(id, new Box(id, box.name(), box.place(), box.note(), Change.GOES, box.insides())));
        Set<Link> before = new LinkedHashSet<>(today.links);
        Set<Link> after = new HashSet<>(target.links);
        List<Link> links = new ArrayList<>();
        for (Link link : target.links) {
            links.add(link.with(before.contains(link) ? Change.STAYS : Change.COMES));
        }
        for (Link link : before) {
            if (!after.contains(link)) {
                links.add(link.with(Change.GOES));
            }
        }
        return new Net(boxes, links);
    }

    private static List<Box.Inside> insides(@Nullable Box before, Box after) {
        Set<Box.Inside> insides = new LinkedHashSet<>(after.insides());
        if (before != null) {
            insides.addAll(before.insides());
        }
        return List.copyOf(insides);
    }

    private static String note(@Nullable Box before, Box after) {
        if (before == null) {
            return after.note();
        }
        if (!before.place().equals(after.place())) {
            return before.place().isEmpty() ? "moves" : "moves here from " + before.place();
        }
        return before.name().equals(after.name()) ? after.note() : "today " + before.name();
    }
}
