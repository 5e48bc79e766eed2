package org.trammel.shop.alignment;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.ApplicationContext;
import org.trammel.shop.BrowserTest;
import org.trammel.shop.Chromium;
import org.trammel.shop.TestCrew;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.people.FirstStart;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.Roster;
import org.trammel.shop.stations.Station;
import org.trammel.shop.stations.Stations;

/** A frame on the alignment table in a real browser: undecided on the tube, decided by the mandrel, set straight, read again. */
@BrowserTest("trammel.test.database=alignment_screens")
class AlignmentScreensBrowserTest {

    private static final String PASSWORD = "quiet lathe under rain";

    private static final Map<String, String[]> TWELVE = twelve();

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
    private ApplicationContext beans;

    private Page page;
    private WholeShop shop;
    private String gauge;

    @BeforeAll
    void opens() {
        long keeper = firstStart
                .make(
                        UUID.randomUUID(),
                        firstStart.newCode(),
                        "127.0.0.9",
                        new FirstStart.Entry("QL", "Quinn Lead", PASSWORD, "402817"))
                .id();
        roster.giveRoles(crew.act(keeper), keeper, EnumSet.of(Role.OWNER, Role.QA_LEAD, Role.ALIGNER));
        stations.add(crew.act(keeper), new Station("1", "Quench", 3, new BigDecimal("30"), false));
        stations.add(crew.act(keeper), new Station("4", "Alignment table", 3, new BigDecimal("30"), false));
        shop = new WholeShop(beans);
        gauge = shop.gauge("HEIGHT", "mm", "0.012", LocalDate.of(2027, 1, 1));
        frame(240);
        page = Chromium.desk(base(), "QL", PASSWORD);
    }

    @AfterAll
    void closes() {
        page.context().close();
    }

    /** Name, unit and limit by code, as a hardtail's route asks for. */
    private static Map<String, String[]> twelve() {
        Map<String, String[]> twelve = new LinkedHashMap<>();
        twelve.put("100-1", new String[] {"Twist, head tube against seat tube", "°", "0.30"});
        twelve.put("100-2", new String[] {"Head tube centre offset", "mm", "0.8"});
        twelve.put("100-3", new String[] {"Rear axle centre offset", "mm", "1.0"});
        twelve.put("100-4", new String[] {"Axle width inside", "mm", "0.5"});
        twelve.put("100-5", new String[] {"Dropouts parallel over 60 mm", "mm", "0.3"});
        twelve.put("100-6", new String[] {"Chainstays, drive less non-drive", "mm", "0.5"});
        twelve.put("100-7", new String[] {"Head angle as built", "°", "0.3"});
        twelve.put("100-8a", new String[] {"Stack as built", "mm", "2"});
        twelve.put("100-8b", new String[] {"Reach as built", "mm", "2"});
        twelve.put("100-9", new String[] {"Lean of seat tube", "°", "0.30"});
        twelve.put("100-10", new String[] {"Lean of head tube", "°", "0.30"});
        twelve.put("100-13", new String[] {"Seat angle as built", "°", "0.3"});
        return twelve;
    }

    private WholeShop.Frame frame(int windowMinutes) {
        WholeShop.Frame frame = shop.frame(SmallRoute.of(
                        SmallRoute.op("090").step("quench").sheet(),
                        SmallRoute.op("100")
                                .at("4")
                                .characteristic(OnThePlate.characteristic(
                                        "100-1", "Twist, head tube against seat tube", "°", "0.30", "twist"))
                                .characteristic(OnThePlate.characteristic(
                                        "100-2", "Head tube centre offset", "mm", "0.8", "low", "high"))
                                .sheet(),
                        SmallRoute.op("200").step("pack").sheet())
                .window("COLD-SET", windowMinutes, "090")
                .sheet());
        shop.tickAll(frame, shop.hire(Role.STATION_WORKER));
        return frame;
    }

    private String base() {
        return "http://localhost:" + port;
    }

