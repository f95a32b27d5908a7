package housewright.model;

import housewright.unit.Length;

/** A point of the floor plan. */
public record FloorPoint(Length x, Length y) implements Tuple {}
