package housewright.plan.cpsat;

import housewright.plan.Goal;

/**
 * What one solve is for.
 *
 * @param goal what to make small
 * @param all whether everything is possible, so that nothing may be left out, late or broken
 * @param missed with {@code all} false, what may be missed at most, without promises broken already
 * @param finish position by which everything that counts must end
 * @param hireDays days of hire at most, without those had already
 * @param sameDays whether each piece keeps its day and crew
 */
record Wanted(Goal goal, boolean all, long missed, int finish, int hireDays, boolean sameDays) {}
