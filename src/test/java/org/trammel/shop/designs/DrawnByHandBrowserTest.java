package org.trammel.shop.designs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.microsoft.playwright.Download;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.FilePayload;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.trammel.shop.BrowserTest;
import org.trammel.shop.Chromium;
import org.trammel.shop.TestCrew;
import org.trammel.shop.orders.OrderSheet;
import org.trammel.shop.orders.Orders;
import org.trammel.shop.people.Credentials;
import org.trammel.shop.people.FirstStart;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.Roster;
import org.trammel.shop.routes.RouteBook;
import org.trammel.shop.routes.RouteDrafts;
import org.trammel.shop.stations.Station;
import org.trammel.shop.stations.Stations;

/**
 * A frame with a swing arm from what its rider brings to the revision both have signed, by hand in a real browser: no
 * nominal the drawing knows is typed, what is red is cured by another drawing, and the templates come through the page.
 */
@BrowserTest("trammel.test.database=drawn_by_hand")
class DrawnByHandBrowserTest {

    private static final String PASSWORD = "quiet lathe under rain";
    private static final String PIN = "402817";

    /** What rider and parts ask for; the head tube is not among it. */
    private static final String LAYOUT =
            "HEAD_ANGLE 65 SEAT_ANGLE 76,5 STACK 632 REACH 470 LOWER_STACK 12 FORK_LENGTH 551"
                    + " FORK_OFFSET 44 SHELL_DROP 32 CHAINSTAY 436 SEAT_TUBE 425 SEAT_TUBE_OFFSET 18 FRONT_WHEEL_RADIUS 370"
                    + " REAR_WHEEL_RADIUS 370";

    private static final String FIT = "SADDLE_HEIGHT 755 SADDLE_SETBACK 15 SADDLE_TO_BAR 527 SADDLE_OVER_BAR 25"
            + " SADDLE_STACK 45 UPPER_STACK 12 SPACERS 20 STEM_HEIGHT 40 STEM_LENGTH 70 STEM_RISE 0";

    private static final String PARTS = "CRANK 170 SEATPOST 440 SEATPOST_MARK 110";

    private static final String TUBES = "AXLE_WIDTH 148 TOP_TUBE_AT_HEAD 28 DOWN_TUBE_AT_HEAD 29 TOP_TUBE_AT_SEAT 45"
            + " HEAD_TUBE_OUTSIDE 54 HEAD_TUBE_BORE 44 SHELL_OUTSIDE 42 SHELL_BORE 33,5 SHELL_WIDTH 73"
            + " DOWN_TUBE_OUTSIDE 42 DOWN_TUBE_WALL 1,4 TOP_TUBE_OUTSIDE 34,9 TOP_TUBE_WALL 1,15"
            + " SEAT_TUBE_OUTSIDE 38 SEAT_TUBE_WALL 1,35";

    private static final String FORMED = "FORMED_DOWN_TUBE_SHELL 35 FORMED_DOWN_TUBE_SHELL_ZONE 60";

    private static final String SWING = "PIVOT_AHEAD 22 PIVOT_ABOVE 72 SHOCK_ARM 182 SHOCK_ARM_ANGLE 98 TRAVEL 140"
            + " SHOCK_LENGTH 210 SHOCK_STROKE 55 SAG 30 SHOCK_OUTSIDE 50 SHOCK_EYE_OUTSIDE 20 SHOCK_EYE 25"
            + " ARM_INSIDE 48 ARM_SIDE 22 ARM_BRIDGE 90 ARM_BRIDGE_OUTSIDE 18";

    private static final String MASSES = "WELD_MASS 0,045 SMALL_PARTS_MASS 0,05 PIVOT_MASS 0,19";

    @LocalServerPort
    private int port;

    @Autowired
    private FirstStart firstStart;

    @Autowired
    private Roster roster;

    @Autowired
    private Credentials credentials;

    @Autowired
    private TestCrew crew;

    @Autowired
    private Stations stations;

    @Autowired
    private RouteDrafts drafts;

