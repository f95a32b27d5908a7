package housewright.drawing;

import java.util.List;

/**
 * A piece of equipment on a signal drawing.
 *
 * @param name of its type
 * @param place where it stands; empty where nobody has said
 * @param note what else is to be read in the box; may be empty
 * @param change what becomes of it
 * @param insides ways through it that are drawn; none but on the drawing of a feed
 */
record Box(String id, String name, String place, String note, Change change, List<Inside> insides) {
    Box {
        insides = List.copyOf(insides);
    }

    /**
     * A way through a box.
     *
     * @param in the socket where it comes in; empty where it begins inside
     * @param over the points that it passes, in words
     * @param out the socket where it leaves; empty where it ends inside
     */
    record Inside(String in, String over, String out) {}
}
