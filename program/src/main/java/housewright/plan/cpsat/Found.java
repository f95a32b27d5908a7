package housewright.plan.cpsat;

import org.jspecify.annotations.Nullable;

/**
 * Positions and crews of all units.
 *
 * @param starts of each unit's pieces; null where it is left out
 */
@SuppressWarnings("ArrayRecordComponent") // never compared
record Found(int[] @Nullable [] starts, long[] crews) {}
