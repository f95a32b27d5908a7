package housewright.drawing;

import housewright.finding.Subject;
import java.util.List;

/**
 * A drawing to scale.
 *
 * @param mapping of the venue's metres; a face turns a drag on the sheet into metres with it
 * @param missing what would belong on it and has no position, sorted
 */
public record Plan(Sheet sheet, Mapping mapping, List<Subject> missing) {
    public Plan {
        missing = List.copyOf(missing);
    }
}
