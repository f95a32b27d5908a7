package housewright.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.APIResponse;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import com.microsoft.playwright.options.ColorScheme;
import housewright.app.Author;
import housewright.app.OpenProject;
import housewright.app.Role;
import housewright.file.EntityCells;
import housewright.model.Project;
import housewright.model.change.Change;
import housewright.model.change.Section;
import housewright.web.Browser.Size;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The editing tables, worked by hand. */
@Tag("slow")
class TablesInBrowserTest {
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
        hall = Hall.demo();
        window = browser.open(Size.LAPTOP, ColorScheme.LIGHT);
        page = comeIn(window);
    }

    private Page comeIn(BrowserContext into) {
        Page opened = into.newPage();
        opened.setDefaultTimeout(Browser.MOST_MS);
        opened.onConsoleMessage(message -> {
            if (message.type().equals("error") && !message.location().contains("favicon.ico")) {
                troubles.add(message.text() + " " + message.location());
            }
        });
        opened.onPageError(troubles::add);
        opened.onResponse(response -> {
            if (response.status() >= 400 && !response.url().endsWith("/favicon.ico")) {
                troubles.add(response.status() + " " + response.url());
            }
        });
        opened.navigate(hall.server.openOnce());
        opened.waitForURL(url -> !url.contains("/in/"));
        return opened;
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
        assertThat(page.locator("#counts")).containsText("row");
    }

    private static Locator cell(Page in, String row, String column) {
        return in.locator("tr[data-row=\"" + row + "\"] [data-column=\"" + column + "\"]")
                .first();
    }

    private Locator cell(String row, String column) {
        return cell(page, row, column);
    }

    private Project project() {
        return hall.job().now().project();
    }

    private void says(String words) {
        assertThat(page.locator("#says")).containsText(words);
    }

    @Test
    void aCellIsEditedByKeysAloneAndWhatItDidIsSaid() {
        go("/cables");
        page.locator("#filter").focus();
        page.locator("#filter").press("Tab");
        cell("C101", "id").focus();
        page.keyboard().press("ArrowRight");
        page.keyboard().press("ArrowRight");
        page.keyboard().press("ArrowRight");
        assertThat(cell("C101", "to")).isFocused();
        page.keyboard().press("F2");
        page.keyboard().press("Control+a");
        page.keyboard().type("floor-left.front-4");
        page.keyboard().press("Enter");
        says("Set to of C101");
        assertThat(cell("C102", "to")).isFocused();
        assertThat(project().cables().get("C101").to().text()).isEqualTo("floor-left.front-4");
        assertThat(page.locator("#undo")).containsText("Set to of C101");
        page.keyboard().press("Control+z");
        page.waitForLoadState();
        assertThat(cell("C101", "to")).containsText("floor-left.front-1");
        assertThat(project().cables().get("C101").to().text()).isEqualTo("floor-left.front-1");
    }

    @Test
    void whatIsTypedIsHelpedAlongFromThingToPort() {
        go("/cables");
        cell("C101", "to").focus();
        page.keyboard().type("floor-l");
        assertThat(page.locator("#choices li").first()).containsText("floor-left.");
        page.keyboard().press("ArrowDown");
        page.keyboard().press("Enter");
        assertThat(page.locator("#choices li").first()).containsText("floor-left.front-4");
        page.keyboard().press("ArrowDown");
        page.keyboard().press("Enter");
        says("Set to of C101");
        assertThat(project().cables().get("C101").to().text()).isEqualTo("floor-left.front-4");
    }

    /** The server answers twice: what was chosen from the first answer stays chosen when the second comes. */
    @Test
    void aChoiceStaysMarkedWhenTheServerAnswersOnceMore() {
        go("/cables");
        cell("C101", "to").focus();
        page.keyboard().type("floor-l");
        Locator first = page.locator("#choices li").first();
        assertThat(first).containsText("floor-left.");
        AtomicReference<Route> late = new AtomicReference<>();
        page.route("**/choices?*", late::set);
        page.keyboard().type("e");
        page.waitForCondition(() -> late.get() != null);
        page.keyboard().press("ArrowDown");
        assertThat(first).hasAttribute("aria-selected", "true");
        page.evaluate("document.querySelector('#choices li').dataset.old = 'yes'");
        page.unroute("**/choices?*");
        late.get().resume();
        assertThat(page.locator("#choices li[data-old]")).hasCount(0);
        assertThat(first).hasAttribute("aria-selected", "true");
        page.keyboard().press("Enter");
        assertThat(first).containsText("floor-left.front-4");
    }

    @Test
    void aWrongCellSaysSoInPlaceAndOffersWhatWasMeant() {
        go("/equipment");
        cell("desk", "at").focus();
        page.keyboard().type("dsk");
        page.keyboard().press("Enter");
        assertThat(cell("desk", "at")).hasAttribute("aria-invalid", "true");
        assertThat(cell("desk", "at").locator(".wrong")).containsText("dsk");
        assertThat(project().equipment().get("desk").at()).isEqualTo("desk");
        cell("desk", "at").locator("[data-nearest]").click();
        assertThat(cell("desk", "at").locator(".wrong")).hasCount(0);
        assertThat(project().equipment().get("desk").at()).isEqualTo("desk");
    }

    @Test
    void escapeGivesAnEditUp() {
        go("/equipment");
        cell("desk", "label").focus();
        page.keyboard().type("x");
        page.keyboard().press("Escape");
        if (page.locator("input.cell").count() > 0) {
            page.keyboard().press("Escape");
        }
        assertThat(page.locator("input.cell")).hasCount(0);
        assertThat(cell("desk", "label")).isFocused();
        assertThat(project().equipment().get("desk").label()).isNull();
    }

    /** What is shown is what the project holds: what was refused never stays as though it had been taken. */
    @Test
    void aRefusedCellIsGivenBackByEscapeAndByUndoWhichLeavesTheStepBefore() {
        go("/patch");
        Locator gain =
                page.locator("tr[data-row^='desk: mic-3'] [data-column=gain]").first();
        gain.focus();
        page.keyboard().type("3 dB");
        page.keyboard().press("Enter");
        says("Set gain");
        Locator to =
                page.locator("tr[data-row^='desk: mic-3'] [data-column=to]").first();
        for (String way : List.of("Escape", "Control+z")) {
            to.focus();
            page.keyboard().type("ch-99");
            page.keyboard().press("Enter");
            assertThat(to.locator(".wrong")).containsText("ch-99");
            if (way.equals("Escape")) {
                to.focus();
                page.keyboard().press("F2");
                assertThat(page.locator("input.cell")).hasValue("ch-99");
                page.keyboard().press(way);
                if (page.locator("input.cell").count() > 0) {
                    page.keyboard().press(way);
                }
            } else {
                page.keyboard().press(way);
            }
            assertThat(to).hasText("ch-26");
            assertThat(to.locator(".wrong")).hasCount(0);
            assertThat(gain).hasText("3 dB");
        }
        page.keyboard().press("Control+z");
        assertThat(page.locator(".notice")).containsText("Undone: Set gain");
        assertThat(page.locator("#redo")).containsText("Redo: Set gain");
        assertThat(gain).hasText("");
    }

    /** On a phone a table is longer than the screen. */
    @Test
    void whatCanBeDoneWithChosenRowsIsInSightOnAPhone() {
        try (BrowserContext phone = browser.open(Size.PHONE, ColorScheme.LIGHT)) {
            Page small = comeIn(phone);
            small.navigate(hall.origin() + "/p/" + hall.job().id() + "/equipment");
            assertThat(small.locator("#chosen")).isHidden();
            small.locator("#grid input[type=checkbox]").first().check();
            assertThat(small.locator("[data-duplicate]")).isInViewport();
            assertThat(small.locator("#counts")).isInViewport();
            Object cut = small.evaluate(
                    "[...document.querySelectorAll('#grid .t')].filter((each) => each.offsetParent"
                            + " && each.scrollWidth > each.clientWidth + 1 && getComputedStyle(each).display === 'block').length");
            assertThat(cut).isEqualTo(0);
        }
    }

    @Test
    void aRowIsAddedByItsModel() {
        go("/equipment");
        page.locator("[data-new]").click();
        page.keyboard().type("camera-ptz-12x");
        page.keyboard().press("Enter");
        says("Added camera");
        assertThat(project().equipment().get("camera").model()).isEqualTo("camera-ptz-12x");
        assertThat(cell("camera", "model")).containsText("camera-ptz-12x");
    }

    @Test
    void chosenRowsAreDuplicatedAndChangedTogetherAndDeleted() {
        go("/cables");
        cell("C131", "id").focus();
        page.keyboard().press("Space");
        page.locator("#times").fill("2");
        page.locator("[data-duplicate]").click();
        says("Copied C131 2 times");
        assertThat(project().cables()).containsKeys("C135", "C136");
        cell("C131", "id").locator("input").uncheck();
        cell("C135", "note").focus();
        page.keyboard().type("spare");
        page.keyboard().press("Enter");
        says("2 rows");
        assertThat(project().cables().get("C136").remarks().note()).isEqualTo("spare");
        page.locator("[data-delete]").click();
        says("Took away");
        assertThat(project().cables()).doesNotContainKeys("C135", "C136");
    }

    @Test
    void whatOthersNameIsDeletedOnlyOnASecondWord() {
        go("/equipment");
        cell("lectern-mic", "id").locator("input").check();
        page.locator("[data-delete]").click();
        assertThat(page.locator("#beside")).containsText("cables.C101");
        assertThat(project().equipment()).containsKey("lectern-mic");
        page.locator("[data-everywhere]").click();
        says("Took away lectern-mic");
        assertThat(project().equipment()).doesNotContainKey("lectern-mic");
    }

    @Test
    void anIdIsRenamedWhereverItIsNamed() {
        go("/equipment");
        cell("lectern-mic", "id").focus();
        page.keyboard().press("F2");
        page.keyboard().press("Control+a");
        page.keyboard().type("pulpit-mic");
        page.keyboard().press("Enter");
        says("Renamed lectern-mic to pulpit-mic");
        assertThat(project().cables().get("C101").from().text()).isEqualTo("pulpit-mic.out");
        assertThat(cell("pulpit-mic", "model")).containsText("condenser");
    }

    @Test
    void theHeadingsStandInOneLine() {
        go("/equipment");
        Object tops = page.evaluate("() => [...new Set([...document.querySelectorAll('#grid thead :is(a, .head)')]"
                + ".filter((each) => each.offsetParent).map((each) => each.getBoundingClientRect().top))].length");
        org.assertj.core.api.Assertions.assertThat(tops).isEqualTo(1);
        assertThat(page.locator("#grid thead .head")).hasText("Findings");
    }

    @Test
    void rowsArePastedEachTakenOrRefusedWithWhy() {
        go("/cables");
        page.locator("[data-paste]").click();
        page.locator("#pasted")
                .fill("Cable\tSource\tDestination\tLength (m)\nX1\ttable-mic.out\tfloor-left.front-4\t7\n"
                        + "X2\tno-such.out\tfloor-left.front-3\t7\n");
        page.locator(".paste-form button", new Page.LocatorOptions().setHasText("Read"))
                .click();
        assertThat(page.locator("#beside h2")).containsText("1 of 2 rows");
        assertThat(page.locator(".pasted-rows")).containsText("no-such");
        shot("paste");
        page.locator(".paste-form [name=head]").uncheck();
        assertThat(page.locator("#beside h2")).containsText("of 3 rows");
        page.locator(".paste-form [name=head]").check();
        assertThat(page.locator("#beside h2")).containsText("1 of 2 rows");
        assertThat(page.locator(".paste-form [name=head]")).isFocused();
        Locator length = page.locator(".paste-form [name=columns]").last();
        length.selectOption("");
        assertThat(page.locator(".pasted-rows")).not().containsText("length");
        length.selectOption("length");
        assertThat(page.locator(".pasted-rows")).containsText("length");
        page.locator("[data-take-rows]").click();
        says("Pasted 1 row");
        assertThat(project().cables().get("X1").length().metres()).isEqualTo(7);
        assertThat(project().cables()).doesNotContainKey("X2");
    }

    /** What was said of the headings of one list does not hold for the next. */
    @Test
    void anotherListPastedOverTheFirstIsGuessedAnew() {
        go("/equipment");
        page.locator("[data-paste]").click();
        Locator read = page.locator(".paste-form button", new Page.LocatorOptions().setHasText("Read"));
        page.locator("#pasted").fill("blue\tfar\nred\tnear\n");
        read.click();
        assertThat(page.locator(".paste-form [name=head]")).not().isChecked();
        page.locator("#pasted").fill("Equipment\tType\tLocation\nX-di\tdi-active\tdesk\n");
        read.click();
        assertThat(page.locator("#beside h2")).containsText("1 of 1 rows");
        assertThat(page.locator(".paste-form [name=head]")).isChecked();
    }

    @Test
    void aFreePortOffersWhatCanBeJoinedAndMakesTheCable() {
        int before = project().cables().size();
        go("/equipment");
        cell("desk", "id").focus();
        page.keyboard().press("Control+Enter");
        page.locator("#beside [data-offers]").first().click();
        assertThat(page.locator("#beside h2")).containsText("Join desk");
        shot("join");
        String far = page.locator("#beside [data-take]").first().getAttribute("data-take");
        page.locator("#beside [data-take]").first().click();
        says("Joined");
        assertThat(page.locator("#beside")).containsText(far);
        assertThat(project().cables()).hasSize(before + 1);
    }

    @Test
    void aRowIsEditedAsAForm() {
        go("/equipment");
        cell("desk", "id").focus();
        page.keyboard().press("Control+Enter");
        page.locator("#f-label").fill("Main desk");
        page.locator("#f-circuit").fill("db9-9");
        page.keyboard().press("Tab");
        page.locator(".row-form button.first").click();
        assertThat(page.locator("#beside .wrong")).containsText("db9-9");
        assertThat(project().equipment().get("desk").label()).isNull();
        page.locator("#f-circuit").fill("");
        page.keyboard().press("Tab");
        page.locator(".row-form button.first").click();
        says("Set");
        assertThat(project().equipment().get("desk").label()).isEqualTo("Main desk");
    }

    @Test
    void rowsAreFoundAndSorted() {
        go("/cables");
        page.locator("#filter").fill("floor-left");
        assertThat(page.locator("#counts")).containsText(" of ");
        assertThat(page.locator("#grid tbody tr").first()).containsText("floor-left");
        page.locator("#filter").fill("");
        page.locator("#grid thead a", new Page.LocatorOptions().setHasText("Type"))
                .click();
        assertThat(page.locator("#grid thead [data-column=type]")).hasAttribute("aria-sort", "ascending");
        page.locator("#filter").fill("C131");
        assertThat(page.locator("#grid tbody tr")).hasCount(1);
        cell("C131", "note").focus();
        page.keyboard().type("after the sort");
        page.keyboard().press("Enter");
        says("Set note of C131");
    }

    @Test
    void twoWindowsEditingTheSameAreShownBoth() {
        go("/cables");
        try (BrowserContext other = browser.open(Size.LAPTOP, ColorScheme.LIGHT)) {
            Page theirs = comeIn(other);
            theirs.navigate(hall.origin() + "/p/" + hall.job().id() + "/cables");
            // the other window has not heard of the change before it edits: its events are held up
            other.route("**/live", route -> route.abort());
            theirs.reload();
            page.waitForTimeout(200);
            troubles.clear();
            cell("C101", "note").focus();
            page.keyboard().type("mine first");
            page.keyboard().press("Enter");
            says("Set note of C101");
            cell(theirs, "C101", "note").focus();
            theirs.keyboard().type("theirs second");
            theirs.keyboard().press("Enter");
            assertThat(theirs.locator(".clash")).containsText("mine first");
            assertThat(theirs.locator(".clash")).containsText("theirs second");
            theirs.screenshot(
                    new Page.ScreenshotOptions().setPath(Path.of("target", "screenshots", "table-clash.png")));
            theirs.locator("[data-mine]").click();
            assertThat(theirs.locator("#says")).containsText("Set note of C101");
            assertThat(project().cables().get("C101").remarks().note()).isEqualTo("theirs second");
            // and the first window sees it without being asked
            assertThat(cell("C101", "note")).containsText("theirs second");
        }
        troubles.removeIf(trouble -> trouble.contains("net::ERR_FAILED")); // it asks again until it is closed
    }

    @Test
    void aHandQuickerThanTheServerIsNotTakenForSomebodyElse() {
        go("/cables");
        List<Route> held = new ArrayList<>();
        page.route("**/set", held::add);
        cell("C101", "to").focus();
        page.keyboard().type("floor-left.front-4");
        page.keyboard().press("Enter");
        cell("C101", "note").focus();
        page.keyboard().type("typed meanwhile");
        page.keyboard().press("Enter");
        page.waitForCondition(() -> held.size() == 1);
        held.getFirst().resume();
        page.waitForCondition(() -> held.size() == 2);
        assertThat(cell("C101", "note")).containsText("typed meanwhile");
        held.getLast().resume();
        says("Set note of C101");
        assertThat(project().cables().get("C101").to().text()).isEqualTo("floor-left.front-4");
        assertThat(project().cables().get("C101").remarks().note()).isEqualTo("typed meanwhile");
    }

    @Test
    void rowsThatComeLateDoNotPutBackWhatWasEditedSince() {
        go("/cables");
        List<Route> held = new ArrayList<>();
        page.route("**/rows?*", held::add);
        page.evaluate("document.dispatchEvent(new Event('refreshed'))");
        page.waitForCondition(() -> !held.isEmpty());
        APIResponse late = held.getFirst().fetch();
        cell("C101", "note").focus();
        page.keyboard().type("first");
        page.keyboard().press("Enter");
        says("Set note of C101");
        held.getFirst().fulfill(new Route.FulfillOptions().setResponse(late));
        page.waitForTimeout(200);
        assertThat(cell("C101", "note")).containsText("first");
        page.unroute("**/rows?*");
        cell("C101", "note").focus();
        page.keyboard().press("F2");
        page.keyboard().type(" and second");
        page.keyboard().press("Enter");
        assertThat(cell("C101", "note")).containsText("second");
        page.waitForCondition(
                () -> project().cables().get("C101").remarks().note().contains("second"));
        for (Route each : held.subList(1, held.size())) {
            each.resume();
        }
    }

    /** Somebody else's edit, of which this page has heard by the time it is done. */
    private void theirs(String cable, String column, String text) {
        Record before = project().cables().get(cable);
        EntityCells.Reading read = EntityCells.read(Section.CABLES, cable, before, Map.of(column, text));
        page.waitForResponse(
                answer -> answer.url().contains("/rows?"),
                () -> hall.edit(
                        new Author("ben", Role.LEAD),
                        "Set " + column + " of " + cable,
                        new Change.Put(Section.CABLES, cable, ((EntityCells.Reading.Read) read).entity())));
        page.waitForTimeout(200);
    }

    @Test
    void whatOthersChangeWhereSomebodyTypesIsNotOverwrittenUnseen() {
        go("/cables");
        cell("C101", "note").focus();
        page.keyboard().type("mine");
        theirs("C101", "note", "theirs");
        page.keyboard().press("Enter");
        assertThat(page.locator(".clash")).containsText("theirs");
        assertThat(project().cables().get("C101").remarks().note()).isEqualTo("theirs");
        // what is not settled stays, whatever rows come or go
        page.waitForResponse(
                answer -> answer.url().contains("/rows?") && answer.url().contains("from=0"),
                () -> hall.edit(Hall.LEAD, "Took C134 out", new Change.Drop(Section.CABLES, "C134")));
        assertThat(page.locator("tr[data-row=C134]")).hasCount(0);
        page.locator("[data-mine]").click();
        says("Set note of C101");
        assertThat(project().cables().get("C101").remarks().note()).isEqualTo("mine");
    }

    @Test
    void whatIsGivenUpShowsWhatOthersHaveChangedMeanwhile() {
        go("/cables");
        cell("C101", "to").focus();
        page.keyboard().press("F2");
        theirs("C101", "note", "theirs");
        page.keyboard().press("Escape");
        page.keyboard().press("Escape");
        assertThat(cell("C101", "note")).containsText("theirs");
    }

    @Test
    void anEditGoesIntoTheRowsThatWereChosenWhenItWasTyped() {
        go("/cables");
        List<Route> held = new ArrayList<>();
        page.route("**/set", held::add);
        cell("C101", "note").focus();
        page.keyboard().type("first");
        page.keyboard().press("Enter");
        cell("C131", "note").focus();
        page.keyboard().type("for one");
        page.keyboard().press("Enter");
        cell("C131", "id").locator("input").check();
        cell("C132", "id").locator("input").check();
        page.waitForCondition(() -> held.size() == 1);
        held.getFirst().resume();
        page.waitForCondition(() -> held.size() == 2);
        held.getLast().resume();
        says("Set note of C131");
        assertThat(project().cables().get("C131").remarks().note()).isEqualTo("for one");
        assertThat(project().cables().get("C132").remarks().note()).isNotEqualTo("for one");
    }

    @Test
    void whatCouldNotBeSentStaysAndIsSentOnTheNextTry() {
        go("/cables");
        page.route("**/set", Route::abort);
        cell("C101", "note").focus();
        page.keyboard().type("mine");
        page.keyboard().press("Enter");
        says("what was typed is kept here");
        theirs("C102", "note", "theirs");
        assertThat(cell("C102", "note")).containsText("theirs");
        assertThat(cell("C101", "note")).containsText("mine");
        assertThat(cell("C101", "note")).hasAttribute("aria-invalid", "true");
        page.unroute("**/set");
        cell("C101", "note").focus();
        page.keyboard().press("F2");
        page.keyboard().press("Enter");
        says("Set note of C101");
        assertThat(project().cables().get("C101").remarks().note()).isEqualTo("mine");
        troubles.removeIf(trouble -> trouble.contains("net::ERR_FAILED"));
    }

    @Test
    void aNewProjectBeginsWithAListOrASpreadsheet() {
        page.navigate(hall.origin() + "/");
        page.locator("#name").fill("Mill hall");
        page.locator("button[value=list]").click();
        assertThat(page.locator("#grid tfoot input")).isFocused();
        page.keyboard().type("mic-dynamic-voc");
        page.locator("#choices li[data-text='mic-dynamic-vocal']").click();
        page.keyboard().press("Enter");
        says("Added microphone");
        page.navigate(hall.origin() + "/");
        page.locator("#name").fill("Chapel hall");
        page.locator("button[value=paste]").click();
        assertThat(page.locator("#beside textarea")).isFocused();
    }

    @Test
    void aPatchIsEditedAsRows() {
        go("/patch");
        Locator first = page.locator("#grid tbody tr").first();
        String row = first.getAttribute("data-row");
        cell(row, "gain").focus();
        page.keyboard().type("-3 dB");
        page.keyboard().press("Enter");
        says("Set gain");
        assertThat(cell(row, "gain")).containsText("-3 dB");
    }

    @Test
    void anEmptyTableSaysWhatBelongsThereAndTakesTheFirstRow() throws Exception {
        OpenProject begun = hall.projects.begin("Empty hall", Hall.LEAD);
        page.navigate(hall.origin() + "/p/" + begun.id() + "/equipment");
        assertThat(page.locator("#nothing")).containsText("A desk is one row");
        shot("empty");
        page.locator("[data-new]").click();
        page.keyboard().type("desk-digital-32-stage-a");
        page.keyboard().press("Tab");
        says("Added mixer");
        assertThat(begun.now().project().equipment()).containsKey("mixer");
    }

    private void shot(String name) {
        page.screenshot(
                new Page.ScreenshotOptions().setPath(Path.of("target", "screenshots", "table-" + name + ".png")));
    }
}
