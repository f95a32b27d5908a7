package housewright.finding;

import org.jspecify.annotations.Nullable;

/**
 * One figure a finding rests on.
 *
 * @param what it is a figure of, such as "sound early"
 * @param found in {@code unit}
 * @param limit the limit it breaks, in {@code unit}; null where there is none
 * @param unit as written after a number; empty for a plain count
 */
public record Value(String what, double found, @Nullable Double limit, String unit) {
    public Value {
        if (!Double.isFinite(found) || (limit != null && !Double.isFinite(limit))) {
            throw new IllegalArgumentException(what + " has no figure: " + found + ", limit " + limit);
        }
    }
}
