package housewright.signal;

import housewright.model.Ref.Address;

/** Hops and places as a person standing at the gear would say them. */
final class Said {
    private Said() {}

    static String place(Address address) {
        return address.said();
    }

    static String name(String id) {
        return housewright.model.Words.said(id);
    }

    /** What makes a hop, by its id. */
    static String cause(Cause cause) {
        return switch (cause) {
            case Cause.ByCable cable -> "cable " + cable.id();
            case Cause.ByRoute route -> "inside " + name(route.equipment());
            case Cause.ByTie tie -> "straight through " + name(tie.equipment());
            case Cause.ByPatch patch -> "the patch of " + name(patch.equipment());
            case Cause.BySend send -> "network-send " + send.id();
            case Cause.ByRadio radio -> "radio link " + radio.id();
        };
    }

    /** A hop by what can be touched: "C014 stage box left, out 3 → amplifier A, in 1". */
    static String hop(Hop hop) {
        return switch (hop.cause()) {
            case Cause.ByCable cable -> cable.id() + " " + place(hop.from()) + " → " + place(hop.to());
            case Cause.BySend send ->
                send.id() + " " + place(hop.from()) + " → " + place(hop.to())
                        + (send.over().isEmpty() ? "" : " (over " + String.join(", ", send.over()) + ")");
            case Cause.ByRadio radio -> radio.id() + " " + place(hop.from()) + " → " + place(hop.to()) + " by radio";
            case Cause.ByRoute route -> inside(hop, "");
            case Cause.ByTie tie -> inside(hop, " straight through");
            case Cause.ByPatch patch -> inside(hop, " (patch)");
        };
    }

    private static String inside(Hop hop, String how) {
        String from = place(hop.from());
        String to = place(hop.to());
        String thing = name(hop.from().thing()) + ", ";
        return from + " → " + (to.startsWith(thing) ? to.substring(thing.length()) : to) + how;
    }
}
