package org.trammel.shop.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.trammel.shop.demo.Hands.press;
import static org.trammel.shop.demo.Hands.read;
import static org.trammel.shop.demo.Hands.says;
import static org.trammel.shop.demo.Hands.scan;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import org.trammel.shop.Chromium;

/** What happens at the gates of the invented workshop on its morning, played by hand in a real browser. */
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
abstract class DemoScenes extends DemoHands {

    @Test
    @Order(0)
    void aSheetUnderSeveralHoldsFitsTheTabletAndHidesNoReason() {
        Page page = at("T4", "JA");
        for (int[] size : new int[][] {{1280, 800}, {800, 1280}}) {
            page.setViewportSize(size[0], size[1]);
            for (String path : List.of("AV261163-FT", "AV26101H", "AV26120B", "AV24037V")) {
                hands.open(page, "/station/" + path);
                assertThat((int) page.evaluate("document.documentElement.scrollHeight"))
                        .as(path + " on " + size[0] + " by " + size[1])
                        .isLessThanOrEqualTo(size[1]);
                hands.look(page, "fits-" + path + "-" + size[0]);
            }
            hands.open(page, "/station/AV261163-FT");
            assertThat(page.locator(".banner").innerText())
                    .contains("oven trace")
                    .contains("2 more holds: customer's own part, lot trace")
                    .doesNotContain("5356 rods");
            page.locator(".banner summary").click();
            assertThat(page.locator(".banner").innerText())
                    .contains("customer's own shock not received")
                    .contains("5356 rods");
            page.getByText("to come", new Page.GetByTextOptions().setExact(false))
                    .first()
                    .click();
            assertThat(page.locator(".to-come").innerText()).contains("140 Blast & pretreat");
        }
        page.setViewportSize(1280, 800);
    }

    @Test
    @Order(1)
    void aWorkerTicksAFrameThroughAStation() {
        Page page = at("T6", "LM");
        scan(page, "112-C", "does not belong");
        hands.look(page, "wrong-check-character");
        scan(page, "112-B", "Serial marked under the shell");
        scan(page, "113-9", "Wrong frame");
        assertThat(page.locator(".wrong").innerText()).contains("113-9").contains("112-B");
        assertThat(page.locator(".plate").count()).isZero();
        hands.look(page, "wrong-frame");
        page.getByText("Stay with 112-B").click();
        scan(page, "112-B", "The tag is that of this frame");

        Hands.photograph(page);
        press(page, "The photograph is kept");
        press(page, "Second person keys the serial from the metal");
        hands.look(page, "station");
        page.getByText("Untick, until").click();
        says(page, "step 1 of 7");
        press(page, "step 2 of 7");
        serialReadBack(page);
        press(page, "step 3 of 7");
        press(page, "step 4 of 7");
        page.locator("#f-lot").fill("BM-GLASS-07");
        page.locator(".plate button.main").click();
        page.locator(".refusal").waitFor();
        hands.look(page, "wrong-lot");
        page.locator("#f-lot").fill("BM-ALOX-03");
        press(page, "step 5 of 7");
        onTheSheetOfTheCoat(page);
        press(page, "step 6 of 7");
        press(page, "step 7 of 7");
        press(page, "Humidity in the booth");
        read(page, "TH-1", "", "55");
        says(page, "Go on");
        page.locator(".plate .btn.main").click();
        says(page, "150 ");
        hands.look(page, "station-gone-on");
        assertThat(state("AV26112B", "140")).isEqualTo("DONE");
        assertThat(jdbc.sql(
                                "select count(*) from tick t join step s on s.id = t.step_id join operation o on o.id = s.operation_id"
                                        + " join traveller v on v.id = o.traveller_id where v.serial = 'AV26112B' and o.code = '140'"
                                        + " and o.id = (select max(x.id) from operation x where x.traveller_id = v.id and x.code = '140')")
                        .query(Integer.class)
                        .single())
                .as("seven ticks, one taken back, one put again")
                .isEqualTo(9);
    }

