package org.trammel.shop.ovens;

import static org.assertj.core.api.Assertions.assertThat;
import static org.trammel.shop.floor.SmallRoute.op;

import com.google.gson.JsonObject;
import com.microsoft.playwright.CDPSession;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
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
import org.trammel.calc.thermal.Judged;
import org.trammel.calc.thermal.ThermocoupleRole;
import org.trammel.shop.BrowserTest;
import org.trammel.shop.Chromium;
import org.trammel.shop.TestClock;
import org.trammel.shop.TestCrew;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.people.Credentials;
import org.trammel.shop.people.FirstStart;
import org.trammel.shop.people.Qualification;
import org.trammel.shop.people.Qualifications;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.Roster;
import org.trammel.shop.routes.Signer;
import org.trammel.shop.settings.Settings;

/**
 * The record of run HT-0226, with decimal commas, a row that is there twice and a gap of four minutes: loaded and signed by
 * two, read in with a look at how it was read, taken, and released by the QA lead, in a real browser.
 */
@BrowserTest("trammel.test.database=oven_screens")
class OvenBrowserTest {

    private static final String PASSWORD = "quiet lathe under rain";
    private static final String PIN = "402817";
    private static final String HEAT_PIN = "608253";
    private static final String SECOND_PIN = "179463";
    private static final Instant BEGAN = Instant.parse("2026-03-10T17:00:00Z");
    private static final Path RECORDS = Path.of("src", "main", "resources", "demo");

    @LocalServerPort
    private int port;

    @Autowired
    private ApplicationContext beans;

    @Autowired
    private TestClock clock;

    @Autowired
    private TestCrew crew;

    @Autowired
    private Runs runs;

    private Page page;
    private long heat;
    private long second;
    private WholeShop.Frame frame;
    private WholeShop shop;

    @BeforeAll
    void opens() {
        clock.setTo(Instant.parse("2026-03-10T15:00:00Z"));
        long keeper = beans.getBean(FirstStart.class)
                .make(
                        UUID.randomUUID(),
                        beans.getBean(FirstStart.class).newCode(),
                        "127.0.0.9",
                        new FirstStart.Entry("QL", "Quinn Lead", PASSWORD, PIN))
                .id();
        beans.getBean(Roster.class).giveRoles(crew.act(keeper), keeper, EnumSet.of(Role.OWNER, Role.QA_LEAD));
        beans.getBean(Settings.class)
                .change(crew.act(keeper), "shop.zone", "Europe/Stockholm", "the owner's word", "first set-up");
        heat = crew.hire(Role.HEAT_TREATER);
        second = crew.hire(Role.STATION_WORKER);
        Credentials credentials = beans.getBean(Credentials.class);
        credentials.keepPin(crew.act(heat), "", HEAT_PIN);
        credentials.keepPin(crew.act(second), "", SECOND_PIN);
        beans.getBean(Qualifications.class)
                .enter(
                        crew.act(keeper),
                        heat,
                        Qualification.of(
                                "OVEN", "shop rule", LocalDate.of(2025, 1, 1), LocalDate.of(2027, 1, 1), false));
        oven(keeper);
        shop = new WholeShop(beans);
        frame = shop.frame(SmallRoute.of(
                        op("110a").step("in the oven").hold(Signer.SECOND).sheet(),
                        op("120").step("on").sheet())
                .sheet());
    }

    private String base() {
        return "http://localhost:" + port;
    }

    private void oven(long keeper) {
        OvenRegister register = beans.getBean(OvenRegister.class);
        BigDecimal size = new BigDecimal("1000");
        register.register(
                crew.act(keeper),
                "OV-1",
                new NewOven("ageing", EnumSet.of(Purpose.AGEING), new BigDecimal("6"), size, size, size, size));
        Instant tested = clock.instant().minus(Duration.ofDays(3));
        LocalDate due = LocalDate.of(2026, 12, 31);
        BigDecimal at = new BigDecimal("177");
        register.tested(
                crew.act(keeper),
                "OV-1",
                NewTest.survey(tested, due, new BigDecimal("-2.1"), new BigDecimal("2.8"), at, "R-1"));
        for (String one : List.of("TC-05", "TC-07", "TC-08")) {
            register.fit(
                    crew.act(keeper),
                    "OV-1",
                    one,
                    one.equals("TC-05") ? ThermocoupleRole.CONTROL : ThermocoupleRole.LOAD);
            register.tested(
                    crew.act(keeper),
                    "OV-1",
                    NewTest.accuracy(one, tested, due, BigDecimal.ZERO, BigDecimal.ONE, at, "R-2"));
        }
        Programmes programmes = beans.getBean(Programmes.class);
        Programme drawn = programmes.draw(
                crew.act(keeper),
                "P-AGE-6061",
                Purpose.AGEING,
                new NewProgramme(
                        "to T6",
                        List.of("AL6061"),
                        List.of("110a"),
                        List.of(ProgrammeStep.of(at, new BigDecimal("5"), new BigDecimal("8"))),
                        null,
                        at,
                        new BigDecimal("7.5"),
                        null,
                        null,
                        null,
                        null,
                        false,
                        "tube maker's sheet, invented"));
        programmes.approve(crew.act(keeper), drawn.revisionId(), drawn.version());
    }