    @Autowired
    private RouteBook book;

    @Autowired
    private Orders orders;

    @Autowired
    private Designs designs;

    private long owner;
    private long qa;
    private long revision;
    private Page page;

    @BeforeAll
    void opens() {
        owner = firstStart
                .make(
                        UUID.randomUUID(),
                        firstStart.newCode(),
                        "127.0.0.7",
                        new FirstStart.Entry("OB", "Odd Builder", PASSWORD, PIN))
                .id();
        qa = roster.takeOn(crew.act(owner), "QL", "Quinn Lead", EnumSet.of(Role.QA_LEAD))
                .id();
        credentials.keepPin(crew.act(qa), "000000", PIN);
        for (int i = 1; i <= 9; i++) {
            stations.add(crew.act(owner), new Station("" + i, "Station " + i, 3, new BigDecimal("30"), false));
        }
        for (String route : List.of("FS-6061-FT", "FS-6061-SA", "FS-6061")) {
            drafts.release(crew.act(qa), route, drafts.draft(route).version(), "Looked through, fits the shop");
        }
        page = Chromium.desk(base(), "OB", PASSWORD);
    }

    @AfterAll
    void closes() {
        page.context().close();
    }

    @Test
    void aFrameGoesFromRiderAndPartsToASignedRevisionWithTemplatesThatMeasure() throws IOException {
        familyIsKept();
        OrderSheet order = ordered();
        page.getByText("Begin the drawing", exactly()).click();
        page.waitForURL("**/designs/*");
        revision = designs.revisions(orders.byId(order.id()).designId()).get(0).revisionId();
        headTubeFollowsFromStackAndParts();
        tubesAndPartsAreTyped();
        redIsMetAndCured();
        templatesMeasure();
        nominalsComeFromTheDrawing();
        approvedAndSigned();
    }

    // ------------------------------------------------------------------------------------------ rider and parts

    private void familyIsKept() {
        open("/shop/test-families");
        fill("code", "FS-140");
        fill("covers", "full suspension of 140 mm, 6061");
        fill("longestFork", "551");
        fill("heaviestRider", "110");
        fill("leastStack", "600");
        fill("mostStack", "670");
        fill("source", "report 12 of the invented test house, on frame X-1");
        press("Put it in force");
        page.locator("a:text-is('FS-140')").waitFor();
    }

    private OrderSheet ordered() {
        open("/orders/new");
        fill("description", "Full suspension 29, 140 mm");
        page.locator("main [name='metal']").selectOption("AL6061");
        page.locator("main [name='kind']").selectOption("FULL_SUSPENSION");
        fill("country", "SE");
        fill("countryRules", "bell, reflectors, lights");
        fill("components", "fork: 551 mm, offset 44\nheadset: lower stack 12, upper 12\nshock: 210 by 55");
        type("rider.height 181 rider.inseam 84 rider.arm 62 rider.foot 27 rider.mass 79", "");
        fill("rider.flexibility", "touches the floor");
        fill("customer.name", "Rider Two");
        fill("customer.country", "SE");
        fill("customer.contact", "Harbour road 4");
        fill("promised", "2026-06-19");
        fill("price", "6400");
        page.locator("main .sign .btn").click();
        page.waitForURL(url -> url.matches(".*/orders/\\d+"));
        return orders.open().get(0);
    }

    /** By hand: (632 − 32 + 44 cos 65°) / sin 65° − 551 − 12 = 119,54. */
    private void headTubeFollowsFromStackAndParts() {
        open("/designs/" + revision + "/layout");
        type(LAYOUT, "given.");
        press("Compute");
        page.locator("h2:text-is('One frame has these numbers')").waitFor();
        assertThat(page.locator("tr:has([name='given.HEAD_TUBE'])").innerText()).contains("119,5");
        Chromium.look(page, "by-hand-layout");
        press("Take it into the draft");
        page.waitForURL("**/frame");
        open("/designs/" + revision + "/edit");
        assertThat(Double.parseDouble(value("HEAD_TUBE").replace(',', '.'))).isCloseTo(119.54, within(0.005));
        assertThat(value("STACK_ASKED")).isEqualTo("632");
    }

