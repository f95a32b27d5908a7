package housewright.signal;

import housewright.model.Ref.Address;
import java.util.List;

/** Several sources patched to a channel that can take only one. */
public record Contested(Address at, List<Cause.ByPatch> sources) {
    public Contested {
        sources = List.copyOf(sources);
    }
}
