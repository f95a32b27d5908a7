package housewright.unit;

import java.util.Arrays;
import java.util.List;

/**
 * What can be asked of every kind of quantity by its class: for readers of files, schemas, forms. {@link VideoFormat},
 * which is written in one word too, answers the same questions but is no {@link Quantity}.
 */
public final class Quantities {
    private Quantities() {}

    /** All kinds, always in the same order. */
    public static List<Class<? extends Quantity>> listKinds() {
        return Arrays.stream(Dimension.values())
                .<Class<? extends Quantity>>map(Dimension::kind)
                .toList();
    }

    /**
     * Reads a quantity of the given kind.
     *
     * @throws UnitException if the text is not of that kind
     */
    public static <Q extends Quantity> Q parse(Class<Q> kind, String text) {
        return kind.cast(QuantityReader.read(Dimension.getByKind(kind), text));
    }

    /** The units that this kind may be written in; of a picture format, some of the usual formats. */
    public static List<String> units(Class<?> kind) {
        return kind == VideoFormat.class
                ? VideoFormat.USUAL
                : Dimension.getByKind(kind).symbols();
    }

    /** The trade's word for this kind, such as "length" or "weight". */
    public static String dimension(Class<?> kind) {
        return kind == VideoFormat.class
                ? "picture format"
                : Dimension.getByKind(kind).word();
    }

    /** Good text of this kind, such as {@code 31 m}. */
    public static String example(Class<?> kind) {
        return kind == VideoFormat.class
                ? VideoFormat.EXAMPLE
                : Dimension.getByKind(kind).example();
    }

    /** A regular expression, good in ECMA-262 and Java, anchored, that matches what is read as this kind. */
    public static String pattern(Class<?> kind) {
        return kind == VideoFormat.class ? VideoFormat.PATTERN : QuantityPattern.of(Dimension.getByKind(kind));
    }
}
