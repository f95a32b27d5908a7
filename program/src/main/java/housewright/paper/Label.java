package housewright.paper;

import java.util.List;

/**
 * One label on a page of labels.
 *
 * @param left from the page's left edge to the label's, in mm
 * @param top from the page's upper edge to the label's, in mm
 * @param width in mm
 * @param height in mm
 * @param lines what a person reads, the most important first
 * @param code what its QR code says; empty where it has none
 */
public record Label(double left, double top, double width, double height, List<String> lines, String code) {
    public Label {
        lines = List.copyOf(lines);
    }
}
