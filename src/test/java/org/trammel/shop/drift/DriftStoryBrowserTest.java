package org.trammel.shop.drift;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.Media;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.trammel.shop.BrowserTest;
import org.trammel.shop.Chromium;
import org.trammel.shop.TestCrew;
import org.trammel.shop.people.FirstStart;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.Roster;
import org.trammel.shop.stations.Station;
import org.trammel.shop.stations.Stations;

/** A jig that moves, clicked from its readings to the alarm, the call, the cause, the check and the base after it. */
@BrowserTest("trammel.test.database=drift_story")
class DriftStoryBrowserTest {

    private static final String PASSWORD = "quiet lathe under rain";

    /** mm, invented; no single one is beyond a tolerance of ±1. */
    private static final List<String> MOVES =
            List.of("0,3", "-0,1", "0,2", "0,4", "0,1", "0,6", "0,5", "0,8", "0,7", "0,9", "0,8", "1,0");

    private static final List<String> STANDS = List.of(
            "0,3", "-0,1", "0,2", "0,4", "0,1", "0,6", "0,5", "-0,3", "0,0", "0,2", "-0,2", "0,4", "0,3", "0,1", "-0,1",
            "0,5", "0,2", "0,0", "0,3", "-0,2", "0,1", "0,4", "0,2", "0,3", "0,0");

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

    private Page page;

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
        stations.add(crew.act(keeper), new Station("3", "Jig & weld", 3, new BigDecimal("30"), false));
        for (String jig : List.of("J1", "J2")) {
            stations.addJig(crew.act(keeper), jig, "3", LocalDate.parse("2025-12-08"), LocalDate.parse("2026-03-08"));
        }
        page = Chromium.desk(base(), "QL", PASSWORD);
    }

    @AfterAll
    void closes() {
        page.context().close();
    }

    @Test
    void theQaLeadGoesFromTheReadingsToTheAlarmTheCauseAndTheCheckOfTheJig() {
        watch("J1");
        takeOver(lines(STANDS, 0, STANDS.size()));
        base("FIRST", "notebook", "watched from now on", null);
        assertThat(main()).contains("no drift");
        page.getByText("Capability", new Page.GetByTextOptions().setExact(true)).click();
        page.waitForURL("**/capability");
        assertThat(main()).contains("Ppk 1,16, at 95 % between 0,81 and 1,51: not proven to be 1,33 or more");
        look("drift-capability");

        watch("J2");
        takeOver(lines(MOVES, 0, 7));
        look("drift-without-base");
        base("GIVEN", "trial of the jig", "watched from now on", null);
        assertThat(main()).contains("no drift").doesNotContain("Alarm.");
        takeOver(lines(MOVES, 7, 1));
        assertThat(main()).contains("First alarm at reading 8 of 8");
        String sheet = page.url();

        page.navigate(base() + "/qa");
        Locator call = page.locator(".holds > li", new Page.LocatorOptions().setHasText("Check jig J2"));
        assertThat(call.innerText()).contains("before the next tack");
        page.getByText("Drift", new Page.GetByTextOptions().setExact(true)).click();
        page.waitForURL("**/qa/drift");
        assertThat(main()).contains("Since reading 8");
        look("drift-list");
        page.navigate(sheet);
        takeOver(lines(MOVES, 8, 4));
        look("drift-moves");

        page.getByText("What a shift hangs on").click();
        page.waitForURL("**/qa/drift/causes**");
        assertThat(main()).contains("The difference hangs on the jig.").contains("J2 lies");
        look("drift-causes");
        page.navigate(base() + "/qa/yield");
        assertThat(main()).contains("No frame came to a gate in this time.");
        page.navigate(sheet + "/capability");
        assertThat(main()).contains("12 readings are too few");
        look("drift-dots");

        page.navigate(sheet);
        page.getByText("Note a check of J2").click();
        page.waitForURL("**/shop/stations");
        Chromium.send(page, page.locator("[aria-label='Note the check of J2']"));
        page.navigate(sheet);
        base("GIVEN", "last base", "jig checked, left stop moved back by 0,6", "2026-03-18");
        assertThat(main())
                .contains("12 older readings are not charted")
                .contains("left stop moved back by 0,6")
                .contains("watched from now on")
                .doesNotContain("drifts");
        look("drift-after-check");

        page.navigate(base() + "/qa");
        call.locator("summary").click();
        call.locator("input[name=words]").fill("jig checked, new base taken");
        Chromium.send(page, call.getByText("Answer the call"));
        assertThat(main()).doesNotContain("Check jig J2");
    }

    private void watch(String jig) {
        page.navigate(base() + "/qa/drift");
        page.locator("#f-jig").selectOption(jig);
        page.locator("#f-code").fill("080-3");
        page.locator("#f-name").fill("Rear axle centre offset");
        page.locator("#f-unit").fill("mm");
        page.locator("#f-scaled").uncheck();
        page.getByText("Watch it").click();
        page.waitForURL("**/qa/drift/*");
    }

    /** Welders take turns, lots every other frame, so that a shift can be told from both. */
    private static String lines(List<String> values, int from, int count) {
        StringBuilder lines = new StringBuilder();
        for (int at = from; at < from + count; at++) {
            lines.append(LocalDate.parse("2026-01-05").plusDays(2L * at))
                    .append("; frame ")
                    .append(at + 1)
                    .append("; ")
                    .append(values.get(at))
                    .append("; 0; -1; 1; ")
                    .append(at % 2 == 0 ? "W1" : "W2")
                    .append("; ")
                    .append(at / 2 % 2 == 0 ? "lot A" : "lot B")
                    .append('\n');
        }
        return lines.toString();
    }

    private void takeOver(String lines) {
        page.locator("#f-e-lines").fill(lines);
        page.locator("#f-e-source").fill("notebook of the alignment table");
        Chromium.send(page, page.getByText("Take them over"));
    }

    private void base(String kind, String source, String reason, @Nullable String from) {
        page.locator("#f-b-kind").selectOption(kind);
        if (kind.equals("GIVEN")) {
            page.locator("#f-b-centre").fill("0");
            page.locator("#f-b-sigma").fill("0,35");
        }
        if (from != null) {
            page.locator("#f-b-from").fill(from);
        }
        page.locator("#f-b-source").fill(source);
        page.locator("#f-b-reason").fill(reason);
        Chromium.send(page, page.locator("button", new Page.LocatorOptions().setHasText("Take this base")));
    }

    private String main() {
        return page.locator("main").innerText().replace('\u00a0', ' ');
    }

    /** On a desk, a tablet and a phone, where nothing may be wider than the page, at night and on paper. */
    private void look(String name) {
        for (int[] size : new int[][] {{1280, 800}, {390, 844}, {1440, 900}}) {
            page.setViewportSize(size[0], size[1]);
            Chromium.picture(page, name + "-" + size[0]);
            assertThat((Boolean) page.evaluate("document.documentElement.scrollWidth <= window.innerWidth"))
                    .as(name + " at " + size[0])
                    .isTrue();
        }
        page.evaluate("document.documentElement.dataset.theme = 'night'");
        Chromium.picture(page, name + "-night");
        page.evaluate("document.documentElement.dataset.theme = 'paper'");
        page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
        Chromium.picture(page, name + "-print");
        page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.SCREEN));
        Chromium.look(page, name);
    }

    private String base() {
        return "http://localhost:" + port;
    }
}