    private void tubesAndPartsAreTyped() {
        page.locator("[name='route']")
                .selectOption(Long.toString(book.released("FS-6061").revisionId()));
        fill("testFamily", "FS-140");
        fill("components", "fork: 551 mm, offset 44\nheadset: lower stack 12, upper 12\nshock: 210 by 55");
        for (String group : List.of("Formed ends", "Suspension", "Fit sheet")) {
            page.locator("summary:text-is('" + group + "')").click();
        }
        Stream.of(TUBES, PARTS, FORMED, SWING, FIT, MASSES).forEach(these -> type(these, "geometry."));
        page.locator("main .sign .btn").click();
        page.waitForURL("**/designs/" + revision);
        open("/designs/" + revision + "/frame");
        String sheet = page.locator("main").innerText().replace('\u00a0', ' ');
        assertThat(sheet).doesNotContain("Not computed").contains("Saddle height", "Ratio over the travel");
        Chromium.look(page, "by-hand-frame");
    }

    // ------------------------------------------------------------------------------------------ red, and cured

    /**
     * With the seat tube 18 ahead the tyre meets it at the end of the travel, and the down tube's edge is too near the
     * lower end of the head tube. It cannot be answered by a word; another drawing is the cure, and no decision is asked.
     */
    private void redIsMetAndCured() {
        open("/designs/" + revision);
        assertThat(row(GateCheck.SWING)).contains("tyre to seat tube", "limit 6,0", "not met by");
        assertThat(row(GateCheck.HEAD_NODES)).contains("below the down tube", "limit 4,0", "not met by");
        for (GateCheck red : List.of(GateCheck.SWING, GateCheck.HEAD_NODES)) {
            page.locator("[aria-label='Answer " + red.label() + "']").click();
            assertThat(page.locator("details[open] select option").allInnerTexts())
                    .isEqualTo(List.of("decided in writing"));
            page.locator("[aria-label='Answer " + red.label() + "']").click();
        }
        Chromium.picture(page, "by-hand-red");
        open("/designs/" + revision + "/edit");
        type("SEAT_TUBE_OFFSET 23 DOWN_TUBE_AT_HEAD 40", "geometry.");
        page.locator("main .sign .btn").click();
        page.waitForURL("**/designs/" + revision);
        for (GateCheck cured : List.of(GateCheck.SWING, GateCheck.HEAD_NODES, GateCheck.CLOSURE)) {
            assertThat(row(cured)).contains("to spare").doesNotContain("not met");
        }
        assertThat(page.locator("table.gate .red").count()).as("nothing is red").isZero();
        assertThat(page.locator("table.gate li.cap").allInnerTexts())
                .as("nothing lacks")
                .isEmpty();
        Chromium.picture(page, "by-hand-cured");
    }

    // ------------------------------------------------------------------------------------------ paper

    private void templatesMeasure() throws IOException {
        open("/designs/" + revision + "/frame");
        for (String[] paper : new String[][] {{"A4", "210", "297"}, {"US_LETTER", "215.9", "279.4"}}) {
            page.locator("main [name='paper']").selectOption(paper[0]);
            byte[] file = downloaded("by-hand-templates-" + paper[0] + ".pdf", page.locator("text=Open the templates"));
            List<PrintedLines.Page> pages = PrintedLines.of(file);
            assertThat(pages).hasSameSizeAs(DrawnByHandCuts.all().toList());
            for (PrintedLines.Page one : pages) {
                assertThat(Math.min(one.width_mm(), one.height_mm()))
                        .isCloseTo(Double.parseDouble(paper[1]), within(CutOnPaper.PAPER_MM));
                assertThat(Math.max(one.width_mm(), one.height_mm()))
                        .isCloseTo(Double.parseDouble(paper[2]), within(CutOnPaper.PAPER_MM));
                CutOnPaper.requireBars(one);
                assertThat(one.words()).contains("revision A", "not released");
            }
            DrawnByHandCuts.all().forEach(cut -> cut.requireMeasures(cut.page(pages)));
        }
    }

