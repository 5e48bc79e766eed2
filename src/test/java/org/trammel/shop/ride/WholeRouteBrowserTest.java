package org.trammel.shop.ride;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.annotation.Import;
import org.springframework.test.context.ActiveProfiles;
import org.springframework.test.context.ContextConfiguration;
import org.trammel.shop.ShopTestBeans;
import org.trammel.shop.TestClock;
import org.trammel.shop.TestEngine;
import org.trammel.shop.designs.Designs;
import org.trammel.shop.gauges.Gauges;
import org.trammel.shop.orders.Orders;
import org.trammel.shop.routes.OperationSheet;
import org.trammel.shop.routes.Point;
import org.trammel.shop.routes.RouteBook;
import org.trammel.shop.routes.RouteSheet;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.travellers.Evidence;
import org.trammel.shop.travellers.Travellers;

/** Frames from the customer's order to the road, by hand in a real browser, where every gate refuses a bad thing first. */
@Tag("browser")
@SpringBootTest(
        webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT,
        properties = "trammel.test.database=whole_route")
@ActiveProfiles("test")
@Import({ShopTestBeans.class, Workshop.class})
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
    private TestClock clock;

    private Sheets sheets;
    private Instant latest = TestClock.START;

    @BeforeAll
    void openTheShop() {
        shop.setUp();
        sheets = new Sheets(port);
    }

    @AfterAll
    void closes() {
        sheets.close();
    }

    @Test
    void aHardtailOf6061GoesFromItsOrderToTheRoad() {
        Desk owner = new Desk(sheets, shop.owner);
        Desk qa = new Desk(sheets, shop.qa);
        RouteSheet route = book.released("HT-6061");
        OrderDesk desk = new OrderDesk(owner, shop, orders, designs);
        String serial = desk.releases("Hardtail 29 trail", "HARDTAIL", route);
        Ride ride = new Ride(sheets, shop, qa, owner, travellers, evidence, gauges, settings, clock);
        ride.ride(travellers.inForce(serial, "").travellerId());
        assertThat(ride.refusedSignatures).isEqualTo(points("", route));
    }

    private static Set<String> points(String part, RouteSheet route) {
        Set<String> points = new TreeSet<>();
        for (OperationSheet operation : route.operations()) {
            if (operation.point() != Point.NONE) {
                points.add(part + operation.code());
            }
        }
        return points;
    }
}
