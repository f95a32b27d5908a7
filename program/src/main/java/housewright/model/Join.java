package housewright.model;

import java.util.ArrayList;
import java.util.List;

/**
 * What joins what inside one device: {@code link:1 -> ch-1}, {@code ch-1 -> main-L, main-R},
 * {@code in-{1..16} -> link:{1..16}}. Left of the arrow arrives, right of it leaves.
 */
public record Join(LocalRef from, List<LocalRef> to) implements Written {
    private static final String EXPECTED = "two places with an arrow between, such as link:1 -> ch-1";

    public Join {
        to = List.copyOf(to);
        if (to.isEmpty()) {
            throw new WordingException(from.text() + " ->", EXPECTED);
        }
        for (LocalRef each : to) {
            Arrow.requirePairs(from.spots(), each.spots(), () -> from + " -> " + each);
        }
    }

    public static Join parse(String text) {
        String[] sides = Arrow.sides(text, "->", EXPECTED);
        return new Join(
                LocalRef.parse(sides[0]),
                Arrow.list(sides[1]).stream().map(LocalRef::parse).toList());
    }

    /** One from and one to. */
    public record Pair(LocalRef.Spot from, LocalRef.Spot to) {}

    /** Every pair this stands for, in order. */
    public List<Pair> pairs() {
        List<Pair> pairs = new ArrayList<>();
        for (LocalRef each : to) {
            for (Arrow.Pair<LocalRef.Spot> pair : Arrow.pairs(from.spots(), each.spots())) {
                pairs.add(new Pair(pair.from(), pair.to()));
            }
        }
        return pairs;
    }

    @Override
    public String text() {
        return from + " -> " + String.join(", ", to.stream().map(LocalRef::text).toList());
    }

    @Override
    public String toString() {
        return text();
    }
}
