package housewright.model;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A port, point or channel of a named thing: {@code desk.ch-1}, {@code camera-1.sdi:3},
 * {@code box.in-{1..8}}. One range at most.
 */
public final class Ref implements Written {
    private final String text;
    private final List<Address> addresses;

    static final String EXPECTED = "a thing and its port or point, such as desk.ch-1 or camera-1.sdi:3";

    public Ref(String text) {
        List<Address> expanded = expand(text);
        if (expanded == null) {
            throw new WordingException(text, EXPECTED);
        }
        this.text = text;
        this.addresses = expanded;
    }

    @Override
    public String text() {
        return text;
    }

    public static Ref parse(String text) {
        return new Ref(text.strip());
    }

    /** One named place of one thing. */
    public record Address(String thing, LocalRef.Spot spot) {
        /** As a person at the gear says it: {@code stage-box-left.out-3} is "stage box left, out 3". */
        public String said() {
            String channel = saidChannel();
            return saidPort() + (channel.isEmpty() ? "" : " " + channel);
        }

        /** As {@link #said}, without the channel. */
        public String saidPort() {
            return Words.said(thing) + ", " + Words.said(spot.name());
        }

        /** "channel 5" or "picture"; empty where no channel is named. */
        public String saidChannel() {
            String channel = spot.channel();
            return channel == null ? "" : channel.equals("v") ? "picture" : "channel " + channel;
        }

        @Override
        public String toString() {
            return thing + "." + spot;
        }
    }

    /** The places in order; one where there is no range. */
    public List<Address> addresses() {
        return addresses;
    }

    /** The thing as written, a range and all. */
    public String thing() {
        return text.substring(0, dot(text));
    }

    /** The part after the thing, as written. */
    public LocalRef local() {
        return new LocalRef(text.substring(thing().length() + 1));
    }

    public boolean isRange() {
        return text.indexOf('{') >= 0;
    }

    /** The first dot that is not inside a range, or -1. */
    private static int dot(String text) {
        int open = text.indexOf('{');
        int dot = text.indexOf('.');
        if (open < 0 || dot < open) {
            return dot;
        }
        int close = text.indexOf('}');
        return close < 0 ? -1 : text.indexOf('.', close);
    }

    private static @Nullable List<Address> expand(String text) {
        int dot = dot(text);
        if (dot < 0) {
            return null;
        }
        List<String> things = NamePattern.expand(text.substring(0, dot));
        List<LocalRef.Spot> spots = LocalRef.expand(text.substring(dot + 1));
        if (things == null || spots == null || (things.size() > 1 && spots.size() > 1)) {
            return null;
        }
        List<Address> addresses = new ArrayList<>(things.size() * spots.size());
        for (String thing : things) {
            for (LocalRef.Spot spot : spots) {
                addresses.add(new Address(thing, spot));
            }
        }
        return List.copyOf(addresses);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Ref same && same.text.equals(text);
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
