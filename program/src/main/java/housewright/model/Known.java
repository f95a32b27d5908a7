package housewright.model;

/** How a fact came to be known. */
public enum Known implements Word {
    MEASURED,
    SEEN,
    TOLD,
    GUESS
}
