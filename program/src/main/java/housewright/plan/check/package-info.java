/**
 * Re-checks a schedule against every rule, minute by minute, from the job and the schedule alone. It shares no code with
 * those who search, so that a mistake of theirs does not hide itself; where it can be slow and plain, it is.
 */
@NullMarked
package housewright.plan.check;

import org.jspecify.annotations.NullMarked;
