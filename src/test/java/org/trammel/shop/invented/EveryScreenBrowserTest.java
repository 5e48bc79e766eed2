package org.trammel.shop.invented;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.Cookie;
import com.microsoft.playwright.options.Media;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.trammel.shop.BrowserTest;
import org.trammel.shop.Chromium;
import org.trammel.shop.invented.Screen.Moment;
import org.trammel.shop.people.FirstStart;

/**
 * A new shop in a real browser: somebody who never saw the program sets it up; then every screen of the table is opened
 * with the one odd frame in work, looked through by axe in both themes, measured at the widths it is used at and kept as
 * a picture.
 */
@BrowserTest({"trammel.test.database=every_screen", "spring.test.mockmvc.print=none"})
@AutoConfigureMockMvc
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class EveryScreenBrowserTest {

    private static final int GLOVES = 64;
    private static final int DESK = 48;

    /** Rows of the run of the shop are narrower so that all orders stand on one sheet; each is one link as wide as it. */
    private static final int ROW = 24;

    @LocalServerPort
    private int port;

    @Autowired
    private MockMvc mvc;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private FirstStart firstStart;

    private final List<String> faults = new ArrayList<>();

    @Test
    @Order(1)
    void somebodyWhoNeverSawItSetsUpANewShop() {
        try (BrowserContext desk = Chromium.window(1440, 900)) {
            Page page = desk.newPage();
            page.navigate(base() + "/");
            assertThat(page.url()).endsWith("/first-owner");
            faults.addAll(Looked.through(page, "first-owner"));
            fill(page, "code", firstStart.newCode());
            fill(page, "initials", "zb");
            fill(page, "name", InventedShop.OWNER);
            for (String field : List.of("password", "passwordAgain")) {
                fill(page, field, InventedShop.PASSWORD);
            }
            for (String field : List.of("pin", "pinAgain")) {
                fill(page, field, InventedShop.PIN);
            }
            page.getByText("Make me the owner").click();
            page.waitForURL("**/set-up");
            assertThat(page.locator(".set-up .row").count()).isEqualTo(13);
            faults.addAll(Looked.through(page, "set-up-empty"));

            part(page, "Stations", "/shop/stations");
            for (int i = 1; i <= 9; i++) {
                Locator form = form(page, "/shop/stations");
                form.locator("[name=code]").fill("" + i);
                form.locator("[name=name]").fill("Place " + i);
                form.locator("[name=wipLimit]").fill("3");
                form.locator("[name=hours]").fill("37,5");
                form.locator("button").click();
                page.locator("form[action='/shop/stations/" + i + "']").waitFor();
            }
            Locator jigs = form(page, "/shop/stations/3/jigs");
            open(jigs);
            jigs.locator("[name=jig]").fill("j1");
            jigs.locator("button").click();
            page.locator(".jig").waitFor();
            Locator tablets = form(page, "/shop/tablets");
            tablets.locator("[name=name]").fill("t1");
            tablets.locator("#ts-1").check();
            tablets.locator("[name=secret]").fill(InventedShop.PASSWORD);
            tablets.locator("button").click();
            String code = page.locator(".given").innerText();
            faults.addAll(Looked.through(page, "tablet-code"));
            enrol(code);

            part(page, "People", "/shop/people");
            Locator crew = form(page, "/shop/people");
            crew.locator("[name=initials]").fill("qx");
            crew.locator("[name=name]").fill("Quim O'Xavi");
            crew.locator("[value=QA_LEAD]").check();
            crew.locator("[value=WELDER]").check();
            crew.locator("[name=secret]").fill(InventedShop.PASSWORD);
            crew.locator("button").click();
            page.waitForURL(url -> url.matches(".*/shop/people/\\d+"));
            faults.addAll(Looked.through(page, "person-new"));
            Locator held = page.locator("form[action$='/qualifications']");
            held.locator("[name=kind]").fill("WELD:TI:141");
            held.locator("[name=standard]").fill("ISO 9606-5:2000");
            held.locator("[name=issuedOn]").fill("2026-01-10");
            held.locator("button").click();
            page.locator("td b:text-is('weld titanium')").waitFor();

            part(page, "Settings", "/shop/settings");
            page.navigate(base() + "/shop/settings/shop.name");
            fill(page, "value", "Räder & Söhne");
            fill(page, "source", "the sign over our door");
            fill(page, "reason", "first set-up");
            page.getByText("Put it in force").click();
            page.getByText("the sign over our door").first().waitFor();

            part(page, "Gauges", "/shop/gauges");
            page.locator("a[href='/shop/gauges/new']").first().click();
            fill(page, "code", "h-12");
            fill(page, "what", "calliper");
            page.locator("main [name=kind1]").selectOption("CALLIPER");
            fill(page, "unit1", "mm");
            fill(page, "lowest1", "0");
            fill(page, "highest1", "150");
            fill(page, "resolution1", "0,01");
            fill(page, "u1", "0,008");
            fill(page, "uSource1", "its certificate");
            page.getByText("Register it").click();
            page.waitForURL("**/shop/gauges/H-12");
            Locator calibration = page.locator("form[action$='/calibration']");
            open(calibration);
            calibration.locator("[name=calibratedOn]").fill("2026-01-10");
            calibration.locator("[name=dueOn]").fill("2027-01-10");
            calibration.locator("[name=certificate]").fill("C-1");
            calibration.locator("[name=asFound]").fill("inside");
            calibration.locator("button").click();
            page.locator("td:text-is('C-1')").waitFor();

            part(page, "Released routes", "/routes");
            page.locator("a[href='/routes/TI']").click();
            page.waitForURL("**/routes/TI");
            assertThat(page.locator("main").innerText()).contains("Not released: nothing is made on it yet.");
        }
        qaReleasesTheRoute();
        assertThat(faults).isEmpty();
    }

    /** The owner gave the QA lead a password; the QA lead changes it, looks the route through and releases it. */
    private void qaReleasesTheRoute() {
        String given;
        try (BrowserContext desk =
                Chromium.desk(base(), "ZB", InventedShop.PASSWORD).context()) {
            Page page = desk.pages().get(0);
            page.navigate(base() + "/shop/people/" + id("QX"));
            Locator form = page.locator("form[action$='/pin']");
            form.locator("[name=secret]").fill(InventedShop.PASSWORD);
            page.getByText("Give a desk password").click();
            given = page.locator(".given").innerText();
            faults.addAll(Looked.through(page, "given-once"));
        }
        try (BrowserContext desk = Chromium.window(1440, 900)) {
            Page page = desk.newPage();
            page.navigate(base() + "/sign-on");
            fill(page, "initials", "qx");
            fill(page, "password", given);
            page.locator("main button").first().click();
            page.locator(".refusal").waitFor();
            faults.addAll(Looked.through(page, "sign-on-own-password"));
            fill(page, "password", given);
            fill(page, "newPassword", InventedShop.PASSWORD);
            fill(page, "newPasswordAgain", InventedShop.PASSWORD);
            page.locator("main button").first().click();
            page.waitForURL(url -> !url.contains("sign-on"));
            page.navigate(base() + "/routes/TI");
            Locator release = page.locator("form[action$='/draft/release']");
            release.locator("[name=reason]").fill("Looked through; fits the shop");
            release.locator(".btn.main").click();
            page.getByText("Draw up the next revision").waitFor();
            page.navigate(base() + "/set-up");
            assertThat(page.locator(".set-up").innerText())
                    .contains("Released routes")
                    .doesNotContain("error");
            assertThat(page.locator(".set-up .row", new Page.LocatorOptions().setHasText("to enter"))
                            .allInnerTexts())
                    .as("what is left to enter in a shop set up by hand")
                    .allMatch(left ->
                            List.of("Lots", "Ovens", "Welding procedures", "Sheets of components", "Rules of join")
                                    .stream()
                                    .anyMatch(left::contains));
            faults.addAll(Looked.through(page, "set-up-done"));
        }
    }

    private void enrol(String code) {
        try (BrowserContext tablet = Chromium.window(1280, 800)) {
            Page page = tablet.newPage();
            page.navigate(base() + "/enrol");
            fill(page, "code", code);
            page.locator("main button").first().click();
            page.waitForURL("**/sign-on");
        }
    }

    @Test
    @Order(2)
    void everyScreenIsLookedThroughInBothThemesAndAtItsWidths() throws Exception {
        InventedShop shop = new InventedShop(mvc, jdbc);
        shop.ownerSignsOn();
        shop.setUp();
        shop.frame();
        shop.workToATwist();
        try (BrowserContext owner = with(shop.owner);
                BrowserContext qa = with(shop.qa);
                BrowserContext tablet = with(shop.tablet)) {
            Page desk = owner.newPage();
            Page keeper = qa.newPage();
            Page bench = tablet.newPage();
            for (Screen screen : sheets(Moment.WORK)) {
                String path = screen.in(shop.facts());
                Page page = path.startsWith("/station") && !path.startsWith("/stations")
                        ? bench
                        : path.startsWith("/routes") || path.startsWith("/qa") ? keeper : desk;
                look(page, path, name(screen));
            }
            look(bench, "/sign-on", "sign-on-tablet");
            shop.workToAPoint();
            look(bench, "/station/" + shop.facts().get("serial") + "/sign", "station-sign");
        }
        assertThat(faults).isEmpty();
    }

    private void look(Page page, String path, String name) {
        boolean paper = path.matches(".*/(traveller|tag|hold-tag|jig-sheet|paper|build-record|badge)");
        boolean station = path.startsWith("/station") && !path.startsWith("/stations")
                || name.equals("sign-on-tablet")
                || path.equals("/enrol");
        page.setViewportSize(station ? 1280 : 1440, station ? 800 : 900);
        page.navigate(base() + path);
        faults.addAll(Looked.through(page, name));
        if (paper) {
            page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
            faults.addAll(Looked.through(page, name + "-printed"));
            page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.SCREEN));
            return;
        }
        faults.addAll(Looked.small(page, name, station ? GLOVES : path.startsWith("/run") ? ROW : DESK));
        faults.addAll(Looked.sideways(page, name, 1280, 800));
        faults.addAll(Looked.sideways(page, name, 800, 1280));
        if (!station) {
            faults.addAll(Looked.sideways(page, name, 390, 844));
        }
    }

    /** Everything of the table that is a page and is there at this moment. */
    private static List<Screen> sheets(Moment moment) {
        return Screen.all().stream()
                .filter(screen -> screen.status(moment).equals("200"))
                .filter(screen -> !screen.pattern().matches("/api/.*|.*\\.csv|.*/(certificate|drawing)|/photos/.*"))
                .toList();
    }

    private final Set<String> names = new LinkedHashSet<>();

    private String name(Screen screen) {
        String name =
                screen.address().substring(1).replaceAll("\\{[a-z]+\\}", "one").replaceAll("[^A-Za-z0-9]+", "-");
        assertThat(names.add(name)).as(name).isTrue();
        return name;
    }

    private BrowserContext with(Hand hand) {
        BrowserContext window = Chromium.window(1440, 900);
        window.addCookies(List.of(new Cookie("trammel-device", hand.device().getValue()).setUrl(base())));
        return window;
    }

    /** From the list of what a new shop has to enter to one part of it. */
    private void part(Page page, String name, String leadsTo) {
        page.navigate(base() + "/set-up");
        page.locator(".set-up .row", new Page.LocatorOptions().setHasText(name)).click();
        page.waitForURL("**" + leadsTo);
    }

    private static void open(Locator inside) {
        inside.evaluate(
                "form => { const d = form.closest('details') || form.querySelector('details'); if (d) d.open = true; }");
    }

    private static Locator form(Page page, String action) {
        return page.locator("form[action='" + action + "']");
    }

    private static void fill(Page page, String name, String value) {
        page.locator("main [name='" + name + "']").first().fill(value);
    }

    private long id(String initials) {
        return jdbc.sql("select id from person where initials = ?")
                .param(initials)
                .query(Long.class)
                .single();
    }

    private String base() {
        return "http://localhost:" + port;
    }
}
