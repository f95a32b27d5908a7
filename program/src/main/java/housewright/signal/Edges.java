package housewright.signal;

import java.util.Arrays;

/** Edges as they are found, before they are put in order. */
final class Edges {
    int count;
    int[] from = new int[1024];
    int[] to = new int[1024];
    long[] delay = new long[1024];
    double[] gain = new double[1024];
    Cause[] cause = new Cause[1024];
    /** A proof over the edge may have to say what it takes for granted. */
    boolean[] notable = new boolean[1024];

    void add(int fromNode, int toNode, long delayNanos, double gainDb, Cause why) {
        add(fromNode, toNode, delayNanos, gainDb, why, false);
    }

    void add(int fromNode, int toNode, long delayNanos, double gainDb, Cause why, boolean toNote) {
        if (count == from.length) {
            int more = count * 2;
            from = Arrays.copyOf(from, more);
            to = Arrays.copyOf(to, more);
            delay = Arrays.copyOf(delay, more);
            gain = Arrays.copyOf(gain, more);
            cause = Arrays.copyOf(cause, more);
            notable = Arrays.copyOf(notable, more);
        }
        from[count] = fromNode;
        to[count] = toNode;
        delay[count] = delayNanos;
        gain[count] = gainDb;
        cause[count] = why;
        notable[count] = toNote;
        count++;
    }
}
