package org.trammel.shop.assembly;

import java.util.Objects;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.orders.OwnPartOver;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.HasCome;
import org.trammel.shop.travellers.Travellers;

/** A frame that only waited for a part of its customer goes on in the act that ends the wait. */
@Component
class OwnPartsOver {

    private final Travellers travellers;
    private final HasCome hasCome;

    OwnPartsOver(Travellers travellers, HasCome hasCome) {
        this.travellers = travellers;
        this.hasCome = hasCome;
    }

    @EventListener
    @Transactional(propagation = Propagation.MANDATORY)
    public void over(OwnPartOver event) {
        travellers.ofOrder(event.orderId()).stream()
                .map(FrameSheet.Head::currentOperationId)
                .filter(Objects::nonNull)
                .forEach(operation -> hasCome.to(event.act(), operation));
    }
}
