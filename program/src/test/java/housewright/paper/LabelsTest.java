package housewright.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.LuminanceSource;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import housewright.cable.Joint;
import housewright.cable.Lead;
import housewright.paper.html.Issued;
import housewright.paper.pdf.Pdf;
import housewright.study.Study;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Labels as they come out of the printer, measured by PDFBox and scanned by ZXing. */
class LabelsTest {
    private static final double MM = 25.4 / 72;
    private static final int[] LOOKS = {300, 600, 200}; // dots an inch
    private static final Study DEMO = Halls.demo();

    static List<LabelStock> usual() {
        return LabelStock.usual();
    }

    private static PaperOptions options(LabelStock stock, int first, String site) {
        PageSize size = stock.pageHeight() == PageSize.LETTER.height() ? PageSize.LETTER : PageSize.A4;
        return new PaperOptions(
                size, "Carrowfenn Hall refit", "3f9a1c2", "2027-01-11", new Labelling(stock, first, site));
    }

    private static List<Block.Labels> pages(String paper, PaperOptions options) {
        return Papers.find(paper).orElseThrow().sheets(DEMO, options).getLast().blocks().stream()
                .map(Block.Labels.class::cast)
                .toList();
    }

    private static byte[] printed(String title, PaperOptions options, List<Block.Labels> pages) {
        Sheet sheet = Sheet.upright("labels", title, "Whoever", List.copyOf(pages));
        return Pdf.of(options.hall(), title, "", options.size(), List.of(new Issued(sheet, "1", "2027-01-11")));
    }

    /** What is left of a sheet is the same on both sides, above and below (common practice of those who cut them). */
    @Test
    void usualGridsFillTheirSheetsEvenly() {
        for (LabelStock stock : LabelStock.usual()) {
            double right = stock.pageWidth() - (stock.left() + (stock.columns() - 1) * stock.across() + stock.width());
            double bottom = stock.pageHeight() - (stock.top() + (stock.rows() - 1) * stock.down() + stock.height());
            assertThat(right).as(stock.name()).isCloseTo(stock.left(), within(0.5));
            assertThat(bottom).as(stock.name()).isCloseTo(stock.top(), within(0.5));
        }
    }

