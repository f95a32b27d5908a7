package housewright.model;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** What the project's patch may join in a device: anything, or the listed joins. */
public record Patchable(boolean free, List<Join> joins) implements ListForm {
    public Patchable {
        joins = List.copyOf(joins);
    }

    public static final Patchable FREE = new Patchable(true, List.of());

    public static Patchable ofText(String text) {
        if (text.equals("free")) {
            return FREE;
        }
        throw new WordingException(text, "free or a list of joins, such as [in-1 -> out-2]");
    }

    @Override
    public @Nullable String shortText() {
        return free ? "free" : null;
    }
}
