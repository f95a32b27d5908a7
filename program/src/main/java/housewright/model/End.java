package housewright.model;

import org.jspecify.annotations.Nullable;

/** An end of a cable: a port, or unknown as yet. */
public record End(@Nullable Ref ref) implements Written {
    public static final End UNKNOWN = new End(null);

    public static End parse(String text) {
        return text.equals("unknown") ? UNKNOWN : new End(Ref.parse(text));
    }

    @Override
    public String text() {
        return ref == null ? "unknown" : ref.text();
    }

    @Override
    public String toString() {
        return text();
    }
}
