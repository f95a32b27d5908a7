package housewright.model;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * Days of the week: {@code mon-fri}, {@code sat}, {@code mon, wed}.
 *
 * @param text as written
 */
public record Days(String text) implements Written {
    private static final List<String> NAMES = List.of("mon", "tue", "wed", "thu", "fri", "sat", "sun");

    public Days {
        read(text);
    }

    public static Days parse(String text) {
        return new Days(text);
    }

    public Set<DayOfWeek> days() {
        return read(text);
    }

    private static Set<DayOfWeek> read(String text) {
        Set<DayOfWeek> days = EnumSet.noneOf(DayOfWeek.class);
        for (String part : Arrow.list(text)) {
            List<Integer> ends = new ArrayList<>();
            for (String day : part.toLowerCase(Locale.ROOT).split("-", -1)) {
                ends.add(NAMES.indexOf(day.strip()));
            }
            if (ends.size() > 2 || ends.contains(-1)) {
                throw new WordingException(text, "days of the week, such as mon-fri, sat or mon, wed");
            }
            int first = ends.getFirst();
            int last = ends.getLast();
            for (int day = first; ; day = (day + 1) % 7) {
                days.add(DayOfWeek.of(day + 1));
                if (day == last) {
                    break;
                }
            }
        }
        return days;
    }

    @Override
    public String toString() {
        return text;
    }
}
