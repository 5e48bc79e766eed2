package org.trammel.shop.people;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;

/** Which day it is in the shop: qualifications end at the shop's midnight, not at that of the server. */
@Component
class ShopDay {

    private final Clock clock;
    private final ZoneId zone;

    ShopDay(Clock clock, @Value("${trammel.zone}") ZoneId zone) {
        this.clock = clock;
        this.zone = zone;
    }

    LocalDate today() {
        return LocalDate.ofInstant(clock.instant(), zone);
    }
}
