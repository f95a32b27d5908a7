package housewright.model;

/** What a digital port has to do with the clock that the samples keep to. */
public enum Clock implements Word {
    /** It gives the beat. */
    MASTER,
    /** It takes the beat from what is joined to it. */
    FOLLOWS
}
