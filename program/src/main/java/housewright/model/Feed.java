package housewright.model;

import housewright.unit.Delay;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What must arrive where; with never, what must not. */
public record Feed(
        String id,
        @Doc("Any path fails it") boolean never,
        @Doc("One or several places where it begins") List<Ref> from,
        @Doc("One or several places where it must arrive") List<Ref> to,
        @Nullable Carries carries,
        @Doc("Longest delay allowed") @Nullable Delay within,
        @Doc("Places the path must pass, in this order") List<Ref> through,

        @Doc("How it is tried out where nobody in the room sees or hears it, in words") @Nullable
        String test,

        Remarks remarks) {
    public Feed {
        from = List.copyOf(from);
        to = List.copyOf(to);
        through = List.copyOf(through);
    }
}
