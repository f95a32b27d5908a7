package housewright.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.ColorScheme;
import housewright.model.Project;
import housewright.web.Browser.Size;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From an empty project to a proven feed, by somebody who sees it for the first time. */
@Tag("slow")
class NewcomerInBrowserTest {
    private static final List<String> MODELS = List.of(
            "mic-dynamic-vocal",
            "analog-8",
            "loudspeaker-powered-10",
            "condenser-gooseneck",
            "mic-dynamic-vocal",
            "loudspeaker-powered-10",
            "stand-microphone-boom",
            "camera-ptz-12x",
            "tv-43",
            "floor-box-12");

    @TempDir
    private Path folder;

    private final List<String> troubles = new ArrayList<>();

    private Page comeIn(Hall hall, BrowserContext window) {
        Page page = window.newPage();
        page.setDefaultTimeout(30_000);
        page.onPageError(troubles::add);
        page.onRequest(request -> {
            if (!request.url().startsWith(hall.origin() + "/")) {
                troubles.add("leaves the machine: " + request.url());
            }
        });
        page.navigate(hall.server.openOnce());
        page.waitForURL(url -> !url.contains("/in/"));
        return page;
    }

    private static void says(Page page, String words) {
        assertThat(page.locator("#says")).containsText(words);
    }

    private static String thing(Hall hall, String model) {
        Project project = hall.job().now().project();
        return project.equipment().values().stream()
                .filter(each -> each.model().equals(model))
                .findFirst()
                .orElseThrow()
                .id();
    }

    @Test
    void anEmptyProjectBecomesAProvenFeedAndStaysOne() {
        PlaywrightAssertions.setDefaultAssertionTimeout(30_000);
        try (Browser browser = new Browser()) {
            String job;
            try (Hall hall = Hall.in(folder);
                    BrowserContext window = browser.open(Size.LAPTOP, ColorScheme.LIGHT)) {
                Page page = comeIn(hall, window);
                page.locator("#name").fill("Our hall");
                page.keyboard().press("Enter");
                page.waitForURL("**/p/our-hall");
                job = "/p/our-hall";
                survey(hall, page, hall.origin() + job);
                wire(hall, page, hall.origin() + job);
                prove(hall, page, hall.origin() + job);
            }
            try (Hall again = Hall.in(folder);
                    BrowserContext window = browser.open(Size.LAPTOP, ColorScheme.LIGHT)) {
                Page page = comeIn(again, window);
                page.navigate(again.origin() + job + "/feeds/speech");
                assertThat(page.locator("h1")).containsText("is proven");
                page.keyboard().press("Control+z");
                assertThat(page.locator("h1")).containsText("does not arrive");
            }
        } finally {
            PlaywrightAssertions.setDefaultAssertionTimeout(5_000);
        }
        assertThat(troubles).isEmpty();
    }

    private static void survey(Hall hall, Page page, String job) {
        page.locator("main").getByText("Rooms").click();
        page.locator("[data-new]").click();
        page.keyboard().type("hall");
        page.keyboard().press("Enter");
        says(page, "Added hall");
        page.keyboard().type("Sound Booth");
        page.keyboard().press("Enter");
        page.locator("tr.new [data-nearest]").click();
        says(page, "Added sound-booth");
        assertThat(hall.job().now().project().venue().rooms()).containsOnlyKeys("hall", "sound-booth");
        page.navigate(job + "/equipment");
        page.locator("[data-new]").click();
        int rows = 0;
        for (String model : MODELS) {
            page.keyboard().type(model.substring(0, model.length() - 1));
            Locator choice = page.locator("#choices li[data-text='" + model + "']");
            choice.click();
            page.keyboard().press("Enter");
            rows++;
            assertThat(page.locator("#grid tbody tr[data-row]")).hasCount(rows);
        }
    }

    private static void wire(Hall hall, Page page, String job) {
        String mic = thing(hall, "mic-dynamic-vocal");
        String desk = thing(hall, "analog-8");
        page.locator("tr[data-row='" + mic + "'] [data-open]").click();
        page.locator("#beside [data-offers]").first().click();
        page.locator("#beside [data-take='" + desk + ".mic-1']").click();
        says(page, "Joined");
        page.navigate(job + "/patch");
        row(page, desk, "ch-1", "main-L");
        says(page, "Added");
        page.navigate(job + "/table/feeds");
        row(page, "speech", mic + ".pickup", thing(hall, "loudspeaker-powered-10") + ".sound");
        says(page, "Set to of speech");
    }

    private static void row(Page page, String... cells) {
        page.locator("[data-new]").click();
        for (int i = 0; i < cells.length; i++) {
            page.keyboard().type(cells[i]);
            page.keyboard().press(i == cells.length - 1 ? "Enter" : "Tab");
        }
    }

    private static void prove(Hall hall, Page page, String job) {
        page.navigate(job + "/feeds/speech");
        Locator title = page.locator("h1");
        assertThat(title).containsText("does not arrive");
        page.getByText("Apply this mend").first().click();
        assertThat(title).containsText("is proven");
        page.keyboard().press("Control+z");
        assertThat(title).containsText("does not arrive");
        page.keyboard().press("Control+y");
        assertThat(title).containsText("is proven");
        assertThat(hall.faults()).isEmpty();
    }
}
