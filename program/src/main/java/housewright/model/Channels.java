package housewright.model;

import org.jspecify.annotations.Nullable;

/** How many channels a port has, each way. */
public record Channels(@Key("in") int in, int out) implements Shorthand {
    public static Channels ofText(String text) {
        if (!text.isEmpty() && text.length() <= 4 && text.chars().allMatch(c -> c >= '0' && c <= '9')) {
            int count = Integer.parseInt(text);
            return new Channels(count, count);
        }
        throw new WordingException(text, "a number of channels, or both ways: {in: 32, out: 34}");
    }

    @Override
    public @Nullable String shortText() {
        return in == out ? Integer.toString(in) : null;
    }
}
