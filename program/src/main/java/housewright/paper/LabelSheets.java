package housewright.paper;

import java.util.ArrayList;
import java.util.List;

/** Labels of one kind, as sheets: a page of how to print them, and them. */
final class LabelSheets {
    private LabelSheets() {}

    static List<Sheet> of(Paper paper, List<LabelPages.Said> all, PaperOptions options) {
        if (all.isEmpty()) {
            return List.of();
        }
        LabelPages pages = new LabelPages(options.labels());
        List<Block> blocks = pages.pages(all);
        List<Block> first = new ArrayList<>();
        Labelling labels = options.labels();
        first.add(new Block.Text("Labels: " + labels.stock().said() + "."));
        if (labels.first() > 1) {
            first.add(new Block.Text("The first goes where label " + labels.first() + " of a begun sheet is."));
        }
        first.add(new Block.Text(
                labels.site().isEmpty()
                        ? "The codes say the name of the thing. Told the address of the project's pages, they open them."
                        : "The codes open the page of the thing at " + labels.site() + "."));
        first.add(new Block.Text("Print at 100 %, not fitted to the page"
                + (labels.stock().isTape()
                        ? "."
                        : "; first the page with the outlines, on plain paper. Measurements of usual sheets are from memory:"
                                + " measure yours, and give its own where it differs.")));
        pages.leftOut().forEach(text -> first.add(new Block.Text("Left out: " + text + ".")));
        return List.of(
                Sheet.upright(paper.id() + "-how", paper.title() + ": how to print them", paper.recipient(), first),
                Sheet.upright(paper.id(), paper.title(), paper.recipient(), blocks));
    }
}