    @AfterAll
    void closes() {
        page.context().close();
    }

    private void open(String path) {
        page.navigate(base() + path);
    }

    private void sign(String as, long who, String pin, String says) {
        open("/loads/HT-0226");
        page.locator("select[name=as]").selectOption(as);
        page.locator("form[action$='/signatures'] select[name=signer]").selectOption("" + who);
        page.locator("form[action$='/signatures'] input[name=pin]").fill(pin);
        page.locator("form[action$='/signatures'] button").click();
        page.getByText(says).first().waitFor();
    }

    private void upload(String file, String says) {
        open("/loads/HT-0226");
        page.locator("input[name=file]").setInputFiles(RECORDS.resolve(file));
        Chromium.send(page, page.locator("form[action$='/record'] button"));
        page.getByText(says).first().waitFor();
    }

    /** Over a network so slow that the file is longer on its way than anything else is waited for. */
    private void slowly(String file, String says) {
        open("/loads/HT-0226");
        page.locator("input[name=file]").setInputFiles(RECORDS.resolve(file));
        CDPSession network = page.context().newCDPSession(page);
        network.send("Network.enable");
        throttle(network, 800);
        page.locator("form[action$='/record'] button").click();
        PlaywrightAssertions.assertThat(page.locator("form[action$='/record'] progress"))
                .isVisible();
        assertThat(page.locator(".sent-so-far").innerText()).containsAnyOf("MB sent", "It is being read");
        page.getByText(says).first().waitFor(new Locator.WaitForOptions().setTimeout(90_000));
        throttle(network, -1);
        network.detach();
    }

    private static void throttle(CDPSession network, int bytesASecond) {
        JsonObject conditions = new JsonObject();
        conditions.addProperty("offline", false);
        conditions.addProperty("latency", 0);
        conditions.addProperty("downloadThroughput", -1);
        conditions.addProperty("uploadThroughput", bytesASecond);
        network.send("Network.emulateNetworkConditions", conditions);
    }

    private String main() {
        return page.locator("main").innerText().replaceAll("\\h+", " ");
    }

    @Test
    void theRecordOfTheStoryIsReadLookedAtTakenAndReleasedByWhoMay() {
        Loads loads = beans.getBean(Loads.class);
        OvenRuns ovenRuns = beans.getBean(OvenRuns.class);
        clock.setTo(BEGAN.minus(Duration.ofMinutes(30)));
        loads.open(crew.act(heat), "HT-0226", "OV-1", "P-AGE-6061", "head tube down");
        loads.load(crew.act(heat), "HT-0226", List.of(frame.serial()), new Loads.Ready("upper rack", true, true, null));
        page = Chromium.desk(base(), "QL", PASSWORD);
        sign("HEAT_TREATER", heat, "000000", "Not signed.");
        sign("HEAT_TREATER", heat, HEAT_PIN, "as heat treater");
        sign("SECOND", second, SECOND_PIN, "as independent second");
        assertThat(runs.byCode("HT-0226").state()).isEqualTo(RunState.SIGNED);
        clock.setTo(BEGAN);
        ovenRuns.start(crew.act(heat), "HT-0226");
        shop.tickAll(frame, heat);
        clock.setTo(BEGAN.plus(Duration.ofMinutes(600)));
        ovenRuns.stop(crew.act(heat), "HT-0226");
        page.context().close();
        page = Chromium.desk(base(), "QL", PASSWORD);

        // The record of another run is not read as this one's.
        upload("HT-0225.csv", "The record was not read.");
        slowly("HT-0226.csv", "Read, and not taken yet");
        assertThat(main())
                .contains("decimal")
                .contains("1 repeated another and were left out")
                .contains("No readings from");
        Chromium.picture(page, "oven-record-preview");
        assertThat(runs.byCode("HT-0226").judged())
                .as("not judged before it is taken")
                .isNull();
        Chromium.send(page, page.getByText("Take HT-0226.csv", new Page.GetByTextOptions().setExact(true)));
        page.getByText("Decide the run").first().waitFor();
        assertThat(runs.byCode("HT-0226").judged()).isEqualTo(Judged.CONFORMING);
        assertThat(main()).contains("8,3 h").contains("8,73 h");
        Chromium.requireNothingForAxe(page, "a record that was taken");
        page.locator("form[action$='/decision'] input[name=pin]").fill(PIN);
        Chromium.send(page, page.locator("form[action$='/decision'] button"));
        page.getByText("as QA lead").first().waitFor();
        assertThat(runs.byCode("HT-0226").state()).isEqualTo(RunState.DECIDED);
        assertThat(runs.byCode("HT-0226").frames())
                .singleElement()
                .satisfies(one -> assertThat(one.state()).isEqualTo(FrameState.RELEASED));
        Chromium.picture(page, "oven-run-released");
    }
}
