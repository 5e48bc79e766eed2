package org.trammel.shop.demo;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.FilePayload;
import org.trammel.shop.Chromium;

/** Hands at the tablets and desks of the invented workshop. */
final class Hands {

    private final String base;

    Hands(int port) {
        this.base = "http://localhost:" + port;
    }

    /** A tablet that was enrolled, with nobody signed on. */
    Page tablet(String token) {
        return Chromium.tablet(base, token, 1280, 800);
    }

    /** A desk of its own, signed on by password. */
    Page desk(String initials, String password) {
        return Chromium.desk(base, initials, password);
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
        Chromium.picture(page, "scene-" + name);
    }
}
