package housewright.plan;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A task in a plan, with what a person wants to know of it.
 *
 * @param slot when and by whom
 * @param after tasks that come first, by id
 * @param latestStart minute to which its start may slip with nothing missed, when what follows slips as far as it can
 * @param why why it is not earlier, in a sentence
 */
public record Planned(
        Slot slot,
        String title,
        String kind,
        @Nullable String place,
        @Nullable String hire,
        List<String> after,
        int latestStart,
        String why) {
    public Planned {
        after = List.copyOf(after);
    }

    /** Minutes of the clock by which the start may slip; 0 or more. */
    public int slackMinutes() {
        return latestStart - slot.start();
    }
}
