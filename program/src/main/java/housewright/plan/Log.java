package housewright.plan;

import java.util.List;
import java.util.Map;

/**
 * What has happened since the work began.
 *
 * @param now nothing new begins before this minute
 * @param done what is ended, when and by whom
 * @param begun what somebody is at
 * @param late new times of deliveries, by id
 * @param blocked tasks that cannot begin before a minute, by id; {@link #NEVER} while nobody knows when
 */
public record Log(
        int now, List<Slot> done, List<Begun> begun, Map<String, Integer> late, Map<String, Integer> blocked) {
    public static final int NEVER = Integer.MAX_VALUE;

    /** Nothing yet. */
    public static final Log NOTHING = new Log(0, List.of(), List.of(), Map.of(), Map.of());

    /**
     * A task somebody is at.
     *
     * @param start when it was begun, before {@code now}
     * @param people who are at it, by id
     * @param left minutes it still takes from {@code now} on, 1 or more
     */
    public record Begun(String task, int start, List<String> people, int left) {
        public Begun {
            people = List.copyOf(people);
            if (left < 1) {
                throw new IllegalArgumentException(
                        "Of task " + task + ", which is not done, there is more left than " + left + " min");
            }
        }
    }

    public Log {
        done = List.copyOf(done);
        begun = List.copyOf(begun);
        late = Map.copyOf(late);
        blocked = Map.copyOf(blocked);
    }

    /** Whether the task is done or begun, so that it stays as it is. */
    public boolean frozen(String task) {
        return done.stream().anyMatch(each -> each.task().equals(task))
                || begun.stream().anyMatch(each -> each.task().equals(task));
    }
}
