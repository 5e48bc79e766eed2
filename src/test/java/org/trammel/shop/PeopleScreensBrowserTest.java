package org.trammel.shop;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.WaitForSelectorState;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.trammel.shop.people.Credentials;
import org.trammel.shop.people.FirstStart;
import org.trammel.shop.people.Qualification;
import org.trammel.shop.people.Qualifications;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.Roster;
import org.trammel.shop.records.Act;
import org.trammel.shop.stations.Devices;
import org.trammel.shop.stations.Station;
import org.trammel.shop.stations.Stations;

/** The sheets of people in a real browser: they are worked by hand, looked through by axe and kept as pictures. */
@BrowserTest("trammel.test.database=people_screens")
class PeopleScreensBrowserTest {

    private static final String PIN = "402817";
    private static final String PASSWORD = "quiet lathe under rain";

    @LocalServerPort
    private int port;

    @Autowired
    private FirstStart firstStart;

    @Autowired
    private Roster roster;

    @Autowired
    private Credentials credentials;

    @Autowired
    private Qualifications qualifications;

    @Autowired
    private Devices devices;

    @Autowired
    private Stations stations;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private TestClock clock;

    private String token;
    private long owner;
    private long welder;
    private long aligner;
    private long newcomer;

    @BeforeAll
    void anInventedCrew() {
        owner = firstStart
                .make(
                        UUID.randomUUID(),
                        firstStart.newCode(),
                        "127.0.0.9",
                        new FirstStart.Entry("OO", "Odd Owner", PASSWORD, PIN))
                .id();
        welder = somebody("WW", "Wanda Welder", Role.WELDER);
        aligner = somebody("AA", "Alva Aligner", Role.ALIGNER);
        for (int i = 0; i < 8; i++) {
            somebody("S" + i, "Sven Station " + i, Role.STATION_WORKER);
        }
        newcomer = roster.takeOn(act(owner), "QQ", "Quinn Quality", EnumSet.of(Role.QA_LEAD))
                .id();
        qualifications.enter(
                act(owner),
                welder,
                new Qualification(
                        0,
                        0,
                        "WELD:AL:141",
                        "ISO 9606-2",
                        "Al",
                        "141",
                        new BigDecimal("0.7"),
                        new BigDecimal("3.0"),
                        null,
                        LocalDate.of(2025, 1, 1),
                        LocalDate.of(2026, 11, 30),
                        true,
                        LocalDate.of(2025, 9, 20),
                        null));
        stations.add(act(owner), new Station("3", "Jig & weld", 3, new BigDecimal("56"), false));
        stations.addJig(act(owner), "J3", "3", LocalDate.of(2026, 1, 1), LocalDate.of(2026, 3, 1));
        token = devices.enrol(
                        act(Act.SERVICE),
                        devices.admit(act(owner), "T3", List.of("3")).code())
                .orElseThrow()
                .token();
    }

    @Test
    void atATabletTwoPeopleSignOnByBadgeAndByNameAndChangePlaces() {
        Page page = tablet(1280, 800);
        page.navigate(base() + "/sign-on");
        Chromium.look(page, "sign-on");
        page.keyboard().type(badge(welder));
        page.keyboard().press("Enter");
        page.getByText("PIN of Wanda Welder").waitFor();
        assertThat(page.locator("[aria-current=true]").innerText()).contains("Wanda Welder");
        key(page, "4028");
        Chromium.look(page, "sign-on-pin");
        key(page, "17");
        page.locator(".key.enter").click();
        page.waitForURL("**/station");

        page.navigate(base() + "/sign-on");
        page.getByText("Second signs on").click();
        page.getByText("Alva Aligner").click();
        assertThat(page.locator("main").innerText()).contains("Who is the second?");
        key(page, PIN);
        page.locator(".key.enter").click();
        page.waitForURL("**/station");
        page.navigate(base() + "/sign-on");
        Chromium.look(page, "sign-on-two");
        page.getByText("Change places").click();
        page.waitForURL("**/station");
        page.navigate(base() + "/sign-on");
        assertThat(page.locator(".here").innerText())
                .contains("Alva Aligner works")
                .contains("Wanda Welder is second");
        page.getByText("Both sign off").click();
        page.locator(".here").waitFor(gone());
        page.context().close();
    }

