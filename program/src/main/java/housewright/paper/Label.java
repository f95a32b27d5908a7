package housewright.paper;

import java.util.List;

/**
 * One label on a page of labels.
 *
 * @param left from the page's left edge to the label's, in mm
 * @param top from the page's upper edge to the label's, in mm
 * @param width in mm
 * @param height in mm
 * @param points size of its letters
 * @param lines what a person reads, the most important first, none longer than the label is wide
 * @param bold how many of the lines, from the first, are bold
 * @param code what its QR code says; empty where it has none
 * @param side of the code with its quiet zone, in mm; 0 where it has none
 */
public record Label(
        double left,
        double top,
        double width,
        double height,
        double points,
        List<String> lines,
        int bold,
        String code,
        double side) {
    /** From the edge of a label to what is printed on it, in mm. */
    public static final double INSET = 1.2;

    /** From one line to the next, of the size of the letters. */
    public static final double LINE = 1.15;

    public Label {
        lines = List.copyOf(lines);
    }
}
