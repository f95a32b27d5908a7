package housewright.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page.ScreenshotOptions;
import com.microsoft.playwright.options.ColorScheme;
import housewright.web.Browser.Size;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Every page, in both sizes and on both papers: as it looks, and whether everybody can use it. */
@Tag("slow")
class PagesInBrowserTest {
    private static final Path SHOTS = Path.of("target", "screenshots");
    private static final List<String> RULES = List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa");

    private static Browser browser;
    private static Hall hall;
    private static Hall empty;

    @BeforeAll
    static void open() {
        browser = new Browser();
        hall = Pages.inUse();
        empty = Hall.empty();
    }

    @AfterAll
    static void close() {
        if (browser != null) {
            browser.close();
        }
        if (hall != null) {
            hall.close();
            empty.close();
        }
    }

    enum Paper {
        LIGHT(ColorScheme.LIGHT),
        DIM(ColorScheme.DARK);

        final ColorScheme scheme;

        Paper(ColorScheme scheme) {
            this.scheme = scheme;
        }
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void everybodyCanUseEveryPageOnALaptop(Paper paper) {
        look(Size.LAPTOP, paper);
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void everybodyCanUseEveryPageOnAPhone(Paper paper) {
        look(Size.PHONE, paper);
    }

    private static void look(Size size, Paper paper) {
        List<String> troubles = new ArrayList<>();
        look(hall, Pages.of(hall), size, paper, troubles);
        look(empty, Pages.ofEmpty(), size, paper, troubles);
        assertThat(troubles).isEmpty();
    }

    private static void look(Hall of, List<Pages.Shown> pages, Size size, Paper paper, List<String> troubles) {
        look(browser, of, pages, size, paper, troubles);
    }

    /** Takes a picture of each page, and adds what is wrong with it to the troubles. */
    static void look(Browser browser, Hall of, List<Pages.Shown> pages, Size size, Paper paper, List<String> troubles) {
        try (BrowserContext window = browser.open(size, paper.scheme)) {
            var page = window.newPage();
            page.onConsoleMessage(message -> {
                if (message.type().equals("error")) {
                    troubles.add(message.text());
                }
            });
            page.onRequest(request -> {
                if (!request.url().startsWith(of.origin() + "/")) {
                    troubles.add("leaves the machine: " + request.url());
                }
            });
            page.navigate(of.server.openOnce());
            page.waitForURL(url -> !url.contains("/in/"));
            for (Pages.Shown shown : pages) {
                page.navigate(of.origin() + shown.path());
                String name =
                        shown.name() + "-" + size.width + "-" + paper.name().toLowerCase(java.util.Locale.ROOT);
                page.screenshot(new ScreenshotOptions()
                        .setPath(SHOTS.resolve(name + ".png"))
                        .setFullPage(false));
                new AxeBuilder(page)
                        .withTags(RULES)
                        .analyze()
                        .getViolations()
                        .forEach(violation -> violation
                                .getNodes()
                                .forEach(node -> troubles.add(name + ": " + violation.getId() + " at " + node.getHtml()
                                        + " " + node.getFailureSummary())));
                Object wide = page.evaluate("document.documentElement.scrollWidth > innerWidth + 1");
                if (Boolean.TRUE.equals(wide)) {
                    troubles.add(name + ": must be moved sideways to be read");
                }
            }
        }
    }
}