    /** As whoever sits at the page gets it: by its own button. */
    private byte[] downloaded(String name, Locator button) throws IOException {
        Download download = page.waitForDownload(button::click);
        Path kept = Path.of("target", "printed", name);
        download.saveAs(kept);
        return Files.readAllBytes(kept);
    }

    // ------------------------------------------------------------------------------------------ to the signatures

    private void nominalsComeFromTheDrawing() {
        open("/designs/" + revision + "/characteristics");
        assertThat(page.locator("main h2").first().innerText()).matches("(?s).*\\d+ from the drawing.*");
        StringBuilder pasted = new StringBuilder();
        designs.readyFor(revision, book.released("FS-6061"))
                .forEach(one -> pasted.append(one.code()).append(";42,5\n"));
        fill("paste", pasted.toString());
        page.locator("main .sign .btn").click();
        page.locator("h2", new Page.LocatorOptions().setHasText("none without a nominal"))
                .waitFor();
        assertThat(page.locator("main h2").first().innerText()).doesNotContain("against it");
    }

    /** The customer approves the very drawing that the page prints. */
    private void approvedAndSigned() throws IOException {
        open("/designs/" + revision + "/frame");
        byte[] drawing = downloaded("by-hand-drawing.pdf", page.locator("text=Open the drawing on A4"));
        open("/designs/" + revision);
        page.locator("#f-file").setInputFiles(new FilePayload("drawing.pdf", "application/pdf", drawing));
        press("Add the drawing");
        page.getByText("drawing.pdf", exactly()).first().waitFor();
        page.locator("main .plate .btn.main").click();
        page.waitForURL("**/approval");
        fill("letter", "A");
        fill("approver", "Rider Two");
        fill("on", "2026-03-18");
        press("Enter the approval");
        page.waitForURL("**/designs/" + revision);
        for (GateCheck check : GateCheck.values()) {
            page.locator("[aria-label='Answer " + check.label() + "']").click();
            page.locator("details[open] button").first().click();
            page.locator("[aria-label='Change the answer of " + check.label() + "']")
                    .waitFor();
            assertThat(row(check)).contains("meets it").doesNotContain("decided in writing");
        }
        signs(owner, Role.OWNER);
        page.locator("main li b:text-is('owner')").waitFor();
        signs(qa, Role.QA_LEAD);
        page.locator("h2:text-is('Ready for the shop')").waitFor();
        assertThat(designs.revision(revision).state()).isEqualTo(DesignState.CHECKED);
        Chromium.picture(page, "by-hand-checked");
    }

    private void signs(long person, Role role) {
        page.locator("[name='signer']").selectOption(person + ":" + role);
        page.locator("[name='pin']").fill(PIN);
        press("Sign the gate");
    }

    // ------------------------------------------------------------------------------------------ by which it works

    /** Names and numbers, parted by blanks. */
    private void type(String these, String before) {
        String[] parts = these.split(" ");
        for (int i = 0; i < parts.length; i += 2) {
            fill(before + parts[i], parts[i + 1]);
        }
    }

    private void fill(String name, String value) {
        page.locator("main [name='" + name + "']").first().fill(value);
    }

    private String value(String input) {
        return page.locator("main [name='geometry." + input + "']").inputValue();
    }

    private void press(String words) {
        page.locator("main button:has-text('" + words + "')").first().click();
    }

    private void open(String address) {
        page.navigate(base() + address);
    }

    private String row(GateCheck check) {
        return page.locator("table.gate tr")
                .filter(new Locator.FilterOptions().setHas(page.locator("th:text-is('" + check.label() + "')")))
                .innerText()
                .replace('\u00a0', ' ');
    }

    private static Page.GetByTextOptions exactly() {
        return new Page.GetByTextOptions().setExact(true);
    }

    private String base() {
        return "http://localhost:" + port;
    }
}
