package housewright.cable;

import org.jspecify.annotations.Nullable;

/**
 * What one way of a cable joins.
 *
 * @param from null where that end is loose or nobody knows where it goes
 * @param to the same of the other end
 */
public record Joint(@Nullable Plug from, @Nullable Plug to) {}
