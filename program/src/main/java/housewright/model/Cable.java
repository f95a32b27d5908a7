package housewright.model;

import housewright.unit.Length;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A cable, or a multicore with its ways. */
public record Cable(
        String id,

        @Doc("A cable type of the project or of the library") @Nullable
        String type,

        @Doc("Where it starts; unknown is allowed") @Nullable
        End from,

        @Doc("Where it ends; unknown is allowed") @Nullable End to,
        @Doc("The ways of a multicore") List<Way> ways,
        @Doc("Pathways it runs along") List<String> via,
        @Default("keep") Life life,
        @Doc("Else worked out from via") @Nullable Length length,

        @Doc("Connectors at both ends, where they differ from the type's")
        List<Connector> ends,

        @Doc("Adapters used on it") List<String> adapters,
        @Nullable Termination terminated,
        @Nullable String label,

        @Doc("When and by whom it was tested, in words") @Nullable
        String tested,

        @Doc("What differs today") @Nullable CableToday was,
        Remarks remarks) {
    public Cable {
        ways = List.copyOf(ways);
        via = List.copyOf(via);
        ends = List.copyOf(ends);
        adapters = List.copyOf(adapters);
    }

    /** As it runs before the work, {@code was} taken in. */
    public Cable today() {
        CableToday was = this.was;
        if (was == null) {
            return this;
        }
        return new Cable(
                id,
                Words.first(was.type(), type),
                Words.first(was.from(), from),
                Words.first(was.to(), to),
                was.ways().isEmpty() ? ways : was.ways(),
                was.via().isEmpty() ? via : was.via(),
                life,
                Words.first(was.length(), length),
                was.ends().isEmpty() ? ends : was.ends(),
                was.adapters().isEmpty() ? adapters : was.adapters(),
                terminated,
                label,
                tested,
                null,
                remarks);
    }
}