    /** Keys a figure and waits until it stands on the sheet. */
    private void key(String mm) {
        page.locator("#f-value").waitFor();
        int before = read();
        type(mm);
        page.waitForCondition(() -> read() == before + 1);
    }

    private int read() {
        return Integer.parseInt(page.locator(".turn").innerText().split(" ")[0]);
    }

    private void type(String mm) {
        if (page.locator("#f-gauge").inputValue().isEmpty()) {
            page.locator("#f-gauge").selectOption(gauge);
        }
        page.locator("#f-value").fill(mm);
        page.locator(".key.enter").click();
    }

    private void reads(String spot, String figure) {
        assertThat(page.locator(".spot:has-text('" + spot + "') .num").first().innerText())
                .isEqualTo(figure);
    }

    @Test
    void aTwistIsDecidedByTheMandrelAndSetStraightInsideItsWindow() {
        page.navigate(base() + "/run");
        page.locator(".tb-list a:has-text('Alignment')").click();
        page.locator(".list a.row").first().click();
        Chromium.look(page, "alignment-nothing-read");
        page.locator(".plate .btn.main").click();
        key("150,12");
        reads("at 100", "150,12");
        key("150,42");
        key("149,91");
        // The group at hand is open, the others say how far they are; one reading needs no scrolling.
        assertThat(page.locator(".group").allInnerTexts().stream()
                        .map(text -> text.replaceAll("\\s+", " "))
                        .toList())
                .containsExactly("Seat tube 2 of 2", "Head tube 1 of 2", "Shell 0 of 1");
        assertThat(page.locator(".group.now").innerText()).contains("Head tube");
        page.locator(".group:has-text('Seat tube')").click();
        page.locator(".plate:has-text('It reads 150,12')").waitFor();
        reads("at 400", "150,42");
        page.locator(".group:has-text('Head tube')").click();
        page.locator(".plate:has-text('upper station')").waitFor();
        Chromium.look(page, "alignment-reading");
        // Out of order, inches first: it is asked about, and the figure stays where it was typed.
        type("5,885");
        assertThat(page.locator(".refusal").innerText()).contains("149,479");
        assertThat(page.locator("#f-value").inputValue()).isEqualTo("5,885");
        key("149,48");
        page.locator("text=Reduce and judge").click();
        assertThat(row("Twist").innerText())
                .contains("undecided")
                .contains("0,331")
                .contains("non-drive");
        assertThat(page.locator(".plate").innerText()).contains("Measure with the mandrel to decide");
        Chromium.look(page, "alignment-undecided");

        page.locator(".plate .btn.main").click();
        page.locator("text=How it lies").click();
        Chromium.look(page, "alignment-set-up");
        page.locator("label.key:has-text('the mandrel')").click();
        page.locator("text=Keep it so").click();
        key("150,45");
        key("148,95");
        page.locator("text=Reduce and judge").click();
        assertThat(row("Twist").innerText()).contains("not conforming").contains("0,344");
        Chromium.look(page, "alignment-not-conforming");

        page.locator(".plate .btn.main").click();
        page.locator("#f-amount").fill("0,344");
        page.locator(".key.enter").click();
        page.waitForURL(url -> !url.contains("cold-set"));
        page.navigate(base() + "/alignment");
        page.locator(".list a.row").first().click();
        assertThat(row("Twist").innerText()).contains("not read");
        page.locator(".plate .btn.main").click();
        key("150,12");
        key("150,42");
        key("150,02");
        key("150,30");
        page.locator("text=Reduce and judge").click();
        assertThat(row("Twist").innerText()).contains("conforming").doesNotContain("not conforming");
        Chromium.look(page, "alignment-conforming");
        page.locator("text=Raw figures with their trace").click();
        Chromium.look(page, "alignment-figures");
        page.navigate(base() + "/alignment/characteristics");
        Chromium.look(page, "alignment-characteristics");
    }

