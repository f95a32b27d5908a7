package housewright.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import biweekly.Biweekly;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Download;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import housewright.app.Role;
import housewright.model.LogEntry;
import housewright.model.Project;
import housewright.model.SiteState;
import housewright.web.Browser.Size;
import housewright.web.PagesInBrowserTest.Paper;
import java.io.IOException;
import java.nio.file.Files;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The plan, the work, the orders and the daily call, worked by hand and looked at. */
@Tag("slow")
class PlanInBrowserTest {
    private static Browser browser;

    private final List<String> troubles = new ArrayList<>();
    private Hall hall;
    private BrowserContext window;
    private Page page;

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

    @BeforeEach
    void comeIn() {
        hall = Hall.planned();
        window = browser.open(Size.LAPTOP, ColorScheme.LIGHT);
        page = window.newPage();
        page.setDefaultTimeout(Browser.MOST_MS);
        page.onPageError(troubles::add);
        page.onResponse(response -> {
            if (response.status() >= 400 && !response.url().endsWith("/favicon.ico")) {
                troubles.add(response.status() + " " + response.url());
            }
        });
        page.navigate(hall.server.openOnce());
        page.waitForURL(url -> !url.contains("/in/"));
    }

    @AfterEach
    void leave() {
        window.close();
        hall.close();
        assertThat(troubles).isEmpty();
        assertThat(hall.faults()).isEmpty();
    }

    private void go(String path) {
        page.navigate(hall.origin() + "/p/" + hall.job().id() + path);
    }

    private void press(String button) {
        page.locator("main button:has-text(\"" + button + "\"):visible").first().click();
    }

    private Project project() {
        return hall.job().now().project();
    }

