package housewright.model;

import java.util.ArrayList;
import java.util.List;

/** Ports joined straight through inside a passive panel, both ways: {@code front-{1..12} = rear-{1..12}}. */
public record Tie(LocalRef one, LocalRef other) implements Written {
    private static final String EXPECTED = "two ports with = between, such as front-{1..12} = rear-{1..12}";

    public Tie {
        Arrow.requirePairs(one.spots(), other.spots(), () -> one + " = " + other);
        if (one.text().contains(":") || other.text().contains(":")) {
            throw new WordingException(one + " = " + other, EXPECTED + "; a tie carries every channel");
        }
    }

    public static Tie parse(String text) {
        String[] sides = Arrow.sides(text, "=", EXPECTED);
        return new Tie(LocalRef.parse(sides[0]), LocalRef.parse(sides[1]));
    }

    /** Two port names. */
    public record Pair(String one, String other) {}

    /** Every pair of ports this stands for, in order. */
    public List<Pair> pairs() {
        List<Pair> pairs = new ArrayList<>();
        for (Arrow.Pair<LocalRef.Spot> pair : Arrow.pairs(one.spots(), other.spots())) {
            pairs.add(new Pair(pair.from().name(), pair.to().name()));
        }
        return pairs;
    }

    @Override
    public String text() {
        return one + " = " + other;
    }

    @Override
    public String toString() {
        return text();
    }
}