    @Test
    void aPushThatIsSentAfterTheWindowClosedIsRefused() {
        WholeShop.Frame late = frame(4);
        long operation = shop.at(late).line().operationId();
        page.navigate(base() + "/alignment/" + operation + "/set-up");
        page.locator("label.key:has-text('the mandrel')").click();
        page.locator("text=Keep it so").click();
        key("150,12");
        key("150,42");
        key("150,45");
        key("148,95");
        page.locator("text=Reduce and judge").click();
        assertThat(row("Twist").innerText()).contains("not conforming");
        page.locator(".plate .btn.main").click();
        page.locator("#f-amount").fill("0,344");
        shop.clock().pass(java.time.Duration.ofMinutes(10));
        page.locator(".key.enter").click();
        assertThat(page.locator(".refusal").innerText())
                .contains("is not recorded")
                .contains("The window COLD-SET closed at")
                .contains("Call the QA lead");
        page.navigate(base() + "/alignment/" + operation);
        assertThat(page.locator(".facts").innerText()).contains("0 of 2 used").contains("closed at");
        assertThat(page.locator(".push").count())
                .as("nothing is proposed any more")
                .isZero();
    }

    /** Tablet both ways, phone and a narrow desk; a row that was read shows scale, figures and verdict. */
    @Test
    void theVerdictsOfTwelveAreSeenWithoutScrollingSideways() {
        SmallRoute.Op table = SmallRoute.op("100").at("4");
        TWELVE.forEach((code, what) -> table.characteristic(OnThePlate.characteristic(
                code,
                what[0],
                what[1],
                what[2],
                code.equals("100-5") ? new String[] {"fore and aft", "up and down"} : new String[] {"as told"})));
        WholeShop.Frame frame = shop.frame(SmallRoute.of(
                        SmallRoute.op("090").step("quench").sheet(),
                        table.sheet(),
                        SmallRoute.op("200").step("pack").sheet())
                .window("COLD-SET", 240, "090")
                .sheet());
        shop.tickAll(frame, shop.hire(Role.STATION_WORKER));
        long operation = shop.at(frame).line().operationId();
        page.navigate(base() + "/alignment/" + operation + "/read");
        key("150,12");
        key("150,42");
        key("149,91");
        key("149,48");
        page.locator("text=Reduce and judge").click();
        row("Twist").waitFor();
        assertThat(page.locator(".axes tbody tr").count()).isEqualTo(12);
        for (int[] size : List.of(
                new int[] {1280, 800},
                new int[] {800, 1280},
                new int[] {390, 844},
                new int[] {1201, 800},
                new int[] {901, 700},
                new int[] {601, 900})) {
            page.setViewportSize(size[0], size[1]);
            for (String theme : List.of("night", "paper")) {
                page.evaluate("theme => document.documentElement.dataset.theme = theme", theme);
                Chromium.picture(page, "alignment-twelve-" + size[0] + "-" + theme);
            }
            assertThat((Integer) page.evaluate("() => document.documentElement.scrollWidth"))
                    .isLessThanOrEqualTo(size[0]);
            for (Locator verdict : page.locator(".axes .vd").all()) {
                BoundingBox box = verdict.boundingBox();
                assertThat(box.x).as("begins in sight at " + size[0]).isGreaterThanOrEqualTo(0);
                assertThat(box.x + box.width).as("ends in sight at " + size[0]).isLessThanOrEqualTo(size[0] + 0.5);
            }
            assertThat((Boolean)
                            page.locator(".table-sheet .scroll").evaluate("box => box.scrollWidth <= box.clientWidth"))
                    .as("nothing lies sideways at " + size[0])
                    .isTrue();
        }
        page.setViewportSize(390, 844);
        Chromium.look(page, "alignment-twelve-phone");
        page.setViewportSize(1440, 900);
    }

    private Locator row(String name) {
        return page.locator(".table-sheet tbody tr:has-text('" + name + "')").first();
    }
}
