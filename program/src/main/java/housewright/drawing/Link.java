package housewright.drawing;

import housewright.finding.Subject;
import java.util.List;

/**
 * What runs from one box to another on a signal drawing: a cable, or all ways of a multicore between the same two; a
 * network-send; a radio link.
 *
 * @param text its id and type, as written beside the line
 * @param from where signal leaves
 * @param to where it arrives
 * @param both signal runs both ways
 */
record Link(Sort sort, String id, String text, End from, End to, boolean both, Change change) {
    enum Sort {
        CABLE("cable"),
        SEND("network-send"),
        RADIO("radio"),
        /** What a feed would have to cross and does not. */
        GAP("feed");

        /** Kind of a subject, and class in the drawing. */
        final String kind;

        Sort(String kind) {
            this.kind = kind;
        }
    }

    /**
     * Sockets of one box, gathered where one cable fills several.
     *
     * @param box id of the equipment; empty where nobody knows yet where that end goes
     * @param ports names on the panel, in order
     */
    record End(String box, List<String> ports) {
        End {
            ports = List.copyOf(ports);
        }

        boolean isLoose() {
            return box.isEmpty();
        }

        String port() {
            return Gathered.names(ports);
        }

        String said() {
            return isLoose() ? "an end not known yet" : box + " " + port();
        }
    }

    Subject subject() {
        return new Subject(sort.kind, id);
    }

    Link turned() {
        return new Link(sort, id, text, to, from, both, change);
    }

    Link with(Change other) {
        return new Link(sort, id, text, from, to, both, other);
    }

    String said() {
        String what = switch (sort) {
            case CABLE -> "Cable ";
            case SEND -> "Sent over the network: ";
            case RADIO -> "Radio link ";
            case GAP -> "Nothing passes for feed ";
        };
        if (sort == Sort.GAP) {
            return what + id;
        }
        return what
                + text
                + (both ? ", between " : ", from ")
                + from.said()
                + (both ? " and " : " to ")
                + to.said()
                + change.said;
    }
}
