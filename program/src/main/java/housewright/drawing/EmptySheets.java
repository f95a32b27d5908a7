package housewright.drawing;

import housewright.signal.FeedProof;
import java.util.List;

/** What a sheet says on which there is nothing to draw yet. */
final class EmptySheets {
    private EmptySheets() {}

    static List<String> signal(Trade trade, State state) {
        String when = state == State.TODAY ? " today" : state == State.TARGET ? " in the target" : "";
        return List.of(
                "No " + what(trade) + when + " yet.",
                "Here belongs every cable of this system and the equipment that it joins.",
                "Enter equipment first, then its cables: each from a port to a port.");
    }

    static List<String> feed(FeedProof proof) {
        return List.of(
                "Feed " + proof.feed().id() + " is not finished.",
                "Here belongs its way, from where it begins to where it must arrive.",
                "Say both: from and to.");
    }

    static List<String> floorPlan() {
        return List.of(
                "Nothing of the venue has a position yet.",
                "Here belong its rooms, places and pathways, to scale.",
                "Begin with the outline of one room, corner by corner, then the places in it.");
    }

    static List<String> racks() {
        return List.of(
                "No rack yet.",
                "Here belongs every rack from its front, with what sits in which unit.",
                "Say of a place that it is a rack, and how many units it has.");
    }

    private static String what(Trade trade) {
        return switch (trade) {
            case SOUND -> "sound cables";
            case PICTURE -> "picture cables";
            case LIGHT -> "lighting cables";
            case NETWORK -> "network cables";
            case CONTROL -> "control cables";
            case MAINS -> "mains cables";
            case UNKNOWN -> "cables whose signal is not known";
        };
    }
}
