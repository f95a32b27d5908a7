package housewright.drawing;

import housewright.finding.Subject;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * What stands on one sheet of a signal drawing.
 *
 * @param places of the sheet, in the order of the project; "" for what has none
 * @param net the boxes of these places, and every link with an end at one of them
 * @param elsewhere the number of the sheet on which the other ends of those links are, by equipment
 * @param stops why signal goes no further, by the name that the links to it give it
 */
record Part(List<String> places, Net net, Map<String, Integer> elsewhere, Map<String, String> stops) {
    private static final int NAMED = 4;

    Part {
        places = List.copyOf(places);
    }

    /** Everything that is on it, places included. */
    Set<Subject> subjects() {
        Set<Subject> subjects = new TreeSet<>();
        places.stream().filter(place -> !place.isEmpty()).forEach(place -> subjects.add(new Subject("place", place)));
        net.boxes().keySet().forEach(box -> subjects.add(Subject.equipment(box)));
        net.links().forEach(link -> subjects.add(link.subject()));
        return subjects;
    }

    /** The first of its places, and how many more there are. */
    String placesSaid() {
        List<String> named = places.stream()
                .map(place -> place.isEmpty() ? "no place yet" : place)
                .toList();
        return named.size() <= NAMED
                ? String.join(", ", named)
                : String.join(", ", named.subList(0, NAMED)) + " and " + (named.size() - NAMED) + " more";
    }
}
