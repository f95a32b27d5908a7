package housewright.model;

/** What a room must be for some work. */
public enum RoomCondition implements Word {
    QUIET,
    DARK,
    EMPTY
}
