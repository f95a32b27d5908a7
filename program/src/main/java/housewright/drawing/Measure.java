package housewright.drawing;

/** Lengths as a drawing says them: metres to the centimetre, or feet and inches. */
final class Measure {
    private static final double FOOT = 0.3048;
    private static final double INCH = 0.0254;

    private static final int MOST_LINES = 150;

    private final boolean us;

    Measure(boolean us) {
        this.us = us;
    }

    String said(double metres) {
        if (!us) {
            return Svg.num(metres) + " m";
        }
        long inches = Math.round(Math.abs(metres) / INCH);
        String sign = metres < 0 && inches > 0 ? "-" : "";
        long feet = inches / 12;
        long rest = inches % 12;
        return sign
                + (feet == 0 && rest > 0 ? "" : feet + " ft")
                + (feet > 0 && rest > 0 ? " " : "")
                + (rest > 0 ? rest + " in" : "");
    }

    /** Metres between two lines of the grid: 1 m or 5 ft, more where so much of it would be grey. */
    double grid(double span) {
        double step = us ? 5 * FOOT : 1;
        while (span / step > MOST_LINES) {
            step *= 10;
        }
        return step;
    }

    /** Grid lines from one with a figure to the next. */
    int figures() {
        return us ? 2 : 5;
    }
}
