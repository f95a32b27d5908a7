package housewright.unit;

/**
 * American wire gauge. Heavy wires are 1/0 to 4/0, kept as 0 to -3; finer ones 1 to 56.
 *
 * <p>ASTM B258: diameters grow in 39 equal ratios from 0.005 in at gauge 36 to 0.46 in at 4/0.
 */
final class WireGauge {
    static final int HEAVIEST = -3;
    static final int FINEST = 56;
    static final String RANGE = "is no gauge; they are 4/0 to 1/0, then 1 to 56";

    /** Any other way to write one is left alone: {@code 00 AWG} is 2/0 to some and a slip of the finger to others. */
    static final String PATTERN = "[1-4]/0|[0-9]|[1-4][0-9]|5[0-6]";

    private static final double DIAMETER_OF_36_MM = 0.127;
    private static final double LN_RATIO = Math.log(92) / 39;

    private WireGauge() {}

    static double squareMillimetres(double gauge) {
        double diameter = DIAMETER_OF_36_MM * Math.exp((36 - gauge) * LN_RATIO);
        return Math.PI / 4 * diameter * diameter;
    }

    static double ofSquareMillimetres(double area) {
        return 36 - Math.log(Math.sqrt(area * 4 / Math.PI) / DIAMETER_OF_36_MM) / LN_RATIO;
    }

    static boolean isGauge(double gauge) {
        return gauge == Math.rint(gauge) && gauge >= HEAVIEST && gauge <= FINEST;
    }

    /** @return the gauge, or NaN where the number is none */
    static double read(String number) {
        int length = number.length();
        if (length == 3 && number.endsWith("/0") && number.charAt(0) >= '1' && number.charAt(0) <= '4') {
            return '1' - number.charAt(0);
        }
        boolean oneOrTwoDigits = (length == 1 || (length == 2 && number.charAt(0) != '0'))
                && number.chars().allMatch(c -> c >= '0' && c <= '9');
        int gauge = oneOrTwoDigits ? Integer.parseInt(number) : Integer.MAX_VALUE;
        return gauge <= FINEST ? gauge : Double.NaN;
    }

    static String text(double gauge) {
        return gauge > 0 ? QuantityWriter.number(gauge) + " AWG" : QuantityWriter.number(1 - gauge) + "/0 AWG";
    }
}
