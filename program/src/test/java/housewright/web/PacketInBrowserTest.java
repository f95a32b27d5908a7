package housewright.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Download;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Page.ScreenshotOptions;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.FilePayload;
import housewright.app.Role;
import housewright.app.packet.Packet;
import housewright.model.Place;
import housewright.model.Project;
import housewright.model.Question;
import housewright.model.change.Change;
import housewright.model.change.Section;
import housewright.sheet.Untidy;
import housewright.web.Browser.Size;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What goes out to somebody and comes back: a question packet on a phone, and a spreadsheet. */
@Tag("slow")
class PacketInBrowserTest {
    private static final Path SHOTS = Path.of("target", "screenshots");
    private static final List<String> RULES = List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa");

    private static Browser browser;
    private static Hall hall;

    @TempDir
    private Path folder;

    private final List<String> troubles = new ArrayList<>();

    @BeforeAll
    static void open() {
        browser = new Browser();
        hall = Hall.demo();
        Project project = hall.job().now().project();
        Place desk = project.venue().places().get("desk");
        Place unknown = new Place("desk", desk.room(), null, desk.rack(), desk.hang(), desk.operator(), desk.remarks());
        hall.edit(Hall.LEAD, "Took the desk's position away", new Change.Put(Section.PLACES, "desk", unknown));
    }

    @AfterAll
    static void close() {
        if (browser != null) {
            browser.close();
            hall.close();
        }
    }

    private void look(Page page, String name, Size size, ColorScheme scheme) {
        page.screenshot(new ScreenshotOptions()
                .setPath(SHOTS.resolve(
                        name + "-" + size.width + "-" + scheme.name().toLowerCase(Locale.ROOT) + ".png"))
                .setFullPage(false));
        new AxeBuilder(page)
                .withTags(RULES)
                .analyze()
                .getViolations()
                .forEach(violation -> troubles.add(name + ": " + violation.getId() + " "
                        + violation.getNodes().getFirst().getHtml()));
        Object wider = page.evaluate("document.documentElement.scrollWidth > document.documentElement.clientWidth");
        if (Boolean.TRUE.equals(wider)) {
            troubles.add(name + " is wider than the window");
        }
    }

    private Page comeIn(BrowserContext window) {
        Page page = window.newPage();
        page.setDefaultTimeout(Browser.MOST_MS);
        page.onPageError(troubles::add);
        page.navigate(hall.server.openOnce());
        page.waitForURL(url -> !url.contains("/in/"));
        return page;
    }

