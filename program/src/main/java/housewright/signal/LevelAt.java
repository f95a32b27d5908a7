package housewright.signal;

import housewright.model.Ref.Address;
import housewright.unit.Gain;
import housewright.unit.Level;
import org.jspecify.annotations.Nullable;

/**
 * The level at the end of one hop of a path.
 *
 * @param level null where it cannot be known
 * @param headroom up to where the port clips; null where that or the level is not known
 * @param lacking the figure for want of which the level is lost here; null where none is
 */
public record LevelAt(
        Address at,
        @Nullable Level level,
        @Nullable Gain headroom,
        @Nullable String lacking) {}
