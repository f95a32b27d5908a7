package housewright.unit;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A text that is not the quantity that was due. The message says what was found, what is wrong with it, and how to
 * write it.
 */
public final class UnitException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;
    private static final int LONGEST_QUOTE = 40;

    private final String found;
    private final List<String> expectedUnits;
    private final String example;
    private final @Nullable String nearest;

    private UnitException(
            String message, String found, List<String> expectedUnits, String example, @Nullable String nearest) {
        super(message);
        this.found = found;
        this.expectedUnits = expectedUnits;
        this.example = example;
        this.nearest = nearest;
    }

    /** The text as it was found. */
    public String found() {
        return found;
    }

    /** The units that it may have; for a picture format, some of the usual formats. */
    public List<String> expectedUnits() {
        return expectedUnits;
    }

    /** A good one, such as {@code 31 m}. */
    public String example() {
        return example;
    }

    /** The unit that was probably meant. */
    public Optional<String> findNearest() {
        return Optional.ofNullable(nearest);
    }

    static UnitException of(Dimension due, String found, String problem) {
        return of(due, found, problem, null);
    }

    /** @param problem reads on from the found text, such as "has no unit" */
    static UnitException of(Dimension due, String found, String problem, @Nullable Unit nearest) {
        List<String> units = due.symbols();
        String message = "%s %s; %s is written with %s (for example %s)"
                .formatted(quoted(found), problem, due.wordWithArticle(), String.join(", ", units), due.example());
        return new UnitException(message, found, units, due.example(), nearest == null ? null : nearest.symbol());
    }

    static UnitException ofFormat(String found, String problem, List<String> usual, String example) {
        String message = "%s %s (for example %s)".formatted(quoted(found), problem, String.join(", ", usual));
        return new UnitException(message, found, usual, example, null);
    }

    /** In quotation marks, cut where it is too long to show. */
    private static String quoted(String found) {
        String start = found.length() <= LONGEST_QUOTE ? found : found.substring(0, LONGEST_QUOTE) + "…";
        return '"' + shown(start) + '"';
    }

    /** Without what would upset a terminal. */
    static String shown(String found) {
        return found.replaceAll("\\p{Cntrl}|\\p{Cs}", "?");
    }
}
