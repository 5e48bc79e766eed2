package org.trammel.shop.handwork;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.ApplicationContext;
import org.trammel.calc.marks.SerialNumber;
import org.trammel.shop.BrowserTest;
import org.trammel.shop.Chromium;
import org.trammel.shop.TestCrew;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.gauges.GaugeRange;
import org.trammel.shop.gauges.GaugeRegister;
import org.trammel.shop.gauges.NewGauge;
import org.trammel.shop.materials.MetalFamily;
import org.trammel.shop.people.FirstStart;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.Roster;
import org.trammel.shop.routes.Proof;
import org.trammel.shop.routes.StepSheet;
import org.trammel.shop.stations.Station;
import org.trammel.shop.stations.Stations;
import org.trammel.shop.travellers.Bench;
import org.trammel.shop.travellers.Travellers;

/** A step that rests on more than its tick takes three taps at most, counted by the browser from the sheet of the frame on. */
@BrowserTest("trammel.test.database=proof_taps")
class ProofTapsBrowserTest {

    private static final String PASSWORD = "quiet lathe under rain";
    private static final int MOST = 3;

    @LocalServerPort
    private int port;

    @Autowired
    private FirstStart firstStart;

    @Autowired
    private Roster roster;

    @Autowired
    private Stations stations;

    @Autowired
    private TestCrew crew;

    @Autowired
    private Tools tools;

    @Autowired
    private GaugeRegister gauges;

    @Autowired
    private Bench bench;

    @Autowired
    private Travellers travellers;

    @Autowired
    private ApplicationContext beans;

    private Page page;
    private long keeper;
    private WholeShop shop;

    @BeforeAll
    void opens() {
        keeper = firstStart
                .make(
                        UUID.randomUUID(),
                        firstStart.newCode(),
                        "127.0.0.9",
                        new FirstStart.Entry("QL", "Quinn Lead", PASSWORD, "402817"))
                .id();
        roster.giveRoles(crew.act(keeper), keeper, EnumSet.of(Role.OWNER, Role.QA_LEAD));
        stations.add(crew.act(keeper), new Station("2", "Prep and clean", 2, new BigDecimal("30"), false));
        tool("BR-AL-1", ToolKind.BRUSH, "stainless hand brush", MetalFamily.ALUMINIUM);
        tool("BR-AL-2", ToolKind.BRUSH, "stainless brush, narrow", MetalFamily.ALUMINIUM);
        tool("BR-ST-1", ToolKind.BRUSH, "steel brush", MetalFamily.STEEL);
        tool("CL-AL-1", ToolKind.CLEANER, "acetone, spray bottle", MetalFamily.ALUMINIUM);
        tool("CT-AL-1", ToolKind.CLOTH, "lint-free cloths, box", MetalFamily.ALUMINIUM);
        gauge("TH-1", range("HYGRO", "°C"), range("HYGRO", "%RH"));
        gauge("IR-1", range("IR-TEMP", "°C"));
        shop = new WholeShop(beans);
        page = Chromium.desk(base(), "QL", PASSWORD);
        page.context().addInitScript("""
                addEventListener('pointerdown', () => sessionStorage.setItem('taps', 1 + Number(sessionStorage.getItem('taps') ?? 0)), true);
                """);
    }

    @AfterAll
    void closes() {
        page.context().close();
    }

    @Test
    void eachStepWithAProofTakesThreeTapsAtMost() {
        WholeShop.Frame frame = shop.frame(SmallRoute.of(
                        SmallRoute.op("050")
                                .at("2")
                                .step(proven("Metal measured, warm and dry", Proof.WARM_DRY))
                                .step(proven("Wiped with residue-free solvent", Proof.CLEANED))
                                .step(proven("Brushed, aluminium brush only", Proof.BRUSHED))
                                .step(proven("Water runs off in one film", Proof.WATER_BREAK))
                                .step("Clean gloves from here")
                                .sheet(),
                        SmallRoute.op("140")
                                .at("2")
                                .step(proven("Serial marked", Proof.SERIAL_STRUCK))
                                .step(proven("Second person keys the serial", Proof.SERIAL_READ))
                                .sheet(),
                        SmallRoute.op("999").step("on").sheet())
                .sheet());
        page.setViewportSize(800, 1280);

        open(frame);
        sizes("proof-air");
        keyed("#f-air", "21");
        page.keyboard().press("Tab");
        page.keyboard().type("68");
        page.keyboard().press("Tab");
        page.keyboard().type("17,2");
        // which meter of several is said once; the sheet offers it from then on
        page.locator("#f-metalGauge").selectOption("IR-1");
        record();
        assertThat(page.locator(".refusal")).containsText("3 K are asked for");
        Chromium.look(page, "proof-air-damp");
        open(frame);
        keyed("#f-air", "21");
        page.locator("#f-humidity").click();
        page.keyboard().type("50");
        page.locator("#f-metal").click();
        page.keyboard().type("19,5");
        record();
        spent("Wiped with residue-free solvent");

        open(frame);
        sizes("proof-cleaned");
        pick("CL-AL-1");
        pick("CT-AL-1");
        record();
        spent("Brushed, aluminium brush only");

        open(frame);
        assertThat(page.locator(".proof")).not().containsText("BR-ST-1");
        keyed("#f-tool", "BR-ST-1");
        page.keyboard().press("Enter");
        assertThat(page.locator(".refusal")).containsText("BR-ST-1, steel brush, is kept for steel");
        open(frame);
        pick("BR-AL-2");
        record();
        spent("Water runs off in one film");

        open(frame);
        sizes("proof-water");
        pick("broken into drops");
        page.locator(".parts .pick").first().click();
        record();
        assertThat(page.locator(".refusal")).containsText("The film broke into drops: every part");
        spent("Wiped with residue-free solvent");
        shop.clock().pass(Duration.ofMinutes(2));
        open(frame);
        pick("CL-AL-1");
        pick("CT-AL-1");
        record();
        spent("Brushed, aluminium brush only");
        open(frame);
        pick("BR-AL-2");
        record();
        spent("Water runs off in one film");
        open(frame);
        pick("in one film");
        record();
        spent("Clean gloves from here");
        page.navigate(base() + "/frames/" + frame.serial());
        assertThat(page.locator("main")).containsText("water film broke, to be cleaned again: every part");
        Chromium.picture(page, "proof-story");
        open(frame);
        Chromium.send(page, page.locator(".plate .btn.main"));
        long step = travellers.sheet(frame.travellerId()).at().steps().get(0).stepId();
        bench.tick(crew.act(crew.hire(Role.STATION_WORKER)), List.of(step), null, null);

        open(frame);
        sizes("proof-serial");
        keyed(
                "#f-serial",
                ((SerialNumber.Result.Whole) SerialNumber.read(frame.serial()))
                        .serial()
                        .shown());
        record();
        spent("on");
    }

