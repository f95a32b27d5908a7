package housewright.paper.html;

import housewright.paper.Block;
import housewright.paper.PaperOptions;
import housewright.paper.Sheet;
import java.util.List;

/**
 * A sheet as it is issued: with the revision in which it last changed, and the date of that.
 *
 * @param revision as it is printed
 * @param date as it is printed
 */
public record Issued(Sheet sheet, String revision, String date) {
    /** Its blocks, with revision and date in the title blocks of drawings. */
    public List<Block> blocks() {
        return sheet.blocks().stream()
                .map(block -> block instanceof Block.Drawing drawing ? imprinted(drawing) : block)
                .toList();
    }

    private Block imprinted(Block.Drawing drawing) {
        String svg = drawing.svg()
                .replace(PaperOptions.REVISION, Html.escaped(revision))
                .replace(PaperOptions.DATE, Html.escaped(date));
        return new Block.Drawing(drawing.title(), svg, drawing.width(), drawing.height());
    }
}
