package housewright.model;

import org.jspecify.annotations.Nullable;

/** Where a fixture answers and where it points. */
public record FixtureSetting(
        @Nullable Integer universe,
        @Doc("First channel, 1 to 512") @Nullable Integer address,
        @Doc("A mode of its type") @Nullable String mode,
        @Doc("The point it is aimed at") @Nullable SpacePoint aim,
        @Doc("Colour or filter, in words") @Nullable String colour,

        @Doc("The pan, tilt, shutters and so on, in words") @Nullable
        String focus) {
    /** This with everything the other says put in its place. */
    FixtureSetting overlaidBy(FixtureSetting other) {
        return new FixtureSetting(
                Words.first(other.universe, universe),
                Words.first(other.address, address),
                Words.first(other.mode, mode),
                Words.first(other.aim, aim),
                Words.first(other.colour, colour),
                Words.first(other.focus, focus));
    }
}
