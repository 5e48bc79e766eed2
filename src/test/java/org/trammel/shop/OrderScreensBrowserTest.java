package org.trammel.shop;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.FilePayload;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.trammel.shop.designs.DesignSheet;
import org.trammel.shop.designs.DesignState;
import org.trammel.shop.designs.Designs;
import org.trammel.shop.designs.DrawnFrame;
import org.trammel.shop.designs.GateCheck;
import org.trammel.shop.orders.OrderSheet;
import org.trammel.shop.orders.Orders;
import org.trammel.shop.people.Credentials;
import org.trammel.shop.people.FirstStart;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.Roster;
import org.trammel.shop.routes.NewRoute;
import org.trammel.shop.routes.RouteBook;
import org.trammel.shop.routes.RouteDrafts;
import org.trammel.shop.stations.Station;
import org.trammel.shop.stations.Stations;

/** An order from the customer's call to the signed design gate, by hand in a real browser. */
@BrowserTest("trammel.test.database=order_screens")
class OrderScreensBrowserTest {

    private static final String PASSWORD = "quiet lathe under rain";
    private static final String PIN = "402817";

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

    @Autowired
    private JdbcClient jdbc;

    private Page page;

    @BeforeAll
    void opens() {
        long owner = firstStart
                .make(
                        UUID.randomUUID(),
                        firstStart.newCode(),
                        "127.0.0.8",
                        new FirstStart.Entry("OB", "Odd Builder", PASSWORD, PIN))
                .id();
        long qa = roster.takeOn(crew.act(owner), "QL", "Quinn Lead", EnumSet.of(Role.QA_LEAD))
                .id();
        credentials.keepPin(crew.act(qa), "000000", PIN);
        for (int i = 1; i <= 9; i++) {
            stations.add(crew.act(owner), new Station("" + i, "Station " + i, 3, new BigDecimal("30"), false));
        }
        drafts.layOut(crew.act(qa), new NewRoute("HT-1", "Hardtail of this shop", "AL6061", "HARDTAIL", "HT-6061"));
        drafts.release(crew.act(qa), "HT-1", drafts.draft("HT-1").version(), "Looked through, fits the shop");
        page = Chromium.desk(base(), "OB", PASSWORD);
    }

    @AfterAll
    void closes() {
        page.context().close();
    }

