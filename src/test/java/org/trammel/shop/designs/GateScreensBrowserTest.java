package org.trammel.shop.designs;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.trammel.shop.BrowserTest;
import org.trammel.shop.Chromium;
import org.trammel.shop.TestCrew;
import org.trammel.shop.people.FirstStart;

/** A frame whose drawing meets a limit by too little, at the gate in a real browser: red, cured, and typed against. */
@BrowserTest("trammel.test.database=gate_screens")
class GateScreensBrowserTest {

    private static final String PASSWORD = "quiet lathe under rain";

    /** What stands out on the right, to be named where a page does not fit. */
    private static final String WIDE = "[...document.querySelectorAll('main *')].filter(one =>"
            + " one.getBoundingClientRect().right > innerWidth && !one.closest('.scroll')).map(one => one.outerHTML"
            + ".slice(0, 120)).slice(0, 5).join('\\n')";

    @LocalServerPort
    private int port;

    @Autowired
    private DrawnFrame.DesignDesk desk;

    @Autowired
    private FirstStart firstStart;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private TestCrew crew;

    @Autowired
    private Designs designs;

    @Autowired
    private DrawingOffice office;

    @Autowired
    private DesignGate gate;

    private DrawnFrame frame;
    private Page page;

    @BeforeAll
    void opens() {
        firstStart.make(
                UUID.randomUUID(),
                firstStart.newCode(),
                "127.0.0.9",
                new FirstStart.Entry("OB", "Odd Builder", PASSWORD, "402817"));
        frame = new DrawnFrame(desk);
        page = Chromium.desk(base(), "OB", PASSWORD);
    }

    @AfterAll
    void closes() {
        page.context().close();
    }

    @Test
    void aRedCheckIsDecidedOrCuredAndAFigureTellsItsLimitItsMarginAndItsSource() {
        long id = frame.begin("X-142");
        office.change(crew.act(frame.owner), id, null, frame.draft(TrailFrame.nothingRed("CHAINSTAY 428")));
        page.navigate(base() + "/designs/" + id);
        assertThat(row(GateCheck.TYRE_CLEARANCE)).contains("5,7", "limit 6,0", "not met by 0,3", "common practice");
        opens(GateCheck.TYRE_CLEARANCE);
        Object only = page.locator("details[open] select option").allInnerTexts();
        assertThat(only).isEqualTo(List.of("decided in writing"));
        page.locator("details[open] button").click();
        page.locator(".refusal").waitFor();
        assertThat(page.locator(".refusal").innerText())
                .contains("Rear tyre to seat tube of revision A was not answered");
        Chromium.look(page, "gate-red");

        page.navigate(base() + "/designs/" + id + "/edit");
        page.locator("[name='geometry.CHAINSTAY']").fill("432");
        page.locator("[name='geometry.FEET_HELD']").selectOption("1");
        Chromium.look(page, "gate-inputs");
        page.locator("main .sign .btn").click();
        page.waitForURL("**/designs/" + id);
        assertThat(row(GateCheck.TYRE_CLEARANCE)).contains("9,6", "3,6 to spare");
        assertThat(row(GateCheck.TOE_CLEARANCE)).contains("held, so it is not judged");
        opens(GateCheck.TYRE_CLEARANCE);
        page.locator("details[open] button").click();
        page.locator("[aria-label='Change the answer of Rear tyre to seat tube']")
                .waitFor();
        assertThat(row(GateCheck.TYRE_CLEARANCE)).contains("meets it");

        page.navigate(base() + "/designs/" + id + "/characteristics");
        assertThat(page.locator("main").innerText()).contains("1 from the drawing", "from the drawing");
        page.locator("[name='nominal.080-7']").fill("66,5");
        page.locator("main .sign .btn").click();
        page.locator(".off").waitFor();
        assertThat(page.locator(".off").innerText()).contains("against the drawing: 65,5°");
        Chromium.look(page, "nominal-against");
        page.navigate(base() + "/designs/" + id);
        assertThat(row(GateCheck.NOMINALS)).contains("66,5°", "wanted 65,5° by the drawing", "not met");
        office.change(crew.act(frame.owner), id, null, frame.draft(TrailFrame.nothingRed("CHAINSTAY 433")));
        page.navigate(base() + "/designs/" + id);
        assertThat(row(GateCheck.TYRE_CLEARANCE)).contains("given on other inputs");
        Chromium.look(page, "gate-other-inputs");
        toleranceIsChanged();
        fits(id);
    }

    private void toleranceIsChanged() {
        page.navigate(base() + "/shop/tolerances");
        Chromium.look(page, "tolerances");
        page.locator("a:text-is('Angle as built')").click();
        page.locator("[name='lower']").fill("-0,25");
        page.locator("[name='source']").fill("trial of the shop");
        page.locator("[name='reason']").fill("better jig");
        page.locator("main form .btn").first().click();
        page.locator("td:has-text('better jig')").waitFor();
        Chromium.look(page, "tolerance");
    }

    private void fits(long id) {
        Map<String, String> shown = Map.of(
                "gate", "/designs/" + id,
                "chars", "/designs/" + id + "/characteristics",
                "inputs", "/designs/" + id + "/edit",
                "layout", "/designs/" + id + "/layout",
                "frame", "/designs/" + id + "/frame",
                "tolerances", "/shop/tolerances",
                "tolerance", "/shop/tolerances/BUILT_ANGLE");
        for (int[] size : new int[][] {{1280, 800}, {390, 844}, {1440, 900}}) {
            page.setViewportSize(size[0], size[1]);
            shown.forEach((name, address) -> {
                page.navigate(base() + address);
                assertThat((int) page.evaluate("document.documentElement.scrollWidth"))
                        .as(address + " at " + size[0] + ": " + page.evaluate(WIDE))
                        .isLessThanOrEqualTo(size[0]);
                Chromium.picture(page, "g-" + name + "-" + size[0]);
                page.evaluate("document.documentElement.dataset.theme = 'night'");
                Chromium.picture(page, "g-" + name + "-" + size[0] + "-night");
            });
        }
    }

    private String row(GateCheck check) {
        return page.locator("table.gate tr")
                .filter(new com.microsoft.playwright.Locator.FilterOptions().setHasText(check.label()))
                .first()
                .innerText()
                .replace('\u00a0', ' ');
    }

    private void opens(GateCheck check) {
        page.locator("[aria-label='Answer " + check.label() + "']").click();
    }

    private String base() {
        return "http://localhost:" + port;
    }
}
