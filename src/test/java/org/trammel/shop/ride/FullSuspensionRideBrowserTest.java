package org.trammel.shop.ride;

import org.junit.jupiter.api.Test;
import org.trammel.shop.BrowserTest;
import org.trammel.shop.routes.RouteSheet;

/** A full suspension frame: two parts on routes of their own, joined when both are proven. */
@BrowserTest("trammel.test.database=full_suspension_ride")
class FullSuspensionRideBrowserTest extends WholeRoute {

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
}
