package housewright.model;

/** What a port has to do with phantom power. */
public enum Phantom implements Word {
    GIVES,
    NEEDS,
    HARMED
}
