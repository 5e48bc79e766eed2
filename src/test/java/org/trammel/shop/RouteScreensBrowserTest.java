package org.trammel.shop;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.UUID;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.trammel.shop.people.FirstStart;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.Roster;
import org.trammel.shop.routes.NewRoute;
import org.trammel.shop.routes.RouteBook;
import org.trammel.shop.routes.RouteDrafts;
import org.trammel.shop.stations.Station;
import org.trammel.shop.stations.Stations;

/** The route editor in a real browser: worked by hand, looked through by axe and kept as pictures. */
@BrowserTest("trammel.test.database=route_screens")
class RouteScreensBrowserTest {

    private static final String PASSWORD = "quiet lathe under rain";
    private static final String[][] STATIONS = {
        {"1", "Saw & mitre, forming"},
        {"2", "Prep & clean"},
        {"3", "Jig & weld"},
        {"4", "Alignment table"},
        {"5", "Heat treat"},
        {"6", "Ream, face, bore"},
        {"7", "Blast & pretreat"},
        {"8", "Coat & cure"},
        {"9", "Assembly, final check"}
    };

    @LocalServerPort
    private int port;

    @Autowired
    private FirstStart firstStart;

    @Autowired
    private Roster roster;

    @Autowired
    private RouteDrafts drafts;

    @Autowired
    private Stations stations;

    @Autowired
    private TestCrew crew;

    @Autowired
    private RouteBook book;

    private Page page;
    private String code;

    @BeforeAll
    void opens() {
        long keeper = firstStart
                .make(
                        UUID.randomUUID(),
                        firstStart.newCode(),
                        "127.0.0.9",
                        new FirstStart.Entry("QL", "Quinn Lead", PASSWORD, "402817"))
                .id();
        roster.giveRoles(crew.act(keeper), keeper, EnumSet.of(Role.OWNER, Role.QA_LEAD));
        for (String[] station : STATIONS) {
            stations.add(crew.act(keeper), new Station(station[0], station[1], 3, new BigDecimal("30"), false));
        }
        code = "HT-1";
        drafts.layOut(crew.act(keeper), new NewRoute(code, "Hardtail of this shop", "AL6061", "HARDTAIL", "HT-6061"));
        drafts.release(crew.act(keeper), code, drafts.draft(code).version(), "Looked through, fits the shop");
        page = Chromium.desk(base(), "QL", PASSWORD);
    }

    @AfterAll
    void closes() {
        page.context().close();
    }

    @Test
    void theQaLeadDrawsUpChangesAndReleasesARevision() {
        page.navigate(base() + "/routes");
        look("routes");
        page.navigate(base() + "/routes/" + code + "?op=080");
        look("route-released");
        page.getByText("Draw up the next revision").click();
        page.waitForURL("**/routes/" + code);
        page.navigate(base() + "/routes/" + code + "?op=080");
        look("route-draft");

        page.locator("[aria-label='Move down step 1']").click();
        page.locator(".steps li:first-child", new Page.LocatorOptions().setHasText("Undercut"))
                .waitFor();
        page.locator("[aria-label='Change step 2']").click();
        page.locator("#f-instruction").fill("All nodes, all round, lamp and glass.");
        look("route-step");
        page.getByText("Change the step").click();
        page.waitForURL("**/routes/" + code + "?op=080");
        page.locator("[aria-label='Change characteristic 080-1']").click();
        look("route-characteristic");
        page.locator("#f-upperDeviation").fill("1.234,5");
        page.getByText("Change the characteristic").click();
        page.locator(".refusal").waitFor();
        assertThat(page.locator("#f-upperDeviation").inputValue()).isEqualTo("1.234,5");
        look("route-refused");
        page.locator("#f-upperDeviation").fill("0,25");
        page.getByText("Change the characteristic").click();
        page.waitForURL("**/routes/" + code + "?op=080");

        page.getByText("Split", new Page.GetByTextOptions().setExact(true))
                .first()
                .click();
        look("route-split");
        page.navigate(base() + "/routes/" + code + "?edit=clock&item=COLD-SET");
        look("route-clock");
        page.navigate(base() + "/routes/" + code + "?op=080");
        assertThat(page.locator(".changes").first().innerText())
                .contains("080-1")
                .contains("upper: 0,3 → 0,25");
        look("route-changed");
        page.locator("#f-reason").fill("Own trial of March");
        page.getByText("Release B", new Page.GetByTextOptions().setExact(true)).click();
        page.getByText("Own trial of March").waitFor();
        assertThat(book.released(code).letter()).isEqualTo("B");
    }

    @Test
    void theSheetCanBeReadOnATabletAndOnAPhone() {
        String path = "/routes/FS-6061?op=170";
        for (int[] size : new int[][] {{1280, 800}, {800, 1280}, {390, 844}}) {
            page.setViewportSize(size[0], size[1]);
            page.navigate(base() + path);
            assertThat((int) page.evaluate("document.documentElement.scrollWidth"))
                    .isLessThanOrEqualTo(size[0]);
            Chromium.picture(page, "route-" + size[0]);
            page.navigate(base() + "/routes");
            assertThat((int) page.evaluate("document.documentElement.scrollWidth"))
                    .isLessThanOrEqualTo(size[0]);
            Chromium.picture(page, "routes-" + size[0]);
        }
        page.setViewportSize(1440, 900);
    }

    private void look(String name) {
        Chromium.look(page, name);
    }

    private String base() {
        return "http://localhost:" + port;
    }
}
