package housewright.model;

/** A text that does not read as what it should be. */
public final class WordingException extends IllegalArgumentException {
    private static final long serialVersionUID = 1;

    private final String found;
    private final String expected;

    public WordingException(String found, String expected) {
        super("\"" + found + "\" is not " + expected);
        this.found = found;
        this.expected = expected;
    }

    public String found() {
        return found;
    }

    /** What belongs there, as a noun phrase: {@code a port or point, such as desk.ch-1}. */
    public String expected() {
        return expected;
    }
}
