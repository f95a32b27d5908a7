/**
 * Who does what when: what is asked of a plan and what is answered. Only records and the {@link Solver} interface stand
 * here; {@code plan.axis} makes numbers of them, {@code plan.list} and {@code plan.cpsat} find schedules, {@code
 * plan.check} checks them from the schedule alone, {@code plan.report} says why, and {@code plan.chance} how likely.
 *
 * <p>Time is whole minutes of local time since the job's first midnight; a change of the clocks within a job is not
 * reckoned with. Lengths are whole minutes. All are laid on a grid of {@link Job#tick()} minutes: free times are
 * narrowed to it and lengths rounded up, so that what is planned always fits.
 *
 * <p>Breaks are put at set times: in a stretch of free time each time after as long as somebody may work without one.
 * Bounds hold for breaks at these times.
 *
 * <p>Limits: no waiting time between tasks (paint that dries), a crew stays the same for the whole task, and people may
 * be in any part of the building within the same minute.
 */
@NullMarked
package housewright.plan;

import org.jspecify.annotations.NullMarked;
