package housewright.model;

/** Whether a fitting is there. */
public enum Fitted implements Word {
    FITTED,
    MISSING
}
