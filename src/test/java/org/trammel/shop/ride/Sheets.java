package org.trammel.shop.ride;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.PlaywrightException;
import com.microsoft.playwright.options.LoadState;
import com.microsoft.playwright.options.ScreenshotType;
import com.microsoft.playwright.options.WaitForSelectorState;
import com.microsoft.playwright.options.WaitUntilState;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.trammel.shop.Chromium;

/** The windows of the shop, and what everybody does with a page in them. */
final class Sheets implements AutoCloseable {

    private static final Path PICTURES = Path.of("target", "screens", "ride");

    private final List<BrowserContext> open = new ArrayList<>();
    private final String base;

    Sheets(int port) {
        base = "http://localhost:" + port;
    }

    Page desk(Hand hand) {
        return kept(Chromium.desk(base, hand.initials(), Hand.PASSWORD));
    }

    Page tablet(String token) {
        return kept(Chromium.tablet(base, token, 1280, 800));
    }

    private Page kept(Page page) {
        page.context().setDefaultTimeout(15_000);
        open.add(page.context());
        return page;
    }

    /**
     * The browser gives a page behind others little time, so it is brought to the front as a hand would. A sheet that
     * finds itself locked goes to the sign-on sheet by itself: where it does so at that very moment, the way is taken
     * again.
     */
    void open(Page page, String path) {
        page.bringToFront();
        try {
            go(page, path);
        } catch (PlaywrightException locked) {
            if (!locked.getMessage().contains("is interrupted by another navigation")) {
                throw locked;
            }
            page.waitForURL(url -> url.contains("/sign-on"));
            go(page, path);
        }
    }

    private void go(Page page, String path) {
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
        Chromium.picture(
                page,
                new Page.ScreenshotOptions()
                        .setPath(PICTURES.resolve(name + ".jpg"))
                        .setType(ScreenshotType.JPEG)
                        .setQuality(70));
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
        open.forEach(BrowserContext::close);
        open.clear();
    }
}
