package housewright.web;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.app.Author;
import housewright.app.Role;
import housewright.model.Cable;
import housewright.model.change.Change;
import housewright.model.change.Section;
import housewright.unit.Length;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipInputStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The papers as the app gives them out, on the example of a refit in one day. */
class PaperPagesTest {
    private static Hall hall;

    @BeforeAll
    static void open() {
        hall = Hall.planned();
    }

    @AfterAll
    static void close() {
        hall.close();
    }

    private static String papers() {
        return "/p/" + hall.job().id() + "/papers";
    }

    private static String list(Visitor visitor) {
        return visitor.get("/p/" + hall.job().id() + "/paper-list").body();
    }

    private static String row(String page, String paper) {
        int from = page.indexOf("<tr id=\"" + paper + "\">");
        return from < 0
                ? ""
                : page.substring(from, page.indexOf("</tr>", from))
                        .replaceAll("<[^>]*>", " ")
                        .replaceAll("\\s+", " ");
    }

    private static String text(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document);
        }
    }

    @Test
    void printedPaperIsToldWhenItIsOutOfDate() throws IOException {
        Visitor lead = Visitor.of(hall, Role.LEAD);
        assertThat(row(list(lead), "cable-schedule")).contains("never printed");
        byte[] first = lead.bytes(lead.form(papers() + "/cable-schedule/print", Map.of()));
        long revision = hall.job().now().revision();
        String cable = hall.job().now().project().cables().keySet().iterator().next();
        assertThat(text(first)).contains("Revision " + revision, cable);
        assertThat(row(list(lead), "cable-schedule")).contains("as printed", "revision " + revision);
        assertThat(lead.getBytes(papers() + "/cable-schedule/pdf"))
                .as("the same revision")
                .isEqualTo(first);

        hall.edit(new Author("ada", Role.LEAD), "Took a cable out", new Change.Drop(Section.CABLES, cable));
        assertThat(row(list(lead), "cable-schedule")).contains("1 sheet changed since revision " + revision);
        byte[] second = lead.getBytes(papers() + "/cable-schedule/pdf");
        assertThat(text(second)).contains("Revision " + (revision + 1));
        assertThat(row(list(lead), "cable-schedule"))
                .as("a download is no print")
                .contains("1 sheet changed");

        lead.post(papers() + "/cable-schedule/forget", Map.of());
        assertThat(row(list(lead), "cable-schedule")).contains("never printed");
        lead.post(papers() + "/printed", Map.of("revision", Long.toString(revision)));
        assertThat(row(list(lead), "cable-schedule"))
                .as("another state was looked at")
                .contains("never printed");
        lead.post(papers() + "/printed", Map.of("revision", Long.toString(revision + 1)));
        assertThat(list(lead)).contains("as it should be").doesNotContain("never printed");
        assertThat(hall.job().now().revision())
                .as("the project itself is as it was")
                .isEqualTo(revision + 1);
    }

    @Test
    void whatChangedSinceItWasPrintedHasABarInTheMargin() throws IOException {
        try (Hall own = Hall.planned()) {
            Visitor lead = Visitor.of(own, Role.LEAD);
            String papers = "/p/" + own.job().id() + "/papers";
            lead.bytes(lead.form(papers + "/cable-schedule/print", Map.of()));
            Cable cable = own.job().now().project().cables().values().iterator().next();
            Cable other = new Cable(
                    cable.id(),
                    cable.type(),
                    cable.from(),
                    cable.to(),
                    cable.ways(),
                    cable.via(),
                    cable.life(),
                    Length.ofMetres(77),
                    cable.ends(),
                    cable.adapters(),
                    cable.terminated(),
                    cable.label(),
                    cable.tested(),
                    cable.was(),
                    cable.remarks());
            own.edit(new Author("ada", Role.LEAD), "Another length", new Change.Put(Section.CABLES, cable.id(), other));
            String page = lead.get(papers + "/cable-schedule").body();
            assertThat(page.split("<tr class=\"changed\">", -1)).hasSize(2);
            assertThat(page.substring(page.indexOf("<tr class=\"changed\">"))
                            .replaceAll("<[^>]*>", " ")
                            .strip())
                    .startsWith(cable.id());
            byte[] marked = lead.bytes(lead.form(papers + "/cable-schedule/print", Map.of()));
            byte[] after = lead.getBytes(papers + "/cable-schedule/pdf");
            assertThat(text(after)).isEqualTo(text(marked));
            assertThat(after).as("nothing has changed since").isNotEqualTo(marked);
            assertThat(lead.get(papers + "/cable-schedule").body()).doesNotContain("<tr class=\"changed\">");
        }
    }

    @Test
    void paperAndLabelsAreStillChosenAfterARestart(@TempDir Path folder) {
        try (Hall first = Hall.in(folder)) {
            String papers = "/p/" + first.begin("demo.yaml", text -> text).id() + "/papers";
            Visitor lead = Visitor.of(first, Role.LEAD);
            lead.get(papers + "?size=letter&labels=tape-12&first=1&site=http://192.0.2.7/p/hall");
        }
        try (Hall again = Hall.in(folder)) {
            String papers = "/p/" + again.job().id() + "/papers";
            assertThat(Visitor.of(again, Role.LEAD).get(papers).body())
                    .contains("value=\"tape-12\"", "<option value=\"letter\" selected>")
                    .as("an address of another day")
                    .doesNotContain("192.0.2.7");
            assertThat(Visitor.of(again, Role.VIEWER).get(papers).body())
                    .as("somebody else's")
                    .contains("<option value=\"a4\" selected>");
        }
    }

    @Test
    void helperAndViewerOpenAndDownloadButDoNotWriteDown() {
        for (Role role : List.of(Role.HELPER, Role.VIEWER)) {
            Visitor visitor = Visitor.of(hall, role);
            HttpResponse<String> page = visitor.get(papers() + "/patch-sheets");
            assertThat(page.statusCode()).isEqualTo(200);
            assertThat(page.headers().firstValue("Content-Security-Policy").orElseThrow())
                    .contains("default-src 'none'")
                    .doesNotContain("script-src");
            assertThat(page.body()).contains("Patch sheets").doesNotContain("<script");
            assertThat(visitor.getBytes(papers() + "/patch-sheets/pdf"))
                    .startsWith("%PDF-".getBytes(java.nio.charset.StandardCharsets.US_ASCII));
            assertThat(visitor.post(papers() + "/patch-sheets/print", Map.of()).statusCode())
                    .isEqualTo(403);
            assertThat(list(visitor)).doesNotContain("/print\"");
        }
    }

    @Test
    void chosenPaperAndLabelsAreKept() throws IOException {
        Visitor lead = Visitor.of(hall, Role.LEAD);
        lead.get(papers() + "?size=letter&labels=a4-44&first=1");
        try (PDDocument document = Loader.loadPDF(lead.getBytes(papers() + "/cable-schedule/pdf"))) {
            assertThat(Math.min(
                            document.getPage(0).getMediaBox().getWidth(),
                            document.getPage(0).getMediaBox().getHeight()))
                    .as("8.5 inches, ANSI/ASME Y14.1 (from memory)")
                    .isCloseTo(612, org.assertj.core.data.Offset.offset(0.5f));
        }
        assertThat(lead.get(papers()).body())
                .as("the usual labels of that paper")
                .contains("letter-30");
        String wrong = lead.get(papers() + "?size=a4&labels=a4-44&first=45").body();
        assertThat(wrong).contains("1 to 44", "letter-30");
        lead.get(papers() + "?size=a4&labels=a4-21&first=4&site=http://192.0.2.7/p/hall");
        assertThat(text(lead.getBytes(papers() + "/cable-labels/pdf")))
                .contains("3 x 7 labels", "where label 4 of a begun sheet is", "http://192.0.2.7/p/hall");
    }

    @Test
    void binderAndTablesComeAsFiles() throws IOException {
        Visitor viewer = Visitor.of(hall, Role.VIEWER);
        byte[] binder = viewer.getBytes("/p/" + hall.job().id() + "/binder");
        List<String> names = new ArrayList<>();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(binder))) {
            for (var entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                names.add(entry.getName());
            }
        }
        String all = text(viewer.getBytes("/p/" + hall.job().id() + "/binder/pdf"));
        assertThat(all).contains("Contents", "Page 1 of ", "Input list").doesNotContain("First issue");
        assertThat(names)
                .contains("index.html", "contents.pdf", "binder.pdf", "cable-schedule.pdf", "cable-schedule.csv");
        viewer.getBytes(papers() + "/cable-schedule/xlsx"); // the press keeps only the last
        assertThat(viewer.getBytes("/p/" + hall.job().id() + "/binder"))
                .as("made again")
                .isEqualTo(binder);
        assertThat(viewer.get(papers() + "/no-such").statusCode()).isEqualTo(404);
        assertThat(viewer.get(papers() + "/cable-schedule/csv/no-such").statusCode())
                .isEqualTo(404);
    }

    @Test
    void emptyProjectSaysWhatPapersAreMadeFrom() throws Exception {
        try (Hall bare = Hall.empty()) {
            String job = "/p/" + bare.projects.begin("Bare hall", Hall.LEAD).id();
            Visitor lead = Visitor.of(bare, Role.LEAD);
            assertThat(lead.get(job + "/paper-list").body())
                    .contains("It is made from cables", "Nothing for these yet");
            HttpResponse<String> none = lead.get(job + "/papers/cable-schedule/pdf");
            assertThat(none.statusCode()).isEqualTo(404);
            assertThat(none.body()).contains("There is nothing for the paper");
        }
    }
}