    /** The outlines of the trial page are where the measurements say, to 0.2 mm. */
    @ParameterizedTest
    @MethodSource("usual")
    void eachLabelIsWhereTheSheetHasIt(LabelStock stock) throws IOException {
        PaperOptions options = options(stock, 1, "");
        List<Block.Labels> pages = pages("cable-labels", options);
        byte[] pdf = printed("Cable labels", options, pages.subList(0, 1));
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDPage page = document.getPage(0);
            assertThat(page.getMediaBox().getWidth() * MM).isCloseTo(stock.pageWidth(), within(0.2));
            assertThat(page.getMediaBox().getHeight() * MM).isCloseTo(stock.pageHeight(), within(0.2));
            Boxes boxes = new Boxes(page);
            boxes.processPage(page);
            List<Rectangle2D> found = stock.isTape() ? boxes.clipped : boxes.stroked;
            assertThat(found).hasSize(stock.isTape() ? 1 : stock.perPage());
            for (int row = 0; row < stock.rows(); row++) {
                for (int column = 0; column < stock.columns(); column++) {
                    Rectangle2D box = found.get(row * stock.columns() + column);
                    assertThat(box.getX()).isCloseTo(stock.left() + column * stock.across(), within(0.2));
                    assertThat(box.getY()).isCloseTo(stock.top() + row * stock.down(), within(0.2));
                    assertThat(box.getWidth()).isCloseTo(stock.width(), within(0.2));
                    assertThat(box.getHeight()).isCloseTo(stock.height(), within(0.2));
                }
            }
        }
    }

    /** Every letter and every dark module lies within its label. */
    @ParameterizedTest
    @MethodSource("usual")
    void nothingRunsOverTheEdge(LabelStock stock) throws IOException {
        PaperOptions options = options(stock, 1, "http://192.168.1.20:8080/p/carrowfenn-hall");
        List<Block.Labels> pages = pages("cable-labels", options);
        List<Block.Labels> some = pages.subList(0, Math.min(3, pages.size()));
        try (PDDocument document = Loader.loadPDF(printed("Cable labels", options, some))) {
            assertThat(document.getNumberOfPages()).isEqualTo(some.size());
            for (int i = 0; i < some.size(); i++) {
                PDPage page = document.getPage(i);
                Boxes boxes = new Boxes(page);
                boxes.processPage(page);
                boxes.filled.forEach(box -> assertThat(isOnALabel(stock, box))
                        .as(stock.name() + " " + box)
                        .isTrue());
                for (Rectangle2D letter : letters(document, i + 1)) {
                    assertThat(isOnALabel(stock, letter))
                            .as(stock.name() + " " + letter)
                            .isTrue();
                }
            }
        }
    }

    private static boolean isOnALabel(LabelStock stock, Rectangle2D box) {
        for (int i = 0; i < stock.perPage(); i++) {
            Rectangle2D label = new Rectangle2D.Double(
                    stock.left(i) - 0.01, stock.top(i) - 0.01, stock.width() + 0.02, stock.height() + 0.02);
            if (label.contains(box)) {
                return true;
            }
        }
        return false;
    }

    private static List<Rectangle2D> letters(PDDocument document, int page) throws IOException {
        List<Rectangle2D> letters = new ArrayList<>();
        PDFTextStripper stripper = new PDFTextStripper() {
            @Override
            protected void writeString(String text, List<TextPosition> positions) {
                positions.stream()
                        .filter(each -> !each.getUnicode().replace("\u00A0", "").isBlank())
                        .forEach(each -> letters.add(new Rectangle2D.Double(
                                each.getXDirAdj() * MM,
                                (each.getYDirAdj() - 0.73 * each.getFontSizeInPt()) * MM, // capitals of the typeface
                                each.getWidthDirAdj() * MM,
                                0.73 * each.getFontSizeInPt() * MM)));
            }
        };
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        stripper.getText(document);
        return letters;
    }

    /** On the first pages of each kind of stock on which labels have codes, and on every page of the usual one. */
    @ParameterizedTest
    @ValueSource(strings = {"a4-44", "a4-21", "letter-30", "tape 24x70"})
    void everyCodeIsReadBackFromThePrint(String name) throws IOException {
        LabelStock stock = LabelStock.parse(name);
        String site = "http://192.168.1.20:8080/p/carrowfenn-hall";
        for (String paper : List.of("cable-labels", "equipment-labels")) {
            PaperOptions options = options(stock, 1, site + "/");
            List<Block.Labels> pages = pages(paper, options);
            List<Block.Labels> some = name.equals("a4-44") ? pages : pages.subList(0, Math.min(2, pages.size()));
            byte[] pdf = printed(paper, options, some);
            Files.createDirectories(Path.of("target", "papers"));
            Files.write(Path.of("target", "papers", paper + "-" + stock.name() + ".pdf"), pdf);
            int read = 0;
            try (PDDocument document = Loader.loadPDF(pdf)) {
                PDFRenderer renderer = new PDFRenderer(document);
                for (int i = 0; i < some.size(); i++) {
                    Map<Integer, BufferedImage> looks = new HashMap<>();
                    for (Label label : some.get(i).labels()) {
                        if (!label.code().isEmpty()) {
                            assertThat(scanned(renderer, i, looks, label)).isEqualTo(label.code());
                            assertThat(label.code())
                                    .startsWith(site + "/label/")
                                    .doesNotContain("hall//");
                            read++;
                        }
                    }
                }
            }
            long all = some.stream()
                    .filter(page -> !page.outlined())
                    .mapToLong(page -> page.labels().size())
                    .sum();
            assertThat(read).as("labels with a code").isEqualTo((int) all);
        }
    }

    /** As a phone does, from another distance where the first look does not do: some codes have what looks like a corner. */
    private static String scanned(PDFRenderer renderer, int page, Map<Integer, BufferedImage> looks, Label label)
            throws IOException {
        ReaderException last = null;
        for (int dpi : LOOKS) {
            BufferedImage image = looks.get(dpi);
            if (image == null) {
                image = renderer.renderImageWithDPI(page, dpi, ImageType.GRAY);
                looks.put(dpi, image);
            }
            double dots = dpi / 25.4;
            int left = (int) (label.left() * dots);
            int top = (int) (label.top() * dots);
            int width = Math.min(image.getWidth() - left, (int) (label.width() * dots));
            int height = Math.min(image.getHeight() - top, (int) (label.height() * dots));
            LuminanceSource source =
                    new RGBLuminanceSource(width, height, image.getRGB(left, top, width, height, null, 0, width));
            try {
                return new QRCodeReader()
                        .decode(new BinaryBitmap(new HybridBinarizer(source)), Map.of(DecodeHintType.TRY_HARDER, true))
                        .getText();
            } catch (ReaderException e) {
                last = e;
            }
        }
        throw new AssertionError("Unreadable: " + label.lines(), last);
    }

    @Test
    void bothEndsOfEveryCableHaveALabelThatSaysBoth() {
        for (String name : List.of("a4-44", "letter-30", "a4-21")) {
            LabelStock stock = LabelStock.parse(name);
            Map<String, List<String>> texts = new HashMap<>();
            pages("cable-labels", options(stock, 1, "")).stream()
                    .filter(page -> !page.outlined())
                    .flatMap(page -> page.labels().stream())
                    .forEach(label -> texts.computeIfAbsent(label.code(), key -> new ArrayList<>())
                            .add(String.join(" ", label.lines())));
            for (Lead lead : DEMO.cabling().leads()) {
                if (lead.type() != null && lead.type().id().equals("inner-join")) {
                    assertThat(texts).doesNotContainKey("cables." + lead.id());
                    continue;
                }
                List<String> ends = texts.get("cables." + lead.id());
                assertThat(ends).as(lead.id()).hasSize(2);
                assertThat(ends).allSatisfy(text -> assertThat(text).startsWith(lead.id()));
                if (lead.joints().size() == 1) {
                    Joint joint = lead.joints().getFirst();
                    String from = joint.from() == null
                            ? "________"
                            : joint.from().at().saidPort();
                    String to =
                            joint.to() == null ? "________" : joint.to().at().saidPort();
                    assertThat(ends.get(0)).contains("Here: " + from, "Other: " + to);
                    assertThat(ends.get(1)).contains("Here: " + to, "Other: " + from);
                }
            }
        }
    }

    @Test
    void aBegunSheetIsGoneOnWith() {
        LabelStock stock = LabelStock.parse("a4-44");
        List<Block.Labels> whole = pages("cable-labels", options(stock, 1, ""));
        List<Block.Labels> begun = pages("cable-labels", options(stock, 40, ""));
        assertThat(begun.get(1).labels()).hasSize(5);
        assertThat(begun.get(1).labels().getFirst().left()).isCloseTo(8 + 3 * 48.5, within(1e-9));
        assertThat(begun.get(1).labels().getFirst().top()).isCloseTo(8.8 + 9 * 25.4, within(1e-9));
        assertThat(begun.get(1).labels().getFirst().lines())
                .isEqualTo(whole.get(1).labels().getFirst().lines());
        assertThatThrownBy(() -> new Labelling(stock, 45, "")).hasMessageContaining("1 to 44");
    }

    @Test
    void measurementsOfOnesOwnAreTakenOrRefusedWithTheReason() {
        LabelStock own = LabelStock.parse("A4 2x5  90x50 at 10x12 every 95x55");
        assertThat(own.perPage()).isEqualTo(10);
        assertThat(own.left(3)).isEqualTo(105);
        assertThat(own.top(3)).isEqualTo(67);
        assertThat(LabelStock.parse("100x150 1x2 90x60 at 5x10 every 90x70").pageHeight())
                .isEqualTo(150);
        assertThat(LabelStock.parse("tape 9x40").pageWidth()).isEqualTo(40);
        assertThatThrownBy(() -> LabelStock.parse("a4 3x8 70x37 at 0x0.5 every 70x30"))
                .hasMessageContaining("overlap");
        assertThatThrownBy(() -> LabelStock.parse("a4 4x8 70x37 at 0x0.5 every 70x37"))
                .hasMessageContaining("reach 280 mm");
        assertThatThrownBy(() -> LabelStock.parse("tape 3")).hasMessageContaining("6 to 60 mm");
        assertThatThrownBy(() -> LabelStock.parse("small ones"))
                .hasMessageContaining("a4-44")
                .hasMessageContaining("tape 12x70");
    }

    /** The page to try first says more than a narrow label holds; that is no label which lost anything. */
    @Test
    void whatTheTrialPageCannotHoldIsNoLabelCutShort() {
        PaperOptions options = options(LabelStock.parse("letter-80"), 1, "");
        Study refit = Halls.example("refit");
        List<Sheet> sheets = Papers.find("equipment-labels").orElseThrow().sheets(refit, options);
        assertThat(sheets.getFirst().blocks().toString()).doesNotContain("cut short");
    }

    @Test
    void whatIsTooSmallLosesItsCodeAndSaysSo() {
        PaperOptions options = options(LabelStock.parse("tape 9x30"), 1, "http://192.168.1.20:8080/p/carrowfenn-hall");
        List<Sheet> sheets = Papers.find("cable-labels").orElseThrow().sheets(DEMO, options);
        assertThat(sheets.getFirst().blocks().toString()).contains("without its code", "cut short");
    }

    /** Rectangles on a page, in mm from its upper left: drawn as lines, filled, and clipped to. */
    private static final class Boxes extends PDFGraphicsStreamEngine {
        private final double height;
        final List<Rectangle2D> stroked = new ArrayList<>();
        final List<Rectangle2D> filled = new ArrayList<>();
        final List<Rectangle2D> clipped = new ArrayList<>();
        private final List<Rectangle2D> path = new ArrayList<>();
        private boolean clip;

        Boxes(PDPage page) {
            super(page);
            this.height = page.getMediaBox().getHeight();
        }

        @Override
        public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
            path.add(new Rectangle2D.Double(
                    p0.getX() * MM,
                    (height - p2.getY()) * MM,
                    (p2.getX() - p0.getX()) * MM,
                    (p2.getY() - p0.getY()) * MM));
        }

        @Override
        public void strokePath() {
            stroked.addAll(path);
            path.clear();
        }

        @Override
        public void fillPath(int windingRule) {
            filled.addAll(path);
            path.clear();
        }

        @Override
        public void fillAndStrokePath(int windingRule) {
            throw new UncheckedIOException(new IOException("not drawn by us"));
        }

        @Override
        public void endPath() {
            if (clip) {
                clipped.addAll(path);
            }
            clip = false;
            path.clear();
        }

        @Override
        public void clip(int windingRule) {
            clip = true;
        }

        @Override
        public void drawImage(PDImage image) {}

        @Override
        public void moveTo(float x, float y) {}

        @Override
        public void lineTo(float x, float y) {}

        @Override
        public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {}

        @Override
        public Point2D getCurrentPoint() {
            return new Point2D.Double();
        }

        @Override
        public void closePath() {}

        @Override
        public void shadingFill(COSName name) {}
    }
}
