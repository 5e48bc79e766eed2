package org.trammel.shop;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.FilePayload;
import java.util.Arrays;
import java.util.List;
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
import org.trammel.shop.people.Role;
import org.trammel.shop.routes.NewRoute;
import org.trammel.shop.routes.RouteBook;
import org.trammel.shop.routes.RouteDrafts;

/** An order from the customer's call to the signed design gate, by hand in a real browser. */
@BrowserTest("trammel.test.database=order_screens")
class OrderScreensBrowserTest {

    @LocalServerPort
    private int port;

    @Autowired
    private NewShop shop;

    @Autowired
    private TestCrew crew;

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

    private DeskHand desk;
    private Page page;

    @BeforeAll
    void opens() {
        long qa = shop.open().qa();
        drafts.layOut(crew.act(qa), new NewRoute("HT-1", "Hardtail of this shop", "AL6061", "HARDTAIL", "HT-6061"));
        drafts.release(crew.act(qa), "HT-1", drafts.draft("HT-1").version(), "Looked through, fits the shop");
        desk = new DeskHand(port);
        page = desk.page();
    }

    @AfterAll
    void closes() {
        desk.leave();
    }

    @Test
    void anOrderIsTakenDrawnApprovedAndSigned() {
        desk.open("/orders");
        desk.look("orders-empty");
        page.getByText("Enter an order").first().click();
        page.waitForURL("**/orders/new");
        desk.look("order-entry");
        desk.fill("description", "Hardtail 29 trail");
        desk.fill("country", "SE");
        desk.fill("components", "fork: 541 mm, offset 44\nheadset: lower stack 12");
        desk.fill("ownPart.what", "shock");
        desk.fill("ownPart.description", "210 by 55");
        desk.fill("rider.height", "70");
        desk.fill("rider.mass", "78");
        desk.fill("customer.name", "Rider One");
        desk.fill("customer.country", "SE");
        desk.fill("customer.contact", "Harbour road 3");
        desk.fill("promised", "2026-05-22");
        desk.fill("price", "2850");
        desk.save();
        page.locator(".refusal").waitFor();
        assertThat(page.locator(".refusal").innerText()).contains("177,8 cm (70 inches)");
        assertThat(page.locator("[name='description']").first().inputValue()).isEqualTo("Hardtail 29 trail");
        desk.look("order-asked");
        desk.fill("rider.height", "178");
        desk.save();
        page.waitForURL(url -> url.matches(".*/orders/\\d+"));
        desk.look("order");
        OrderSheet order = orders.open().get(0);

        desk.click("Begin the drawing");
        page.waitForURL("**/designs/*");
        long revision =
                designs.revisions(orders.byId(order.id()).designId()).get(0).revisionId();
        desk.look("design-draft");
        desk.open("/designs/" + revision + "/edit");
        page.locator("[name='route']")
                .selectOption(Long.toString(book.released("HT-1").revisionId()));
        desk.fill("testFamily", "HT-AL-A");
        desk.fill("geometry.HEAD_ANGLE", "655");
        desk.save();
        page.locator(".refusal").waitFor();
        assertThat(page.locator(".refusal").innerText()).contains("If 65,5° was meant");
        desk.look("design-refused");
        desk.fill("geometry.HEAD_ANGLE", "65,5");
        desk.fill("geometry.SEAT_ANGLE", "74,5");
        desk.fill("geometry.REACH", "458");
        desk.save();
        page.waitForURL("**/designs/" + revision);
        desk.open("/designs/" + revision + "/characteristics");
        desk.look("characteristics-missing");
        StringBuilder pasted = new StringBuilder();
        designs.readyFor(revision, book.released("HT-1"))
                .forEach(one -> pasted.append(one.code()).append(";42,5\n"));
        desk.fill("paste", pasted.toString());
        desk.save();
        page.locator("h2", new Page.LocatorOptions().setHasText("none without a nominal"))
                .waitFor();
        desk.look("characteristics");

        desk.open("/designs/" + revision);
        page.locator("#f-file").setInputFiles(new FilePayload("frame.pdf", "application/pdf", DrawnFrame.PDF));
        desk.click("Add the drawing");
        desk.waitFor("frame.pdf");
        page.locator("main .plate .btn.main").click();
        page.waitForURL("**/approval");
        desk.look("approval");
        desk.fill("letter", "A");
        desk.fill("approver", "Rider One");
        desk.fill("on", "2026-03-18");
        desk.click("Enter the approval");
        page.waitForURL("**/designs/" + revision);
        for (GateCheck check : asked(revision)) {
            Locator row = page.locator("tr:has(th:text-is('" + check.label() + "'))");
            page.locator("[aria-label='Answer " + check.label() + "']").click();
            if (row.locator("option[value='MEETS']").all().isEmpty()) {
                row.locator("[name='answer']").selectOption("DECIDED");
                row.locator("textarea").fill("as drawn on paper");
            }
            page.locator("details[open] button").first().click();
            page.locator("[aria-label='Change the answer of " + check.label() + "']")
                    .waitFor();
        }
        desk.look("design-gate");
        page.locator("[name='signer']").selectOption(signer("OB", Role.OWNER));
        page.locator("[name='pin']").fill("999999");
        desk.click("Sign the gate");
        page.locator(".refusal").waitFor();
        for (String[] one : new String[][] {{"OB", "OWNER"}, {"QL", "QA_LEAD"}}) {
            page.locator("[name='signer']").selectOption(signer(one[0], Role.valueOf(one[1])));
            page.locator("[name='pin']").fill(NewShop.PIN);
            desk.click("Sign the gate");
            page.locator(one[0].equals("OB") ? "main li b:text-is('owner')" : "h2:text-is('Ready for the shop')")
                    .waitFor();
        }
        assertThat(designs.revision(revision).state()).isEqualTo(DesignState.CHECKED);
        desk.look("design-checked");
        desk.open("/orders/" + order.id());
        assertThat(page.getByText("Release revision A").count()).isEqualTo(1);
        desk.look("order-to-release");
        page.locator("summary", new Page.LocatorOptions().setHasText("Cancel the order"))
                .click();
        desk.fill("cancelReason", "the customer withdrew");
        page.locator("button", new Page.LocatorOptions().setHasText("Cancel the order"))
                .click();
        page.locator(".refusal").waitFor();
        assertThat(page.locator(".refusal").innerText()).contains("drawing A is checked");
        desk.look("order-cancelling");
        desk.open("/orders");
        desk.look("orders");
        desk.open("/customers/1");
        desk.look("customer");
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
                desk.open(path);
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

    private List<GateCheck> asked(long revision) {
        DesignSheet sheet = designs.revision(revision);
        return Arrays.stream(GateCheck.values())
                .filter(check -> check.concerns(sheet))
                .toList();
    }
}
