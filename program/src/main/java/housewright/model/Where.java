package housewright.model;

/** Where work is done. */
public enum Where implements Word {
    ROOM,
    REMOTE
}
