package org.trammel.shop.materials;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.trammel.shop.BrowserTest;
import org.trammel.shop.Chromium;
import org.trammel.shop.floor.AtOneStation;
import org.trammel.shop.floor.WholeShop;

/** The tubes of a frame are issued in a real browser: a scan each, the next place stands ready, another tube is refused. */
@BrowserTest("trammel.test.database=tube_screens")
class TubeBrowserTest extends AtOneStation {

    private AtTheRack rack;
    private WholeShop.Frame frame;

    TubeBrowserTest() {
        super("Saw and mitre");
    }

    @BeforeAll
    void opens() {
        rack = new AtTheRack(beans, new WholeShop(beans), keeper);
        frame = rack.frame();
    }

    @Test
    void eachTubeIsScannedToItsPlaceAndTheNextStandsReady() {
        String heavy = rack.lot("42 × 1,6");
        String lot = rack.whole();
        String station = base() + "/station/" + frame.serial() + "?here=true";
        page.navigate(station);
        assertThat(page.locator(".plate .btn.main")).containsText("every tube is issued to its place");
        Chromium.look(page, "tubes-none-yet");
        page.locator(".plate .btn.main").click();
        assertThat(page.locator("#h-next")).hasText("Down tube");
        assertThat(page.locator("#f-lot")).isFocused();
        scan(heavy);
        assertThat(page.locator(".refusal").innerText())
                .contains("The down tube was not issued.", heavy + " holds 42 × 1,6 mm", "35 × 1,4 mm as down tube");
        sizes("tubes-wrong-section");
        scan(lot);
        assertThat(page.locator("#h-next")).hasText("Top tube");
        scan(lot);
        scan(lot);
        sizes("tubes-three-issued");
        page.locator("a:has-text('This one next')").last().click();
        assertThat(page.locator("#h-next")).hasText("Non-drive-side seatstay");
        while (page.locator("#f-lot").count() > 0) {
            scan(lot);
        }
        assertThat(page.locator("main")).containsText("Every place has its tube");
        assertThat(page.locator("main")).containsText("9 of 9 places have their tube");
        sizes("tubes-all-issued");
        page.locator(".acts a:has-text('Back to the frame')").click();
        page.navigate(station);
        Chromium.send(page, page.locator(".plate .btn.main"));
        assertThat(page.locator(".plate h2")).containsText("no dent");
        page.navigate(base() + "/frames/" + frame.serial() + "/made-of");
        assertThat(page.locator("main")).containsText("non-drive-side chainstay");
        Chromium.look(page, "tubes-made-of");
        page.navigate(base() + "/shop/lots/" + lot);
        assertThat(page.locator("main")).containsText("35 × 1,4 mm, 31,8 × 0,9/0,6/0,9 mm");
        Chromium.look(page, "tubes-lot");
    }

    private void scan(String lot) {
        page.locator("#f-lot").fill(lot);
        Chromium.send(page, page.locator(".now .btn.main"));
    }
}
