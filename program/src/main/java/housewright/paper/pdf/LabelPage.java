package housewright.paper.pdf;

import housewright.paper.Block;
import housewright.paper.Code;
import housewright.paper.Label;
import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDPageContentStream.AppendMode;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** Puts labels on a page, each to the hundredth of a millimetre. */
final class LabelPage {
    private static final double POINTS_PER_MM = 72 / 25.4;
    private static final double ASCENT = 0.93; // of the size: from the top of a line to its baseline
    private static final double HAIRLINE = 0.1; // mm

    private final PDPageContentStream out;
    private final Fonts fonts;
    private final double height;

    private LabelPage(PDPageContentStream out, Fonts fonts, double height) {
        this.out = out;
        this.fonts = fonts;
        this.height = height;
    }

    static void draw(Block.Labels labels, PDDocument document, PDPage page, Fonts fonts) throws IOException {
        try (PDPageContentStream out = new PDPageContentStream(document, page, AppendMode.APPEND, true, true)) {
            out.setNonStrokingColor(PrintStyle.ink());
            out.setStrokingColor(PrintStyle.ink());
            out.setLineWidth(pt(HAIRLINE));
            LabelPage self = new LabelPage(out, fonts, labels.height());
            for (Label label : labels.labels()) {
                if (labels.outlined()) {
                    self.box(label);
                    out.stroke();
                }
                self.label(label);
            }
        }
    }

    private void box(Label label) throws IOException {
        out.addRect(pt(label.left()), y(label.top() + label.height()), pt(label.width()), pt(label.height()));
    }

    private void label(Label label) throws IOException {
        out.saveGraphicsState();
        box(label);
        out.clip();
        if (!label.code().isEmpty()) {
            code(label);
        }
        double size = label.points() / POINTS_PER_MM;
        for (int i = 0; i < label.lines().size(); i++) {
            double baseline = label.top() + Label.INSET + size * (i * Label.LINE + ASCENT);
            line(
                    label.lines().get(i),
                    i < label.bold() ? Fonts.BOLD : Fonts.SANS,
                    label.points(),
                    label.left() + Label.INSET,
                    baseline);
        }
        out.restoreGraphicsState();
    }

    private void line(String words, String file, double size, double left, double baseline) throws IOException {
        PDType0Font font = fonts.get(file);
        out.beginText();
        out.setFont(font, (float) size);
        out.newLineAtOffset(pt(left), y(baseline));
        out.showText(Fonts.shown(font, words));
        out.endText();
    }

    /** To the right, its quiet zone within the label. */
    private void code(Label label) throws IOException {
        Code code = Code.of(label.code());
        double module = label.side() / code.modules();
        double left = label.left() + label.width() - Label.INSET - label.side();
        double top = label.top() + (label.height() - label.side()) / 2;
        out.setNonStrokingColor(0f);
        for (Code.Run run : code.runs()) {
            out.addRect(
                    pt(left + run.column() * module),
                    y(top + (run.row() + 1) * module),
                    pt(run.length() * module),
                    pt(module));
        }
        out.fill();
        out.setNonStrokingColor(PrintStyle.ink());
    }

    private float y(double mm) {
        return pt(height - mm);
    }

    private static float pt(double mm) {
        return (float) (mm * POINTS_PER_MM);
    }
}
