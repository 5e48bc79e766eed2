package org.trammel.shop.orders;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.trammel.shop.designs.Component;

/** What a test orders when the order itself is not its subject. */
final class TakenOrder {

    private TakenOrder() {}

    static OrderDetails details(RiderDetails rider) {
        return new OrderDetails(
                "Hardtail 29 trail",
                "AL6061",
                "HARDTAIL",
                Category.MOUNTAIN,
                "SE",
                "bell, reflectors",
                BrakeLever.LEFT,
                rider,
                List.of(new Component("fork", "541 mm, offset 44")));
    }

    static RiderDetails rider(String height) {
        return new RiderDetails(
                new BigDecimal(height), new BigDecimal("84"), null, null, new BigDecimal("78"), "stiff hips");
    }

    static CustomerDetails customer() {
        return new CustomerDetails(
                "Rider One", "Harbour road 3, rider.one@example.org", "SE", LocalDate.of(2026, 3, 1));
    }

    static NewOrder hardtail() {
        return with(rider("178"), false);
    }

    static NewOrder with(RiderDetails rider, boolean confirmed) {
        return new NewOrder(
                null,
                null,
                customer(),
                details(rider),
                List.of(new OwnPartDetails("shock", "210 by 55", LocalDate.of(2026, 4, 1))),
                new BigDecimal("2850"),
                LocalDate.of(2026, 5, 22),
                null,
                null,
                confirmed);
    }

    static NewOrder numbered(String number) {
        NewOrder usual = hardtail();
        return new NewOrder(
                number,
                null,
                usual.customer(),
                usual.details(),
                List.of(),
                usual.price(),
                usual.promised(),
                null,
                null,
                false);
    }

    static NewOrder returned(String serial) {
        NewOrder usual = hardtail();
        return new NewOrder(null, null, usual.customer(), usual.details(), List.of(), null, null, null, serial, false);
    }
}
