package housewright.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import com.microsoft.playwright.options.ColorScheme;
import housewright.app.Author;
import housewright.app.Demo;
import housewright.app.Role;
import housewright.model.Pathway;
import housewright.model.Place;
import housewright.model.Remarks;
import housewright.model.Room;
import housewright.model.SpacePoint;
import housewright.model.change.Change;
import housewright.model.change.Section;
import housewright.web.Browser.Size;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What a hand does with drawings. */
@Tag("slow")
class DrawingsInBrowserTest {
    private static final String EMPTY = "housewright: 1\nproject: {name: Empty hall, stage: survey, library: 1}\n";

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
        page.setDefaultNavigationTimeout(Browser.MOST_MS); // the first sheet of a server is laid out by cold code
        page.navigate(hall.server.openOnce());
        page.waitForURL(url -> !url.contains("/in/"));
        page.navigate(hall.origin() + "/p/" + hall.job().id() + path);
        return page;
    }

    private static String view(Page page) {
        return String.valueOf(page.locator("svg.sheet").getAttribute("viewBox"));
    }

    private static double width(Page page) {
        return Double.parseDouble(view(page).split(" ", -1)[2]);
    }

    private static Place place(Hall hall, String id) {
        return hall.job().now().project().venue().places().get(id);
    }

    private static SpacePoint at(Hall hall, String id) {
        SpacePoint at = place(hall, id).at();
        if (at == null) {
            throw new AssertionError(id + " has no position");
        }
        return at;
    }

    /** Where metres of the plan are on the screen. */
    private static double[] onScreen(Page page, double x, double y) {
        String script = "([x, y]) => { const {perMetre, originX, originY} = document.getElementById('plan').dataset;"
                + " const at = new DOMPoint(Number(originX) + x * perMetre, Number(originY) - y * perMetre)"
                + ".matrixTransform(document.querySelector('svg.sheet').getScreenCTM()); return at.x + ' ' + at.y; }";
        String[] at = page.evaluate(script, List.of(x, y)).toString().split(" ", -1);
        return new double[] {Double.parseDouble(at[0]), Double.parseDouble(at[1])};
    }

    private static void drag(Page page, double[] from, double[] to) {
        page.mouse().move(from[0], from[1]);
        page.mouse().down();
        page.mouse().move((from[0] + to[0]) / 2, (from[1] + to[1]) / 2);
        page.mouse().move(to[0], to[1]);
        page.mouse().up();
    }

    @Test
    void aDrawingIsMovedAndZoomedByKeysButtonsWheelAndPointer() {
        try (Hall hall = Hall.demo();
                BrowserContext window = browser.open(Size.LAPTOP, ColorScheme.LIGHT)) {
            Page page = comeIn(hall, window, "/signal");
            page.locator("#drawing-box").focus();
            page.keyboard().press("0");
            double whole = width(page);
            page.keyboard().press("+");
            assertThat(width(page)).isLessThan(whole);
            String near = view(page);
            page.keyboard().press("ArrowRight");
            assertThat(view(page)).isNotEqualTo(near);
            page.keyboard().press("-");
            assertThat(width(page)).isEqualTo(whole);
            page.locator("[data-zoom=in]").click();
            assertThat(width(page)).isLessThan(whole);
            page.locator("[data-zoom=fit]").click();
            String fit = view(page);
            BoundingBox box = page.locator("#drawing-box").boundingBox();
            drag(page, new double[] {box.x + 200, box.y + 200}, new double[] {box.x + 300, box.y + 260});
            assertThat(view(page)).isNotEqualTo(fit);
            page.mouse().wheel(0, -300);
            page.waitForCondition(() -> width(page) < whole);
        }
    }

    /** A large sheet opens where its signal begins, as large as can be read; Fit shows all of it and not the paper. */
    @Test
    void aLargeSheetOpensReadableAndFitShowsWhatIsDrawn() {
        try (Hall hall = Hall.demo();
                BrowserContext window = browser.open(Size.LAPTOP, ColorScheme.LIGHT)) {
            Page page = comeIn(hall, window, "/signal");
            page.waitForFunction("() => document.querySelector('svg.sheet').getScreenCTM().a >= 0.74");
            String leftmost = "Math.min(...[...document.querySelectorAll('svg.sheet [data-subject]')]"
                    + ".map((each) => each.getBoundingClientRect().left)) - document.getElementById('drawing-box')"
                    + ".getBoundingClientRect().left";
            assertThat(number(page, leftmost)).isBetween(0.0, 200.0);
            page.locator("[data-zoom=fit]").click();
            String sides =
                    "[...document.querySelectorAll('svg.sheet [data-subject], svg.sheet .notes')].every((each) => {"
                            + " const box = document.getElementById('drawing-box').getBoundingClientRect();"
                            + " const it = each.getBoundingClientRect(); return it.top > box.bottom || (it.left >= box.left"
                            + " && it.right <= box.right && it.top >= box.top && it.bottom <= box.bottom); })";
            assertThat(page.evaluate(sides)).isEqualTo(true);
            double paper = number(page, "Number(document.querySelector('svg.sheet').getAttribute('width'))");
            assertThat(width(page)).isLessThan(paper);
        }
    }

    /** A feed that is too long to be read as a whole opens where it begins. */
    @Test
    void aLongFeedOpensReadableWhereItBegins() {
        try (Hall hall = Hall.demo();
                BrowserContext window = browser.open(Size.LAPTOP, ColorScheme.LIGHT)) {
            Page page = comeIn(hall, window, "/signal?feed=" + Demo.FEED);
            page.waitForFunction("() => document.querySelector('svg.sheet').getScreenCTM().a >= 0.74");
            assertThat(isInSight(page, "svg.sheet [data-subject='equipment:lectern-mic']"))
                    .isTrue();
        }
    }

    private static boolean isInSight(Page page, String selector) {
        return Boolean.TRUE.equals(page.evaluate(
                "selector => { const box = document.getElementById('drawing-box').getBoundingClientRect();"
                        + " const it = document.querySelector(selector).getBoundingClientRect(); return it.left >= box.left"
                        + " && it.right <= box.right && it.top >= box.top && it.bottom <= box.bottom; }",
                selector));
    }

    private static double number(Page page, String script) {
        return ((Number) page.evaluate(script)).doubleValue();
    }

    @Test
    void aPlaceInHandStaysThereWhileSomebodyElseChangesSomething() {
        try (Hall hall = Hall.demo();
                BrowserContext window = browser.open(Size.LAPTOP, ColorScheme.LIGHT)) {
            Page page = comeIn(hall, window, "/venue");
            page.locator("[data-hand=move]").click();
            SpacePoint was = at(hall, "desk");
            double[] from = onScreen(page, was.x().metres(), was.y().metres());
            double[] to = onScreen(page, was.x().metres() + 1, was.y().metres());
            page.mouse().move(from[0], from[1]);
            page.mouse().down();
            page.mouse().move(to[0] - 4, to[1]);
            String shown = page.locator("h1").textContent();
            Place shelf = new Place(
                    "their-shelf", place(hall, "desk").room(), at(hall, "desk"), null, null, null, Remarks.NONE);
            hall.edit(
                    new Author("ben", Role.LEAD),
                    "Added their-shelf",
                    new Change.Put(Section.PLACES, "their-shelf", shelf));
            page.waitForFunction("was => document.querySelector('h1').textContent !== was", shown);
            page.mouse().move(to[0], to[1]);
            page.mouse().up();
            assertThat(page.locator(".notice")).containsText("Moved desk");
            assertThat(at(hall, "desk").x().metres()).isCloseTo(was.x().metres() + 1, within(0.051));
            assertThat(page.locator("svg.sheet [data-subject='place:their-shelf']")
                            .first())
                    .isVisible();
        }
    }

    @Test
    void aChosenFeedLightsUpAndItsHopsAndTheDrawingShowTheSameThing() {
        try (Hall hall = Hall.demo();
                BrowserContext window = browser.open(Size.LAPTOP, ColorScheme.LIGHT)) {
            Page page = comeIn(hall, window, "/signal");
            page.locator("#feed-to-light").selectOption(Demo.FEED);
            page.locator(".lighting button").click();
            assertThat(page.locator("h1")).containsText("is proven");
            assertThat(page.locator("svg [data-subject='cable:C101'].lit").first())
                    .isVisible();
            page.locator(".hops a[data-choose='cable:C101']").first().click();
            assertThat(page.locator("svg [data-subject='cable:C101'].chosen").first())
                    .isVisible();
            assertThat(page.locator("#beside")).containsText("lectern-mic.out");
            page.locator("[data-zoom=fit]").click();
            page.locator("svg [data-subject='equipment:desk'] > text").first().click();
            assertThat(page.locator("#thing-title")).containsText("desk");
            assertThat(page.locator(".hops a[data-choose='equipment:desk'][aria-current]")
                            .first())
                    .isVisible();
            page.getByText("Its row in the tables").click();
            page.waitForURL(url -> url.contains("/table/equipment"));
        }
    }

    @Test
    void aBrokenFeedShowsWhereItStopsAndItsMendIsAppliedHereAndUndone() {
        try (Hall hall = Hall.demo();
                BrowserContext window = browser.open(Size.PHONE, ColorScheme.DARK)) {
            hall.edit(Hall.LEAD, "Took C101 out", new Change.Drop(Section.CABLES, "C101"));
            Page page = comeIn(hall, window, "/signal?feed=" + Demo.FEED);
            page.waitForFunction("() => document.querySelector('svg.sheet').getScreenCTM().a >= 0.74");
            assertThat(isInSight(page, "svg.sheet .gap")).isTrue();
            assertThat(page.locator(".stops")).containsText("Nothing is plugged into");
            page.getByText("Apply this mend").first().click();
            assertThat(page.locator("h1")).containsText("is proven");
            assertThat(page.locator("svg .gap")).hasCount(0);
            page.locator(".notice form button").click();
            assertThat(page.locator("h1")).containsText("does not arrive");
            assertThat(page.locator("svg .gap").first()).isAttached();
        }
    }

    @Test
    void aPlaceIsDraggedAndMovedByKeysAndUndone() {
        try (Hall hall = Hall.demo();
                BrowserContext window = browser.open(Size.LAPTOP, ColorScheme.LIGHT)) {
            Page page = comeIn(hall, window, "/venue");
            page.locator("[data-hand=move]").click();
            double x = at(hall, "lectern").x().metres();
            double y = at(hall, "lectern").y().metres();
            drag(page, onScreen(page, x, y), onScreen(page, x + 2.02, y + 1));
            assertThat(page.locator(".notice")).containsText("Moved lectern");
            assertThat(at(hall, "lectern").x().metres() - x).isBetween(1.9, 2.1);
            double steps = at(hall, "lectern").x().metres() / 0.05;
            assertThat(steps - Math.rint(steps)).isBetween(-1e-6, 1e-6);
            double moved = at(hall, "lectern").x().metres();
            page.locator("#drawing-box").focus();
            page.keyboard().press("ArrowLeft");
            page.keyboard().press("Shift+ArrowLeft");
            page.keyboard().press("Enter");
            page.waitForCondition(() -> at(hall, "lectern").x().metres() < moved - 1);
            assertThat(at(hall, "lectern").x().metres() - moved).isBetween(-1.101, -1.099);
            page.keyboard().press("Control+z");
            page.waitForCondition(() -> Math.abs(at(hall, "lectern").x().metres() - moved) < 1e-9);
        }
    }

    @Test
    void whatIsTypedForAPlaceIsRefusedWithItsReasonAndStays() {
        try (Hall hall = Hall.demo();
                BrowserContext window = browser.open(Size.LAPTOP, ColorScheme.DARK)) {
            Page page = comeIn(hall, window, "/venue?thing=place:lectern");
            page.locator("#new-place summary").click();
            page.locator("#place-id").fill("balcony");
            page.locator("#place-x").fill("3 m");
            page.locator("#place-y").fill("4");
            page.locator("#place-z").fill("5 m");
            page.getByText("Add the place").click();
            assertThat(page.locator(".notice")).containsText("Nothing was changed");
            assertThat(page.locator("#place-id")).hasValue("balcony");
            page.locator("#place-y").fill("4 m");
            page.getByText("Add the place").click();
            assertThat(page.locator(".notice")).containsText("Added the place balcony");
            assertThat(place(hall, "balcony").room()).isEqualTo("hall");
        }
    }

    @Test
    void aPathwayIsDrawnBetweenTwoPlacesAndItsLengthIsMeasuredOnThePlan() {
        try (Hall hall = Hall.demo();
                BrowserContext window = browser.open(Size.LAPTOP, ColorScheme.LIGHT)) {
            Page page = comeIn(hall, window, "/venue");
            SpacePoint from = at(hall, "lectern");
            SpacePoint to = at(hall, "desk");
            page.locator("[data-hand=measure]").click();
            double[] begin = onScreen(page, from.x().metres(), from.y().metres());
            double[] end = onScreen(page, to.x().metres(), to.y().metres());
            page.mouse().click(begin[0], begin[1]);
            page.mouse().click(end[0], end[1]);
            double along = Math.hypot(
                    to.x().metres() - from.x().metres(),
                    to.y().metres() - from.y().metres());
            assertThat(page.locator("#drawing-says"))
                    .containsText(String.format(java.util.Locale.ROOT, "%.2f m", along));
            page.locator("[data-hand=pathway]").click();
            page.mouse().click(begin[0], begin[1]);
            page.mouse().click(end[0], end[1]);
            page.locator("#pathway-id").fill("p-new");
            page.locator("#pathway-kind").selectOption("tray");
            page.locator("#pathway-height").fill("5 m");
            page.locator("#new-pathway button").click();
            assertThat(page.locator(".notice")).containsText("Added the pathway p-new");
            Pathway made = hall.job().now().project().venue().pathways().get("p-new");
            double rises = 5 - from.z().metres() + 5 - to.z().metres();
            assertThat(made.length().metres()).isBetween(along + rises - 0.001, along + rises + 0.011);
            assertThat(made.remarks().note()).contains("measured on the plan");
        }
    }

    /** A way drawn with bends is not exchanged unseen for the shorter straight one, which cable would be cut by. */
    @Test
    void aDrawnWayIsKeptWhereItsPathwayIsRefused() {
        try (Hall hall = Hall.demo();
                BrowserContext window = browser.open(Size.LAPTOP, ColorScheme.LIGHT)) {
            Page page = comeIn(hall, window, "/venue");
            SpacePoint from = at(hall, "seats");
            SpacePoint to = at(hall, "loop");
            double[] begin = onScreen(page, from.x().metres(), from.y().metres());
            double[] bend = onScreen(page, from.x().metres(), to.y().metres());
            double[] end = onScreen(page, to.x().metres(), to.y().metres());
            page.locator("[data-hand=pathway]").click();
            page.mouse().click(begin[0], begin[1]);
            page.mouse().click(bend[0], bend[1]);
            page.mouse().click(end[0], end[1]);
            assertThat(page.locator("#pathway-says")).containsText("with one bend");
            page.locator("#pathway-id").fill("p-new");
            page.locator("#pathway-height").fill("high");
            page.locator("#new-pathway button").click();
            assertThat(page.locator(".notice")).containsText("Height above the floor: found \"high\"");
            assertThat(page.locator("#pathway-says")).containsText("The way drawn from seats to loop is kept");
            page.locator("#pathway-height").fill("0 m");
            page.locator("#new-pathway button").click();
            assertThat(page.locator(".notice")).containsText("Added the pathway p-new");
            Pathway made = hall.job().now().project().venue().pathways().get("p-new");
            double along = Math.abs(from.x().metres() - to.x().metres())
                    + Math.abs(from.y().metres() - to.y().metres());
            double rises = from.z().metres() + to.z().metres();
            assertThat(made.length().metres()).isCloseTo(along + rises, within(0.1)); // a pixel is some 3 cm
            assertThat(made.remarks().note()).contains("with one bend");
        }
    }

    @Test
    void aMouseMeasuresByDraggingAndAnUnsteadyClickIsNoDrag() {
        try (Hall hall = Hall.demo();
                BrowserContext window = browser.open(Size.LAPTOP, ColorScheme.LIGHT)) {
            Page page = comeIn(hall, window, "/venue");
            page.locator("[data-hand=measure]").click();
            String seen = view(page);
            SpacePoint from = at(hall, "seats");
            SpacePoint to = at(hall, "loop");
            double[] begin = onScreen(page, from.x().metres(), from.y().metres());
            double[] end = onScreen(page, to.x().metres(), to.y().metres());
            String along = String.format(
                    java.util.Locale.ROOT,
                    "%.2f m on the plan, heights left out",
                    Math.hypot(
                            to.x().metres() - from.x().metres(),
                            to.y().metres() - from.y().metres()));
            drag(page, begin, end);
            assertThat(page.locator("#drawing-says")).containsText(along);
            assertThat(view(page)).isEqualTo(seen);
            drag(page, begin, new double[] {begin[0] + 2, begin[1]});
            assertThat(page.locator("#drawing-says")).containsText("choose the other point");
            page.mouse().click(end[0], end[1]);
            assertThat(page.locator("#drawing-says")).containsText(along);
        }
    }

    /** What to do next is said where a hand on a phone sees it, over the tools. */
    @Test
    void whatAToolWantsIsInSightOnAPhone() {
        try (Hall hall = Hall.demo();
                BrowserContext window = browser.open(Size.PHONE, ColorScheme.LIGHT)) {
            Page page = comeIn(hall, window, "/venue");
            page.locator("[data-hand=pathway]").click();
            Locator says = page.locator("#drawing-says");
            assertThat(says).containsText("Choose the place where it begins");
            String over = "(says) => { const { left, top, height } = says.getBoundingClientRect();"
                    + " return document.elementFromPoint(left + 4, top + height / 2) === says; }";
            assertThat(says.evaluate(over)).isEqualTo(true);
        }
    }

    @Test
    void anEmptyVenueBeginsWithARectangle() {
        try (Hall hall = Hall.empty();
                BrowserContext window = browser.open(Size.PHONE, ColorScheme.LIGHT)) {
            hall.begin("empty.yaml", text -> EMPTY);
            Page page = comeIn(hall, window, "/venue");
            assertThat(page.locator("h1")).containsText("Nothing of the venue has a position yet");
            page.locator("#room-width").fill("18 m");
            page.locator("#room-depth").fill("11");
            page.locator("#room-height").fill("6.2 m");
            page.getByText("Add the room").click();
            assertThat(page.locator(".notice")).containsText("11");
            assertThat(page.locator("#room-width")).hasValue("18 m");
            page.locator("#room-depth").fill("11 m");
            page.getByText("Add the room").click();
            assertThat(page.locator("svg [data-subject='room:hall']")).isVisible();
            Room room = hall.job().now().project().venue().rooms().get("hall");
            assertThat(room.outline()).hasSize(4);
            assertThat(room.ceiling().metres()).isEqualTo(6.2);
        }
    }

    @Test
    void aThingGoesIntoAFreeUnitOnly() {
        try (Hall hall = Hall.demo();
                BrowserContext window = browser.open(Size.LAPTOP, ColorScheme.LIGHT)) {
            Page page = comeIn(hall, window, "/racks?rack=rack-rear");
            List<String> offered = page.locator("#put-thing option").allTextContents();
            assertThat(offered.getFirst()).isEqualTo("choose");
            assertThat(offered.get(1))
                    .as("what is at the rack is offered first")
                    .contains("rack-rear");
            assertThat(offered.subList(1, offered.size()))
                    .isSortedAccordingTo(Comparator.comparing(each -> !each.contains("rack-rear")));
            assertThat(offered.getLast()).as("the far end of the hall").contains("rack-stage");
            page.locator("#put-thing").selectOption("lounge-sound");
            page.locator("#put-unit").fill("8");
            page.getByText("Put it there").click();
            assertThat(page.locator(".notice")).containsText("patch-rear is in unit 8. Unit 9 is free.");
            page.locator("#put-unit").fill("9");
            page.getByText("Put it there").click();
            assertThat(page.locator("svg [data-subject='equipment:lounge-sound']"))
                    .isVisible();
            assertThat(hall.job()
                            .now()
                            .project()
                            .equipment()
                            .get("lounge-sound")
                            .unit())
                    .isEqualTo(9);
        }
    }

    @Test
    void aViewerSeesEveryDrawingAndMovesNothing() {
        try (Hall hall = Hall.demo()) {
            Visitor viewer = Visitor.of(hall, Role.VIEWER);
            String job = "/p/" + hall.job().id();
            String plan = viewer.get(job + "/venue?thing=place:lectern").body();
            assertThat(plan)
                    .contains("data-subject=\"place:lectern\"")
                    .doesNotContain("data-hand=\"move\"", "id=\"move\"");
            Map<String, String> moved = Map.of("place", "lectern", "x", "1 m", "y", "1 m", "z", "1 m", "base", "1");
            assertThat(viewer.post(job + "/venue/place", moved).statusCode()).isEqualTo(403);
            assertThat(viewer.get(job + "/signal/sheet.svg?system=sound").body())
                    .contains("<svg", "lectern-mic");
            assertThat(viewer.get(job + "/racks").body()).doesNotContain("put-unit");
            assertThat(hall.faults()).isEmpty();
        }
    }

    @Test
    void twoWhoMoveOnePlaceAreShownBoth() {
        try (Hall hall = Hall.demo()) {
            Visitor lead = Visitor.of(hall, Role.LEAD);
            String venue = "/p/" + hall.job().id() + "/venue";
            String base = Long.toString(hall.job().now().revision());
            lead.post(venue + "/place", Map.of("place", "lectern", "x", "1 m", "y", "1 m", "z", "1 m", "base", base));
            lead.post(venue + "/place", Map.of("place", "lectern", "x", "2 m", "y", "1 m", "z", "1 m", "base", base));
            assertThat(lead.get(venue).body()).contains("somebody else has edited the same meanwhile");
            assertThat(at(hall, "lectern").x().metres()).isEqualTo(1);
            assertThat(hall.faults()).isEmpty();
        }
    }
}
