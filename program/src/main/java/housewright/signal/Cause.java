package housewright.signal;

import housewright.model.LocalRef;

/** What makes an edge of the signal graph true: the thing a person can touch or set. */
public sealed interface Cause {
    /** A cable, or one way of a multicore. */
    record ByCable(String id) implements Cause {}

    /** Fixed inside a type. */
    record ByRoute(String equipment) implements Cause {}

    /** Joined straight through inside a passive panel. */
    record ByTie(String equipment) implements Cause {}

    /** Set in a device. */
    record ByPatch(String equipment, LocalRef.Spot from, LocalRef.Spot to) implements Cause {}

    /** Carried by a network; the cables and switches it runs over, in order. */
    record BySend(String id, java.util.List<String> over) implements Cause {
        public BySend {
            over = java.util.List.copyOf(over);
        }
    }

    /** A radio link. */
    record ByRadio(String id) implements Cause {}

    /** Section and id of the entity. */
    default String entity() {
        return switch (this) {
            case ByCable cable -> "cables." + cable.id();
            case ByRoute route -> "equipment." + route.equipment();
            case ByTie tie -> "equipment." + tie.equipment();
            case ByPatch patch -> "patch." + patch.equipment();
            case BySend send -> "network-sends." + send.id();
            case ByRadio radio -> "radio." + radio.id();
        };
    }
}
