package org.trammel.shop.coats;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.trammel.shop.BrowserTest;
import org.trammel.shop.Chromium;
import org.trammel.shop.floor.AtOneStation;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.gauges.GaugeRange;
import org.trammel.shop.materials.LotKind;
import org.trammel.shop.routes.StepSheet;

/** A cold frame in a real browser: its coat is refused with the figures, let through once it is warm, and its film judged. */
@BrowserTest("trammel.test.database=coat_screens")
class CoatBrowserTest extends AtOneStation {

    private WholeShop.Frame frame;

    CoatBrowserTest() {
        super("Booth");
    }

    @BeforeAll
    void opens() {
        gauge("AIR-1", range("HYGRO", "°C"), range("HYGRO", "%RH"));
        gauge("TOUCH-1", range("CONTACT-TEMP", "°C"));
        gauge("OHM-1", range("OHM", "MΩ"));
        gauge("FILM-1", range("FILM-EDDY", "µm"));
        lot("SAND-1", LotKind.POWDER, "LOW-BAKE", LocalDate.of(2026, 12, 1));
        frame = new WholeShop(beans)
                .frame(SmallRoute.of(
                                SmallRoute.op("150")
                                        .step("booth clean")
                                        .step(new StepSheet("sprayed", "", false, true, null, null, null))
                                        .sheet(),
                                SmallRoute.op("160").step("masks off").sheet())
                        .sheet());
    }

    @Test
    void aColdFrameIsNotSprayedAndAWarmOneIsAndItsFilmIsJudged() {
        finish();
        String station = base() + "/station/" + frame.serial() + "?here=true";
        page.navigate(station);
        Chromium.send(page, page.locator(".plate .btn.main"));
        page.navigate(station);
        page.locator("text=Surface and coat").click();
        air("17,2");
        assertThat(page.locator("main").innerText()).contains("not conforming", "Wait until the metal is at 17,9 °C");
        sizes("coat-cold");
        page.navigate(station);
        Chromium.send(page, page.locator(".plate .btn.main"));
        assertThat(page.locator(".refusal").innerText())
                .contains("was not ticked", "17,2 °C", "14,9 °C", "3 K are asked for", "17,9 °C");
        Chromium.look(page, "coat-refused");
        page.locator("text=Surface and coat").click();
        air("18,5");
        page.locator("#f-spray-lot").fill("SAND-1");
        page.locator("#f-spray-earth").fill("0,4");
        page.locator("#f-spray-gauge").selectOption("OHM-1");
        Chromium.send(page, page.locator("text=Keep it"));
        page.navigate(station);
        Chromium.send(page, page.locator(".plate .btn.main"));
        page.locator("text=Surface and coat").click();
        page.locator("#f-film-area0").fill("72 68 81 77 64");
        page.locator("#f-film-area1").fill("59 88 73 70 66");
        page.locator("#f-film-gauge").selectOption("FILM-1");
        Chromium.send(page, page.locator("text=Judge the film"));
        page.locator("#h-film").waitFor();
        assertThat(page.locator("section.film").innerText()).contains("conforming", "71.8");
        Chromium.look(page, "coat-filmed");
        page.navigate(station);
        assertThat(page.locator("main").innerText()).contains("masks off");
    }

    private void finish() {
        page.navigate(base() + "/shop/finishes/new");
        for (String[] one : List.of(
                new String[] {"code", "SAND"},
                new String[] {"what", "sand, low bake"},
                new String[] {"coatOperations", "150"},
                new String[] {"mostBar", "2,5"},
                new String[] {"mostEarth", "1"},
                new String[] {"filmOperations", "150"},
                new String[] {"areas", "head tube\nseat tube"},
                new String[] {"leastUm", "60"},
                new String[] {"mostUm", "120"},
                new String[] {"source", "powder sheet"},
                new String[] {"secret", PASSWORD})) {
            page.locator("#f-" + one[0]).fill(one[1]);
        }
        page.locator("#f-metalAL6061").check();
        page.locator("#f-rule").selectOption("EIGHTY_TWENTY");
        Chromium.look(page, "finish-form");
        Chromium.send(page, page.locator("button:has-text('Put it in force')"));
        page.locator("h1:has-text('SAND A')").waitFor();
        Chromium.look(page, "finish");
    }

    private void air(String metal) {
        page.locator("#f-air-air").fill("21");
        page.locator("#f-air-humidity").fill("68");
        page.locator("#f-air-metal").fill(metal);
        page.locator("#f-air-airGauge").selectOption("AIR-1");
        page.locator("#f-air-metalGauge").selectOption("TOUCH-1");
        Chromium.send(page, page.locator("text=Keep air and metal"));
        page.locator("main:has-text('Metal " + metal + " °C')").waitFor();
    }

    private static GaugeRange range(String kind, String unit) {
        return new GaugeRange(
                kind,
                unit,
                new BigDecimal("-40"),
                new BigDecimal("2000"),
                new BigDecimal("0.1"),
                new BigDecimal("0.2"),
                null,
                "from memory");
    }
}
