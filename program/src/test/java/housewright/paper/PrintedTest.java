package housewright.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import housewright.cable.Joint;
import housewright.cable.Lead;
import housewright.paper.html.Issued;
import housewright.paper.pdf.Pdf;
import housewright.study.Study;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Printed papers, read back by PDFBox. */
class PrintedTest {
    private static final double MM_PER_POINT = 25.4 / 72;

    private static byte[] printed(Paper paper, Study study, PageSize size) {
        PaperOptions options = new PaperOptions(size, "Carrowfenn Hall refit", "3f9a1c2", "2027-01-11");
        List<Issued> sheets = paper.sheets(study, options).stream()
                .map(sheet -> new Issued(sheet, options.revision(), options.date()))
                .toList();
        return Pdf.of(options.hall(), paper.title(), paper.question(), size, sheets);
    }

    private static String text(PDDocument document) throws IOException {
        return new PDFTextStripper().getText(document).replaceAll("\\s+", "");
    }

    @ParameterizedTest
    @EnumSource(PageSize.class)
    void holdsEveryCableAndBothItsEnds(PageSize size) throws IOException {
        Study study = Halls.demo();
        byte[] pdf = printed(Papers.find("cable-schedule").orElseThrow(), study, size);
        String text;
        try (PDDocument document = Loader.loadPDF(pdf)) {
            text = text(document);
            assertThat(document.getPage(0).getMediaBox().getHeight() * MM_PER_POINT)
                    .isCloseTo(size.width(), within(0.1));
        }
        assertThat(text).contains("Revision3f9a1c2·2027-01-11", "Sheet1of");
        for (Lead lead : study.cabling().leads()) {
            assertThat(text).contains(lead.id());
            for (Joint joint : lead.joints()) {
                joint.plugs()
                        .forEach(plug -> assertThat(text)
                                .as(lead.id())
                                .contains(plug.at().saidPort().replaceAll("\\s+", "")));
            }
        }
    }

    /** Each drawing on a page of its own size, its words as text in the order they are drawn, nothing of them lost. */
    @Test
    void drawingsKeepTheirSizeAndTheirWords() throws IOException {
        Study study = Halls.example("refit");
        for (String id : List.of("stage-plan", "rack-elevations", "signal-drawings")) {
            Paper paper = Papers.find(id).orElseThrow();
            List<Block.Drawing> drawings = new ArrayList<>();
            for (Sheet sheet : paper.sheets(study, Halls.OPTIONS)) {
                sheet.blocks().stream()
                        .filter(Block.Drawing.class::isInstance)
                        .map(Block.Drawing.class::cast)
                        .forEach(drawings::add);
            }
            if (drawings.isEmpty()) {
                continue;
            }
            try (PDDocument document = Loader.loadPDF(printed(paper, study, PageSize.A4))) {
                String text = text(document);
                assertThat(text).contains("3f9a1c2", "2027-01-11");
                for (int i = 0; i < drawings.size(); i++) {
                    Block.Drawing drawing = drawings.get(i);
                    PDRectangle box = document.getPage(i).getMediaBox();
                    assertThat(box.getWidth() * MM_PER_POINT).isCloseTo(drawing.width(), within(0.2));
                    assertThat(box.getHeight() * MM_PER_POINT).isCloseTo(drawing.height(), within(0.2));
                    assertThat(document.getPage(i).getAnnotations()).isEmpty();
                    Matcher words =
                            Pattern.compile("<text[^>]*>([A-Za-z0-9-]+)</text>").matcher(drawing.svg());
                    while (words.find()) {
                        assertThat(text).contains(words.group(1));
                    }
                }
            }
        }
    }

    @Test
    void refusesADrawingThatItWouldPrintInPart() {
        Block.Drawing drawing = new Block.Drawing("x", "<svg><ellipse rx=\"2\" ry=\"3\"/></svg>", 100, 100);
        Sheet sheet = Sheet.lying("x", "x", "x", List.of(drawing));
        assertThatThrownBy(() -> Pdf.of("x", "x", "x", PageSize.A4, List.of(new Issued(sheet, "r", "d"))))
                .hasMessageContaining("ellipse");
    }

    /** Hostile and foreign letters: markup is text, what the font lacks is a box, CSS in a hall's name ends nothing. */
    @Test
    void printsWhateverIsWritten() throws IOException {
        String hall = "\"} body {display:none} </style><b>Ł\u00F8n\u2126 \u6F22 \uD83C\uDFA4 \u0007";
        Sheet sheet = Sheet.upright(
                "x",
                hall,
                hall,
                List.of(
                        new Block.Text(hall),
                        new Block.Table("t", List.of(Column.text("a", 1)), List.of(Row.of("r", hall)))));
        try (PDDocument document =
                Loader.loadPDF(Pdf.of(hall, "Title", "Why?", PageSize.A4, List.of(new Issued(sheet, "r", "d"))))) {
            assertThat(text(document)).contains("body{display:none}</style><b>Łøn", "Sheet1of1");
        }
    }
}
