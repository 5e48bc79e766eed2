package org.trammel.shop.orders;

import java.util.Optional;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.designs.FrameSerials;

/** Tells the drawing office the serial of the frame it draws. */
@Component
class GivenSerials implements FrameSerials {

    private final ShopOrderRepository orders;

    GivenSerials(ShopOrderRepository orders) {
        this.orders = orders;
    }

    @Override
    @Transactional(readOnly = true)
    public Optional<String> serialOf(String orderNumber) {
        return orders.findByNumber(orderNumber).map(ShopOrder::serial);
    }
}