    /** How the old coat came off, masks, blast and air; the blast pressure is keyed there and nowhere else. */
    private void onTheSheetOfTheCoat(Page page) {
        page.getByText("Surface and coat").click();
        page.locator("#f-strip-method").selectOption("CHEMICAL");
        page.locator("#f-strip-words").fill("bath, 40 min, rinsed");
        Chromium.send(page, page.getByText("Keep the strip"));
        for (int mask = 0; mask < 4; mask++) {
            Chromium.send(page, page.getByText("It is on").first());
        }
        page.locator("#f-blast-lot").fill("BM-ALOX-03");
        page.locator("#f-blast-pressure").fill("2,0");
        page.locator("#f-blast-gauge").selectOption("PG-1");
        page.locator("#f-blast-cleanliness").fill("near-white, cloth white");
        Chromium.send(page, page.getByText("Keep the blast"));
        page.locator("#f-air-air").fill("20");
        page.locator("#f-air-humidity").fill("55");
        page.locator("#f-air-metal").fill("19,5");
        page.locator("#f-air-airGauge").selectOption("TH-1");
        page.locator("#f-air-metalGauge").selectOption("IR-1");
        Chromium.send(page, page.getByText("Keep air and metal"));
        hands.look(page, "coat-of-a-blast");
        page.locator(".acts a:has-text('Back to')").click();
    }

    @Test
    @Order(2)
    void aTwistIsSetStraightInItsWindowLeftOpenByTheTubeAndDecidedByTheMandrel() {
        hands.open(qa, "/qa");
        Locator hold = qa.locator(".holds > li:has(a[href$='AV26101H'])");
        hold.locator("summary").click();
        hold.locator("form[action$='free'] input[type=text]")
                .fill("The window closes at 10:40; the rod is looked into.");
        hold.locator("form[action$='free'] button").click();
        says(qa, "is freed");
        hands.look(qa, "cold-set-freed");

        Page page = at("T4", "SB");
        hands.open(page, "/alignment");
        page.locator(".list a.row:has-text('101')").click();
        assertThat(twist(page)).contains("not conforming").contains("0,344").contains("non-drive");
        assertThat(page.locator(".facts").innerText()).contains("0 of 2 used").contains("at the bar");
        assertThat(page.locator(".push").innerText())
                .contains("small steps")
                .contains("Only between quench and ageing");
        assertThat(page.locator(".clk").innerText()).contains("10:40");
        hands.look(page, "table-not-conforming");
        page.locator(".plate .btn.main").click();
        page.locator("#f-amount").fill("0,34");
        page.locator("#f-push").fill("5,5");
        page.locator(".key.enter").click();
        says(page, "Before it was set straight");

        // everything is read again; the short base first, which leaves it open
        hands.open(page, "/alignment");
        page.locator(".list a.row:has-text('101')").click();
        assertThat(twist(page)).contains("not read");
        page.locator(".plate .btn.main").click();
        page.locator("text=How it lies").click();
        page.locator("label.key:has-text('the tube itself')").click();
        page.locator("text=Keep it so").click();
        height(page, "SEAT_LOW", "150,12");
        needsNoScrolling(page);
        height(page, "SEAT_HIGH", "150,42");
        height(page, "HEAD_LOW", "149,90");
        height(page, "HEAD_HIGH", "149,60");
        page.locator("text=Reduce and judge").click();
        assertThat(twist(page)).contains("undecided").contains("0,248");
        assertThat(page.locator(".plate").innerText()).contains("Measure with the mandrel to decide");
        assertThat(verdict("AV26101H", "100-1")).isEqualTo("UNDECIDED");
        hands.look(page, "table-undecided");

        page.locator(".plate .btn.main").click();
        page.locator("text=How it lies").click();
        page.locator("label.key:has-text('the mandrel')").click();
        page.locator("text=Keep it so").click();
        height(page, "MANDREL_LOW", "150,25");
        height(page, "MANDREL_HIGH", "149,30");
        page.locator("text=Reduce and judge").click();
        // atan(−0,95 / 300) less atan(0,30 / 300): −0,239°
        assertThat(twist(page))
                .contains("conforming")
                .doesNotContain("not conforming")
                .contains("0,239");
        assertThat(verdict("AV26101H", "100-1")).isEqualTo("CONFORMING");
        hands.look(page, "table-decided-by-the-mandrel");
    }

    private String twist(Page page) {
        return page.locator(".table-sheet tbody tr:has-text('Twist')").first().innerText();
    }

    /** All that one reading needs stands on one screen of the tablet, whichever way it is held. */
    private void needsNoScrolling(Page page) {
        var held = page.viewportSize();
        for (int[] size : new int[][] {{1280, 800}, {800, 1280}}) {
            page.setViewportSize(size[0], size[1]);
            assertThat(((Number) page.evaluate("document.documentElement.scrollHeight - innerHeight")).intValue())
                    .as("pixels below a screen of %d by %d", size[0], size[1])
                    .isLessThanOrEqualTo(0);
        }
        page.setViewportSize(held.width, held.height);
    }

