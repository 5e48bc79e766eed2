package org.trammel.shop.cuts;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.trammel.shop.BrowserTest;
import org.trammel.shop.Chromium;
import org.trammel.shop.floor.AtOneStation;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.materials.WaitingForTheSaw;
import org.trammel.shop.routes.CharacteristicSheet;
import org.trammel.shop.routes.Reduction;
import org.trammel.shop.routes.Rule;
import org.trammel.shop.routes.Signer;

/** A saw is registered and measured, and a frame's tubes are measured one by one, in a real browser. */
@BrowserTest("trammel.test.database=cut_screens")
class CutBrowserTest extends AtOneStation {

    @Autowired
    private JdbcClient jdbc;

    private WholeShop.Frame frame;

    CutBrowserTest() {
        super("Saw and mitre");
    }

    @BeforeAll
    void opens() {
        WholeShop shop = new WholeShop(beans);
        for (String[] gauge : List.of(
                new String[] {"CALLIPER", "mm", "0.01"},
                new String[] {"SCALE-RULE", "mm", "0.05"},
                new String[] {"PROTRACTOR", "°", "0.02"},
                new String[] {"LEVEL", "°", null},
                new String[] {"FEELER", "mm", null},
                new String[] {"WALL", "mm", "0.005"})) {
            shop.gauge(gauge[0], gauge[1], gauge[2], LocalDate.of(2027, 1, 1));
        }
        frame = WaitingForTheSaw.frame(
                shop,
                jdbc,
                SmallRoute.of(
                        SmallRoute.op("030")
                                .at("1")
                                .step("Cut, both ends held in phase")
                                .characteristic(gap())
                                .sheet(),
                        SmallRoute.op("999").step("on").sheet()));
    }

    private static CharacteristicSheet gap() {
        return new CharacteristicSheet(
                "030-6",
                "Fit-up gap, mate held",
                "mm",
                2,
                false,
                BigDecimal.ZERO,
                null,
                new BigDecimal("0.15"),
                "FEELER",
                List.of("worst"),
                Reduction.GREATEST,
                Rule.PLAIN,
                List.of(Signer.WORKER),
                false,
                false,
                false,
                true,
                null,
                0,
                null,
                null,
                "shop default");
    }

    @Test
    void aTubeIsMeasuredAgainstItsOwnCutListAndAWideGapHoldsTheFrame() {
        page.navigate(base() + "/shop/hole-saws");
        saw("HS-54", "54");
        saw("HS-34", "34,9");
        saw("HS-54W", "54");
        check("HS-54", "53,95");
        check("HS-34", "34,9");
        check("HS-54W", "53,6");
        assertThat(page.locator("tr:has-text('HS-54W')")).containsText("worn");
        Chromium.look(page, "hole-saws");
        page.navigate(base() + "/station/" + frame.serial());
        Chromium.send(page, page.locator(".plate .btn.main"));
        page.locator("text=Cuts").first().click();
        page.locator("li:has-text('Top tube') a").click();
        assertThat(page.locator("#h-piece")).hasText("Top tube");
        assertThat(page.locator(".now")).containsText("cut list as released: 608,8 mm");
        sizes("cut-open");
        fill("HS-54W", "0,10");
        Chromium.send(page, page.locator(".now .btn.main"));
        assertThat(page.locator(".refusal")).containsText("HS-54W is worn by 0,4 mm");
        fill("HS-54", "0,25");
        Chromium.send(page, page.locator(".now .btn.main"));
        assertThat(page.locator("li:has-text('Top tube')")).containsText("worst gap 0,25 mm");
        assertThat(page.locator(".judged")).containsText("not conforming");
        sizes("cut-recorded");
        page.navigate(base() + "/station/" + frame.serial());
        assertThat(page.locator(".banner").first()).isVisible();
        Chromium.look(page, "cut-held");
        page.navigate(base() + "/frames/" + frame.serial());
        assertThat(page.locator("main")).containsText("top tube cut to 608,9 mm of 608,8");
        page.navigate(base() + "/shop/hole-saws");
        page.locator("#f-retire-code").selectOption("HS-54W");
        Chromium.send(page, page.locator("button:has-text('Retire it')"));
        assertThat(page.locator(".refusal")).containsText("The hole saw was not retired.");
        page.locator("#f-retire-code").selectOption("HS-54W");
        page.locator("#f-retire-reason").fill("worn, teeth blunt");
        Chromium.send(page, page.locator("button:has-text('Retire it')"));
        assertThat(page.locator("tr:has-text('HS-54W')")).containsText("worn, teeth blunt");
        sizes("hole-saws-retired");
    }

    private void fill(String saw, String gap) {
        page.locator("#f-blank").fill("608,9");
        page.locator("#f-phase").fill("0,1");
        page.locator("#f-saw1").selectOption(saw);
        page.locator("#f-angle1").fill("91,4");
        page.locator("#f-wall1").fill("1,15");
        page.locator("#f-saw2").selectOption("HS-34");
        page.locator("#f-angle2").fill("97,6");
        page.locator("#f-wall2").fill("1,15");
        for (int i = 1; i <= Cuts.PLACES; i++) {
            page.locator("#f-gap1-" + i).fill(i == 3 ? gap : "0,05");
            page.locator("#f-gap2-" + i).fill("0");
        }
        for (String with : List.of("lengthGauge", "angleGauge", "phaseGauge", "gapGauge", "wallGauge")) {
            page.locator("#f-" + with).selectOption(new com.microsoft.playwright.options.SelectOption().setIndex(1));
        }
    }

    private void saw(String code, String diameter) {
        page.locator("#f-code").fill(code);
        page.locator("#f-diameter").fill(diameter);
        page.locator("#f-what").fill("bimetal");
        Chromium.send(page, page.locator("button:has-text('Register it')"));
    }

    private void check(String code, String over) {
        page.locator("#f-check-code").selectOption(code);
        page.locator("#f-check-measured").fill(over);
        page.locator("#f-check-gauge").selectOption(new com.microsoft.playwright.options.SelectOption().setIndex(1));
        Chromium.send(page, page.locator("button:has-text('Keep what it measures')"));
    }
}
