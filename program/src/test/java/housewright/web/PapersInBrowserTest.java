package housewright.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Download;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import housewright.web.Browser.Size;
import housewright.web.PagesInBrowserTest.Paper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The papers, printed by hand and looked at. */
@Tag("slow")
class PapersInBrowserTest {
    private static Browser browser;
    private static Hall hall;

    @BeforeAll
    static void open() {
        browser = new Browser();
        hall = Hall.planned();
    }

    @AfterAll
    static void close() {
        if (browser != null) {
            browser.close();
        }
        if (hall != null) {
            hall.close();
        }
    }

    @Test
    void printingGivesThePdfAndThePageSaysSo() throws IOException {
        List<String> troubles = new ArrayList<>();
        String papers = "/p/" + hall.job().id() + "/papers";
        try (BrowserContext window = browser.open(Size.LAPTOP, ColorScheme.LIGHT)) {
            Page page = window.newPage();
            page.setDefaultTimeout(Browser.MOST_MS);
            page.onPageError(troubles::add);
            page.onConsoleMessage(message -> {
                if (message.type().equals("error")) {
                    troubles.add(message.text());
                }
            });
            page.navigate(hall.server.openOnce());
            page.waitForURL(url -> !url.contains("/in/"));
            page.navigate(hall.origin() + papers);
            Locator row = page.locator("#cable-schedule");
            assertThat(row).containsText("never printed");
            Download download =
                    page.waitForDownload(() -> row.locator("button").first().click());
            assertThat(download.suggestedFilename()).endsWith("-cable-schedule.pdf");
            try (PDDocument document = Loader.loadPDF(download.path().toFile())) {
                assertThat(new PDFTextStripper().getText(document)).contains("Cable schedule", "Revision 2");
            }
            assertThat(row).containsText("as printed"); // without loading the page again
            row.locator("th a").click();
            page.waitForURL("**/papers/cable-schedule");
            assertThat(page.locator("table").first())
                    .containsText(hall.job()
                            .now()
                            .project()
                            .cables()
                            .keySet()
                            .iterator()
                            .next());
            page.locator("a").first().click();
            assertThat(page.locator("#cable-schedule")).containsText("as printed");
            for (Size size : Size.values()) {
                for (Paper paper : Paper.values()) {
                    PagesInBrowserTest.look(
                            browser,
                            hall,
                            List.of(
                                    new Pages.Shown("papers-printed", papers),
                                    new Pages.Shown("paper-cables", papers + "/cable-schedule"),
                                    new Pages.Shown("paper-labels", papers + "/cable-labels")),
                            size,
                            paper,
                            troubles);
                }
            }
        }
        assertThat(troubles).isEmpty();
        assertThat(hall.faults()).isEmpty();
    }
}
