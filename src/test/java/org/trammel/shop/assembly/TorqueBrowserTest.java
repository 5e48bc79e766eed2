package org.trammel.shop.assembly;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import java.math.BigDecimal;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.shop.BrowserTest;
import org.trammel.shop.Chromium;
import org.trammel.shop.floor.AtOneStation;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.gauges.GaugeRange;
import org.trammel.shop.travellers.Bench;
import org.trammel.shop.travellers.HoldReason;
import org.trammel.shop.travellers.HoldScope;
import org.trammel.shop.travellers.Holds;
import org.trammel.shop.travellers.Travellers;

/** The torques of a bicycle in a real browser: a target refused, bolts crosswise, a witness who is not the one who did it. */
@BrowserTest("trammel.test.database=torque_screens")
class TorqueBrowserTest extends AtOneStation {

    @Autowired
    private Travellers travellers;

    private WholeShop.Frame frame;
    private long traveller;

    TorqueBrowserTest() {
        super("Assembly");
    }

    @BeforeAll
    void opens() {
        tool("WRENCH-1", "2", "14");
        tool("WRENCH-2", "10", "60");
        frame = new WholeShop(beans)
                .frame(SmallRoute.of(
                                SmallRoute.op("180")
                                        .step("parts against the order")
                                        .sheet(),
                                SmallRoute.op("190").step("ridden").sheet())
                        .sheet());
        traveller = travellers.inForce(frame.serial(), "").travellerId();
    }

    @Test
    void aTargetThatDoesNotFitIsRefusedAndTheDoerIsNoWitness() {
        sheet();
        page.navigate(base() + "/components/" + traveller);
        page.locator("#f-component").selectOption("STEM-1");
        Chromium.send(page, page.locator("button:has-text('Give it')"));
        page.locator("main:has-text('face plate 5,5 N·m')").waitFor();
        sizes("frame-components");
        String station = base() + "/station/" + frame.serial() + "?here=true";
        page.navigate(station);
        Chromium.send(page, page.locator(".plate .btn.main"));
        page.navigate(station);
        assertThat(page.locator(".plate").innerText()).contains("Torque 1 of 2: face plate");
        Chromium.look(page, "torque-plate");
        page.locator("text=Open the torque sheet").click();
        sizes("torque-first");
        bolt("5,9");
        assertThat(page.locator(".refusal").innerText())
                .contains("5,55 to 6,25 N·m", "5 to 6 are allowed", "Set it to 5,32 to 5,66 N·m");
        Chromium.look(page, "torque-refused");
        bolt("5,5");
        for (int i = 1; i < 8; i++) {
            bolt(null);
        }
        page.locator("main:has-text('To be witnessed, 1')").waitFor();
        Chromium.look(page, "torque-witness");
        assertThat(page.locator("#f-signer option").allInnerTexts()).doesNotContain("Quinn Lead");
        String torques = page.url().replaceFirst("[?].*", "");
        page.locator(".fasteners a:has-text('steerer bolts')").click();
        assertThat(page.locator(".now").innerText()).contains("Left-hand thread", "8,3 kN", "4 to 6");
        page.navigate(base() + "/own-parts/" + traveller);
        sizes("own-parts");
        page.navigate(base() + "/frames/" + frame.serial() + "/build-record");
        assertThat(page.locator("main").innerText()).contains("Build record", "What the record lacks", "face plate");
        Chromium.picture(page, "build-record");
        page.navigate(torques + "/paper");
        assertThat(page.locator("main").innerText()).contains("1 3 2 4 in 60 100 %", "LEFT-HAND THREAD");
        Chromium.picture(page, "torque-paper");
        page.navigate(station);
        assertThat(page.locator(".plate").innerText()).contains("Torque 2 of 2: steerer bolts");
    }

