package housewright.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.FilePayload;
import housewright.app.Demo;
import housewright.model.Question;
import housewright.model.change.Change;
import housewright.model.change.Section;
import housewright.web.Browser.Size;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What happens in open windows. */
@Tag("slow")
class LiveInBrowserTest {
    private static Browser browser;

    @BeforeAll
    static void open() {
        browser = new Browser();
    }

    @AfterAll
    static void close() {
        if (browser != null) {
            browser.close();
        }
    }

    private static Page comeIn(Hall hall, BrowserContext window, String path) {
        Page page = window.newPage();
        page.navigate(hall.server.openOnce());
        page.waitForURL(url -> !url.contains("/in/"));
        page.navigate(hall.origin() + path);
        return page;
    }

    @Test
    void aBrokenFeedIsMendedByAButtonAndTheMendIsUndoneByAKey() {
        try (Hall hall = Hall.demo();
                BrowserContext window = browser.open(Size.LAPTOP, ColorScheme.LIGHT)) {
            hall.edit(Hall.LEAD, "Took C101 out", new Change.Drop(Section.CABLES, "C101"));
            Page page = comeIn(hall, window, "/p/" + hall.job().id() + "/feeds/" + Demo.FEED);
            Locator title = page.locator("h1");
            assertThat(title).containsText("does not arrive");
            page.getByText("Apply this mend").first().click();
            assertThat(title).containsText("is proven");
            assertThat(page.locator(".notice")).containsText("Mended " + Demo.FEED);
            assertThat(page.locator("#undo")).containsText("Mended " + Demo.FEED);
            page.keyboard().press("Control+z");
            assertThat(title).containsText("does not arrive");
            assertThat(page.locator(".notice")).containsText("Undone: Mended " + Demo.FEED);
            assertThat(page.locator(".notice form button")).hasCount(0); // it would take back the step before
            page.keyboard().press("Control+y");
            assertThat(title).containsText("is proven");
        }
    }

    /** Whoever has scrolled down to a finding sees what came of it, and can undo it there. */
    @Test
    void whatCameOfAStepIsInSightFarDownThePage() {
        try (Hall hall = Hall.demo();
                BrowserContext window = browser.open(Size.LAPTOP, ColorScheme.LIGHT)) {
            Page page = comeIn(hall, window, "/p/" + hall.job().id() + "/findings");
            Locator last = page.locator("#findings details[id^='d-']:visible").last();
            last.locator("summary").click();
            last.locator("input[name=why]").fill("  ");
            last.locator("button").click();
            assertThat(page.locator(".notice")).containsText("Say why it does not matter here");
            assertThat(page.locator(".notice")).isInViewport();
            last.locator("input[name=why]").fill("It is agreed with the hall");
            last.locator("button").click();
            assertThat(page.locator(".notice")).containsText("Switched off");
            assertThat(page.locator(".notice")).isInViewport();
            page.waitForFunction("() => scrollY > 300");
            page.locator(".notice [data-dismiss]").click();
            assertThat(page.locator(".notice")).hasCount(0);
            page.keyboard().press("Control+z");
            assertThat(page.locator(".notice")).containsText("Undone: Switched off");
        }
    }

    /** All pages are reached from the menu of a phone, and it is closed by the button that opened it. */
    @Test
    void theMenuOfAPhoneLeavesItsButtonFreeAndReachesItsLastEntry() {
        try (Hall hall = Hall.demo();
                BrowserContext window = browser.open(Size.PHONE, ColorScheme.LIGHT)) {
            Page page = comeIn(hall, window, "/p/" + hall.job().id());
            page.locator(".menu").click();
            Locator help = page.locator("#rail a[href='/help']");
            help.scrollIntoViewIfNeeded();
            assertThat(help).isInViewport();
            page.locator(".menu").click();
            assertThat(page.locator("#rail")).isHidden();
            page.locator(".menu").click();
            help.click();
            page.waitForURL("**/help");
        }
    }

    @Test
    void anotherPersonsEditShowsAndWhatIsTypedStays() {
        try (Hall hall = Hall.demo();
                BrowserContext window = browser.open(Size.PHONE, ColorScheme.DARK)) {
            String job = "/p/" + hall.job().id();
            Page page = comeIn(hall, window, job + "/feeds/" + Demo.FEED);
            Page questions = window.newPage();
            questions.navigate(hall.origin() + job + "/questions");
            questions.locator("#answer-q7 summary").click();
            questions.locator("#text-q7").fill("A power supply, I think");
            Locator waiting = questions.locator("[id='count-" + job + "/questions']");
            String before = waiting.textContent();
            hall.edit(Hall.LEAD, "Took C101 out", new Change.Drop(Section.CABLES, "C101"));
            assertThat(page.locator("h1")).containsText("does not arrive");
            assertThat(page.locator("#undo")).containsText("Took C101 out");
            hall.edit(Hall.LEAD, "Asked nothing more", new Change.Drop(Section.QUESTIONS, "q8"));
            assertThat(questions.locator("h1")).containsText("2 questions");
            assertThat(waiting).not().hasText(before);
            assertThat(questions.locator("#text-q7")).hasValue("A power supply, I think");
        }
    }

    @Test
    void whatHappenedWhileAPageCouldNotListenIsShownWhenItCan() {
        try (Hall hall = Hall.demo();
                BrowserContext window = browser.open(Size.LAPTOP, ColorScheme.LIGHT)) {
            window.route("**/live", Route::abort);
            Page page = comeIn(hall, window, "/p/" + hall.job().id() + "/feeds/" + Demo.FEED);
            assertThat(page.locator("#lost")).containsText("cannot be reached");
            hall.edit(Hall.LEAD, "Took C101 out", new Change.Drop(Section.CABLES, "C101"));
            window.unroute("**/live");
            assertThat(page.locator("h1")).containsText("does not arrive");
            assertThat(page.locator("#lost")).hasText("");
        }
    }

