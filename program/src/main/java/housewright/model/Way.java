package housewright.model;

import java.util.ArrayList;
import java.util.List;

/** Ways of a multicore: {@code floor-box.rear-{1..12} -> box-left.in-{1..12}}. */
public record Way(Ref from, Ref to) implements Written {
    private static final String EXPECTED =
            "two ends with an arrow between, such as floor-box.rear-{1..12} -> box.in-{1..12}";

    public Way {
        Arrow.requirePairs(from.addresses(), to.addresses(), () -> from + " -> " + to);
    }

    public static Way parse(String text) {
        String[] sides = Arrow.sides(text, "->", EXPECTED);
        return new Way(Ref.parse(sides[0]), Ref.parse(sides[1]));
    }

    /** One way: its two ends. */
    public record Pair(Ref.Address from, Ref.Address to) {}

    /** Every way this stands for, in order. */
    public List<Pair> pairs() {
        List<Pair> pairs = new ArrayList<>();
        for (Arrow.Pair<Ref.Address> pair : Arrow.pairs(from.addresses(), to.addresses())) {
            pairs.add(new Pair(pair.from(), pair.to()));
        }
        return pairs;
    }

    @Override
    public String text() {
        return from + " -> " + to;
    }

    @Override
    public String toString() {
        return text();
    }
}
