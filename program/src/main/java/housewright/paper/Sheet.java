package housewright.paper;

import java.util.List;

/**
 * What lies together on one or more printed pages, and is handed out as one.
 *
 * @param id names it among all sheets of the binder and stays the same from revision to revision, such as
 *     {@code pulling-p-north}
 * @param recipient for whom it is
 * @param lying whether its pages lie (landscape)
 * @param large whether it is set in large type, to be read on a wall
 */
public record Sheet(String id, String title, String recipient, boolean lying, boolean large, List<Block> blocks) {
    public Sheet {
        blocks = List.copyOf(blocks);
    }

    public static Sheet upright(String id, String title, String recipient, List<Block> blocks) {
        return new Sheet(id, title, recipient, false, false, blocks);
    }

    public static Sheet lying(String id, String title, String recipient, List<Block> blocks) {
        return new Sheet(id, title, recipient, true, false, blocks);
    }

    /** In large type. */
    public static Sheet card(String id, String title, String recipient, List<Block> blocks) {
        return new Sheet(id, title, recipient, false, true, blocks);
    }

    /** The same with other blocks on it. */
    public Sheet with(List<Block> others) {
        return new Sheet(id, title, recipient, lying, large, others);
    }

    /** The tables on it, in order. */
    public List<Block.Table> tables() {
        return blocks.stream()
                .filter(Block.Table.class::isInstance)
                .map(Block.Table.class::cast)
                .toList();
    }
}
