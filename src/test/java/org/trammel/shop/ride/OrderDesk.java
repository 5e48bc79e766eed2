package org.trammel.shop.ride;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.FilePayload;
import java.util.Arrays;
import java.util.List;
import org.trammel.shop.designs.DesignSheet;
import org.trammel.shop.designs.DesignState;
import org.trammel.shop.designs.Designs;
import org.trammel.shop.designs.DrawnFrame;
import org.trammel.shop.designs.GateCheck;
import org.trammel.shop.orders.OrderSheet;
import org.trammel.shop.orders.Orders;
import org.trammel.shop.routes.RouteSheet;
import org.trammel.shop.settings.Settings;

/** From what the customer said to a frame in the shop: order, drawing, approval, gate, release. */
final class OrderDesk {

    private final Desk desk;
    private final Workshop shop;
    private final Orders orders;
    private final Designs designs;
    private final Settings settings;

    OrderDesk(Desk desk, Workshop shop, Orders orders, Designs designs, Settings settings) {
        this.desk = desk;
        this.shop = shop;
        this.orders = orders;
        this.designs = designs;
        this.settings = settings;
    }

    /** Gives the serial of the frame. */
    String releases(String description, String kind, RouteSheet route) {
        OrderSheet order = enters(description, kind);
        desk.press("form[action$='/design'] .btn.main");
        long revision =
                designs.revisions(orders.byId(order.id()).designId()).get(0).revisionId();
        draws(revision, route);
        approves(revision);
        signsTheGate(revision);
        desk.open("/orders/" + order.id());
        desk.press("form[action$='/release'] .btn.main");
        return orders.byId(order.id()).serial();
    }

    private OrderSheet enters(String description, String kind) {
        desk.open("/orders/new");
        desk.fill("description", description);
        desk.page().locator("main [name='metal']").selectOption("AL6061");
        desk.page().locator("main [name='kind']").selectOption(kind);
        desk.fill("country", "SE");
        desk.fill("components", "fork: 541 mm, offset 44\nheadset: lower stack 12");
        desk.fill("rider.height", "178");
        desk.fill("rider.mass", "78");
        desk.fill("customer.name", "Rider of a " + kind.toLowerCase(java.util.Locale.ROOT));
        desk.fill("customer.country", "SE");
        desk.fill("customer.contact", "Harbour road 3");
        desk.fill("promised", settings.today().plusDays(60).toString());
        desk.fill("price", "2850");
        desk.press("main .sign .btn");
        assertThat(desk.page().url()).as(desk.reads()).matches(".*/orders/\\d+");
        String id = desk.page().url().replaceAll(".*/", "");
        return orders.byId(Long.parseLong(id));
    }

    private void draws(long revision, RouteSheet route) {
        desk.open("/designs/" + revision + "/edit");
        desk.page().locator("[name='route']").selectOption(Long.toString(route.revisionId()));
        desk.fill("testFamily", "HT-AL-A");
        desk.fill("geometry.HEAD_ANGLE", "65,5");
        desk.fill("geometry.SEAT_ANGLE", "74,5");
        desk.fill("geometry.REACH", "458");
        desk.press("main .sign .btn");
        desk.open("/designs/" + revision + "/characteristics");
        StringBuilder pasted = new StringBuilder();
        designs.readyFor(revision, route)
                .forEach(one -> pasted.append(one.code())
                        .append(';')
                        .append(Nominals.of(one.code()).replace('.', ','))
                        .append('\n'));
        desk.fill("paste", pasted.toString());
        desk.press("main .sign .btn");
        assertThat(desk.reads()).contains("none without a nominal");
        desk.open("/designs/" + revision);
        desk.page().locator("#f-file").setInputFiles(new FilePayload("frame.pdf", "application/pdf", DrawnFrame.PDF));
        desk.press("form[action$='/drawing'] button");
    }

    private void approves(long revision) {
        desk.press("form[action$='/sending'] .btn.main");
        desk.open("/designs/" + revision + "/approval");
        desk.fill("letter", "A");
        desk.fill("approver", "The rider");
        desk.fill("on", settings.today().toString());
        desk.press("form[action$='/approval'] button");
        assertThat(designs.revision(revision).state()).isEqualTo(DesignState.APPROVED);
    }

    private void signsTheGate(long revision) {
        desk.open("/designs/" + revision);
        for (GateCheck check : asked(revision)) {
            Page page = desk.page();
            Locator row = page.locator(
                    "tr", new Page.LocatorOptions().setHas(page.locator("th:text-is('" + check.label() + "')")));
            page.locator("[aria-label='Answer " + check.label() + "']").click();
            if (row.locator("option[value='MEETS']").all().isEmpty()) {
                // All numbers of this frame are typed from a drawing on paper.
                row.locator("[name='answer']").selectOption("DECIDED");
                row.locator("textarea").fill("as drawn on paper");
            }
            desk.press("details[open] button");
        }
        for (String signer : List.of(shop.owner.id() + ":OWNER", shop.qa.id() + ":QA_LEAD")) {
            desk.page().locator("[name='signer']").selectOption(signer);
            desk.fill("pin", Hand.PIN);
            desk.press("form[action$='/signature'] .btn.main");
        }
        assertThat(desk.reads()).contains("Ready for the shop");
    }

    private List<GateCheck> asked(long revision) {
        DesignSheet sheet = designs.revision(revision);
        return Arrays.stream(GateCheck.values())
                .filter(check -> check.concerns(sheet))
                .toList();
    }
}
