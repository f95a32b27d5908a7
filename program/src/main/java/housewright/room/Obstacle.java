package housewright.room;

/**
 * Something in a line of sight.
 *
 * @param what a thing, or heads in words
 * @param away from the eye, in m
 * @param top its top, in m above the building's zero
 */
public record Obstacle(String what, double away, double top) {}
