/**
 * Making plans: a legal one at once, a better one from the exact solver in a process of its own, each checked before it is
 * shown.
 *
 * <p>The solver's process is this same program, started with {@link SolverChild} as its main class. They talk in lines of
 * JSON. The program writes one line, {@code {"request": …, "first": …}} (the records of {@code housewright.plan}), and later,
 * to end the search, the line {@code stop}; closing the stream ends it, too. The child answers with {@code {"better": schedule,
 * "level": …}} for each better schedule, {@code {"level": …}} for a better bound, and at last with {@code {"solved": …}}. What
 * it prints beside, such as warnings of the virtual machine, goes to its error stream. When it dies, the last better schedule
 * stands.
 */
@NullMarked
package housewright.app.plan;

import org.jspecify.annotations.NullMarked;
