/**
 * A legal plan at once and without any native code: tasks in order of urgency, each as early as it fits, again and again
 * with another order, forward and backward (serial schedule generation with justification). It is where the exact solver
 * begins, and the answer of last resort. Repair after a snag is here too: what can stay stays.
 *
 * @see <a href="https://doi.org/10.1016/0377-2217(95)00357-6">R. Kolisch, "Serial and parallel resource-constrained project
 *     scheduling methods revisited", European Journal of Operational Research 90 (1996) 320-333</a> (cited from memory)
 */
@NullMarked
package housewright.plan.list;

import org.jspecify.annotations.NullMarked;
