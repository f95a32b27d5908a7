package housewright.cli;

/**
 * Where the output goes.
 *
 * @param colour it is a terminal, and the user has nothing against colours
 * @param watched standard error is a terminal: somebody waits for it
 * @param columns the width of the terminal; of what is no terminal, as wide as a page gets
 */
public record Screen(boolean colour, boolean watched, int columns) {
    public Screen(boolean colour, boolean watched) {
        this(colour, watched, Page.WIDTH);
    }
}
