package housewright.paper.pdf;

import housewright.paper.Block;
import housewright.paper.Sheet;
import housewright.paper.html.Issued;
import housewright.paper.html.Markup;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Writes one sheet into the markup: its text and tables on pages of the binder's size, each drawing on its own. */
final class Sheets {
    private final Issued issued;
    private final String name;
    private final String foot;
    private final String question;
    private final PrintStyle.Pages pages;
    private final Markup out;
    private final List<Block> run = new ArrayList<>();
    /** What has a page to itself; a mark stands on that page until it is drawn. */
    private final List<Block> ownBlocks;

    private boolean headed;
    private boolean opened;

    /** @param name of the place where the sheet begins */
    Sheets(
            Issued issued,
            String name,
            String foot,
            String question,
            PrintStyle.Pages pages,
            Markup out,
            List<Block> ownBlocks) {
        this.issued = issued;
        this.name = name;
        this.foot = foot;
        this.question = question;
        this.pages = pages;
        this.out = out;
        this.ownBlocks = ownBlocks;
    }

    void write() {
        for (Block block : issued.blocks()) {
            String own = ownPage(block);
            if (own == null) {
                run.add(block);
            } else {
                endRun();
                open(own, "").raw("<a href=\"" + Pdf.OWN + ownBlocks.size() + "\">&#160;</a></div>\n");
                ownBlocks.add(block);
            }
        }
        endRun();
    }

    private void endRun() {
        if (run.isEmpty()) {
            return;
        }
        Sheet sheet = issued.sheet();
        String stamp = "Revision " + issued.revision() + " · " + issued.date();
        String width = String.format(Locale.ROOT, ";width:%.2fmm", pages.width(sheet.lying()));
        open(pages.sheet(sheet.lying(), foot, stamp), width);
        if (!headed) {
            out.head(sheet.title(), sheet.recipient(), question);
            headed = true;
        }
        out.blocks(run).raw("</div>\n");
        run.clear();
    }

    private Markup open(String page, String more) {
        String first = out.isEmpty() ? "first " : "";
        String large = issued.sheet().large() ? "large " : "";
        String id = opened ? "" : " id=\"" + name + "\"";
        opened = true;
        return out.raw("<div" + id + " class=\"" + first + large + "section\" style=\"page:" + page + more + "\">");
    }

    /** The named page that a block has to itself; null where it stands on the sheet's pages. */
    private @Nullable String ownPage(Block block) {
        return switch (block) {
            case Block.Drawing drawing -> pages.own(drawing.width(), drawing.height());
            case Block.Labels labels -> pages.own(labels.width(), labels.height());
            case Block.Heading heading -> null;
            case Block.Text text -> null;
            case Block.Caution caution -> null;
            case Block.Table table -> null;
            case Block.Steps steps -> null;
        };
    }
}