    /** A picture as a camera saves it, with where it was taken beside it. */
    private static byte[] photo() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(2400, 1200, BufferedImage.TYPE_INT_RGB), "jpg", bytes);
        byte[] plain = bytes.toByteArray();
        byte[] exif = "Exif\0\0GPSLatitude 52".getBytes(StandardCharsets.ISO_8859_1);
        ByteArrayOutputStream marked = new ByteArrayOutputStream();
        marked.write(plain, 0, 2);
        marked.write(new byte[] {(byte) 0xFF, (byte) 0xE1, 0, (byte) (exif.length + 2)});
        marked.write(exif);
        marked.write(plain, 2, plain.length - 2);
        return marked.toByteArray();
    }

    @Test
    void aPacketIsAnsweredOnAPhoneWithoutAServerAndTakenAsOneStep() throws IOException {
        Path packet = folder.resolve("packet.html");
        Files.writeString(packet, Packet.html(hall.job().now().study(), "lead"));
        Path saved = folder.resolve("answers.json");
        try (BrowserContext window = browser.open(Size.PHONE, ColorScheme.LIGHT)) {
            Page page = window.newPage();
            page.onPageError(troubles::add);
            page.onConsoleMessage(message -> {
                if (message.type().equals("error")) {
                    troubles.add(message.text());
                }
            });
            page.onRequest(request -> {
                if (request.url().startsWith("http")) {
                    troubles.add("leaves the phone: " + request.url());
                }
            });
            page.navigate(packet.toUri().toString());
            assertThat(page.locator("#state")).hasText("0 of 3 answered");
            look(page, "packet", Size.PHONE, ColorScheme.LIGHT);
            page.locator("#questions textarea").first().fill("A mains splitter, labelled stage");
            page.locator("#survey textarea").first().fill("18.4 m, 6 m, 0.95 m");
            page.locator("#questions input[type=file]")
                    .first()
                    .setInputFiles(new FilePayload("IMG_1.jpg", "image/jpeg", photo()));
            assertThat(page.locator(".shots img")).hasCount(1);
            assertThat(page.locator("#state")).hasText("2 of 3 answered");
            assertThat(page.locator("#kept")).containsText("Kept in this browser");
            page.reload();
            assertThat(page.locator("#state")).hasText("2 of 3 answered");
            assertThat(page.locator("#questions textarea").first()).hasValue("A mains splitter, labelled stage");
            assertThat(page.locator(".shots img")).hasCount(1);
            look(page, "packet-answered", Size.PHONE, ColorScheme.LIGHT);
            Download download = page.waitForDownload(() -> page.locator("#save").click());
            download.saveAs(saved);
            page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(ColorScheme.DARK));
            look(page, "packet-answered", Size.PHONE, ColorScheme.DARK);
        }
        String text = Files.readString(saved);
        assertThat(text).contains("A mains splitter").doesNotContain("GPS");
        take(saved);
        assertThat(troubles).isEmpty();
    }

    private void take(Path saved) {
        long before = hall.job().now().revision();
        try (BrowserContext window = browser.open(Size.LAPTOP, ColorScheme.LIGHT)) {
            Page page = comeIn(window);
            page.navigate(hall.origin() + "/p/" + hall.job().id() + "/answers");
            look(page, "answers", Size.LAPTOP, ColorScheme.LIGHT);
            page.locator("#answers").setInputFiles(saved);
            page.locator("form:has(#answers) button").click();
            assertThat(page.locator("h1")).containsText("2 can be taken");
            look(page, "answers-read", Size.LAPTOP, ColorScheme.LIGHT);
            page.setViewportSize(Size.PHONE.width, Size.PHONE.height);
            page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(ColorScheme.DARK));
            look(page, "answers-read", Size.PHONE, ColorScheme.DARK);
            page.setViewportSize(Size.LAPTOP.width, Size.LAPTOP.height);
            page.locator("button.first").first().click();
            assertThat(page.locator(".notice")).containsText("Took 2 answers of lead");
            Project after = hall.job().now().project();
            assertThat(hall.job().now().revision()).as("one step").isEqualTo(before + 1);
            assertThat(after.venue().places().get("desk").at().x().metres()).isEqualTo(18.4);
            Question answered = after.questions().values().stream()
                    .filter(each -> String.valueOf(each.answer()).startsWith("A mains splitter"))
                    .findFirst()
                    .orElseThrow();
            assertThat(answered.remarks().photo()).hasSize(1);
            page.navigate(hall.origin() + "/p/" + hall.job().id() + "/photos/"
                    + answered.remarks().photo().getFirst());
            page.navigate(hall.origin() + "/p/" + hall.job().id() + "/answers");
            page.locator("button", new Page.LocatorOptions().setHasText("Undo"))
                    .first()
                    .click();
            page.waitForLoadState();
            assertThat(hall.job().now().project().venue().places().get("desk").at())
                    .isNull();
        }
    }

    @Test
    void aSpreadsheetIsShownPutRightAndTakenAsOneStep() {
        String job = "/p/" + hall.job().id();
        long before = hall.job().now().revision();
        for (ColorScheme scheme : List.of(ColorScheme.LIGHT, ColorScheme.DARK)) {
            for (Size size : Size.values()) {
                try (BrowserContext window = browser.open(size, scheme)) {
                    Page page = comeIn(window);
                    page.navigate(hall.origin() + job + "/spreadsheet");
                    look(page, "spreadsheet", size, scheme);
                    page.locator("#spreadsheet")
                            .setInputFiles(new FilePayload(
                                    "cables.xlsx", "application/octet-stream", Untidy.get("two-row-head.xlsx")));
                    page.locator("form:has(#spreadsheet) button").click();
                    assertThat(page.locator("h1")).containsText("2 rows would be added, 1 refused");
                    look(page, "spreadsheet-read", size, scheme);
                }
            }
        }
        try (BrowserContext window = browser.open(Size.LAPTOP, ColorScheme.LIGHT)) {
            Page page = comeIn(window);
            page.navigate(hall.origin() + job + "/spreadsheet");
            page.locator("#spreadsheet")
                    .setInputFiles(new FilePayload(
                            "cables.xlsx", "application/octet-stream", Untidy.get("two-row-head.xlsx")));
            page.locator("form:has(#spreadsheet) button").click();
            page.locator("select[name=c-G]").selectOption("label");
            page.locator("button", new Page.LocatorOptions().setHasText("Read it so"))
                    .click();
            assertThat(page.locator("select[name=c-G]")).hasValue("label");
            page.locator("button", new Page.LocatorOptions().setHasText("Take what is not refused"))
                    .click();
            assertThat(page.locator(".notice")).containsText("Took 2 rows");
            Project after = hall.job().now().project();
            assertThat(hall.job().now().revision()).as("one step").isEqualTo(before + 1);
            assertThat(after.cables().get("X1").label()).isEqualTo("merged heads");
            page.locator("button", new Page.LocatorOptions().setHasText("Undo"))
                    .first()
                    .click();
            page.waitForLoadState();
            assertThat(hall.job().now().project().cables()).doesNotContainKey("X1");
        }
        assertThat(troubles).isEmpty();
    }

    @Test
    void aHelperTakesNothing() {
        Visitor helper = Visitor.of(hall, Role.HELPER);
        String job = "/p/" + hall.job().id();
        assertThat(helper.get(job + "/spreadsheet").statusCode()).isEqualTo(403);
        assertThat(helper.get(job + "/answers").statusCode()).isEqualTo(403);
        assertThat(helper.post(job + "/spreadsheet/take", Map.of("base", "1")).statusCode())
                .isEqualTo(403);
        assertThat(helper.post(job + "/answers/take", Map.of("base", "1")).statusCode())
                .isEqualTo(403);
        assertThat(helper.get(job + "/workbook").statusCode()).isEqualTo(200);
    }
}
