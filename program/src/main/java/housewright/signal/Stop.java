package housewright.signal;

import housewright.model.Ref.Address;
import org.jspecify.annotations.Nullable;

/**
 * Where a signal stops.
 *
 * @param at the furthest place reached; null where it does not even begin
 * @param why nothing leads on, as a sentence
 */
public record Stop(@Nullable Address at, String why) {}
