package org.trammel.shop.travellers;

import java.util.List;
import java.util.Map;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.orders.FrameFate;
import org.trammel.shop.orders.OrderEvent;
import org.trammel.shop.orders.OrderSheet;
import org.trammel.shop.orders.UnderWay;
import org.trammel.shop.records.ActLog;

/** An order is called off: its travellers are told of before, and withdrawn with it. */
@Component
class CalledOff implements UnderWay, FrameFate {

    private final TravellerRepository travellers;
    private final ActLog log;

    CalledOff(TravellerRepository travellers, ActLog log) {
        this.travellers = travellers;
        this.log = log;
    }

    @Override
    public List<String> of(OrderSheet order) {
        return open(order.id()).stream()
                .map(t -> t.mark() + " is "
                        + (t.currentCode() == null
                                ? t.state().word()
                                : "at operation " + t.currentCode() + ", "
                                        + t.state().word()))
                .toList();
    }

    @Override
    public boolean scrapped(OrderSheet order) {
        List<Traveller> whole = travellers.findByOrderIdOrderById(order.id()).stream()
                .filter(Traveller::frame)
                .toList();
        return whole.stream().anyMatch(t -> t.state() == TravellerState.SCRAPPED)
                && whole.stream().noneMatch(t -> t.state().open());
    }

    /** Nobody goes on working on it: its tags are refused from now on and say why. */
    @EventListener
    @Transactional(propagation = Propagation.MANDATORY)
    void calledOff(OrderEvent.Cancelled event) {
        for (Traveller traveller : open(event.orderId())) {
            traveller.withdraw("its order " + traveller.orderNumber() + " is called off");
            log.event(traveller.chain(), "withdrawn", Map.of("part", traveller.part(), "order", event.orderId()));
        }
    }

    private List<Traveller> open(long orderId) {
        return travellers.findByOrderIdOrderById(orderId).stream()
                .filter(t -> t.state().open())
                .toList();
    }
}
