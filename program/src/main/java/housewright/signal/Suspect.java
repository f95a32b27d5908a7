package housewright.signal;

/** A place where a way may not be led on as it was meant to be. */
record Suspect(Likely likely, Stop stop) {}
