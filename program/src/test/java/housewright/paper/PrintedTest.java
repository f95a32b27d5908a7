package housewright.paper;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.cable.Joint;
import housewright.cable.Lead;
import housewright.paper.html.Issued;
import housewright.paper.pdf.Pdf;
import housewright.study.Study;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The printed cable schedule, read back by PDFBox. */
class PrintedTest {
    private static byte[] printed(Paper paper, Study study, PageSize size) {
        PaperOptions options = new PaperOptions(size, "Carrowfenn Hall refit", "3f9a1c2", "2027-01-11");
        List<Issued> sheets = paper.sheets(study, options).stream()
                .map(sheet -> new Issued(sheet, options.revision(), options.date()))
                .toList();
        return Pdf.of(options.hall(), paper.title(), paper.question(), size, sheets);
    }

    @ParameterizedTest
    @EnumSource(PageSize.class)
    void holdsEveryCableAndBothItsEnds(PageSize size) throws IOException {
        Study study = Halls.demo();
        byte[] pdf = printed(Papers.find("cable-schedule").orElseThrow(), study, size);
        Files.createDirectories(Path.of("target", "papers"));
        Files.write(Path.of("target", "papers", "cable-schedule-" + size.word() + ".pdf"), pdf);
        String text;
        try (PDDocument document = Loader.loadPDF(pdf)) {
            text = new PDFTextStripper().getText(document).replaceAll("\\s+", "");
            assertThat(document.getPage(0).getMediaBox().getHeight() / 72 * 25.4)
                    .isCloseTo(size.width(), org.assertj.core.api.Assertions.within(0.1));
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
}
