package housewright.room;

/**
 * Somebody who stands between a projector and its screen.
 *
 * @param target the lighting target they stand in
 * @param depth how far their head reaches into the picture's beam, in m
 */
public record Shadow(String projector, String screen, String target, double depth) {}
