package housewright.cable;

import java.util.List;

/**
 * One line electrically: runs that hang one on the other, by things that pass straight on what arrives.
 *
 * @param lines each after the one it hangs on
 * @param after for each, which of them it hangs on; −1 for the first
 */
public record Chain(List<Line> lines, List<Integer> after) {
    public Chain {
        lines = List.copyOf(lines);
        after = List.copyOf(after);
    }
}
