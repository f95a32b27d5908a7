package housewright.model;

import housewright.unit.TimeSpan;
import java.util.List;

/** How long one unit of a kind of work takes one crew, as three points, and who does it. */
public record LabourUnit(
        String id,

        @Doc("What it is counted by, such as metre, end, piece")
        String per,

        @Doc("When all goes well") TimeSpan least,
        @Doc("Most often") TimeSpan likely,
        @Doc("When it goes badly") TimeSpan most,
        @Doc("People at it at once") @Default("1") int crew,
        @Doc("What one of them must be able to do") List<String> skills,

        @Doc("Where the figure comes from: common practice, or whose own records")
        String source,

        Remarks remarks) {
    public LabourUnit {
        if (likely.compareTo(least) < 0 || most.compareTo(likely) < 0) {
            throw new IllegalArgumentException("least, likely and most in this order, each as long or longer");
        }
        if (crew < 1) {
            throw new IllegalArgumentException("a crew of one or more");
        }
        skills = List.copyOf(skills);
    }
}
