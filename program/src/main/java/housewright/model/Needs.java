package housewright.model;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** The feeds an event needs: all of them, or those listed. */
public record Needs(boolean all, List<String> feeds) implements ListForm {
    public Needs {
        feeds = List.copyOf(feeds);
    }

    public static Needs ofText(String text) {
        if (text.equals("all")) {
            return new Needs(true, List.of());
        }
        throw new WordingException(text, "all or a list of feeds");
    }

    @Override
    public @Nullable String shortText() {
        return all ? "all" : null;
    }
}
