package housewright.app;

import org.jspecify.annotations.Nullable;

/** Nothing could be read or written; what is kept is as it was. Its message is a sentence for the user. */
public final class StoreException extends Exception {
    private static final long serialVersionUID = 1;

    private final String elsewhere;

    public StoreException(String why) {
        super(why);
        this.elsewhere = why;
    }

    public StoreException(String why, Throwable cause) {
        super(why, cause);
        this.elsewhere = why;
    }

    /** @param elsewhere the same for people at other machines, without where this one keeps what */
    public StoreException(String why, String elsewhere, @Nullable Throwable cause) {
        super(why, cause);
        this.elsewhere = elsewhere;
    }

    /** The sentence for the user. */
    public String why() {
        return String.valueOf(getMessage());
    }

    /** The sentence for whoever has this role: where things are kept is for the lead alone. */
    public String whyFor(Role role) {
        return role.mayDoAll() ? why() : elsewhere;
    }
}
