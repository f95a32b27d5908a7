package housewright.model;

import housewright.unit.TimeSpan;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Work that no drawing implies. */
public record Task(
        String id,
        @Nullable String name,
        @Nullable TimeSpan takes,
        List<String> who,
        List<String> needs,
        @Nullable Where where,
        List<String> after,
        Remarks remarks) {
    public Task {
        who = List.copyOf(who);
        needs = List.copyOf(needs);
        after = List.copyOf(after);
    }
}
