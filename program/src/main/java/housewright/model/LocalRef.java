package housewright.model;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A port, point or channel of the device at hand: {@code ch-1}, {@code link:5}, {@code link:{1..16}},
 * {@code in-{1..8}}. One range at most in the name and one in the channel; both together run through the
 * channels of one name after the other.
 */
public final class LocalRef implements Written {
    private final String text;
    private final List<Spot> spots;

    static final String EXPECTED = "a port, point or channel of the device, such as ch-1, link:5 or in-{1..8}";

    public LocalRef(String text) {
        List<Spot> expanded = expand(text);
        if (expanded == null) {
            throw new WordingException(text, EXPECTED);
        }
        this.text = text;
        this.spots = expanded;
    }

    @Override
    public String text() {
        return text;
    }

    public static LocalRef parse(String text) {
        return new LocalRef(text.strip());
    }

    /** One named place: a port or point, and the channel where one is named. */
    public record Spot(String name, @Nullable String channel) {
        @Override
        public String toString() {
            return channel == null ? name : name + ":" + channel;
        }
    }

    /** The places in order; one where there is no range. */
    public List<Spot> spots() {
        return spots;
    }

    public boolean isRange() {
        return text.indexOf('{') >= 0;
    }

    static @Nullable List<Spot> expand(String text) {
        int colon = text.indexOf(':');
        if (colon < 0) {
            List<String> names = NamePattern.expand(text);
            return names == null
                    ? null
                    : names.stream().map(name -> new Spot(name, null)).toList();
        }
        List<String> names = NamePattern.expand(text.substring(0, colon));
        List<String> channels = NamePattern.expand(text.substring(colon + 1));
        if (names == null || channels == null || names.size() * channels.size() > NamePattern.MOST) {
            return null;
        }
        List<Spot> spots = new ArrayList<>(names.size() * channels.size());
        for (String name : names) {
            for (String channel : channels) {
                spots.add(new Spot(name, channel));
            }
        }
        return List.copyOf(spots);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof LocalRef same && same.text.equals(text);
    }

    @Override
    public int hashCode() {
        return text.hashCode();
    }

    @Override
    public String toString() {
        return text;
    }
}
