package housewright.drawing;

import housewright.model.Word;

/** Which state of the hall a drawing shows. */
public enum State implements Word {
    TODAY("today"),
    TARGET("target"),
    /** Both: what stays thin, what comes normal, what goes dashed. */
    CHANGE("what changes");

    private final String title;

    State(String title) {
        this.title = title;
    }

    /** As it stands after the name of a drawing. */
    public String title() {
        return title;
    }
}
