package housewright.app;

/** Nothing could be read or written; what is kept is as it was. Its message is a sentence for the user. */
public final class StoreException extends Exception {
    private static final long serialVersionUID = 1;

    public StoreException(String why) {
        super(why);
    }

    public StoreException(String why, Throwable cause) {
        super(why, cause);
    }

    /** The sentence for the user. */
    public String why() {
        return String.valueOf(getMessage());
    }
}
