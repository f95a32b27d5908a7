package housewright.model;

import housewright.unit.TimeSpan;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Work that no drawing implies; or, under the id of a task that one does imply, what differs from how it was worked out. */
public record Task(
        String id,
        @Nullable String name,
        @Doc("Most often") @Nullable TimeSpan takes,
        @Doc("When all goes well") @Nullable TimeSpan least,
        @Doc("When it goes badly") @Nullable TimeSpan most,
        List<String> who,
        @Doc("People at it at once") @Nullable Integer crew,
        @Doc("What one of them must be able to do") List<String> skills,
        List<String> needs,
        @Nullable Where where,
        @Doc("What the room must be for it") List<RoomCondition> conditions,
        List<String> after,

        @Doc("Tasks worked out from the change that this one does as well")
        List<String> covers,

        @Doc("It is not done on this job") boolean skip,
        Remarks remarks) {
    public Task {
        who = List.copyOf(who);
        skills = List.copyOf(skills);
        needs = List.copyOf(needs);
        conditions = List.copyOf(conditions);
        after = List.copyOf(after);
        covers = List.copyOf(covers);
        if (crew != null && crew < 1) {
            throw new IllegalArgumentException("a crew of one or more");
        }
    }

    /** Work of that name, with nothing else said. */
    public static Task of(String id, String name, TimeSpan takes, List<String> who, List<String> needs, Where where) {
        return new Task(
                id,
                name,
                takes,
                null,
                null,
                who,
                null,
                List.of(),
                needs,
                where,
                List.of(),
                List.of(),
                List.of(),
                false,
                Remarks.NONE);
    }

    /** The same, done by others. */
    public Task by(List<String> others) {
        return new Task(
                id,
                name,
                takes,
                least,
                most,
                others,
                crew,
                skills,
                needs,
                where,
                conditions,
                after,
                covers,
                skip,
                remarks);
    }
}
