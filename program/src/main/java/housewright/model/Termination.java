package housewright.model;

/** Who puts the connectors on. */
public enum Termination implements Word {
    BOUGHT,
    SITE
}
