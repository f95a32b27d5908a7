package housewright.plan.report;

import housewright.plan.Job;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * Something that a job asks for and could do without.
 *
 * @param says in a sentence without its full stop
 * @param without the job that does not ask for it
 * @param ways lesser changes, the least first
 */
record Wish(String says, UnaryOperator<Job> without, Function<Job, Stream<Way>> ways) {

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
}
