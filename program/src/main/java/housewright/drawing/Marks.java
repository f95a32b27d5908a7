package housewright.drawing;

import housewright.model.Place;

/** How a place is marked: a square for a rack, a cross for what hangs, a ring for what stands. */
final class Marks {
    private Marks() {}

    static void place(Svg svg, Place place, double x, double y) {
        if (place.rack() != null) {
            svg.leaf("rect", "x", x - 5, "y", y - 5, "width", 10, "height", 10, "stroke-width", Svg.NORMAL);
        } else if (place.hang() != null) {
            svg.line(x - 4, y - 4, x + 4, y + 4, Svg.NORMAL);
            svg.line(x - 4, y + 4, x + 4, y - 4, Svg.NORMAL);
        } else {
            svg.leaf("circle", "cx", x, "cy", y, "r", 3.5, "stroke-width", Svg.NORMAL);
        }
    }
}
