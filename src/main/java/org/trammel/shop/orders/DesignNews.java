package org.trammel.shop.orders;

import java.util.Map;
import java.util.Optional;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;
import org.trammel.shop.designs.DesignEvent;
import org.trammel.shop.records.Refusal;

/** Moves the order with its drawing, in the transaction that moved the drawing. */
@Component
class DesignNews {

    private final ShopOrderRepository orders;
    private final OrderAct opening;

    DesignNews(ShopOrderRepository orders, OrderAct opening) {
        this.orders = orders;
        this.opening = opening;
    }

    @EventListener
    void heard(DesignEvent news) {
        Optional<ShopOrder> found = orders.findByDesignId(news.designId());
        if (found.isEmpty()) {
            return;
        }
        ShopOrder order = found.get();
        if (!order.state().open()) {
            throw Refusal.state(
                    "The drawing of " + order.number() + " stays as it is.",
                    "The order is " + order.state().word() + ".",
                    "Enter a new order if there is a new frame to draw.");
        }
        OrderState before = order.state();
        if (news instanceof DesignEvent.Sent) {
            order.drawingSent();
        } else if (news instanceof DesignEvent.Approved) {
            order.drawingApproved(news.revisionId());
        }
        if (order.state() != before) {
            opening.event(
                    order,
                    "order-followed-drawing",
                    Map.of("state", order.state().name(), "revision", news.revisionId()));
        }
    }
}