    private LogEntry logged(String id) {
        return Objects.requireNonNull(project().log().get(id), id);
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void everybodyCanUseEveryPageOfThePlan(Paper paper) {
        onTheDay();
        String job = "/p/" + hall.job().id();
        List<Pages.Shown> pages = List.of(
                new Pages.Shown("plan", job + "/plan"),
                new Pages.Shown("plan-found", job + "/plan"),
                new Pages.Shown("call", job + "/call?person=lead&day=2027-05-08"),
                new Pages.Shown("now", job + "/now?person=visitor"),
                new Pages.Shown("orders", job + "/orders"),
                new Pages.Shown("work", job + "/work?edit=mount-desk"),
                new Pages.Shown("task", job + "/work/mount-desk"));
        for (Size size : Size.values()) {
            PagesInBrowserTest.look(browser, hall, pages.subList(0, 1), size, paper, troubles);
        }
        go("/plan");
        page.locator("#seconds").selectOption("10");
        press("Plan again");
        assertThat(page.locator("h1")).containsText("Found");
        for (Size size : Size.values()) {
            PagesInBrowserTest.look(browser, hall, pages.subList(1, pages.size()), size, paper, troubles);
        }
    }

    /** Saturday, ten to ten: one thing done, one begun, one blocked. */
    private void onTheDay() {
        hall.now = Instant.parse("2027-05-08T07:35:00Z"); // 9:35 in Berlin
        Visitor helper = Visitor.of(hall, Role.HELPER);
        String log = "/p/" + hall.job().id() + "/log/";
        tick(helper, log + "print-labels", Map.of("state", "done"));
        tick(helper, log + "copy-old-desk", Map.of("state", "done"));
        tick(helper, log + "receive-desk", Map.of("state", "done"));
        tick(helper, log + "strike-old-desk", Map.of("state", "begun"));
        tick(
                helper,
                log + "replug-at-hall-later",
                Map.of("state", "blocked", "why", "no key", "until", "2027-05-08T11:00"));
    }

    private void tick(Visitor visitor, String path, Map<String, String> fields) {
        Map<String, String> all = new java.util.LinkedHashMap<>(fields);
        all.put("revision", Long.toString(hall.job().now().revision()));
        assertThat(visitor.post(path, all).statusCode()).isLessThan(400);
    }

    @Test
    void aPlanIsSearchedForWithVisibleProgressAcceptedAndUndone() {
        go("/plan");
        assertThat(page.locator("h1")).containsText("All 13 tasks are done by");
        page.locator("#seconds").selectOption("10");
        page.locator("input[name=anew]").check();
        press("Plan again");
        assertThat(page.locator("#search")).containsText("Searching");
        assertThat(page.locator("h1")).containsText("Found, and not accepted yet: all 13 tasks");
        assertThat(page.locator(".plan-facts")).containsText("ready Sat 8 May");
        press("Accept this plan");
        assertThat(page.locator(".notice")).containsText("Accepted the plan");
        assertThat(page.locator("h1")).containsText("All 13 tasks are done by");
        long accepted = hall.job().now().revision();
        page.locator(".notice button:has-text(\"Undo\")").click();
        assertThat(page.locator(".notice")).containsText("Undone");
        assertThat(hall.job().now().revision()).isGreaterThan(accepted);
    }

    @Test
    void aSearchIsStoppedAndKeepsTheBest() {
        go("/plan");
        page.locator("#seconds").selectOption("600");
        page.locator("input[name=anew]").check();
        press("Plan again");
        assertThat(page.locator("#search")).containsText("Nothing is missed");
        Locator stop = page.locator("main button:has-text(\"Stop\")");
        if (stop.isVisible()) { // a small plan may be proved best before
            stop.click();
        }
        assertThat(page.locator("h1")).containsText("Found");
        press("Discard");
        assertThat(page.locator("h1")).containsText("All 13 tasks");
    }

    @Test
    void whatMovedIsShownWithWhereItWas() {
        onTheDay();
        go("/plan");
        assertThat(page.locator("h1")).containsText("does not hold any more");
        page.locator("#seconds").selectOption("10");
        press("Plan again");
        assertThat(page.locator("h1")).containsText("Found");
        assertThat(page.locator("#moves-title")).containsText("moved");
        assertThat(page.locator("table:below(#moves-title)").first()).containsText("11:00");
        assertThat(page.locator(".chart .ghost").first()).isVisible();
        assertThat(page.locator(".chart .done").first()).isVisible();
    }

    @Test
    void aTaskIsPinnedAndThePinHoldsInTheNextPlan() {
        go("/work/align-foyer");
        page.locator("#pin-from").fill("2027-05-08T16:00");
        press("Pin it");
        assertThat(page.locator(".notice")).containsText("Pinned align-foyer");
        go("/plan");
        assertThat(page.locator("#pins")).containsText("Sat 8 May, 16:00");
        page.locator("#seconds").selectOption("10");
        press("Plan again");
        assertThat(page.locator("h1")).containsText("Found");
        assertThat(page.locator("#task-align-foyer .time")).hasText("16:00–16:25");
        press("Unpin");
        assertThat(page.locator(".notice")).containsText("Unpinned align-foyer");
        assertThat(project().plan().pins()).isEmpty();
    }

    @Test
    void theDailyCallIsTickedByAHelperPrintedAndTakenAsACalendar() throws IOException {
        hall.now = Instant.parse("2027-05-08T07:02:00Z");
        go("/call?person=lead");
        assertThat(page.locator("h1")).containsText("lead, Sat 8 May 2027: needed 09:00");
        page.locator("#task-copy-old-desk button:has-text(\"Begin\")").click();
        assertThat(page.locator("#task-copy-old-desk")).containsText("begun 09:02");
        hall.now = Instant.parse("2027-05-08T07:25:00Z");
        page.locator("#task-copy-old-desk button:has-text(\"Done\")").click();
        assertThat(page.locator("#task-copy-old-desk")).containsText("done 09:25");
        assertThat(logged("copy-old-desk").state()).isEqualTo(SiteState.DONE);
        assertThat(logged("copy-old-desk").from()).isEqualTo("2027-05-08T09:02");
        assertThat(logged("copy-old-desk").people()).containsExactly("lead");
        page.locator("#task-mount-desk summary").click();
        page.locator("#why-mount-desk").fill("the shelf is broken");
        press("It is blocked");
        assertThat(page.locator("#task-mount-desk")).containsText("blocked: the shelf is broken");
        Download calendar =
                page.waitForDownload(() -> page.locator(".call-doing a").click());
        assertThat(Biweekly.parse(Files.readString(calendar.path())).first().getEvents())
                .anySatisfy(event -> assertThat(event.getUid().getValue()).startsWith("copy-old-desk-1.lead@"));
        page.emulateMedia(new Page.EmulateMediaOptions().setMedia(com.microsoft.playwright.options.Media.PRINT));
        assertThat(page.locator(".ticks").first()).isHidden();
    }

    @Test
    void whatSomebodyCanDoNowIsBegunFromThere() {
        hall.now = Instant.parse("2027-05-08T07:02:00Z");
        go("/now?person=lead");
        assertThat(page.locator("h1")).containsText("lead can begin");
        page.locator("li:has-text(\"Photograph and note\") button:has-text(\"Begin\")")
                .click();
        assertThat(page.locator("#rows h2").first()).hasText("Begun");
        assertThat(logged("copy-old-desk").state()).isEqualTo(SiteState.BEGUN);
    }

    @Test
    void aTaskIsChangedInItsRowAndTheFilterStays() {
        go("/work?kind=mount");
        page.locator("a:has-text(\"Change\")").first().click();
        page.locator("#e-takes").fill("50 min");
        page.locator("#e-most").fill("2 h");
        page.locator("#e-people").fill("visitor");
        press("Save");
        assertThat(page.locator(".notice")).containsText("Changed mount-desk");
        assertThat(page.locator("#mount-desk")).containsText("50 min");
        assertThat(page.locator("#mount-desk")).containsText("visitor");
        assertThat(page.locator("#kind")).hasValue("mount");
        page.locator("a:has-text(\"Change\")").first().click();
        page.locator("#e-takes").fill("50");
        press("Save");
        assertThat(page.locator(".notice")).containsText("takes: found");
        assertThat(project().tasks().get("mount-desk").takes().toString()).isEqualTo("50 min");
    }

    @Test
    void anOrderIsMarkedArrivedAndTheNewsCanBeUndone() {
        go("/orders");
        assertThat(page.locator("#desk")).containsText("promised for Fri 30 Apr 2027");
        press("It has arrived");
        assertThat(page.locator("#desk")).containsText("arrived Mon 3 May 2027");
        assertThat(project().orders().get("desk").arrived()).isEqualTo("2027-05-03");
        page.locator(".notice button:has-text(\"Undo\")").click();
        assertThat(page.locator("#desk")).containsText("promised for");
    }

    @Test
    void aLateDeliveryIsInTheLogAndThePlanKnows() {
        go("/orders");
        page.locator("#late-desk summary").click();
        page.locator("#why-desk").fill("the van broke down");
        page.locator("#until-desk").fill("2027-05-08T11:00");
        press("It is late");
        assertThat(page.locator("#desk")).containsText("the van broke down");
        go("/plan");
        assertThat(page.locator("h1")).containsText("does not hold any more");
    }
}
