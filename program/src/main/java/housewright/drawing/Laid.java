package housewright.drawing;

import java.util.List;
import java.util.Map;

/**
 * Where everything of a diagram is.
 *
 * @param frames rectangles of the places
 * @param lines of the wires, in their order, each with its corners and the top left corner of its text
 */
record Laid(double width, double height, Map<String, Area> nodes, Map<Diagram.Frame, Area> frames, List<Course> lines) {
    record Area(double x, double y, double width, double height) {}

    record At(double x, double y) {}

    record Course(List<At> corners, At text) {
        Course {
            corners = List.copyOf(corners);
        }
    }
}
