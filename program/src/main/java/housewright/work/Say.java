package housewright.work;

import housewright.model.Place;
import housewright.model.Words;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Words of tasks. */
final class Say {
    private Say() {}

    static String metres(double metres) {
        String text = String.format(Locale.ROOT, "%.1f", metres);
        return (text.endsWith(".0") ? text.substring(0, text.length() - 2) : text) + " m";
    }

    /** "1 thing", "3 things". */
    static String counted(int count, String one, String many) {
        return count + " " + (count == 1 ? one : many);
    }

    static String some(Collection<String> names, int most) {
        List<String> all = List.copyOf(names);
        if (all.size() > most) {
            return String.join(", ", all.subList(0, most)) + " and " + (all.size() - most) + " more";
        }
        return Words.and(all);
    }

    /** @param name of the thing: a place of the same name need not be said again */
    static String where(String name, @Nullable Place place, @Nullable Integer unit) {
        if (place == null || Words.said(place.id()).equals(name)) {
            return "";
        }
        return (place.rack() == null ? " at " : " in ")
                + Words.said(place.id())
                + (unit == null ? "" : ", unit " + unit);
    }

    static String capital(String words) {
        return words.isEmpty() ? words : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
