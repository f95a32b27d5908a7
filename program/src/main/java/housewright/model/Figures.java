package housewright.model;

/** Where the figures of a type come from; typical ones are to be replaced by the data sheet. */
public enum Figures implements Word {
    TYPICAL,
    DATA_SHEET,
    MEASURED
}
