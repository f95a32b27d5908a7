package housewright.sheet;

/** Why a file cannot be read, as a sentence; never leaves the package. */
final class Unreadable extends Exception {
    private static final long serialVersionUID = 1;

    final String why;

    Unreadable(String why) {
        super(why);
        this.why = why;
    }
}
