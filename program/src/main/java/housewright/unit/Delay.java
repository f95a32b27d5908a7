package housewright.unit;

/**
 * How much later something comes out than it went in: a time ({@code 0.7 ms}) or a number of frames of the picture that
 * passes ({@code 1 frame}, {@code 1.5 frames}), 0 or more.
 */
public record Delay(double value, Unit unit) implements Quantity {

    public Delay {
        value = Dimension.DELAY.checked(value, unit);
    }

    public static Delay ofMilliseconds(double milliseconds) {
        return new Delay(milliseconds, Unit.MILLISECOND);
    }

    public static Delay ofFrames(double frames) {
        return new Delay(frames, Unit.FRAME);
    }

    /**
     * Reads text such as {@code 0.7 ms} or {@code 2 frames}; throws a {@link UnitException} that says what is wrong
     * with any other.
     */
    public static Delay parse(String text) {
        return Quantities.parse(Delay.class, text);
    }

    /** Seconds, or frames where this is {@link #inFrames()}. */
    @Override
    public double base() {
        return Quantity.super.base();
    }

    public boolean inFrames() {
        return unit == Unit.FRAME;
    }

    /**
     * How long it is, to the nearest nanosecond.
     *
     * @param forFrames the format whose frames are counted; it does not matter to a delay that is a time
     */
    public long nanos(VideoFormat forFrames) {
        return Math.round(inFrames() ? value * 1e9 / forFrames.framesPerSecond() : in(Unit.SECOND) * 1e9);
    }

    @Override
    public String toString() {
        return text();
    }
}