    /** A browser has six lines to one server: windows that nobody sees must not hold them all. */
    @Test
    void aPageThatNobodySeesHoldsNoLine() {
        try (Hall hall = Hall.demo();
                BrowserContext window = browser.open(Size.LAPTOP, ColorScheme.LIGHT)) {
            Page page = comeIn(hall, window, "/p/" + hall.job().id() + "/feeds/" + Demo.FEED);
            List<String> ended = new ArrayList<>();
            page.onRequestFailed(request -> ended.add(request.url()));
            see(page, false);
            page.waitForCondition(() -> ended.stream().anyMatch(url -> url.endsWith("/live")));
            hall.edit(Hall.LEAD, "Took C101 out", new Change.Drop(Section.CABLES, "C101"));
            see(page, true);
            assertThat(page.locator("h1")).containsText("does not arrive");
        }
    }

    /** A telephone held upright writes the picture lying and says so; where it was taken is nobody's business. */
    @Test
    void aPhotoFromAPhoneIsShownUprightAndTellsNothingElse() {
        try (Hall hall = Hall.demo();
                BrowserContext window = browser.open(Size.PHONE, ColorScheme.LIGHT)) {
            Page page = comeIn(hall, window, "/p/" + hall.job().id() + "/questions");
            page.locator("#answer-q7 summary").click();
            page.locator("#photo-q7")
                    .setInputFiles(new FilePayload("a.jpg", "image/jpeg", BarePhotoTest.jpeg(64, 48, 6)));
            page.locator("#answer-q7 button").click();
            Locator photo = page.locator("#q7 .photos img");
            assertThat(photo).hasCount(1);
            page.waitForFunction("document.querySelector('#q7 .photos img').naturalHeight > 0");
            assertThat(photo).hasJSProperty("naturalWidth", 48);
            assertThat(photo).hasJSProperty("naturalHeight", 64);
            byte[] shown = window.request()
                    .get(hall.origin() + photo.getAttribute("src"))
                    .body();
            org.assertj.core.api.Assertions.assertThat(new String(shown, StandardCharsets.ISO_8859_1))
                    .doesNotContain("51 deg");
        }
    }

    @Test
    void photosThatAreTooLargeTogetherAreToldBeforeTheyAreSent() {
        try (Hall hall = Hall.demo();
                BrowserContext window = browser.open(Size.PHONE, ColorScheme.LIGHT)) {
            Page page = comeIn(hall, window, "/p/" + hall.job().id() + "/questions");
            page.locator("#answer-q7 summary").click();
            page.locator("#text-q7").fill("Two of them");
            page.locator("#photo-q7").setInputFiles(new FilePayload("a.jpg", "image/jpeg", new byte[26 * 1024 * 1024]));
            page.locator("#answer-q7 button").click();
            assertThat(page.locator("#text-q7")).hasValue("Two of them");
            org.assertj.core.api.Assertions.assertThat(
                            page.locator("#photo-q7").evaluate("field => field.validationMessage"))
                    .asString()
                    .contains("26 MB");
        }
    }

    /** Somebody else answers the same meanwhile: nothing is overwritten, and nothing typed is lost, however long. */
    @Test
    void aRefusedAnswerIsTypedThereStill() {
        try (Hall hall = Hall.demo();
                BrowserContext window = browser.open(Size.PHONE, ColorScheme.LIGHT)) {
            window.route("**/live", Route::abort);
            Page page = comeIn(hall, window, "/p/" + hall.job().id() + "/questions");
            page.locator("#answer-q7 summary").click();
            String mine = "The label says 24 V, and the cable goes up behind the cupboard. "
                    .repeat(20)
                    .strip();
            page.locator("#text-q7").fill(mine);
            Question q7 = hall.job().now().project().questions().get("q7");
            Question asked = new Question("q7", q7.to(), q7.about(), "What is that box?", q7.due(), null, q7.remarks());
            hall.edit(Hall.LEAD, "Asked q7 in other words", new Change.Put(Section.QUESTIONS, "q7", asked));
            page.locator("#answer-q7 button").click();
            assertThat(page.locator(".notice")).containsText("Nothing was changed");
            assertThat(page.locator("#text-q7")).hasValue(mine);
            assertThat(page.locator("#text-q7")).isVisible();
            page.locator("#answer-q7 button").click();
            assertThat(page.locator(".notice")).containsText("Answered q7");
            assertThat(page.locator("#q7")).containsText("behind the cupboard");
        }
    }

    private static void see(Page page, boolean seen) {
        page.evaluate(
                "seen => { Object.defineProperty(document, 'hidden', { value: !seen, configurable: true });"
                        + " document.dispatchEvent(new Event('visibilitychange')); }",
                seen);
    }

    @Test
    void aNewcomerBeginsWithTheDemo() {
        try (Hall hall = Hall.empty();
                BrowserContext window = browser.open(Size.LAPTOP, ColorScheme.LIGHT)) {
            Page page = comeIn(hall, window, "/");
            page.getByText("Open the demo hall").click();
            assertThat(page.locator("h1")).containsText("feeds are proven in the target");
            page.locator("#rail").getByText("Findings").click();
            assertThat(page.locator("h1")).containsText("Nothing stops the job");
            page.locator("summary").first().click();
            page.locator("input[name=why]").first().fill("The fire officer has seen it");
            page.locator("form[action$='/off'] button").first().click();
            assertThat(page.locator("#off")).containsText("The fire officer has seen it");
        }
    }
}
