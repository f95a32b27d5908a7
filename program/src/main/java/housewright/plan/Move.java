package housewright.plan;

import org.jspecify.annotations.Nullable;

/**
 * A task that a new plan puts elsewhere.
 *
 * @param to null where the new plan leaves it out
 * @param why in a sentence
 */
public record Move(Slot from, @Nullable Slot to, String why) {}
