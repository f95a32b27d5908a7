package housewright.model;

import org.jspecify.annotations.Nullable;

/**
 * A record the file may also show as one scalar. Such a type has {@code static T ofText(String)} that
 * throws {@link WordingException} or {@link housewright.unit.UnitException}.
 */
public interface Shorthand {
    /** The short form, or null where only the mapping can say it. */
    @Nullable
    String shortText();
}