    @Test
    void framesThatAreCleanedTogetherAreProvenFromTheList() {
        WholeShop.Frame one = together();
        WholeShop.Frame two = together();
        page.setViewportSize(1280, 800);
        page.navigate(base() + "/station?at=2");
        page.evaluate("sessionStorage.setItem('taps', 0)");
        Chromium.look(page, "proof-together");
        page.locator(".batch .pick:has-text('BR-AL-1')").click();
        Chromium.send(page, page.locator(".batch .btn"));
        assertThat(page.locator(".told")).containsText("2 frames are ticked.");
        assertThat(taps()).isLessThanOrEqualTo(MOST);
        for (WholeShop.Frame frame : List.of(one, two)) {
            assertThat(travellers.sheet(frame.travellerId()).at().line().code()).isEqualTo("999");
        }
    }

    private WholeShop.Frame together() {
        return shop.frame(SmallRoute.of(
                        SmallRoute.op("050")
                                .at("2")
                                .together()
                                .step(proven("Brushed, aluminium brush only", Proof.BRUSHED))
                                .sheet(),
                        SmallRoute.op("999").step("on").sheet())
                .sheet());
    }

    private void open(WholeShop.Frame frame) {
        page.navigate(base() + "/station/" + frame.serial());
        page.evaluate("sessionStorage.setItem('taps', 0)");
    }

    /** The field is keyed without a tap: it has the focus as the sheet opens. */
    private void keyed(String field, String value) {
        assertThat(page.locator(field)).isFocused();
        page.keyboard().type(value);
    }

    private void pick(String code) {
        page.locator(".proof .pick:has-text('" + code + "')").click();
    }

    private void record() {
        Chromium.send(page, page.locator(".proof .btn.main"));
    }

    private int taps() {
        return (Integer) page.evaluate("Number(sessionStorage.getItem('taps'))");
    }

    private void spent(String next) {
        assertThat(page.locator(".plate h2")).hasText(next);
        assertThat(taps()).as("taps until " + next).isBetween(1, MOST);
    }

    private static StepSheet proven(String text, Proof proof) {
        return new StepSheet(text, "", false, false, null, null, null, proof);
    }

    private void tool(String code, ToolKind kind, String what, MetalFamily family) {
        tools.register(crew.act(keeper), code, kind, what, family, false);
    }

    private static GaugeRange range(String kind, String unit) {
        return new GaugeRange(
                kind,
                unit,
                new BigDecimal("-40"),
                new BigDecimal("200"),
                new BigDecimal("0.1"),
                new BigDecimal("0.2"),
                null,
                "from memory");
    }

    private void gauge(String code, GaugeRange... ranges) {
        gauges.register(crew.act(keeper), code, new NewGauge("meter", null, "prep", false, List.of(ranges)));
        gauges.calibrated(
                crew.act(keeper), code, LocalDate.of(2026, 1, 1), LocalDate.of(2026, 12, 31), "C-1", null, "well");
    }

    /** The tablet both ways, a phone and a desk. */
    private void sizes(String name) {
        for (int[] size :
                List.of(new int[] {1280, 800}, new int[] {390, 844}, new int[] {1440, 900}, new int[] {800, 1280})) {
            page.setViewportSize(size[0], size[1]);
            Chromium.look(page, name + "-" + size[0]);
            assertThat((Integer) page.evaluate("() => document.documentElement.scrollWidth"))
                    .isLessThanOrEqualTo(size[0]);
        }
    }

    private String base() {
        return "http://localhost:" + port;
    }
}
