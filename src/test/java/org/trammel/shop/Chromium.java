package org.trammel.shop;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.args.AxeRunOptions;
import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.TimeoutError;
import com.microsoft.playwright.options.Cookie;
import com.microsoft.playwright.options.ReducedMotion;
import com.microsoft.playwright.options.WaitForSelectorState;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/**
 * The real browser of the tests: one for all test classes of a JVM, started by the first. Pictures are kept under
 * {@code target/screens}. The browser belongs to the thread of the tests.
 */
public final class Chromium {

    private static final Path PICTURES = Path.of("target", "screens");
    private static final List<String> OF_COLOUR = List.of("color-contrast", "link-in-text-block");
    /** The same browser built without windows does the same work in two thirds of the time; where it is not there, the whole one. */
    private static final Path WITHOUT_WINDOWS = Path.of("/usr/bin/chromium-headless-shell");

    private static final Browser BROWSER = start();

    private Chromium() {}

    @SuppressWarnings("resource")
    private static Browser start() {
        Playwright playwright = Playwright.create(
                new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        return playwright
                .chromium()
                .launch(new BrowserType.LaunchOptions()
                        .setExecutablePath(executable())
                        .setArgs(List.of("--no-sandbox", "--disable-gpu", "--disable-quic")));
    }

    private static Path executable() {
        String named = System.getProperty("trammel.chromium");
        return named != null
                ? Path.of(named)
                : Files.isExecutable(WITHOUT_WINDOWS) ? WITHOUT_WINDOWS : Path.of("/usr/bin/chromium");
    }

    /** A window of a size, in pixels, with cookies of its own. Whoever opens it closes it. */
    public static BrowserContext window(int width, int height) {
        return BROWSER.newContext(
                new Browser.NewContextOptions().setViewportSize(width, height).setReducedMotion(ReducedMotion.REDUCE));
    }

    /** A window that runs no script. */
    public static BrowserContext withoutScripts() {
        return BROWSER.newContext(new Browser.NewContextOptions().setJavaScriptEnabled(false));
    }

    /** A desk at which somebody has signed on by password. */
    public static Page desk(String base, String initials, String password) {
        Page page = window(1440, 900).newPage();
        page.navigate(base + "/sign-on");
        page.locator("#f-initials").fill(initials);
        page.locator("#f-password").fill(password);
        page.locator("main button").click();
        page.waitForURL(url -> !url.contains("sign-on"));
        return page;
    }

    /** An enrolled tablet at which nobody has signed on yet. */
    public static Page tablet(String base, String token, int width, int height) {
        BrowserContext context = window(width, height);
        context.addCookies(List.of(new Cookie("trammel-device", token).setUrl(base)));
        return context.newPage();
    }

    /**
     * Clicks what sends a form and waits until the answer's page stands there. The answer may be there long before the
     * browser goes on to it: the sheet that comes does not bear the mark.
     */
    public static void send(Page page, Locator button) {
        page.evaluate("document.documentElement.dataset.before = 'sending'");
        button.click();
        page.locator("html:not([data-before])")
                .waitFor(new Locator.WaitForOptions().setState(WaitForSelectorState.ATTACHED));
        page.waitForLoadState();
    }

    /** Keeps a picture of the whole page. */
    public static void picture(Page page, String name) {
        picture(
                page,
                new Page.ScreenshotOptions()
                        .setPath(PICTURES.resolve(name + ".png"))
                        .setFullPage(true));
    }

    /**
     * Keeps a picture. Of a page behind others the browser draws none, and now and then none of one that has just come
     * to the front: then it is brought there again. A picture is a record, no assertion; one that cannot be had at all
     * fails the test.
     */
    public static void picture(Page page, Page.ScreenshotOptions options) {
        options.setTimeout(8_000);
        for (int tries = 1; ; tries++) {
            page.bringToFront();
            try {
                page.screenshot(options);
                return;
            } catch (TimeoutError none) {
                if (tries == 4) {
                    throw none;
                }
            }
        }
    }

    /**
     * Keeps a picture and has axe look through the page in both themes; it may find nothing. The themes differ in their
     * colours alone, so the second is looked through for what depends on them.
     */
    public static void look(Page page, String name) {
        picture(page, name);
        theme(page, "night");
        requireNone(axe(page).withRules(OF_COLOUR), name + " on the night sheet");
        theme(page, "paper");
        requireNothingForAxe(page, name + " on the paper sheet");
    }

    private static void theme(Page page, String theme) {
        page.evaluate("theme => document.documentElement.dataset.theme = theme", theme);
    }

    /** Without the page in which the results of frames are put together: there are no frames. */
    private static AxeBuilder axe(Page page) {
        AxeRunOptions options = new AxeRunOptions();
        options.setResultTypes(List.of("violations"));
        return new AxeBuilder(page).setLegacyMode(true).options(options);
    }

    /** What axe finds in the page as it is; it may be nothing. */
    public static void requireNothingForAxe(Page page, String where) {
        requireNone(axe(page), where);
    }

    private static void requireNone(AxeBuilder axe, String where) {
        assertThat(axe.analyze().getViolations().stream()
                        .map(rule -> rule.getId() + " at "
                                + rule.getNodes().get(0).getTarget() + ": "
                                + rule.getNodes().get(0).getFailureSummary()))
                .as(where)
                .isEmpty();
    }
}
