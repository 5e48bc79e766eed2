package org.trammel.shop.nonconformance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Signed;
import org.trammel.shop.travellers.DoneSince;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.OperationState;
import org.trammel.shop.travellers.Rework;

/** A fault found at an earlier operation: what was done since is done over, or said to be valid still. */
class DoneSinceTheFaultTest extends AtTheDesk {

    @Autowired
    private MockMvc mvc;

    @Autowired
    private Crew crew;

    @Autowired
    private Rework rework;

    @Test
    void whatWasDoneAfterTheFaultIsDoneOverUnlessItIsSaidToBeValidStill() throws Exception {
        WholeShop.Frame frame = shop.frame(SmallRoute.of(
                        SmallRoute.op("060").step("tack").sheet(),
                        SmallRoute.op("070").step("weld out").sheet(),
                        SmallRoute.op("080").plain("080-1", "0.3").sheet(),
                        SmallRoute.op("090").step("quench").sheet(),
                        SmallRoute.op("200").step("pack").sheet())
                .sheet());
        long tacked = shop.at(frame).line().operationId();
        shop.tickAll(frame, worker);
        shop.tickAll(frame, worker);
        shop.read(worker, shop.at(frame).characteristics().get(0).characteristicId(), gauge, "0.1");
        long quenched = shop.at(frame).line().operationId();
        shop.tickAll(frame, worker);
        opening.byHand(shop.act(worker), frame.travellerId(), tacked, null, null, "tack weld cracked");
        long id = of(frame);
        assertThat(deciding.doneSince(id)).extracting(DoneSince.Done::called).containsExactly("070", "080", "090");
        assertThat(mvc.perform(get("/nonconformances/" + id).with(Signed.on(crew.byId(qa))))
                        .andReturn()
                        .getResponse()
                        .getContentAsString())
                .contains("d-valid-" + quenched);
        assertThat(refusal(() -> deciding.propose(shop.act(qa), id, rework("060", Set.of(tacked))))
                        .field())
                .isEqualTo("stillValid");
        deciding.propose(shop.act(qa), id, rework("060", Set.of(quenched)));
        assertThat(strip(frame))
                .extracting(AtTheDesk::called, FrameSheet.OperationLine::state)
                .containsExactly(
                        tuple("060", OperationState.REPEATED),
                        tuple("070", OperationState.REPEATED),
                        tuple("080", OperationState.REPEATED),
                        tuple("060 loop 1", OperationState.WAITING),
                        tuple("070 loop 1", OperationState.WAITING),
                        tuple("080 loop 1", OperationState.WAITING),
                        tuple("090", OperationState.DONE),
                        tuple("200", OperationState.WAITING));
        assertThat(deciding.byId(id).stillValid()).containsExactly(quenched);
        assertThat(mvc.perform(get("/nonconformances/" + id).with(Signed.on(crew.byId(qa))))
                        .andReturn()
                        .getResponse()
                        .getContentAsString())
                .contains("Done since and still valid");
        shop.tickAll(frame, worker);
        shop.tickAll(frame, worker);
        shop.read(worker, shop.at(frame).characteristics().get(0).characteristicId(), gauge, "0.1");
        assertThat(shop.at(frame).line().code()).isEqualTo("200");
    }

    @Test
    void aFaultInAPartAsksForWhatWasDoneToTheFrameItWasJoinedIntoToo() {
        WholeShop.Frame frame = shop.frame(SmallRoute.of(
                        SmallRoute.op("005").step("draw").sheet(),
                        SmallRoute.op("170").step("join").joins().sheet(),
                        SmallRoute.op("180").step("assemble").sheet())
                .child("FT", SmallRoute.of(SmallRoute.op("070").step("weld").sheet()))
                .sheet());
        long part = travellers.inForce(frame.serial(), "FT").travellerId();
        long welded = travellers.sheet(part).at().line().operationId();
        bench.tick(
                shop.act(worker),
                List.of(travellers.sheet(part).at().steps().get(0).stepId()),
                null,
                null);
        shop.tickAll(frame, worker);
        shop.tickAll(frame, worker);
        opening.byHand(shop.act(worker), part, welded, null, null, "crack found at the join");
        assertThat(deciding.doneSince(of(frame)))
                .extracting(DoneSince.Done::called)
                .containsExactly("170");
        deciding.propose(shop.act(qa), of(frame), rework("070", Set.of()));
        assertThat(strip(frame)).extracting(AtTheDesk::called).containsExactly("005", "170", "170 loop 1", "180");
        assertThat(shop.sheet(frame).inTheWay()).isNotEmpty();
    }

