package housewright.drawing;

import housewright.finding.Subject;
import java.util.List;

/**
 * One sheet of a drawing.
 *
 * @param id names it among all sheets of the project, such as {@code signal-sound-target-2}
 * @param title as in its title block
 * @param number which of the drawing's sheets it is, from 1
 * @param of how many sheets the drawing has
 * @param width in units of which 96 are an inch of paper
 * @param height likewise
 * @param svg one {@code svg} element, without a declaration before it, fit to stand in a page
 * @param subjects what is drawn on it, sorted; without what it only refers to on another sheet
 */
public record Sheet(
        String id, String title, int number, int of, double width, double height, String svg, List<Subject> subjects) {
    public Sheet {
        subjects = List.copyOf(subjects);
    }
}