    @Test
    void theKeypadIsOnTheSheetWithoutScrollingInBothDirections() {
        for (int[] size : new int[][] {{1280, 800}, {800, 1280}}) {
            Page page = tablet(size[0], size[1]);
            page.navigate(base() + "/sign-on?person=" + welder);
            assertThat(page.locator(".key.enter").boundingBox().y).isLessThan(size[1] - 92 - 60);
            assertThat(page.locator(".key").first().boundingBox().height).isGreaterThanOrEqualTo(76);
            Chromium.look(page, "sign-on-" + size[0]);
            page.context().close();
        }
    }

    @Test
    void aWrongPinIsRefusedOnTheSameSheetAndTheNameStaysChosen() {
        Page page = tablet(1280, 800);
        page.navigate(base() + "/sign-on?person=" + aligner);
        key(page, "718293");
        page.locator(".key.enter").click();
        page.getByRole(AriaRole.ALERT).waitFor();
        assertThat(page.locator("main").innerText()).contains("PIN of Alva Aligner");
        Chromium.look(page, "sign-on-wrong");
        page.context().close();
    }

    @Test
    void aDeskSignsOnByPasswordAndItsSheetsAreLookedThrough() {
        BrowserContext desk = Chromium.window(1440, 900);
        Page page = desk.newPage();
        page.navigate(base() + "/shop/people");
        Chromium.look(page, "sign-on-desk");
        page.getByLabel("Initials").fill("oo");
        page.getByLabel("Password").fill(PASSWORD);
        page.locator("main button").click();
        page.waitForURL("**/shop/people");
        Chromium.look(page, "people");
        for (String path : List.of("/people/" + welder, "/people/" + welder + "/badge", "/stations")) {
            page.navigate(base() + "/shop" + path);
            Chromium.look(page, path.substring(1).replaceAll("\\d+", "one").replace('/', '-'));
        }
        page.navigate(base() + "/set-up");
        Chromium.look(page, "set-up");
        page.navigate(base() + "/own-secrets");
        Chromium.look(page, "own-secrets");
        page.navigate(base() + "/shop/people/" + newcomer);
        page.locator("#f-s-secret").fill(PASSWORD);
        page.getByText("Give a new PIN").click();
        assertThat(page.locator(".given").innerText()).matches("\\d{6}");
        Chromium.look(page, "given-pin");
        page.navigate(base() + "/enrol");
        Chromium.look(page, "enrol");
        desk.close();
    }

    private Page tablet(int width, int height) {
        return Chromium.tablet(base(), token, width, height);
    }

    private static void key(Page page, String digits) {
        for (String digit : digits.split("")) {
            page.locator(".key[data-key='" + digit + "']").click();
        }
    }

    private static Locator.WaitForOptions gone() {
        return new Locator.WaitForOptions().setState(WaitForSelectorState.DETACHED);
    }

    private long somebody(String initials, String name, Role role) {
        long id = roster.takeOn(act(owner), initials, name, EnumSet.of(role)).id();
        String given = credentials.resetPin(act(owner), id);
        credentials.keepPin(act(id), given, PIN);
        return id;
    }

    private String badge(long person) {
        return jdbc.sql("select badge from person where id = ?")
                .param(person)
                .query(String.class)
                .single();
    }

    private Act act(long by) {
        clock.pass(Duration.ofMillis(1));
        return new Act(UUID.randomUUID(), by, null, clock.instant(), null);
    }

    private String base() {
        return "http://localhost:" + port;
    }
}
