package housewright.drawing;

import housewright.model.About;
import housewright.model.RuleSet;
import java.util.List;

/**
 * Sizes of drawing sheets, lying, in mm, the smaller area first: the A series of ISO 216 with elongated sheets as in ISO
 * 5457 and, under US rules, sizes A to E of ASME Y14.1 (all from memory). What fits on none gets a sheet of its own size.
 */
record Paper(String name, double widthMm, double heightMm) {
    static final double PER_MM = 96 / 25.4;

    private static final double INCH = 25.4;
    private static final List<Paper> ISO = List.of(
            new Paper("A4", 297, 210),
            new Paper("A3", 420, 297),
            new Paper("A4×3", 630, 297),
            new Paper("A2", 594, 420),
            new Paper("A4×4", 841, 297),
            new Paper("A3×3", 891, 420),
            new Paper("A1", 841, 594),
            new Paper("A3×4", 1189, 420),
            new Paper("A2×3", 1261, 594),
            new Paper("A0", 1189, 841));
    private static final List<Paper> US = List.of(
            new Paper("A", 11 * INCH, 8.5 * INCH),
            new Paper("B", 17 * INCH, 11 * INCH),
            new Paper("C", 22 * INCH, 17 * INCH),
            new Paper("D", 34 * INCH, 22 * INCH),
            new Paper("E", 44 * INCH, 34 * INCH));

    static boolean isUs(About about) {
        return about.rules() != null && about.rules().set() == RuleSet.US;
    }

    static List<Paper> sizes(boolean us) {
        return us ? US : ISO;
    }

    double width() {
        return widthMm * PER_MM;
    }

    double height() {
        return heightMm * PER_MM;
    }
}