    /** Keys a height at a spot, in whatever order, with the height gauge. */
    private void height(Page page, String spot, String mm) {
        page.locator("#f-value").waitFor();
        page.navigate(page.url().replaceFirst("[?].*", "") + "?spot=" + spot);
        page.locator("#f-gauge").selectOption("HG-1");
        page.locator("#f-value").fill(mm);
        page.locator(".key.enter").click();
        page.waitForURL(url -> !url.contains("spot="));
    }

    @Test
    @Order(3)
    void aNotConformingReadingHoldsTheFrameAndTheDecisionOfTheQaLeadFreesIt() {
        Page page = at("T7", "DO");
        scan(page, "110-F", "Torque 10 of 22: face plate");
        page.getByText("Open the torque sheet").click();
        page.locator("#f-bolt-gauge").selectOption("TW-1");
        page.getByText("Bolt 1 clicked").click();
        page.getByText("Bolt 3 clicked").waitFor();
        page.getByText("It did not click there").click();
        page.locator("#f-read-gauge").selectOption("TW-1");
        page.locator("#f-read-reading").fill("6,1");
        page.getByText("Keep what it reached").click();
        says(page, "to be torqued again");
        assertThat(page.locator(".now").innerText()).contains("not conforming").contains("NC-");
        hands.look(page, "torque-too-high");
        hands.open(page, "/station/AV26110F");
        page.locator(".banner").waitFor();
        assertThat(page.locator(".banner").innerText()).contains("On hold").contains("the decision on NC-");
        hands.look(page, "not-conforming-holds");
        String number = number("AV26110F");
        hands.open(page, "/nonconformances/" + number);
        assertThat(page.locator("main").innerText()).contains("You took part in operation 180");
        assertThat(page.locator("form[action$='decision']").count()).isZero();

        hands.open(qa, "/qa");
        hands.look(qa, "qa-desk");
        qa.locator("main a[href$='/nonconformances/" + number + "']").click();
        qa.locator("form[action$='decision'] [name=words]").fill("Wrench reset and checked; all four bolts done over.");
        hands.look(qa, "nonconformance");
        Chromium.send(qa, qa.getByText("Put the decision forward"));
        says(qa, "Decided");
        hands.look(qa, "nonconformance-decided");

        hands.open(page, "/station/AV26110F");
        assertThat(page.locator(".banner").count()).isZero();
        assertThat(page.locator(".plate button.main").innerText()).startsWith("Tick");
        hands.look(page, "freed-by-decision");
    }

    @Test
    @Order(4)
    void whoCausedItDoesNotDecideAndWhoStandsInDoes() {
        Page page = at("T4", "TR");
        scan(page, "120-B", "Shell width");
        page.getByText("Shell width").first().click();
        read(page, "CA-3", "", "68,3", "68,3", "68,4", "68,3");
        if (page.locator(".refusal").count() > 0) {
            page.getByText("Record it as typed").click();
        }
        page.locator(".banner").waitFor();
        String id = number("AV26120B");
        hands.open(qa, "/nonconformances/" + id);
        assertThat(qa.locator("main").innerText())
                .contains("Took part in it, do not decide")
                .contains("Tobiah Renn");
        assertThat(qa.locator("form[action$='decision']").count()).isZero();
        hands.look(qa, "causer-may-not-decide");
        Page owner = hands.desk("ME", DemoCast.OWNER_PASSWORD);
        hands.open(owner, "/nonconformances/" + id);
        owner.locator("form[action$='decision'] [name=words]")
                .fill("Faced again on the non-drive side, then read anew.");
        Chromium.send(owner, owner.getByText("Put the decision forward"));
        says(owner, "Decided");
        hands.open(page, "/station/AV26120B");
        assertThat(page.locator(".banner").count()).isZero();
        owner.context().close();
    }

    @Test
    @Order(5)
    void aFrameOnHoldIsRefusedAtCoat() {
        Page page = at("T6", "LM");
        hands.open(page, "/station/AV261075");
        says(page, "Frame is not on hold");
        hands.open(qa, "/station/AV261075/stop");
        qa.getByText("Hold: lot trace").click();
        says(qa, "On hold: lot trace");

        page.locator(".plate button.main").click();
        page.locator(".refusal").waitFor();
        String refused = page.locator(".refusal").innerText();
        assertThat(refused).contains("cannot begin").contains("lot trace").contains("Leave it where it is");
        assertThat(page.locator(".plate button[disabled]").innerText()).contains("cannot begin");
        assertThat(page.locator(".banner").innerText())
                .contains("On hold: lot trace")
                .contains("the QA lead");
        assertThat(state("AV261075", "150")).isEqualTo("WAITING");
        hands.look(page, "on-hold-refused-at-coat");
    }

