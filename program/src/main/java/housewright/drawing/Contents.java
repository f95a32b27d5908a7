package housewright.drawing;

import housewright.finding.Subject;
import java.util.List;

/**
 * What one sheet of a signal drawing holds.
 *
 * @param number of the sheet, from 1
 * @param title its places, or the system where it has one sheet only
 * @param subjects what is on it, sorted; without what it only refers to on another sheet
 */
public record Contents(int number, String title, List<Subject> subjects) {
    public Contents {
        subjects = List.copyOf(subjects);
    }
}
