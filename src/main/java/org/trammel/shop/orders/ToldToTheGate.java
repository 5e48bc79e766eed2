package org.trammel.shop.orders;

import java.util.Optional;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.designs.OrderTells;

/** Says to the design gate what was ordered and for which rider. */
@Component
class ToldToTheGate implements OrderTells {

    private final ShopOrderRepository orders;
    private final RiderRepository riders;

    ToldToTheGate(ShopOrderRepository orders, RiderRepository riders) {
        this.orders = orders;
        this.riders = riders;
    }

    @Override
    @Transactional(readOnly = true)
    public Optional<Told> told(String number) {
        return orders.findByNumber(number).map(order -> {
            OrderDetails details = order.details(RiderDetails.UNKNOWN);
            Optional<Rider> rider = riders.findById(order.id());
            RiderDetails about = rider.map(Rider::details).orElse(RiderDetails.UNKNOWN);
            return new Told(
                    details.country(),
                    details.category().name(),
                    details.frontBrakeLever().word(),
                    about.inseam() == null ? null : about.inseam().movePointRight(1),
                    about.mass(),
                    rider.map(Rider::edition).orElse(-1L));
        });
    }
}