    @Test
    @Order(6)
    void twoTabletsTickTheSameStepAndBothSeeTheSameTruth() {
        Page one = at("T1", "JA");
        Page two = at("T9", "DO");
        long lots = lotsUsed("AV26119Y");
        scansTheTubeThatIsCutAgain(one);
        for (Page page : new Page[] {one, two}) {
            hands.open(page, "/station/AV26119Y");
        }
        long before = onRecord();
        long at = System.currentTimeMillis() + 600;
        for (Page page : new Page[] {one, two}) {
            page.evaluate(
                    "at => { setTimeout(() => document.querySelector('.plate button.main').click(), at - Date.now()) }",
                    (double) at);
        }
        for (Page page : new Page[] {one, two}) {
            says(page, "Scan every tube, done");
            assertThat(page.locator(".plate h2").innerText()).contains("Certificate is on file");
        }
        assertThat(one.locator(".refusal").count() + two.locator(".refusal").count())
                .isEqualTo(1);
        Page told = one.locator(".refusal").count() == 1 ? one : two;
        assertThat(told.locator(".refusal").innerText())
                .contains("was not ticked again")
                .contains("It was ticked at");
        assertThat(ticks("AV26119Y", "Scan every tube")).isEqualTo(1);
        assertThat(lotsUsed("AV26119Y") - lots).as("lots that went into it").isEqualTo(1);
        assertThat(onRecord() - before).as("acts on record").isEqualTo(1);
        // The tube that was cut out of phase stays in the list of lots, as scrapped, beside the one that is cut
        // instead.
        hands.open(qa, "/frames/AV26119Y/made-of");
        assertThat(text(qa.locator("main")))
                .contains("TL-6061-188")
                .contains("scrapped")
                .doesNotContain("TL-6061-191");
        hands.look(qa, "recut-made-of");
        hands.look(one, "two-tablets-one");
        hands.look(two, "two-tablets-two");
    }

    @Test
    @Order(7)
    void aSupersededTravellerIsRefusedAndToldWhy() {
        Page page = at("T1", "JA");
        hands.open(page, "/station/AV26119Y");
        says(page, "Certificate is on file");
        long order = orders.byNumber("O-119").orElseThrow().id();
        long newer = revisionB(order);
        hands.open(qa, "/orders/" + order + "/newer-revision?designRevisionId=" + newer);
        qa.locator("select").all().forEach(verdict -> verdict.selectOption("STILL_VALID"));
        qa.locator("td input[type=text]").all().forEach(why -> why.fill("Not touched by revision B."));
        qa.locator("[name='secret']").fill(DemoCast.QA_PASSWORD);
        hands.look(qa, "newer-revision");
        qa.getByText("Release the newer revision").click();
        qa.waitForURL("**/frames/**");

        page.locator(".plate button.main").click();
        page.locator(".refusal").waitFor();
        assertThat(page.locator(".refusal").innerText())
                .contains("cannot be worked on")
                .contains("withdrawn");
        hands.look(page, "superseded-tablet");
        hands.open(page, "/station");
        scan(page, "AV26-119-Y/A", "Superseded");
        assertThat(page.locator(".wrong").innerText()).contains("revision A").contains("Go to revision B");
        assertThat(page.locator(".plate").count()).isZero();
        hands.look(page, "superseded-tag");
        page.getByText("Go to revision B").last().click();
        says(page, "as drawn, revision B");
    }

    @Test
    @Order(8)
    void theOwnerFindsWhyAnOrderIsLateOnAPhone() {
        clock.runFrom(DemoClock.MORNING.plus(Duration.ofDays(1)));
        Page phone = hands.desk("ME", DemoCast.OWNER_PASSWORD);
        phone.setViewportSize(390, 844);
        assertThat(phone.url()).endsWith("/run");
        Locator line = phone.locator(".run-row[href$='AV26112B']");
        assertThat(line.innerText())
                .contains("late")
                .contains("blast to coat ran out")
                .contains("rework loop 1");
        assertThat((int) phone.evaluate("document.documentElement.scrollWidth")).isLessThanOrEqualTo(390);
        hands.look(phone, "late-on-a-phone");
        line.click();
        phone.waitForURL("**/frames/**");
        hands.look(phone, "late-order");
        phone.context().close();
    }
}
