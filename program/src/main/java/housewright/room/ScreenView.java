package housewright.room;

/**
 * The seat that is worst off for the screens of its room.
 *
 * @param room whose seats
 * @param screen the one that is largest to the eye from that seat
 * @param distance to it, in m
 * @param picture height of its picture, in m
 */
public record ScreenView(String room, String screen, double distance, double picture) {
    /** The distance in heights of the picture. */
    public double ratio() {
        return distance / picture;
    }
}
