package org.trammel.shop.ride;

import org.junit.jupiter.api.Test;
import org.trammel.shop.BrowserTest;
import org.trammel.shop.routes.RouteSheet;

/** A hardtail of 6061. */
@BrowserTest("trammel.test.database=hardtail_ride")
class HardtailRideBrowserTest extends WholeRoute {

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
}
