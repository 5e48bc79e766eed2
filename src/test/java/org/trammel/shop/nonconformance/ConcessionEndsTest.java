package org.trammel.shop.nonconformance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;

import java.time.Duration;
import java.time.LocalDate;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.Signed;
import org.trammel.shop.routes.Signer;
import org.trammel.shop.travellers.OperationState;
import org.trammel.shop.travellers.Signing;

/** A concession lets its gate be passed up to its last day. */
class ConcessionEndsTest extends AtTheDesk {

    @Autowired
    private Signing signing;

    @Autowired
    private MockMvc mvc;

    @Autowired
    private Crew crew;

    @Test
    void aGateIsNotSignedWithAConcessionThatEndedBefore() {
        WholeShop.Frame frame = found(SmallRoute.of(
                SmallRoute.op("080").plain("080-1", "0.3").hold(Signer.SECOND).sheet(),
                SmallRoute.op("200").step("pack").sheet()));
        long operation = shop.at(frame).line().operationId();
        long characteristic = shop.at(frame).characteristics().get(0).characteristicId();
        long second = shop.hire(Role.STATION_WORKER);
        decide(of(frame), LocalDate.of(2026, 3, 18));
        assertThat(shop.at(frame).line().state()).isEqualTo(OperationState.AT_POINT);
        shop.clock().pass(Duration.ofDays(1));
        assertThat(refusal(() -> signing.sign(shop.act(second), operation, second, Signer.SECOND))
                        .why())
                .contains("ended on 2026-03-18");
        assertThat(shop.sheet(frame).inTheWay()).singleElement().satisfies(r -> {
            assertThat(r.why()).contains("080-1").contains("ended on 2026-03-18");
            assertThat(r.instead()).contains("Open a nonconformance");
        });
        String anew = opening.byHand(
                shop.act(qa), frame.travellerId(), operation, characteristic, null, "the concession ended");
        decide(Long.parseLong(anew.substring("NC-".length())), LocalDate.of(2026, 3, 19));
        signing.sign(shop.act(second), operation, second, Signer.SECOND);
        assertThat(shop.at(frame).line().code()).isEqualTo("200");
    }

    @Test
    void aWitnessPointIsNotPassedUnattendedWithAConcessionThatEndedBefore() {
        WholeShop.Frame frame = found(SmallRoute.of(
                SmallRoute.op("080").plain("080-1", "0.3").witness().sheet(),
                SmallRoute.op("200").step("pack").sheet()));
        long operation = shop.at(frame).line().operationId();
        decide(of(frame), LocalDate.of(2026, 3, 18));
        assertThat(shop.at(frame).line().state()).isEqualTo(OperationState.AT_POINT);
        shop.clock().pass(Duration.ofDays(1));
        assertThat(refusal(() -> signing.passWitness(shop.act(worker), operation))
                        .why())
                .contains("ended on 2026-03-18");
        assertThat(shop.at(frame).line().code()).isEqualTo("080");
    }

    @Test
    void workIsNotFinishedWithAConcessionThatEndedBeforeAndTheSheetSaysSo() throws Exception {
        WholeShop.Frame frame = found(SmallRoute.of(
                SmallRoute.op("080").step("wipe").plain("080-1", "0.3").sheet(),
                SmallRoute.op("200").step("pack").sheet()));
        decide(of(frame), LocalDate.of(2026, 3, 18));
        shop.clock().pass(Duration.ofDays(1));
        assertThat(shop.sheet(frame).inTheWay()).isEmpty();
        shop.tickAll(frame, worker);
        assertThat(shop.at(frame).line().code()).isEqualTo("080");
        assertThat(mvc.perform(get("/station/" + frame.serial()).with(Signed.on(crew.byId(worker))))
                        .andReturn()
                        .getResponse()
                        .getContentAsString())
                .contains("ended on 2026-03-18")
                .contains("Open a nonconformance for the characteristic");
    }

    private void decide(long id, LocalDate until) {
        deciding.propose(
                shop.act(qa),
                id,
                new Proposal(
                        Decision.CONCESSION,
                        "looked at it",
                        null,
                        "this frame",
                        until,
                        false,
                        null,
                        false,
                        null,
                        null,
                        Set.of()));
        agree(owner, id);
    }
}
