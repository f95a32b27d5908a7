package housewright.room;

/**
 * A fixture in front of a lighting target that is aimed at it.
 *
 * @param elevation of the fixture seen from the face, in degrees
 */
public record FaceLight(String fixture, String target, double elevation) {}
