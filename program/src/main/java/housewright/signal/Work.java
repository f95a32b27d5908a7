package housewright.signal;

/**
 * How much is still looked for when mends are: counted, not timed, so that the same project always gives the same mends.
 * When it is spent, only what closes a gap at once is tried; a mend then says that a cheaper one may exist.
 */
final class Work {
    /** Ways looked for and trials made for all feeds of a project together: seconds, not minutes. */
    private static final int MOST = 12_000;

    /** A trial builds the graph and proves all feeds; a way is found in a part of that time. */
    private static final int TRIAL = 5;

    private int left = MOST;

    void way() {
        left--;
    }

    void trial() {
        left -= TRIAL;
    }

    boolean isSpent() {
        return left <= 0;
    }
}
