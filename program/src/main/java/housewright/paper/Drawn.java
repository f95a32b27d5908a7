package housewright.paper;

import housewright.drawing.Drawings;
import housewright.drawing.Imprint;
import housewright.study.Study;
import java.util.List;

/** Drawings as sheets. */
final class Drawn {
    private static final double MM_PER_UNIT = 25.4 / 96;

    private Drawn() {}

    /** The drawings of a study, on sheets of the binder's own kind of paper, their imprint still open. */
    static Drawings of(Study study, PaperOptions options) {
        return Drawings.of(
                study, new Imprint(PaperOptions.REVISION, PaperOptions.DATE), options.size() == PageSize.LETTER);
    }

    static Sheet sheet(housewright.drawing.Sheet drawn, String recipient) {
        return sheet(drawn.id(), drawn, recipient);
    }

    /** @param id of the sheet */
    static Sheet sheet(String id, housewright.drawing.Sheet drawn, String recipient) {
        String title = drawn.of() > 1 ? drawn.title() + ", " + drawn.number() + " of " + drawn.of() : drawn.title();
        return Sheet.lying(id, title, recipient, List.of(block(drawn)));
    }

    static Block.Drawing block(housewright.drawing.Sheet drawn) {
        return new Block.Drawing(drawn.title(), drawn.svg(), drawn.width() * MM_PER_UNIT, drawn.height() * MM_PER_UNIT);
    }
}
