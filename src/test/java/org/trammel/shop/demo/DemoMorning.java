package org.trammel.shop.demo;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What each screen of the invented workshop shows at half past eight on its morning, in a real browser. */
abstract class DemoMorning extends DemoHands {

    @Test
    void theAlignerSeesTheWindowAndTheHold() {
        Page page = at("T4", "SB");
        hands.open(page, "/station/AV26101H");
        assertThat(text(page.locator(".clocks"))).contains("closes in 2 h").contains("10:40");
        assertThat(page.locator(".banner").innerText()).contains("lot trace").contains("FL-4643-022");
        assertThat(page.locator("body").innerText()).contains("not conforming");
        hands.look(page, "morning-alignment");
    }

    @Test
    void theQaLeadSeesWhatIsInDoubt() {
        hands.open(qa, "/qa");
        String desk = qa.locator("main").innerText();
        assertThat(desk)
                .contains("HG-2")
                .contains("TC-07")
                .contains("Jig J2")
                .contains("check overdue")
                .contains("rear axles drift to the drive side")
                .contains("WELD:AL:141")
                .contains("CA-4")
                .contains("TL-7005-074");
        Locator held = qa.locator(".holds > li");
        assertThat(held.allInnerTexts().stream()
                        .filter(text -> text.contains("TC-07 read 7 K too high"))
                        .map(text -> text.strip().substring(0, 5))
                        .distinct())
                .as(
                        "frames in the shop that were aged while the thermocouple drifted; parts on their way by themselves")
                .hasSize(6);
        assertThat(held.allInnerTexts().stream().filter(text -> text.contains("FL-4643-022")))
                .hasSize(3);
        hands.look(qa, "morning-qa-desk");
    }

    /**
     * Nobody looked when the eighth frame alarmed; four more were built since. The other jig's 25 axles have mean 0,150 and
     * deviation 0,2458, reckoned apart; the interval of Ppk is A. F. Bissell's (1990).
     */
    @Test
    void theQaLeadTracesTheDriftOfTheJig() {
        hands.open(qa, "/qa/drift");
        assertThat(text(qa.locator("tr", new Page.LocatorOptions().setHasText("jig J2"))))
                .contains("drifts")
                .contains("Since reading 8");
        assertThat(text(qa.locator("tr", new Page.LocatorOptions().setHasText("jig J1"))))
                .contains("no drift");
        qa.locator("tr", new Page.LocatorOptions().setHasText("jig J2"))
                .locator("a")
                .click();
        assertThat(text(qa.locator("main")))
                .contains("First alarm at reading 8 of 12")
                .contains("113")
                .contains("105");
        hands.look(qa, "morning-drift");
        hands.open(qa, "/qa/drift/causes");
        assertThat(text(qa.locator("main")))
                .contains("The difference hangs on the jig.")
                .contains("J2 lies 0,3");
        hands.look(qa, "morning-causes");
        hands.open(qa, "/qa");
        assertThat(text(qa.locator("main"))).contains("Check jig J2 before the next tack");
        hands.open(qa, "/qa/drift");
        qa.locator("tr", new Page.LocatorOptions().setHasText("jig J1"))
                .locator("a")
                .click();
        qa.getByText("Capability", new Page.GetByTextOptions().setExact(true)).click();
        qa.waitForURL("**/capability");
        assertThat(text(qa.locator("main")))
                .contains("Ppk 1,15, at 95 % between 0,80 and 1,50")
                .contains("3 with other limits");
        hands.look(qa, "morning-capability");
        hands.open(qa, "/qa/yield");
        assertThat(text(qa.locator("main"))).contains("of 100 frames");
        hands.look(qa, "morning-yield");
    }

    @Test
    void theHeatTreaterMayLoadNothing() {
        Page page = at("T5", "RH");
        List<String> rows = page.locator("a.row").allInnerTexts();
        assertThat(rows)
                .hasSize(2)
                .allSatisfy(row -> assertThat(row).contains("105-9").contains("on hold: oven trace"));
        hands.look(page, "morning-heat-treat");
    }

    @Test
    void theCoaterSeesUntilWhenAndWhatToWaitFor() {
        Page page = at("T6", "LM");
        hands.open(page, "/station/AV261075");
        assertThat(page.locator("body").innerText()).contains("11:50").contains("coat when it is 17,9");
        hands.look(page, "morning-coat");
    }

    @Test
    void theFitterIsAtTheStemFace() {
        Page page = at("T7", "DO");
        hands.open(page, "/station/AV26110F");
        assertThat(page.locator(".plate").innerText()).contains("Torque 10 of 22: face plate");
        hands.look(page, "morning-assembly");
    }

    @Test
    void theSawyerHasTheTubeToCutAgain() {
        Page page = at("T1", "JA");
        hands.open(page, "/station/AV26119Y");
        assertThat(page.locator(".plate").innerText()).contains("Scan every tube");
        assertThat(page.locator(".banner").innerText()).contains("before it is welded");
        assertThat(page.locator(".plate a.btn.main").innerText())
                .as("cut it may be, from a tube that is in its place")
                .contains("First: every tube is issued to its place");
        hands.look(page, "morning-saw");
    }

    @Test
    void theWelderIsToldThatAConfirmationEnds() {
        Page page = at("T2", "PW");
        hands.open(page, "/sign-on");
        assertThat(page.locator(".qf.due").allInnerTexts())
                .as("what he may do, and until when")
                .anySatisfy(said -> assertThat(said.replace('\u00a0', ' ')).contains("weld aluminium to 20 Mar"));
        hands.look(page, "morning-sign-on");
    }

    @Test
    void theOwnerSeesEveryOpenOrderByPromise() {
        Page owner = hands.desk("ME", DemoCast.OWNER_PASSWORD);
        hands.open(owner, "/run");
        assertThat(owner.locator(".run-row").all()).hasSize(18);
        assertThat(text(owner.locator(".run-row").first())).contains("112-B");
        hands.look(owner, "morning-run");
        owner.context().close();
    }

    /** What stands there, with plain spaces and hyphens. */
}
