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
            case Cause.ByCable cable -> cable.id() + " " + joined(hop);
            case Cause.BySend send ->
                send.id() + " " + joined(hop)
                        + (send.over().isEmpty() ? "" : " (over " + String.join(", ", send.over()) + ")");
            case Cause.ByRadio radio -> radio.id() + " " + joined(hop) + " by radio";
            case Cause.ByRoute route -> inside(hop, hop.to().said());
            case Cause.ByTie tie -> inside(hop, hop.to().saidPort()) + " straight through";
            case Cause.ByPatch patch -> inside(hop, hop.to().said()) + " (patch)";
        };
    }

    /** Between two things, the same channel is named once, and not where one side has but one. */
    private static String joined(Hop hop) {
        String channel = hop.from().saidChannel();
        String other = hop.to().saidChannel();
        if (!channel.isEmpty() && !other.isEmpty() && !channel.equals(other)) {
            return hop.from().said() + " → " + hop.to().said();
        }
        return hop.from().saidPort() + " → " + hop.to().saidPort()
                + (channel.equals(other) && !channel.isEmpty() ? ", " + channel : "");
    }

    private static String inside(Hop hop, String to) {
        String from = hop.cause() instanceof Cause.ByTie
                ? hop.from().saidPort()
                : hop.from().said();
        String thing = name(hop.from().thing()) + ", ";
        return from + " → " + (to.startsWith(thing) ? to.substring(thing.length()) : to);
    }
}
