package org.trammel.shop.travellers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.trammel.shop.floor.SmallRoute.op;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.transaction.support.TransactionTemplate;
import org.trammel.shop.floor.Floor;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.orders.OrderEvent;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;

/** A scrapped part is made anew and the frame joined with it; a frame whose order is called off goes nowhere. */
class PartAnewTest extends AtTheBench {

    @Autowired
    private TransactionTemplate transaction;

    @Autowired
    private ActLog log;

    @Autowired
    private CalledOff calledOff;

    private Floor.Frame joined() {
        return floor.frame(SmallRoute.of(op("170").joins().step("join").sheet())
                .child("FT", SmallRoute.of(op("150").step("coat").sheet()))
                .child("SA", SmallRoute.of(op("070").step("weld").sheet()))
                .sheet());
    }

    @Test
    void aScrappedPartIsMadeAnewByTheQaLeadAndThenTheFrameIsJoined() {
        Floor.Frame frame = joined();
        Floor.Frame arm = part(frame, "SA");
        floor.tickAll(part(frame, "FT"), worker);
        Act scrapping = floor.act(qa);
        transaction.executeWithoutResult(t -> {
            log.opens(scrapping, "scrap", "traveller:" + arm.travellerId(), Chains.frame(frame.serial()));
            rework.scrap(scrapping, arm.travellerId(), "NC-0001", false, Set.of());
        });
        List<Long> join = List.of(floor.at(frame).steps().get(0).stepId());
        refused(() -> bench.tick(floor.act(worker), join, null, null), "SA", "scrapped");
        refused(() -> rework.makeAnew(floor.act(worker), arm.travellerId()), "QA lead");
        Act act = floor.act(qa);
        long fresh = rework.makeAnew(act, arm.travellerId());
        assertThat(fresh).isNotEqualTo(arm.travellerId());
        assertThat(rework.makeAnew(act, arm.travellerId())).as("sent twice").isEqualTo(fresh);
        refused(() -> rework.makeAnew(floor.act(qa), arm.travellerId()), "before");
        refused(() -> bench.tick(floor.act(worker), join, null, null), "SA", "070");
        floor.tickAll(part(frame, "SA"), worker);
        bench.tick(floor.act(worker), join, null, null);
        assertThat(floor.sheet(frame).head().state()).isEqualTo(TravellerState.FINISHED);
    }

    @Test
    void aPartOfAFrameThatIsNoLongerInTheShopIsNotMadeAnew() {
        Floor.Frame frame = joined();
        Floor.Frame arm = part(frame, "SA");
        Act scrapping = floor.act(qa);
        transaction.executeWithoutResult(t -> {
            log.opens(scrapping, "scrap", "traveller:" + arm.travellerId(), Chains.frame(frame.serial()));
            rework.scrap(scrapping, arm.travellerId(), "NC-0001", false, Set.of());
            rework.scrap(scrapping, frame.travellerId(), "NC-0002", false, Set.of());
        });
        refused(() -> rework.makeAnew(floor.act(qa), arm.travellerId()), "Its frame", "is scrapped");
    }

    @Test
    void aFrameWhoseOrderIsCalledOffIsNamedBeforeAndWithdrawnWithIt() {
        Floor.Frame frame = joined();
        List<Long> coat = List.of(floor.at(part(frame, "FT")).steps().get(0).stepId());
        assertThat(calledOff.of(floor.orderOf(frame)))
                .hasSize(3)
                .anySatisfy(running -> assertThat(running).contains("at operation 070"));
        Act act = floor.act(owner);
        transaction.executeWithoutResult(t -> {
            log.opens(act, "cancel", "order:" + frame.orderId(), Chains.frame(frame.serial()));
            calledOff.calledOff(new OrderEvent.Cancelled(act, frame.orderId()));
        });
        refused(() -> bench.tick(floor.act(worker), coat, null, null), "withdrawn", "called off");
        assertThat(travellers.inForce(frame.serial(), "").state()).isEqualTo(TravellerState.WITHDRAWN);
        assertThat(calledOff.of(floor.orderOf(frame))).isEmpty();
    }
}
