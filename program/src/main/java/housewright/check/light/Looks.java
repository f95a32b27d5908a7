package housewright.check.light;

import housewright.check.Evidence;
import housewright.model.Lighting;
import housewright.model.Look;
import housewright.model.change.Change;
import housewright.model.change.Section;
import housewright.unit.Ratio;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** The looks of a project. */
final class Looks {
    private static final Set<String> PALE =
            Set.of("white", "warm", "cool", "cold", "neutral", "daylight", "tungsten", "open", "clear");
    private static final Set<String> SATURATED = Set.of(
            "red", "green", "blue", "cyan", "magenta", "purple", "violet", "indigo", "turquoise", "ultraviolet", "uv");

    private Looks() {}

    static Map<String, Look> all(Evidence evidence) {
        Lighting lighting = evidence.project().lighting();
        return lighting == null ? Map.of() : lighting.looks();
    }

    static Change put(Look look, Map<String, Ratio> levels, Map<String, String> colours) {
        return new Change.Put(
                Section.LOOKS, look.id(), new Look(look.id(), levels, look.fade(), colours, look.remarks()));
    }

    /** A copy without some of its keys. */
    static <T> Map<String, T> without(Map<String, T> map, Collection<String> keys) {
        Map<String, T> left = new LinkedHashMap<>(map);
        left.keySet().removeAll(keys);
        return left;
    }

    /** A white, warm or cold. */
    static boolean isWhite(String colour) {
        return words(colour).anyMatch(PALE::contains);
    }

    /** A colour that leaves no skin tone: "pale blue" is none. */
    static boolean isSaturated(String colour) {
        return words(colour).anyMatch(SATURATED::contains)
                && words(colour).noneMatch(word -> PALE.contains(word) || word.equals("pale") || word.equals("light"));
    }

    private static Stream<String> words(String colour) {
        return Stream.of(colour.toLowerCase(Locale.ROOT)
                .replace('-', ' ')
                .replace(',', ' ')
                .split(" "));
    }
}
