package housewright.cli;

/** Exit statuses. */
final class Status {
    private Status() {}

    /** Nothing stops the job. */
    static final int FINE = 0;

    /** A finding stops it, or a feed is broken. */
    static final int STOPS = 1;

    /** What was asked for cannot be read, is not there, or cannot be done; or a fault of the program. */
    static final int CANNOT = 2;
}
