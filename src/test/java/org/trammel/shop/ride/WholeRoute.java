package org.trammel.shop.ride;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.Media;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import org.trammel.shop.TestClock;
import org.trammel.shop.designs.Designs;
import org.trammel.shop.drift.JigUses;
import org.trammel.shop.gauges.Gauges;
import org.trammel.shop.handwork.Handwork;
import org.trammel.shop.handwork.SerialReads;
import org.trammel.shop.inspection.Readings;
import org.trammel.shop.materials.TubeIssues;
import org.trammel.shop.orders.OrderState;
import org.trammel.shop.orders.Orders;
import org.trammel.shop.routes.RouteBook;
import org.trammel.shop.routes.RouteSheet;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.travellers.Bench;
import org.trammel.shop.travellers.Evidence;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.Travellers;

/**
 * A frame from the customer's order to the road, by hand in a real browser, where every gate refuses a bad thing first.
 * Each kind of frame has a shop and a class of its own, so that two rides need the time of the longer one.
 */
abstract class WholeRoute {

    @LocalServerPort
    private int port;

    @Autowired
    private Workshop shop;

    @Autowired
    private Orders orders;

    @Autowired
    private Designs designs;

    @Autowired
    RouteBook book;

    @Autowired
    Travellers travellers;

    @Autowired
    private Evidence evidence;

    @Autowired
    private Gauges gauges;

    @Autowired
    private Settings settings;

    @Autowired
    private Bench bench;

    @Autowired
    private Readings readings;

    @Autowired
    private Handwork handwork;

    @Autowired
    private SerialReads serials;

    @Autowired
    private JigUses jigs;

    @Autowired
    private TubeIssues tubes;

    @Autowired
    private Proven proven;

    @Autowired
    private TestClock clock;

    private Sheets sheets;
    private Desk owner;
    private Desk qa;
    private Aftercare aftercare;

    /** The verification compares with a file beside the database: an empty shop has none from an earlier run. */
    @DynamicPropertySource
    static void aFolderOfItsOwn(DynamicPropertyRegistry registry) throws IOException {
        Path home = Files.createTempDirectory(Path.of("target"), "whole-route-");
        registry.add("trammel.home", home::toString);
    }

    @BeforeEach
    void openTheShop() {
        shop.setUp();
        sheets = new Sheets(port);
    }

    @AfterEach
    void closesTheShop() {
        sheets.close();
    }

    long released(String description, String kind, RouteSheet route) {
        owner = new Desk(sheets, shop.owner);
        qa = new Desk(sheets, shop.qa);
        aftercare = new Aftercare(qa, owner, travellers);
        String serial = new OrderDesk(owner, shop, orders, designs, settings).releases(description, kind, route);
        return travellers.inForce(serial, "").travellerId();
    }

    Ride ride() {
        return new Ride(
                sheets,
                shop,
                aftercare,
                travellers,
                evidence,
                gauges,
                settings,
                clock,
                new Elsewhere(bench, readings, handwork, serials, jigs, tubes, clock),
                proven);
    }

    void requireEveryGateTried(Ride ride, RouteSheet route) {
        Gates gates = Gates.of(route);
        assertThat(ride.refusedReadings).isEqualTo(gates.readings());
        assertThat(ride.refusedSignatures).isEqualTo(gates.points());
        assertThat(ride.closedWindows).isEqualTo(gates.windows());
        assertThat(ride.unjoined).isEqualTo(gates.joins());
        assertThat(proven.refused).isEqualTo(gates.proofs());
    }

    /** The order is shipped, every refused try stands in the frame's story, the papers print and the log fits. */
    void requireWholeRecord(long frame) {
        FrameSheet.Head head = travellers.head(frame);
        assertThat(orders.byId(head.orderId()).state()).isEqualTo(OrderState.SHIPPED);
        owner.open("/frames/" + head.serial());
        String story = owner.reads();
        Sheets.look(owner.page(), head.kind() + "-story");
        assertThat(story).contains(aftercare.nonconformances).contains("undecided", "Concession", "shipped");
        assertThat(count(story, "not conforming")).isGreaterThanOrEqualTo(aftercare.nonconformances.size());
        requirePrints(head.kind() + "-story", ".granted");
        for (FrameSheet.Head one : travellers.heads(head.serial())) {
            owner.open("/frames/" + one.tag() + "/traveller");
            requirePrints(head.kind() + one.part() + "-traveller", "tr.struck");
        }
        qa.open("/shop/log/verification?files=true");
        assertThat(qa.reads()).contains("Every record fits");
    }

    /** What is open at the owner's desk prints, and what must not be missing stands on the paper. */
    private void requirePrints(String name, String shows) {
        byte[] paper = Sheets.print(owner.page(), name);
        assertThat(new String(paper, 0, 5, StandardCharsets.US_ASCII)).isEqualTo("%PDF-");
        owner.page().emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
        assertThat(owner.page().locator(shows).first().isVisible())
                .as("%s on %s", shows, name)
                .isTrue();
        owner.page().emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.SCREEN));
    }

    private static int count(String text, String words) {
        return text.split(words, -1).length - 1;
    }
}
