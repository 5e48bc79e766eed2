package org.trammel.shop;

import com.microsoft.playwright.Page;

/** What a hand does at a desk: opens a page, fills a field by its name, presses what it reads. */
public final class DeskHand {

    private final Page page;
    private final String base;

    /** Signs the owner of a {@link NewShop} on. */
    public DeskHand(int port) {
        this.base = "http://localhost:" + port;
        this.page = Chromium.desk(base, NewShop.OWNER, NewShop.PASSWORD);
    }

    public Page page() {
        return page;
    }

    public void open(String path) {
        page.navigate(base + path);
    }

    public void fill(String name, String value) {
        page.locator("main [name='" + name + "']").first().fill(value);
    }

    /** Whatever carries exactly these words. */
    public void click(String words) {
        page.getByText(words, exactly()).click();
    }

    /** The button that saves the sheet. */
    public void save() {
        page.locator("main .sign .btn").click();
    }

    public void waitFor(String words) {
        page.getByText(words, exactly()).first().waitFor();
    }

    /** Picture, and axe in both themes. */
    public void look(String name) {
        Chromium.look(page, name);
    }

    public void leave() {
        page.context().close();
    }

    private static Page.GetByTextOptions exactly() {
        return new Page.GetByTextOptions().setExact(true);
    }
}
