package housewright.model;

/** A word of a fixed list, as the file writes it. */
public interface Word {
    String name();

    /** Default: the constant's name in lower case with hyphens. */
    default String word() {
        return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }
}
