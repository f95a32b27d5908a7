package housewright.drawing;

import housewright.finding.Subject;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.TreeSet;

/**
 * A sheet of paper with its frame and title block, and room for a drawing of a known size.
 *
 * @param left where the drawing begins
 * @param top likewise
 */
record Page(String paper, double width, double height, double left, double top, List<String> notes) {
    private static final double MARGIN = 20;
    private static final double PAD = 12;
    private static final double BLOCK = 48;
    private static final double NOTE_GAP = 10;

    /** What its title block says, beside paper and drawing. */
    record Heading(String project, String title, Imprint imprint, String scale, int number, int of) {}

    /**
     * The smallest sheet on which a drawing and its notes fit.
     *
     * @param smallest index of the smallest paper to use, 0 for the smallest there is
     */
    static Page fit(boolean us, int smallest, double width, double height, List<String> notes) {
        List<Paper> sizes = Paper.sizes(us);
        for (Paper paper : sizes.subList(Math.min(smallest, sizes.size() - 1), sizes.size())) {
            List<String> lines = lines(notes, paper.width());
            if (width <= room(paper.width()) && height <= paper.height() - around(lines)) {
                return new Page(
                        paper.name(),
                        paper.width(),
                        paper.height(),
                        MARGIN + (paper.width() - 2 * MARGIN - width) / 2,
                        MARGIN + PAD,
                        lines);
            }
        }
        double wide = Math.max(width + 2 * (MARGIN + PAD), sizes.getFirst().width());
        List<String> lines = lines(notes, wide);
        double high = Math.max(height + around(lines), sizes.getFirst().height());
        return new Page("own size", wide, high, MARGIN + (wide - 2 * MARGIN - width) / 2, MARGIN + PAD, lines);
    }

    /** How wide a drawing may be on paper of this width. */
    static double room(double paperWidth) {
        return paperWidth - 2 * (MARGIN + PAD);
    }

    /** How high a drawing without notes may be on paper of this height. */
    static double roomDown(double paperHeight) {
        return paperHeight - around(List.of());
    }

    private static double around(List<String> lines) {
        return 2 * MARGIN + 2 * PAD + BLOCK + (lines.isEmpty() ? 0 : lines.size() * Svg.LINE + NOTE_GAP);
    }

    private static List<String> lines(List<String> notes, double paperWidth) {
        List<String> lines = new ArrayList<>();
        notes.forEach(note -> lines.addAll(TextWidth.wrap(note, Svg.SMALL, room(paperWidth))));
        return lines;
    }

    /** Begins the sheet; the drawing follows in the sheet's own units, and {@link #end} closes it. */
    Svg begin(Heading heading) {
        Svg svg = new Svg();
        String name = heading.title() + (heading.of() > 1 ? ", sheet " + heading.number() + " of " + heading.of() : "");
        svg.open(
                "svg",
                "xmlns",
                "http://www.w3.org/2000/svg",
                "viewBox",
                "0 0 " + Svg.num(width) + " " + Svg.num(height),
                "width",
                width,
                "height",
                height,
                "class",
                "sheet",
                "role",
                "graphics-document",
                "aria-label",
                name,
                "font-family",
                "system-ui, sans-serif",
                "font-size",
                Svg.SMALL,
                "color",
                "currentColor",
                "fill",
                "none",
                "stroke",
                "currentColor",
                "stroke-width",
                Svg.NORMAL);
        svg.open("title").chars(name).close();
        frame(svg, heading);
        return svg;
    }

    Sheet end(Svg svg, String id, Heading heading, Collection<Subject> subjects) {
        String text = svg.close().finish();
        return new Sheet(
                id,
                heading.title(),
                heading.number(),
                heading.of(),
                width,
                height,
                text,
                List.copyOf(new TreeSet<>(subjects)));
    }

    private void frame(Svg svg, Heading heading) {
        double right = width - MARGIN;
        double bottom = height - MARGIN;
        double top = bottom - BLOCK;
        svg.open("g", "class", "frame");
        svg.leaf("rect", "x", MARGIN, "y", MARGIN, "width", width - 2 * MARGIN, "height", height - 2 * MARGIN);
        svg.close();
        double noteY = top - NOTE_GAP - (notes.size() - 1) * Svg.LINE;
        if (!notes.isEmpty()) {
            svg.open("g", "class", "notes");
            for (String note : notes) {
                svg.words(MARGIN + PAD, noteY, "start", note);
                noteY += Svg.LINE;
            }
            svg.close();
        }
        svg.open("g", "class", "title-block");
        svg.line(MARGIN, top, right, top, Svg.NORMAL);
        String[][] cells = {
            {"Project", heading.project(), "0.27"},
            {"Drawing", heading.title(), "0.37"},
            {"Revision", heading.imprint().revision(), "0.08"},
            {"Date", heading.imprint().date(), "0.1"},
            {"Scale", heading.scale(), "0.1"},
            {"Sheet, " + paper, heading.number() + " of " + heading.of(), "0.08"}
        };
        double x = MARGIN;
        for (String[] cell : cells) {
            double wide = (width - 2 * MARGIN) * Double.parseDouble(cell[2]);
            if (x > MARGIN) {
                svg.line(x, top, x, bottom, Svg.HAIR);
            }
            svg.words(x + 8, top + 17, "start", TextWidth.cut(cell[0], Svg.SMALL, wide - 12));
            svg.words(x + 8, top + 37, "start", 14, false, TextWidth.cut(cell[1], 14, wide - 12));
            x += wide;
        }
        svg.close();
    }
}