    @Test
    void aFrameIsDoneOverFromTheJoinOnOnceAPartOfItIsScrappedAndMadeAnew() {
        WholeShop.Frame frame = shop.frame(SmallRoute.of(
                        SmallRoute.op("005").step("draw").sheet(),
                        SmallRoute.op("170").step("join").joins().sheet(),
                        SmallRoute.op("180").plain("180-1", "0.3").sheet(),
                        SmallRoute.op("190").step("torque").sheet(),
                        SmallRoute.op("200").step("pack").sheet())
                .child("SA", SmallRoute.of(SmallRoute.op("070").step("weld").sheet()))
                .sheet());
        long part = travellers.inForce(frame.serial(), "SA").travellerId();
        long welded = travellers.sheet(part).at().line().operationId();
        weld(part);
        shop.tickAll(frame, worker);
        shop.tickAll(frame, worker);
        shop.read(worker, shop.at(frame).characteristics().get(0).characteristicId(), gauge, "0.1");
        long torqued = shop.at(frame).line().operationId();
        shop.tickAll(frame, worker);
        opening.byHand(shop.act(worker), part, welded, null, null, "crack beside the weld");
        assertThat(refusal(() -> deciding.propose(shop.act(qa), of(frame), scrap(Set.of(welded))))
                        .field())
                .isEqualTo("stillValid");
        deciding.propose(shop.act(qa), of(frame), scrap(Set.of(torqued)));
        assertThat(strip(frame))
                .extracting(AtTheDesk::called, FrameSheet.OperationLine::state)
                .containsExactly(
                        tuple("005", OperationState.DONE),
                        tuple("170", OperationState.REPEATED),
                        tuple("180", OperationState.REPEATED),
                        tuple("170 loop 1", OperationState.WAITING),
                        tuple("180 loop 1", OperationState.WAITING),
                        tuple("190", OperationState.DONE),
                        tuple("200", OperationState.WAITING));
        assertThat(deciding.byId(of(frame)).stillValid()).containsExactly(torqued);
        assertThat(refusal(() -> shop.tickAll(frame, worker)).why())
                .contains("SA")
                .contains("scrapped");
        long fresh = rework.makeAnew(shop.act(qa), part);
        assertThat(refusal(() -> shop.tickAll(frame, worker)).why()).contains("SA");
        weld(fresh);
        shop.tickAll(frame, worker);
        assertThat(called(shop.at(frame).line())).isEqualTo("180 loop 1");
    }

    private void weld(long part) {
        bench.tick(
                shop.act(worker),
                List.of(travellers.sheet(part).at().steps().get(0).stepId()),
                null,
                null);
    }

    private static Proposal scrap(Set<Long> stillValid) {
        return new Proposal(
                Decision.SCRAP, "past mending", null, null, null, false, null, false, null, null, stillValid);
    }

    private static Proposal rework(String from, Set<Long> stillValid) {
        return new Proposal(Decision.REWORK, "weld anew", from, null, null, false, null, false, null, null, stillValid);
    }

    @Test
    void whenTheSecondOfTwoGoesBackFurtherOnlyWhatWasDoneIsDoneAgain() {
        WholeShop.Frame frame = found(SmallRoute.of(
                SmallRoute.op("070").step("weld").sheet(),
                SmallRoute.op("080").plain("080-1", "0.3").plain("080-2", "0.3").sheet()));
        shop.read(worker, shop.at(frame).characteristics().get(1).characteristicId(), gauge, "0.6");
        List<NonconformanceLine> both = deciding.of(frame.serial());
        deciding.propose(shop.act(qa), both.get(0).id(), complete(Decision.REWORK, null));
        deciding.propose(
                shop.act(qa),
                both.get(1).id(),
                new Proposal(Decision.REWORK, "weld", "070", null, null, false, null, false, null, null, Set.of()));
        assertThat(strip(frame))
                .extracting(AtTheDesk::called)
                .containsExactly("070", "070 loop 1", "080", "080 loop 1");
        assertThat(called(shop.at(frame).line())).isEqualTo("070 loop 1");
    }
}
