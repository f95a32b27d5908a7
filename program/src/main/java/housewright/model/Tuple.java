package housewright.model;

/** A record the file shows as a list of its components in order, all of them required. */
public interface Tuple {}
