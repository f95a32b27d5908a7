/**
 * Who sees what in a room: from the work places over screens and heads to the stage, from row to row, and to the
 * screen; at what angle light meets faces and where it meets the eyes of the seats; who stands in a projector's beam.
 *
 * <p>Method: straight lines in section. The line from an eye at height e to a target at height t, a distance D away, is
 * at height e + (t - e) x / D after x. One row sees over the next by the C value, C = D (N + R) / (D + T) - R. Bodies
 * are those of NUREG-0700 Rev. 3, table 11.4; the 5th percentile of women must see, the 95th of men is the most anybody
 * could be. The place of a screen is taken as the middle of its picture, any other place as where a thing stands.
 * Limits: seats are an even grid of rows, a standing head is 1.75 m high, and nobody has moved their chair.
 */
@NullMarked
package housewright.room;

import org.jspecify.annotations.NullMarked;