    @Test
    void aFrameIsNotJoinedWhileItsSwingArmIsHeldNorPackedUntilItWasRidden() {
        rules();
        WholeShop shop = new WholeShop(beans);
        WholeShop.Frame whole = shop.frame(SmallRoute.of(
                        SmallRoute.op("170").joins().step("joined").sheet(),
                        SmallRoute.op("195").step("looked over").sheet(),
                        SmallRoute.op("200").step("in the box").sheet())
                .child("FT", SmallRoute.of(SmallRoute.op("150").step("coat").sheet()))
                .child("SA", SmallRoute.of(SmallRoute.op("150").step("coat").sheet()))
                .sheet());
        long hold = 0;
        for (String part : List.of("FT", "SA")) {
            long id = travellers.inForce(whole.serial(), part).travellerId();
            beans.getBean(Bench.class)
                    .tick(
                            crew.act(keeper),
                            List.of(travellers.sheet(id).at().steps().get(0).stepId()),
                            null,
                            null);
            if (part.equals("SA")) {
                hold = beans.getBean(Holds.class)
                        .place(
                                crew.act(keeper),
                                new Holds.Request(
                                        id, HoldScope.PART, null, HoldReason.MATERIAL, "a bearing", "", Set.of()));
            }
        }
        long join = shop.at(whole).line().operationId();
        page.navigate(base() + "/builds/" + join);
        join(whole);
        assertThat(page.locator(".refusal").innerText()).contains("on hold, material missing", "a bearing");
        Chromium.look(page, "join-held");
        beans.getBean(Holds.class).lift(crew.act(keeper), hold, "came");
        join(whole);
        page.locator("main:has-text('0,48 mm')").waitFor();
        sizes("join");
        shop.tickAll(whole, keeper);
        page.navigate(base() + "/builds/" + shop.at(whole).line().operationId());
        for (String brake : List.of("FRONT", "REAR")) {
            page.locator("#f-bed-brake").selectOption(brake);
            page.locator("#f-bed-stops").fill("20");
            page.locator("#f-bed-clear").check();
            Chromium.send(page, page.locator("button:has-text('Keep the stops')"));
        }
        page.locator("#f-ride-rider").selectOption("" + keeper);
        page.locator("#f-ride-words").fill("tracks straight, no noise");
        page.locator("#f-ride-good").check();
        page.locator("#f-ride-pin").fill("402817");
        Chromium.send(page, page.locator("button:has-text('Sign the ride')"));
        page.locator("main:has-text('tracks straight')").waitFor();
        Chromium.send(page, page.locator("button:has-text('It is there')").first());
        sizes("final-check");
        shop.tickAll(whole, keeper);
        page.navigate(base() + "/builds/" + shop.at(whole).line().operationId());
        assertThat(page.locator("main").innerText()).contains("not whole", "torques: none");
        sizes("packing");
    }

    private void join(WholeShop.Frame whole) {
        page.locator("#f-join-first").fill(whole.serial() + "-FT");
        page.locator("#f-join-second").fill(whole.serial() + "-SA");
        page.locator("#f-join-words").fill("falls by its own weight");
        Chromium.send(page, page.locator("button:has-text('Join them')"));
    }

    private void rules() {
        page.navigate(base() + "/shop/build-rules");
        page.locator("#f-finalOperations").fill("195");
        page.locator("#f-countryItems").fill("* | bell");
        page.locator("#f-source").fill("procedure");
        page.locator("#f-secret").fill(PASSWORD);
        sizes("build-rules");
        Chromium.send(page, page.locator("button:has-text('Put them in force')"));
        page.locator("h1").waitFor();
    }

    private void sheet() {
        page.navigate(base() + "/shop/components/new");
        for (String[] one : List.of(
                new String[] {"code", "STEM-1"},
                new String[] {"what", "stem 50 mm"},
                new String[] {"operation", "180"},
                new String[] {"name0", "face plate"},
                new String[] {"bolts0", "4"},
                new String[] {"least0", "5"},
                new String[] {"target0", "5,5"},
                new String[] {"most0", "6"},
                new String[] {"thread0", "5"},
                new String[] {"passes0", "60 100"},
                new String[] {"name1", "steerer bolts"},
                new String[] {"least1", "4"},
                new String[] {"target1", "5"},
                new String[] {"most1", "6"},
                new String[] {"thread1", "5"},
                new String[] {"source", "its own sheet"},
                new String[] {"edition", "2"})) {
            page.locator("#f-" + one[0]).fill(one[1]);
        }
        page.locator("#f-kind").selectOption("STEM");
        page.locator("#f-crosswise0").check();
        page.locator("#f-greased1").check();
        page.locator("#f-leftHand1").check();
        sizes("component-form");
        Chromium.send(page, page.locator("button:has-text('Keep the draft')"));
        page.locator("h1:has-text('STEM-1 A')").waitFor();
        page.locator("#f-secret").fill(PASSWORD);
        Chromium.send(page, page.locator("button:has-text('Put STEM-1 A in force')"));
        page.locator("header:has-text('in force')").waitFor();
        Chromium.look(page, "component");
        page.navigate(base() + "/shop/components");
        Chromium.look(page, "components");
    }

    private void bolt(String target) {
        Locator tool = page.locator("#f-bolt-gauge");
        if (tool.inputValue().isEmpty()) {
            tool.selectOption("WRENCH-1");
        }
        if (target != null) {
            page.locator("#f-bolt-target").fill(target);
        }
        Chromium.send(page, page.locator(".clicked .btn.main"));
        page.locator("main.torques").waitFor();
    }

    private void tool(String code, String from, String to) {
        gauge(
                code,
                new GaugeRange(
                        "TORQUE",
                        "N·m",
                        new BigDecimal(from),
                        new BigDecimal(to),
                        new BigDecimal("0.1"),
                        null,
                        new BigDecimal("3"),
                        "half of what ISO 6789-1 permits"));
    }
}
