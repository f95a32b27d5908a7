package housewright.model;

/** Where a thing stands in the change from TODAY to TARGET. */
public enum Life implements Word {
    KEEP,
    MOVE,
    STRIKE,
    NEW,
    HIRE;

    /** There before the work begins. */
    public boolean today() {
        return this == KEEP || this == MOVE || this == STRIKE;
    }

    /** There when the work is done. */
    public boolean target() {
        return this == KEEP || this == MOVE || this == NEW;
    }
}
