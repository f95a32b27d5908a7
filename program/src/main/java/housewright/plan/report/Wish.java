package housewright.plan.report;

import housewright.plan.Job;
import housewright.plan.Task;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Something that a job asks for and could do without.
 *
 * @param says in a sentence without its full stop
 * @param without the job that does not ask for it
 * @param ways lesser changes, the least first
 * @param ofTask what it is where it is of one task alone; else null
 */
record Wish(
        String says,
        UnaryOperator<Job> without,
        Function<Job, Stream<Way>> ways,
        @Nullable OfTask ofTask) {
    Wish(String says, UnaryOperator<Job> without, Function<Job, Stream<Way>> ways) {
        this(says, without, ways, null);
    }

    /** What a wish is, where it is of one task alone. */
    record OfTask(String task, UnaryOperator<Task> without) {}

    /**
     * A change of a job that might help.
     *
     * @param says what would have to be, after "if"
     */
    record Way(String says, Job job) {}

    /** A wish that can only be kept or dropped. */
    static Wish whole(String says, UnaryOperator<Job> without, String dropped) {
        return new Wish(says, without, job -> Stream.of(new Way(dropped, without.apply(job))));
    }

    /** The same of one task. */
    static Wish whole(String says, String task, UnaryOperator<Task> without, String dropped) {
        UnaryOperator<Job> change = job -> Wishes.change(job, task, without);
        return new Wish(says, change, job -> Stream.of(new Way(dropped, change.apply(job))), new OfTask(task, without));
    }

    /** The job without any of these; those of single tasks at once, since a job is checked whole each time it is made. */
    static Job without(Job job, List<Wish> wishes) {
        Map<String, List<OfTask>> byTask = new HashMap<>();
        for (Wish wish : wishes) {
            OfTask one = wish.ofTask();
            if (one != null) {
                byTask.computeIfAbsent(one.task(), each -> new ArrayList<>()).add(one);
            }
        }
        Job left = byTask.isEmpty()
                ? job
                : job.withTasks(job.tasks().stream()
                        .map(task -> {
                            Task changed = task;
                            for (OfTask one : byTask.getOrDefault(task.id(), List.of())) {
                                changed = one.without().apply(changed);
                            }
                            return changed;
                        })
                        .toList());
        for (Wish wish : wishes) {
            left = wish.ofTask() == null ? wish.without().apply(left) : left;
        }
        return left;
    }
}
