package housewright.model;

import housewright.unit.Length;

/** A point in the building. */
public record SpacePoint(Length x, Length y, Length z) implements Tuple {}
