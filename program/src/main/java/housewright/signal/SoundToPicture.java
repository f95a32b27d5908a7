package housewright.signal;

/**
 * A place where sound and picture of one happening meet.
 *
 * @param equipment where both arrive
 * @param soundNanos delay of the sound, in nanoseconds
 * @param pictureNanos delay of the picture, in nanoseconds
 */
public record SoundToPicture(
        String equipment, String soundFeed, String pictureFeed, long soundNanos, long pictureNanos) {
    /** By how much the sound is early (above 0) or late (below), in milliseconds: the sign of ITU-R BT.1359-1. */
    public double soundEarlyMs() {
        return (pictureNanos - soundNanos) / 1e6;
    }
}
