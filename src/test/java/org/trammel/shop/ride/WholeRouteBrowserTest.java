package org.trammel.shop.ride;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.Media;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.annotation.Import;
import org.springframework.test.context.ActiveProfiles;
import org.springframework.test.context.ContextConfiguration;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import org.trammel.shop.ShopTestBeans;
import org.trammel.shop.TestClock;
import org.trammel.shop.TestEngine;
import org.trammel.shop.designs.Designs;
import org.trammel.shop.gauges.Gauges;
import org.trammel.shop.inspection.Readings;
import org.trammel.shop.orders.OrderState;
import org.trammel.shop.orders.Orders;
import org.trammel.shop.routes.RouteBook;
import org.trammel.shop.routes.RouteSheet;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.travellers.Bench;
import org.trammel.shop.travellers.Evidence;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.Travellers;

/** Frames from the customer's order to the road, by hand in a real browser, where every gate refuses a bad thing first. */
@Tag("browser")
@SpringBootTest(
        webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT,
        properties = "trammel.test.database=whole_route")
@ActiveProfiles("test")
@Import(ShopTestBeans.class)
@ContextConfiguration(initializers = TestEngine.Initializer.class)
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class WholeRouteBrowserTest {

    @LocalServerPort
    private int port;

    @Autowired
    private Workshop shop;

    @Autowired
    private Orders orders;

    @Autowired
    private Designs designs;

    @Autowired
    private RouteBook book;

    @Autowired
    private Travellers travellers;

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
    private TestClock clock;

    private Sheets sheets;
    private Desk owner;
    private Desk qa;
    private Aftercare aftercare;
    private Instant latest = TestClock.START;

    /** The verification compares with a file beside the database: an empty shop has none from an earlier run. */
    @DynamicPropertySource
    static void aFolderOfItsOwn(DynamicPropertyRegistry registry) throws IOException {
        Path home = Files.createTempDirectory(Path.of("target"), "whole-route-");
        registry.add("trammel.home", home::toString);
    }

    @BeforeAll
    void openTheShop() {
        shop.setUp();
        sheets = new Sheets(port);
    }

    @BeforeEach
    void goesOnWhereTheLastFrameLeftOff() {
        clock.setTo(latest);
    }

    @AfterEach
    void closesTheShop() {
        sheets.close();
        latest = clock.instant().plus(Duration.ofHours(1));
    }

    @Test
    void aHardtailOf6061GoesFromItsOrderToTheRoad() {
        RouteSheet route = book.released("HT-6061");
        long frame = released("Hardtail 29 trail", "HARDTAIL", route);
        Ride ride = ride();
        ride.ride(frame);
        ride.ships(frame, "AV26999X");
        requireEveryGateTried(ride, route);
        requireWholeRecord(frame);
    }

    @Test
    void aFullSuspensionFrameGoesFromItsOrderToTheRoadWithBothItsParts() {
        RouteSheet route = book.released("FS-6061");
        long frame = released("Full suspension 29", "FULL_SUSPENSION", route);
        String serial = travellers.head(frame).serial();
        Ride ride = ride();
        ride.joinsTooEarly(frame);
        ride.ride(travellers.inForce(serial, "FT").travellerId());
        ride.joinsTooEarly(frame);
        ride.ride(travellers.inForce(serial, "SA").travellerId());
        ride.ride(frame);
        ride.ships(frame, "AV26999X");
        requireEveryGateTried(ride, route);
        requireWholeRecord(frame);
    }

    private long released(String description, String kind, RouteSheet route) {
        owner = new Desk(sheets, shop.owner);
        qa = new Desk(sheets, shop.qa);
        aftercare = new Aftercare(qa, owner, travellers);
        String serial = new OrderDesk(owner, shop, orders, designs, settings).releases(description, kind, route);
        return travellers.inForce(serial, "").travellerId();
    }

    private Ride ride() {
        return new Ride(
                sheets,
                shop,
                aftercare,
                travellers,
                evidence,
                gauges,
                settings,
                clock,
                new Elsewhere(bench, readings, clock));
    }

    private static void requireEveryGateTried(Ride ride, RouteSheet route) {
        Gates gates = Gates.of(route);
        assertThat(ride.refusedReadings).isEqualTo(gates.readings());
        assertThat(ride.refusedSignatures).isEqualTo(gates.points());
        assertThat(ride.closedWindows).isEqualTo(gates.windows());
        assertThat(ride.unjoined).isEqualTo(gates.joins());
    }

    /** The order is shipped, every refused try stands in the frame's story, the papers print and the log fits. */
    private void requireWholeRecord(long frame) {
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
