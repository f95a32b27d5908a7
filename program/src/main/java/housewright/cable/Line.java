package housewright.cable;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A run from one piece of equipment to the next: one cable, or several that meet in panels which pass straight through.
 *
 * @param from in what is no panel, where it starts; null where it starts loose or in a panel's free side
 * @param to the same where it ends
 * @param leads the cables in order, one at least
 */
public record Line(@Nullable Plug from, @Nullable Plug to, List<Lead> leads) {
    public Line {
        leads = List.copyOf(leads);
    }

    /** Length of all its cables; null where that of one is not known. */
    public @Nullable Double metres() {
        double sum = 0;
        for (Lead lead : leads) {
            Span span = lead.span();
            if (span == null) {
                return null;
            }
            sum += span.metres();
        }
        return sum;
    }
}
