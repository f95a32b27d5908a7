package housewright.paper;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.paper.html.Issued;
import housewright.paper.pdf.Pdf;
import housewright.study.Study;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The cards as they come out of the printer. */
class VolunteerCardsPrintedTest {
    @ParameterizedTest
    @EnumSource(PageSize.class)
    void eachOfTheDemoIsOnePageAndSaysAllOfItsSteps(PageSize size) throws IOException {
        eachIsOnePage("demo", Halls.demo(), size);
    }

    @ParameterizedTest
    @ValueSource(strings = {"refit", "stream", "in-ears", "lights", "stage-box"})
    void eachOfAnExampleIsOnePage(String name) throws IOException {
        eachIsOnePage(name, Halls.example(name), PageSize.LETTER);
    }

    private static void eachIsOnePage(String name, Study study, PageSize size) throws IOException {
        Paper paper = Papers.find("volunteer-cards").orElseThrow();
        PaperOptions options = new PaperOptions(size, "Carrowfenn Hall refit", "3f9a1c2", "2027-01-11");
        List<Issued> cards = paper.sheets(study, options).stream()
                .map(sheet -> new Issued(sheet, options.revision(), options.date()))
                .toList();
        byte[] pdf = Pdf.of(options.hall(), paper.title(), paper.question(), size, cards);
        Files.createDirectories(Path.of("target", "papers"));
        Files.write(Path.of("target", "papers", "volunteer-cards-" + name + "-" + size.word() + ".pdf"), pdf);
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertThat(document.getNumberOfPages()).isEqualTo(cards.size());
            for (int i = 0; i < cards.size(); i++) {
                Sheet card = cards.get(i).sheet();
                PDFTextStripper stripper = new PDFTextStripper();
                stripper.setStartPage(i + 1);
                stripper.setEndPage(i + 1);
                String whole = stripper.getText(document);
                String text = whole.replaceAll("\\s+", "");
                assertThat(text).contains(card.title().replaceAll("\\s+", ""));
                for (Block block : card.blocks()) {
                    if (block instanceof Block.Table table) {
                        table.rows().stream()
                                .flatMap(row -> row.cells().stream())
                                .flatMap(cell -> Stream.of(cell.text().split(" ")))
                                .forEach(word -> assertThat(whole)
                                        .as(card.id() + ": no word is broken")
                                        .contains(word));
                    }
                    if (block instanceof Block.Steps steps) {
                        steps.steps()
                                .forEach(step -> assertThat(text)
                                        .as(card.id())
                                        .contains(
                                                step.act().replaceAll("\\s+", ""),
                                                step.see().replaceAll("\\s+", "")));
                    }
                }
            }
        }
    }
}
