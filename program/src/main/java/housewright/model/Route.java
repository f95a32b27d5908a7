package housewright.model;

import housewright.unit.Delay;
import housewright.unit.Gain;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A join fixed inside a type. */
public record Route(
        LocalRef from,
        List<LocalRef> to,
        @Nullable Gain gain,
        @Nullable Delay delay) implements Shorthand {
    public Route {
        to = List.copyOf(to);
    }

    public static Route ofText(String text) {
        Join join = Join.parse(text);
        return new Route(join.from(), join.to(), null, null);
    }

    public Join join() {
        return new Join(from, to);
    }

    @Override
    public @Nullable String shortText() {
        return gain == null && delay == null ? join().text() : null;
    }
}
