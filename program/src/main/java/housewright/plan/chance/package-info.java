/**
 * How likely a plan keeps its days. Lengths and late deliveries are drawn again and again, and each time the work goes on as
 * the plan's own policy has it: every task by the crew of the plan, in the order of the plan on each person, machine and
 * condition of a place, when what it waits for is there and its people are free.
 *
 * <p>A length is drawn from the beta distribution over its three points that has the mean (a + 4m + b) / 6 (shape 4), whose
 * deviation is near (b - a) / 6 (Malcolm and others, Operations Research 7 (1959) 646-669; cited from memory). A delivery is
 * late with its chance, and then by any time up to its latest alike.
 *
 * <p>Limits: what people do when a day goes wrong (stay longer, fetch help, leave something out) is not in it, nor is what
 * nobody thought of; the three points are guesses themselves. A chance is therefore told as a coarse range.
 */
@NullMarked
package housewright.plan.chance;

import org.jspecify.annotations.NullMarked;
