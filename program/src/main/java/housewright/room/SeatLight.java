package housewright.room;

/**
 * A fixture that shines into the eyes of seats which look its way.
 *
 * @param place where it hangs
 * @param room whose seats
 * @param seats how many of the seats tried are in its beam, of {@code tried}
 * @param lowest elevation of the fixture seen from one of them, in degrees
 */
public record SeatLight(String fixture, String place, String room, int seats, int tried, double lowest) {}
