package org.trammel.shop.ride;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import org.trammel.shop.ride.BadFirst.Way;

/** A desk at which somebody is signed on by password. */
final class Desk {

    private final Sheets sheets;
    private final Page page;
    private final Hand hand;

    Desk(Sheets sheets, Hand hand) {
        this.sheets = sheets;
        this.hand = hand;
        this.page = sheets.desk(hand);
    }

    Page page() {
        return page;
    }

    /** Opens a sheet; whoever was away too long signs on again first. */
    void open(String path) {
        sheets.open(page, path);
        if (page.url().contains("/sign-on")) {
            page.locator("#f-initials").fill(hand.initials());
            page.locator("#f-password").fill(Hand.PASSWORD);
            press("main button");
            sheets.open(page, path);
        }
    }

    String reads() {
        return page.locator("main").innerText();
    }

    void fill(String name, String value) {
        page.locator("main [name='" + name + "']").first().fill(value);
    }

    void press(String selector) {
        Sheets.send(page, () -> page.locator(selector).first().click());
    }

    /** Puts the decision on a nonconformance forward, or sees that it is not for this person. */
    boolean decides(String number, BadFirst tried) {
        open("/nonconformances/" + Long.parseLong(number.substring("NC-".length())));
        if (page.locator("[name='decision']").count() == 0) {
            assertThat(reads()).contains("You took part in operation");
            return false;
        }
        page.locator("[name='decision']")
                .selectOption(
                        switch (tried.way()) {
                            case REPAIR -> "REPAIR";
                            case CONCESSION -> "CONCESSION";
                            default -> "REWORK";
                        });
        fill("words", tried.words());
        if (tried.way() == Way.CONCESSION) {
            fill("limits", "this frame, this node");
            fill("expiresOn", "2027-06-30");
        } else {
            page.locator("[name='from']").selectOption(tried.from());
        }
        press("form[action$='/decision'] .btn.main");
        return true;
    }

    void agrees(String number) {
        open("/nonconformances/" + Long.parseLong(number.substring("NC-".length())));
        press("form[action$='/agreement'] .btn.main");
    }
}
