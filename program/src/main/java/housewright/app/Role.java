package housewright.app;

/** What somebody may do. Each may also do what those after it may. */
public enum Role {
    /** Everything. */
    LEAD("lead"),
    /** Work on site: tick, measure, answer, comment. */
    HELPER("helper"),
    /** Look. */
    VIEWER("viewer");

    private final String word;

    Role(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }

    public boolean mayDoAll() {
        return this == LEAD;
    }

    public boolean mayWorkOnSite() {
        return this != VIEWER;
    }
}
