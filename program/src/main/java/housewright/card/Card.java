package housewright.card;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * One card: one page.
 *
 * @param id names it among all cards and stays the same while the hall does, such as {@code no-sound-foyer}
 * @param title such as "No sound in the foyer"
 * @param part such as "card 1 of 3"; null where it is the only one
 * @param first what to know before the first step
 * @param steps in order
 * @param tables to look things up in
 * @param cautions where somebody could be hurt
 * @param calls whom to call, the nearest first; none on cards that need nobody
 * @param toFillIn what nobody has said and the card leaves a line for, in words
 */
public record Card(
        String id,
        String title,
        @Nullable String part,
        List<String> first,
        List<Step> steps,
        List<Lookup> tables,
        List<String> cautions,
        List<Call> calls,
        List<String> toFillIn) {
    public Card {
        first = List.copyOf(first);
        steps = List.copyOf(steps);
        tables = List.copyOf(tables);
        cautions = List.copyOf(cautions);
        calls = List.copyOf(calls);
        toFillIn = List.copyOf(toFillIn);
    }

    /**
     * One thing to do.
     *
     * @param where to go; null to stay
     * @param act what to do there
     * @param see what is seen when it is right; null where nothing is to be seen
     * @param blank what is to be written in by hand, such as "Its switch"; null where nothing is
     */
    public record Step(
            @Nullable String where,
            String act,
            @Nullable String see,
            @Nullable String blank) {}

    /**
     * A table to look something up in; an empty cell has nothing to say.
     *
     * @param widths of its columns, as shares
     */
    public record Lookup(String title, List<String> heads, List<Integer> widths, List<List<String>> rows) {
        public Lookup {
            heads = List.copyOf(heads);
            widths = List.copyOf(widths);
            rows = rows.stream().map(List::copyOf).toList();
        }

        /** As wide as its cells want; long ones wrap, so they get less than their share. */
        static Lookup of(String title, List<String> heads, List<List<String>> rows) {
            List<Integer> widths = new ArrayList<>();
            for (int i = 0; i < heads.size(); i++) {
                int column = i;
                int longest = rows.stream()
                        .mapToInt(row -> row.get(column).length())
                        .max()
                        .orElse(0);
                widths.add((int) Math.round(
                        6 + 4 * Math.sqrt(Math.max(heads.get(i).length(), longest))));
            }
            List<Integer> wide = new ArrayList<>();
            int all = widths.stream().mapToInt(Integer::intValue).sum();
            for (int i = 0; i < heads.size(); i++) {
                int column = i;
                int word = Stream.concat(Stream.of(heads.get(i)), rows.stream().map(row -> row.get(column)))
                        .flatMap(text -> Stream.of(text.split(" ")))
                        .mapToInt(String::length)
                        .max()
                        .orElse(0);
                wide.add(Math.max(widths.get(i), (int) Math.ceil(all * (word * LETTER + PADDING))));
            }
            return new Lookup(title, heads, wide, rows);
        }

        /** A letter on a card, as a share of the narrowest paper's text: no word is to be broken. */
        private static final double LETTER = 2.4 / 182;

        /** What stays free between columns, as such a share. */
        private static final double PADDING = 4.0 / 182;
    }

    /**
     * Somebody to call, by a number that is written in by hand.
     *
     * @param person by the name in the project; null where it has nobody who knows about this
     * @param role in the project's words; null where it says none
     * @param about such as "sound" or "a breaker"
     */
    public record Call(@Nullable String person, @Nullable String role, String about) {
        /** Empty where nobody is known. */
        public String said() {
            return person == null ? "" : role == null ? person : person + " (" + role + ")";
        }
    }
}
