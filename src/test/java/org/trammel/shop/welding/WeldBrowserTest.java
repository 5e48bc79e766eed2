package org.trammel.shop.welding;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.shop.BrowserTest;
import org.trammel.shop.Chromium;
import org.trammel.shop.floor.AtOneStation;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.materials.LotKind;
import org.trammel.shop.people.Qualification;
import org.trammel.shop.people.Qualifications;
import org.trammel.shop.people.Role;
import org.trammel.shop.routes.StepSheet;

/** A frame is welded in a real browser: a wrong rod, an unqualified welder, a node before its turn, then look by look. */
@BrowserTest("trammel.test.database=weld_screens")
class WeldBrowserTest extends AtOneStation {

    @Autowired
    private Qualifications qualifications;

    private WholeShop.Frame frame;

    WeldBrowserTest() {
        super("Jig and weld");
    }

    @BeforeAll
    void opens() {
        lot("FL-1", LotKind.FILLER, "ER4643", null);
        lot("FL-2", LotKind.FILLER, "ER80S", null);
        lot("AR-1", LotKind.GAS, "ARGON", null);
        frame = new WholeShop(beans)
                .frame(SmallRoute.of(
                                SmallRoute.op("070")
                                        .lot("Filler scanned", "FILLER")
                                        .lot("Gas scanned", "GAS")
                                        .step(node("Node 1: down tube to shell"))
                                        .step(node("Node 2: seat tube to shell"))
                                        .step(node("Node 3: down tube to head tube"))
                                        .sheet(),
                                SmallRoute.op("080").step("no crack").sheet(),
                                SmallRoute.op("130").step("reamed").sheet())
                        .sheet());
    }

    @Test
    void aFrameIsWeldedNodeByNodeAndLookedAt() {
        procedure();
        String station = base() + "/station/" + frame.serial() + "?here=true";
        page.navigate(station);
        scan("FL-2");
        assertThat(page.locator(".refusal").innerText())
                .contains("FL-2 was not issued.", "is for steel; the frame is aluminium", "Never try it.");
        Chromium.look(page, "weld-wrong-rod");
        page.navigate(station);
        scan("FL-1");
        page.navigate(station);
        scan("AR-1");
        page.navigate(station);
        page.locator("text=Sheet of the weld").click();
        Chromium.send(page, page.locator("button:has-text('Open the node')"));
        assertThat(page.locator(".refusal").innerText())
                .contains("The node was not opened.", "holds no qualification by ISO 9606-2", "Let somebody qualified");
        Chromium.look(page, "weld-unqualified");
        qualifications.enter(
                crew.act(crew.hire(Role.QA_LEAD)),
                keeper,
                Qualification.of("WELD:AL:141", "ISO 9606-2", LocalDate.of(2025, 1, 1), LocalDate.of(2027, 1, 1), false)
                        .covering(
                                "aluminium",
                                "141",
                                new java.math.BigDecimal("0.5"),
                                new java.math.BigDecimal("10"),
                                "BW, FW"));
        page.locator("summary:has-text('Before its turn')").first().click();
        page.locator("form:has(button:has-text('Open it now')) input[name=reason]")
                .first()
                .fill("clamp in the way");
        Chromium.send(page, page.locator("button:has-text('Open it now')").first());
        assertThat(page.locator("#h-node")).containsText("Node 2: seat tube to shell");
        sizes("weld-open");
        Chromium.send(page, page.locator("button:has-text('Welded, close the node')"));
        for (String node : List.of("Node 1: down tube to shell", "Node 3: down tube to head tube")) {
            assertThat(page.locator("#h-node")).containsText(node);
            Chromium.send(page, page.locator("button:has-text('Open the node')"));
            assertThat(page.locator(".node-now")).containsText("arc");
            Chromium.send(page, page.locator("button:has-text('Welded, close the node')"));
        }
        assertThat(page.locator("#h-nodes ~ ul")).containsText("Out of its order: clamp in the way");
        page.navigate(station);
        page.locator("text=Sheet of the weld").click();
        for (int i = 0; i < 2; i++) {
            Chromium.send(page, page.locator("button:has-text('Nothing found')").first());
        }
        page.locator("#f-look-node").selectOption("Node 3: down tube to head tube");
        page.locator("#f-look-imperfection").selectOption("CRACK");
        Chromium.send(page, page.locator("button:has-text('Judge it')"));
        assertThat(page.locator("main")).containsText("A crack conforms to no level");
        sizes("weld-looked-at");
        page.navigate(base() + "/frames/" + frame.serial());
        assertThat(page.locator("main")).containsText("arc on Node 2: seat tube to shell");
        assertThat(page.locator("main")).containsText("clamp in the way");
        Chromium.look(page, "weld-story");
    }

    private void scan(String lot) {
        page.locator("input[name=lot]").fill(lot);
        Chromium.send(page, page.locator(".plate .btn.main"));
    }

    private void procedure() {
        page.navigate(base() + "/shop/weld-procedures/new?from=W-6061");
        for (String[] one : List.of(
                new String[] {"thicknessFrom", "0,5"},
                new String[] {"thicknessTo", "6"},
                new String[] {"flow", "8"},
                new String[] {"tungsten", "2,4 mm"},
                new String[] {"ampsFrom", "55"},
                new String[] {"ampsTo", "110"},
                new String[] {"interpass", ""},
                new String[] {"samples", "0"},
                new String[] {"standard", "ISO 15609-1"},
                new String[] {"edition", "2019"},
                new String[] {"source", "coupons of a test"})) {
            page.locator("#f-" + one[0]).fill(one[1]);
        }
        page.locator("#f-level").selectOption("C");
        page.locator("#f-limits").selectOption("ISO-10042-1992");
        sizes("weld-procedure-form");
        Chromium.send(page, page.locator("button:has-text('Keep the draft')"));
        page.locator("#f-secret").fill(PASSWORD);
        Chromium.look(page, "weld-procedure-draft");
        Chromium.send(page, page.locator("button:has-text('Put it in force')"));
        assertThat(page.locator("main")).containsText("in force");
        sizes("weld-procedure");
        page.navigate(base() + "/shop/weld-limits/ISO-10042-1992");
        sizes("weld-limits");
    }

    private static StepSheet node(String text) {
        return new StepSheet(text, "", false, true, null, null, null);
    }
}
