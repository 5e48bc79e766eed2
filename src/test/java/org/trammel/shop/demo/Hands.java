package org.trammel.shop.demo;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.options.Cookie;
import com.microsoft.playwright.options.FilePayload;
import com.microsoft.playwright.options.ReducedMotion;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/** Hands at the tablets and desks of the invented workshop, in a real browser. */
final class Hands implements AutoCloseable {

    private static final Path PICTURES = Path.of("target", "screens");

    private final Playwright playwright =
            Playwright.create(new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
    private final Browser browser = playwright
            .chromium()
            .launch(new BrowserType.LaunchOptions()
                    .setExecutablePath(Path.of(System.getProperty("trammel.chromium", "/usr/bin/chromium")))
                    .setArgs(List.of("--no-sandbox", "--disable-gpu", "--disable-quic")));
    private final String base;

    Hands(int port) {
        this.base = "http://localhost:" + port;
    }

    @Override
    public void close() {
        browser.close();
        playwright.close();
    }

    /** A tablet that was enrolled, with nobody signed on. */
    Page tablet(String token) {
        BrowserContext context = opened(1280, 800);
        context.addCookies(List.of(new Cookie("trammel-device", token).setUrl(base)));
        return context.newPage();
    }

    /** Signs on at a tablet by the badge's code and the PIN, and comes to its list of frames. */
    void signOn(Page page, String badge, String pin) {
        page.navigate(base + "/sign-on");
        page.locator("#f-code:focus").waitFor();
        page.keyboard().type(badge);
        page.keyboard().press("Enter");
        page.locator("#pin-form").waitFor();
        key(page, pin);
        page.locator(".key.enter").click();
        page.waitForURL("**/station");
    }

    /** A desk of its own, signed on by password. */
    Page desk(String initials, String password, int width, int height) {
        Page page = opened(width, height).newPage();
        page.navigate(base + "/sign-on");
        page.locator("#f-initials").fill(initials);
        page.locator("#f-password").fill(password);
        page.locator("main button").click();
        page.waitForURL(url -> !url.contains("sign-on"));
        return page;
    }

    private BrowserContext opened(int width, int height) {
        BrowserContext context = browser.newContext(
                new Browser.NewContextOptions().setViewportSize(width, height).setReducedMotion(ReducedMotion.REDUCE));
        context.setDefaultTimeout(30_000);
        return context;
    }

    void open(Page page, String path) {
        page.navigate(base + path);
    }

    static void key(Page page, String digits) {
        for (String digit : digits.split("")) {
            page.locator(".key[data-key='" + digit + "']").click();
        }
    }

    /** Presses the one button of the plate and waits for the sheet to say something. */
    static void press(Page page, String says) {
        page.locator(".plate button.main").click();
        says(page, says);
    }

    static Locator says(Page page, String words) {
        Locator found = page.getByText(words).first();
        found.waitFor();
        return found;
    }

    /** Scans a code, or keys it, on the sheet of a frame or on the list. */
    static void scan(Page page, String code, String says) {
        page.locator("#f-code").fill(code);
        page.locator("#f-code").press("Enter");
        says(page, says);
    }

    static void photograph(Page page) {
        page.locator(".plate input[type=file]")
                .first()
                .setInputFiles(new FilePayload("serial.png", "image/png", DemoPicture.png()));
    }

    /** Keys a reading: one value a point, the gauge, and the side of a single point where it has one. */
    static void read(Page page, String gauge, String side, String... values) {
        if (page.locator("#f-gauge").count() > 0) {
            page.locator("#f-gauge").selectOption(gauge);
        }
        for (int i = 0; i < values.length; i++) {
            page.locator("#f-value" + i).fill(values[i]);
        }
        if (!side.isEmpty()) {
            page.getByText(side, new Page.GetByTextOptions().setExact(true)).click();
        }
        page.locator(".key.enter").click();
    }

    void look(Page page, String name) {
        page.screenshot(new Page.ScreenshotOptions()
                .setPath(PICTURES.resolve("scene-" + name + ".png"))
                .setFullPage(true));
    }
}
