package housewright.web;

import static org.junit.jupiter.api.Assumptions.abort;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType.LaunchOptions;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.ReducedMotion;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The machine's own Chromium, driven without a download. */
final class Browser implements AutoCloseable {
    private static final List<String> NAMES = List.of("chromium", "chromium-browser", "google-chrome", "chrome");

    private final Locale locale = Locale.getDefault();
    private final Playwright playwright;
    private final com.microsoft.playwright.Browser browser;

    /** A window's size, and what it is like. */
    enum Size {
        LAPTOP(1440, 900),
        PHONE(390, 844);

        final int width;
        final int height;

        Size(int width, int height) {
            this.width = width;
            this.height = height;
        }
    }

    /** What a test waits for at most; a machine that builds beside it is slow, and that is no fault of a page. */
    static final double MOST_MS = 60_000;

    /** Skips the test where there is no Chromium. */
    Browser() {
        Path chromium = find().orElseGet(() -> abort(
                "There is no Chromium on this machine, so the pages are not tried in a browser. Install it (Debian:"
                        + " apt install chromium) or name it in CHROMIUM."));
        Locale.setDefault(Locale.ROOT); // the driver's words go through the locale, which the tests' own has no i for
        this.playwright = Playwright.create(
                new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        PlaywrightAssertions.setDefaultAssertionTimeout(MOST_MS);
        this.browser = playwright
                .chromium()
                .launch(new LaunchOptions()
                        .setExecutablePath(chromium)
                        .setArgs(List.of(
                                "--no-sandbox",
                                "--disable-gpu",
                                "--disable-quic",
                                "--disable-background-networking",
                                "--disable-component-update",
                                "--disable-sync")));
    }

    private static Optional<Path> find() {
        String named = System.getenv("CHROMIUM");
        Stream<Path> places = Stream.of(System.getenv("PATH").split(File.pathSeparator, -1))
                .filter(folder -> !folder.isEmpty())
                .flatMap(folder -> NAMES.stream().map(name -> Path.of(folder, name)));
        return Stream.concat(Stream.ofNullable(named).map(Path::of), places)
                .filter(Files::isExecutable)
                .findFirst();
    }

    /** A fresh window that has not come in anywhere. */
    BrowserContext open(Size size, ColorScheme scheme) {
        return browser.newContext(new com.microsoft.playwright.Browser.NewContextOptions()
                .setViewportSize(size.width, size.height)
                .setColorScheme(scheme)
                .setReducedMotion(ReducedMotion.REDUCE)
                .setHasTouch(size == Size.PHONE));
    }

    @Override
    public void close() {
        browser.close();
        playwright.close();
        Locale.setDefault(locale);
    }
}
