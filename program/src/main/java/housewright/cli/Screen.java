package housewright.cli;

/**
 * Where the output goes.
 *
 * @param colour it is a terminal, and the user has nothing against colours
 * @param watched standard error is a terminal: somebody waits for it
 */
public record Screen(boolean colour, boolean watched) {}
