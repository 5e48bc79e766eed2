package org.trammel.shop.ride;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.options.Cookie;
import com.microsoft.playwright.options.LoadState;
import com.microsoft.playwright.options.ReducedMotion;
import com.microsoft.playwright.options.WaitForSelectorState;
import com.microsoft.playwright.options.WaitUntilState;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/** The browser, and what everybody does with a page of it. */
final class Sheets implements AutoCloseable {

    private static final Path PICTURES = Path.of("target", "screens", "ride");

    private final Playwright playwright;
    private final Browser browser;
    private final String base;

    Sheets(int port) {
        base = "http://localhost:" + port;
        playwright = Playwright.create(
                new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        browser = playwright
                .chromium()
                .launch(new BrowserType.LaunchOptions()
                        .setExecutablePath(Path.of(System.getProperty("trammel.chromium", "/usr/bin/chromium")))
                        .setArgs(List.of("--no-sandbox", "--disable-gpu", "--disable-quic")));
    }

    Page desk() {
        return context(1440, 900).newPage();
    }

    Page tablet(String token) {
        BrowserContext context = context(1280, 800);
        context.addCookies(List.of(new Cookie("trammel-device", token).setUrl(base)));
        return context.newPage();
    }

    private BrowserContext context(int width, int height) {
        BrowserContext context = browser.newContext(
                new Browser.NewContextOptions().setViewportSize(width, height).setReducedMotion(ReducedMotion.REDUCE));
        context.setDefaultTimeout(15_000);
        return context;
    }

    void open(Page page, String path) {
        page.navigate(base + path, new Page.NavigateOptions().setWaitUntil(WaitUntilState.DOMCONTENTLOADED));
    }

    /** Does something that sends a form or follows a link, and waits for the page that it leads to. */
    static void send(Page page, Runnable deed) {
        page.evaluate("document.documentElement.dataset.before = 'yes'");
        deed.run();
        page.locator("html:not([data-before])")
                .waitFor(new Locator.WaitForOptions().setState(WaitForSelectorState.ATTACHED));
        page.waitForLoadState(LoadState.DOMCONTENTLOADED);
    }

    static void look(Page page, String name) {
        page.screenshot(new Page.ScreenshotOptions().setPath(PICTURES.resolve(name + ".png")));
    }

    /** The paper as a printer gets it. */
    static byte[] print(Page page, String name) {
        return page.pdf(new Page.PdfOptions()
                .setPath(PICTURES.resolve(name + ".pdf"))
                .setPreferCSSPageSize(true)
                .setPrintBackground(true));
    }

    @Override
    public void close() {
        browser.close();
        playwright.close();
    }
}
