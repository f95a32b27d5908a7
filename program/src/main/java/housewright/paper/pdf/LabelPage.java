package housewright.paper.pdf;

import housewright.paper.Block;
import housewright.paper.Label;
import housewright.paper.html.QrCode;
import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDPageContentStream.AppendMode;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** Puts labels on a page, each to the hundredth of a millimetre. */
final class LabelPage {
    private static final double POINTS_PER_MM = 72 / 25.4;
    private static final double PAD = 1; // mm
    private static final double SIZE = 9; // pt, the least there is
    private static final double LINE = 1.15;

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
            LabelPage self = new LabelPage(out, fonts, labels.height());
            for (Label label : labels.labels()) {
                self.label(label);
            }
        }
    }

    private void label(Label label) throws IOException {
        out.saveGraphicsState();
        out.addRect(x(label.left()), y(label.top() + label.height()), pt(label.width()), pt(label.height()));
        out.clip();
        double code = label.code().isEmpty() ? 0 : Math.min(label.height(), label.width()) - 2 * PAD;
        if (code > 0) {
            code(label, code);
        }
        double wide = label.width() - 2 * PAD - (code > 0 ? code + PAD : 0);
        double down = label.top() + PAD;
        for (int i = 0; i < label.lines().size(); i++) {
            down += SIZE * LINE / POINTS_PER_MM;
            line(label.lines().get(i), i == 0 ? Fonts.BOLD : Fonts.SANS, label.left() + PAD, down, wide);
        }
        out.restoreGraphicsState();
    }

    private void line(String words, String file, double left, double baseline, double wide) throws IOException {
        PDType0Font font = fonts.get(file);
        String shown = Fonts.shown(font, words);
        while (!shown.isEmpty() && font.getStringWidth(shown) / 1000 * SIZE > wide * POINTS_PER_MM) {
            shown = shown.substring(0, shown.offsetByCodePoints(shown.length(), -1));
        }
        if (!shown.isEmpty()) {
            out.beginText();
            out.setFont(font, (float) SIZE);
            out.newLineAtOffset(x(left), y(baseline) + 1.5f);
            out.showText(shown);
            out.endText();
        }
    }

    /** To the right, its quiet zone within the label. */
    private void code(Label label, double side) throws IOException {
        boolean[][] dark = QrCode.modules(label.code());
        double module = side / dark.length;
        double left = label.left() + label.width() - PAD - side;
        double top = label.top() + PAD;
        out.setNonStrokingColor(0f);
        for (int row = 0; row < dark.length; row++) {
            for (int column = 0; column < dark.length; column++) {
                if (dark[row][column]) {
                    out.addRect(x(left + column * module), y(top + (row + 1) * module), pt(module), pt(module));
                }
            }
        }
        out.fill();
        out.setNonStrokingColor(PrintStyle.ink());
    }

    private float x(double mm) {
        return pt(mm);
    }

    private float y(double mm) {
        return pt(height - mm);
    }

    private static float pt(double mm) {
        return (float) (mm * POINTS_PER_MM);
    }
}