    @Test
    void anOrderIsTakenDrawnApprovedAndSigned() {
        page.navigate(base() + "/orders");
        look("orders-empty");
        page.getByText("Enter an order").first().click();
        page.waitForURL("**/orders/new");
        look("order-entry");
        fill("description", "Hardtail 29 trail");
        fill("country", "SE");
        fill("components", "fork: 541 mm, offset 44\nheadset: lower stack 12");
        fill("ownPart.what", "shock");
        fill("ownPart.description", "210 by 55");
        fill("rider.height", "70");
        fill("rider.mass", "78");
        fill("customer.name", "Rider One");
        fill("customer.country", "SE");
        fill("customer.contact", "Harbour road 3");
        fill("promised", "2026-05-22");
        fill("price", "2850");
        page.locator("main .sign .btn").click();
        page.locator(".refusal").waitFor();
        assertThat(page.locator(".refusal").innerText()).contains("177,8 cm (70 inches)");
        assertThat(page.locator("[name='description']").first().inputValue()).isEqualTo("Hardtail 29 trail");
        look("order-asked");
        fill("rider.height", "178");
        page.locator("main .sign .btn").click();
        page.waitForURL(url -> url.matches(".*/orders/\\d+"));
        look("order");
        OrderSheet order = orders.open().get(0);

        page.getByText("Begin the drawing", exactly()).click();
        page.waitForURL("**/designs/*");
        long revision =
                designs.revisions(orders.byId(order.id()).designId()).get(0).revisionId();
        look("design-draft");
        page.navigate(base() + "/designs/" + revision + "/edit");
        page.locator("[name='route']")
                .selectOption(Long.toString(book.released("HT-1").revisionId()));
        fill("testFamily", "HT-AL-A");
        fill("geometry.HEAD_ANGLE", "655");
        page.locator("main .sign .btn").click();
        page.locator(".refusal").waitFor();
        assertThat(page.locator(".refusal").innerText()).contains("If 65,5° was meant");
        look("design-refused");
        fill("geometry.HEAD_ANGLE", "65,5");
        fill("geometry.SEAT_ANGLE", "74,5");
        fill("geometry.REACH", "458");
        page.locator("main .sign .btn").click();
        page.waitForURL("**/designs/" + revision);
        page.navigate(base() + "/designs/" + revision + "/characteristics");
        look("characteristics-missing");
        StringBuilder pasted = new StringBuilder();
        designs.readyFor(revision, book.released("HT-1"))
                .forEach(one -> pasted.append(one.code()).append(";42,5\n"));
        fill("paste", pasted.toString());
        page.locator("main .sign .btn").click();
        page.locator("h2", new Page.LocatorOptions().setHasText("none without a nominal"))
                .waitFor();
        look("characteristics");

        page.navigate(base() + "/designs/" + revision);
        page.locator("#f-file").setInputFiles(new FilePayload("frame.pdf", "application/pdf", DrawnFrame.PDF));
        page.getByText("Add the drawing", exactly()).click();
        page.getByText("frame.pdf", exactly()).first().waitFor();
        page.locator("main .plate .btn.main").click();
        page.waitForURL("**/approval");
        look("approval");
        fill("letter", "A");
        fill("approver", "Rider One");
        fill("on", "2026-03-18");
        page.getByText("Enter the approval", exactly()).click();
        page.waitForURL("**/designs/" + revision);
        for (GateCheck check : asked(revision)) {
            page.locator("[aria-label='Answer " + check.label() + "']").click();
            page.locator("details[open] button").first().click();
            page.locator("[aria-label='Change the answer of " + check.label() + "']")
                    .waitFor();
        }
        look("design-gate");
        page.locator("[name='signer']").selectOption(signer("OB", Role.OWNER));
        page.locator("[name='pin']").fill("999999");
        page.getByText("Sign the gate", exactly()).click();
        page.locator(".refusal").waitFor();
        for (String[] one : new String[][] {{"OB", "OWNER"}, {"QL", "QA_LEAD"}}) {
            page.locator("[name='signer']").selectOption(signer(one[0], Role.valueOf(one[1])));
            page.locator("[name='pin']").fill(PIN);
            page.getByText("Sign the gate", exactly()).click();
            page.locator(one[0].equals("OB") ? "main li b:text-is('owner')" : "h2:text-is('Ready for the shop')")
                    .waitFor();
        }
        assertThat(designs.revision(revision).state()).isEqualTo(DesignState.CHECKED);
        look("design-checked");
        page.navigate(base() + "/orders/" + order.id());
        assertThat(page.getByText("Release revision A").count()).isEqualTo(1);
        look("order-to-release");
        page.locator("summary", new Page.LocatorOptions().setHasText("Cancel the order"))
                .click();
        fill("cancelReason", "the customer withdrew");
        page.locator("button", new Page.LocatorOptions().setHasText("Cancel the order"))
                .click();
        page.locator(".refusal").waitFor();
        assertThat(page.locator(".refusal").innerText()).contains("drawing A is checked");
        look("order-cancelling");
        page.navigate(base() + "/orders");
        look("orders");
        page.navigate(base() + "/customers/1");
        look("customer");
        fitsAPhone(order, revision);
    }

    private void fitsAPhone(OrderSheet order, long revision) {
        for (int[] size : new int[][] {{1280, 800}, {390, 844}}) {
            page.setViewportSize(size[0], size[1]);
            for (String path : List.of(
                    "/orders",
                    "/orders/past",
                    "/orders/new",
                    "/orders/" + order.id(),
                    "/designs/" + revision,
                    "/designs/" + revision + "/characteristics",
                    "/designs/" + revision + "/approval")) {
                page.navigate(base() + path);
                assertThat((int) page.evaluate("document.documentElement.scrollWidth"))
                        .as(path + " at " + size[0])
                        .isLessThanOrEqualTo(size[0]);
                Chromium.picture(page, "phone" + path.replace('/', '-') + "-" + size[0]);
            }
        }
        page.setViewportSize(1440, 900);
    }

    private String signer(String initials, Role role) {
        return jdbc.sql("select id from person where initials = ?")
                        .param(initials)
                        .query(Long.class)
                        .single() + ":" + role;
    }

    private void fill(String name, String value) {
        page.locator("main [name='" + name + "']").first().fill(value);
    }

    private static Page.GetByTextOptions exactly() {
        return new Page.GetByTextOptions().setExact(true);
    }

    private void look(String name) {
        Chromium.look(page, name);
    }

    private String base() {
        return "http://localhost:" + port;
    }

    private List<GateCheck> asked(long revision) {
        DesignSheet sheet = designs.revision(revision);
        return Arrays.stream(GateCheck.values())
                .filter(check -> check.concerns(sheet))
                .toList();
    }
}
