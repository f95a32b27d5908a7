package housewright.model;

import housewright.unit.Delay;
import housewright.unit.Gain;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A join set in a device by the project. */
public record PatchEntry(
        LocalRef from,
        List<LocalRef> to,

        @Doc("Where on the channel it is taken from") @Nullable
        Tap tap,

        @Nullable Gain gain,
        @Nullable Delay delay,

        @Doc("When it is set: keep, new or strike; both today and after when left out") @Nullable
        Life life,

        @Nullable String note)
        implements Shorthand {
    public PatchEntry {
        to = List.copyOf(to);
    }

    public static PatchEntry ofText(String text) {
        Join join = Join.parse(text);
        return new PatchEntry(join.from(), join.to(), null, null, null, null, null);
    }

    public Join join() {
        return new Join(from, to);
    }

    @Override
    public @Nullable String shortText() {
        boolean plain = tap == null && gain == null && delay == null && life == null && note == null;
        return plain ? join().text() : null;
    }
}
