package housewright.room;

/**
 * How one row sees over the next, at the row that sees least.
 *
 * @param room whose seats
 * @param what must be seen: a lighting target, a place or a screen
 * @param kind the section's word for it: {@code target}, {@code place} or {@code equipment}
 * @param row counted from the front
 * @param over how far its line of sight passes above the eyes in front, in m
 * @param riser how much each row would have to stand above the next for 60 mm, in m
 */
public record RowView(String room, String what, String kind, int row, double over, double riser) {}
