package housewright.model;

import housewright.unit.Length;
import org.jspecify.annotations.Nullable;

/** The room in a rack. */
public record RackSpace(int units, @Nullable Length depth) {}
