package org.trammel.shop.nonconformance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.MediaType;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.MockMvc;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.orders.OrderState;
import org.trammel.shop.orders.Orders;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.Signed;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.travellers.CharacteristicState;
import org.trammel.shop.travellers.Holds;
import org.trammel.shop.travellers.Shipping;
import org.trammel.shop.travellers.TravellerState;

/** What a decision says, what it costs, and what it does to the frame. */
class WhatFollowsTest extends AtTheDesk {

    @Autowired
    private Holds holds;

    @Autowired
    private Shipping shipping;

    @Autowired
    private MockMvc mvc;

    @Autowired
    private Crew crew;

    @Test
    void aConcessionSaysHowFarUntilWhenAndThatTheCustomerAgreedWhereItConcernsThem() {
        long id = of(found());
        LocalDate later = LocalDate.of(2026, 12, 31);
        assertThat(refusedConcession(id, null, later, false, null).field()).isEqualTo("limits");
        assertThat(refusedConcession(id, "this frame", null, false, null).field())
                .isEqualTo("limits");
        assertThat(refusedConcession(id, "this frame", LocalDate.of(2026, 3, 17), false, null)
                        .field())
                .isEqualTo("expiresOn");
        assertThat(refusedConcession(id, "this frame", later, true, " ").field())
                .isEqualTo("customerAgreement");
        assertThat(refusedConcession(id, "x".repeat(1001), later, false, null).field())
                .isEqualTo("limits");
        assertThat(state(id)).isEqualTo(NonconformanceState.OPEN);
        deciding.propose(
                shop.act(qa), id, concession("this frame", later, true, "Rider One, by letter of 17 March 2026"));
        assertThat(state(id)).isEqualTo(NonconformanceState.PROPOSED);
    }

    @Test
    void aConcessionReleasesItsCharacteristicAndStandsOnTheFramesRecord() throws Exception {
        WholeShop.Frame frame = found();
        long id = of(frame);
        long characteristic = shop.at(frame).characteristics().get(0).characteristicId();
        deciding.propose(
                shop.act(qa), id, concession("0.5 mm at this frame only", LocalDate.of(2026, 3, 18), false, null));
        assertThat(shop.at(frame).line().code()).isEqualTo("080");
        assertThat(agree(owner, id)).isTrue();
        assertThat(shop.at(frame).line().code()).isEqualTo("200");
        assertThat(travellers.operation(strip(frame).get(1).operationId()).characteristics())
                .singleElement()
                .satisfies(c -> assertThat(c.state()).isEqualTo(CharacteristicState.CONCESSION));
        assertThat(refusal(() -> shop.read(worker, characteristic, gauge, "0.1"))
                        .what())
                .isNotBlank();
        String record = mvc.perform(get("/frames/" + frame.serial()).with(Signed.on(crew.byId(qa))))
                .andReturn()
                .getResponse()
                .getContentAsString();
        assertThat(record)
                .contains(deciding.byId(id).number())
                .contains("Concession")
                .contains("0.5 mm at this frame only");
        shop.tickAll(frame, worker);
        shipping.ship(shop.act(worker), frame.travellerId(), frame.serial());
    }

    @Test
    void aConcessionWhoseLastDayPassedBeforeAllAgreedIsNotUsed() {
        WholeShop.Frame frame = found();
        long id = of(frame);
        deciding.propose(shop.act(qa), id, concession("this frame", LocalDate.of(2026, 3, 18), false, null));
        shop.clock().pass(Duration.ofDays(1));
        assertThat(refusal(() -> agree(owner, id)).why()).contains("2026-03-18");
        assertThat(state(id)).isEqualTo(NonconformanceState.PROPOSED);
        assertThat(shop.at(frame).line().code()).isEqualTo("080");
        deciding.propose(shop.act(qa), id, concession("this frame", LocalDate.of(2026, 3, 19), false, null));
        assertThat(agree(owner, id)).isTrue();
    }

    @Test
    void whatWasSeenAndNotMeasuredIsNotConceded() {
        WholeShop.Frame frame = shop.frame(
                SmallRoute.of(SmallRoute.op("030").step("saw").sheet()).sheet());
        opening.byHand(
                shop.act(worker), frame.travellerId(), shop.at(frame).line().operationId(), null, null, "dent");
        assertThat(refusedConcession(of(frame), "this frame", LocalDate.of(2026, 12, 31), false, null)
                        .why())
                .contains("no characteristic");
    }

    @Test
    void hoursAndMaterialAreAddedToWhatTheOrderCost() {
        WholeShop.Frame frame = found();
        deciding.propose(
                shop.act(qa),
                of(frame),
                new Proposal(
                        Decision.REWORK,
                        "weld out again",
                        "070",
                        null,
                        null,
                        false,
                        null,
                        false,
                        new BigDecimal("2.5"),
                        new BigDecimal("40"),
                        Set.of()));
        assertThat(jdbc.sql("select kind, hours, amount from order_cost where order_id = ?")
                        .param(frame.orderId())
                        .query()
                        .singleRow()
                        .values())
                .extracting(String::valueOf)
                .containsExactly("REWORK", "2.50", "40.00");
    }

    @Test
    void aScrappedFrameTakesNoMoreWorkAndWhatElseWasOpenOnItCanBeDecided() {
        WholeShop.Frame frame = found();
        String other = opening.byHand(
                shop.act(worker), frame.travellerId(), shop.at(frame).line().operationId(), null, null, "dent");
        deciding.propose(shop.act(qa), deciding.of(frame.serial()).get(0).id(), complete(Decision.SCRAP, null));
        assertThat(shop.sheet(frame).head().state()).isEqualTo(TravellerState.SCRAPPED);
        long rest = Long.parseLong(other.substring("NC-".length()));
        assertThat(refusal(() -> deciding.propose(shop.act(qa), rest, complete(Decision.REWORK, null)))
                        .why())
                .contains("scrapped");
        assertThat(deciding.propose(shop.act(qa), rest, complete(Decision.SCRAP, null)))
                .isTrue();
        assertThat(shop.sheet(frame).holds()).isEmpty();
    }

    @Test
    void theOrderOfAFinishedFrameThatIsScrappedIsNotReadyToShip() {
        WholeShop.Frame frame = shop.frame(
                SmallRoute.of(SmallRoute.op("030").step("saw").sheet()).sheet());
        long sawn = shop.at(frame).line().operationId();
        shop.tickAll(frame, worker);
        Orders orders = beans.getBean(Orders.class);
        assertThat(orders.byId(frame.orderId()).state()).isEqualTo(OrderState.READY_TO_SHIP);
        opening.byHand(shop.act(worker), frame.travellerId(), sawn, null, null, "dropped while it was packed");
        deciding.propose(shop.act(qa), of(frame), complete(Decision.SCRAP, null));
        assertThat(orders.byId(frame.orderId()).state()).isEqualTo(OrderState.IN_WORK);
    }

    @Test
    void whoTookPartDoesNotMoveTheFaultElsewhereAndThenDecide() {
        WholeShop.Frame frame = shop.frame(SmallRoute.of(
                        SmallRoute.op("070").step("weld").sheet(),
                        SmallRoute.op("080").plain("080-1", "0.3").sheet())
                .sheet());
        shop.tickAll(frame, worker);
        shop.read(qa, shop.at(frame).characteristics().get(0).characteristicId(), gauge, "0.5");
        long id = of(frame);
        assertThat(refusal(() -> deciding.blame(shop.act(qa), id, "070")).why()).contains("took part");
        deciding.blame(shop.act(owner), id, "070");
        assertThat(refusal(() -> deciding.propose(shop.act(qa), id, complete(Decision.REWORK, null)))
                        .why())
                .contains("where it was found");
        assertThat(deciding.propose(shop.act(shop.hire(Role.QA_LEAD)), id, complete(Decision.REWORK, null)))
                .isTrue();
    }

    @Test
    void namingAnotherOperationAtFaultTakesBackWhatWasAgreed() {
        long id = of(found());
        deciding.propose(shop.act(qa), id, complete(Decision.REPAIR, null));
        deciding.blame(shop.act(qa), id, "070");
        assertThat(state(id)).isEqualTo(NonconformanceState.OPEN);
        assertThat(refusal(() -> agree(owner, id)).what()).contains("nothing to agree to");
        assertThat(refusal(() -> deciding.blame(shop.act(qa), id, "999")).field())
                .isEqualTo("fault");
    }

    @Test
    void whoReadOneDecisionDoesNotAgreeToAnotherThatTookItsPlace() throws Exception {
        WholeShop.Frame frame = found();
        long id = of(frame);
        deciding.propose(shop.act(qa), id, complete(Decision.REPAIR, null));
        String page = mvc.perform(get("/nonconformances/" + id).with(Signed.on(crew.byId(owner))))
                .andReturn()
                .getResponse()
                .getContentAsString();
        assertThat(page).contains("name=\"decisionNumber\" value=\"1\"");
        deciding.propose(shop.act(qa), id, complete(Decision.CONCESSION, null));
        MockHttpServletResponse pressed = mvc.perform(post("/nonconformances/" + id + "/agreement")
                        .with(csrf())
                        .with(Signed.on(crew.byId(owner)))
                        .param("actId", UUID.randomUUID().toString())
                        .param("decisionNumber", "1"))
                .andReturn()
                .getResponse();
        assertThat(pressed.getStatus()).isEqualTo(409);
        assertThat(pressed.getContentAsString()).contains("Another was put forward since: concession");
        assertThat(state(id)).isEqualTo(NonconformanceState.PROPOSED);
        assertThat(shop.at(frame).line().code()).isEqualTo("080");
        assertThat(deciding.agree(shop.act(owner), id, 2)).isTrue();
    }

    @Test
    void theHoldOfANonconformanceGoesWithItsDecisionOnly() {
        WholeShop.Frame frame = found();
        long hold = shop.sheet(frame).holds().get(0).holdId();
        assertThat(refusal(() -> holds.lift(shop.act(qa), hold, "it is fine")).instead())
                .contains("decision lifts the hold");
    }

    @Test
    void whatWasTypedIsKeptOnceAndTheHoldNamesTheNonconformance() {
        WholeShop.Frame frame = shop.frame(
                SmallRoute.of(SmallRoute.op("030").step("saw").sheet()).sheet());
        String typed = "Rider One dropped it. ".repeat(50).substring(0, 1000);
        opening.byHand(
                shop.act(worker), frame.travellerId(), shop.at(frame).line().operationId(), null, null, typed);
        String number = deciding.byId(of(frame)).number();
        assertThat(deciding.byId(of(frame)).words()).isEqualTo(typed.strip());
        assertThat(jdbc.sql("select words from hold where serial = ?")
                        .param(frame.serial())
                        .query(String.class)
                        .single())
                .startsWith(number + ": found at operation 030")
                .doesNotContain("Rider One");
    }

    @Test
    void oneIsOpenedByHandOnAnOpenFrameAtOneOfItsOwnOperations() {
        WholeShop.Frame frame = found();
        WholeShop.Frame other = found();
        long here = shop.at(frame).line().operationId();
        assertThat(refusal(() -> opening.byHand(shop.act(worker), frame.travellerId(), here, null, "999", "dent"))
                        .field())
                .isEqualTo("faultCode");
        assertThat(refusal(() -> opening.byHand(shop.act(worker), other.travellerId(), here, null, null, "dent"))
                        .why())
                .contains("another frame");
        deciding.propose(shop.act(qa), of(frame), complete(Decision.SCRAP, null));
        assertThat(refusal(() -> opening.byHand(shop.act(worker), frame.travellerId(), here, null, null, "dent"))
                        .why())
                .contains("scrapped");
        assertThat(deciding.of(other.serial())).hasSize(1);
    }

    @Test
    void figuresOutOfAnyRangeAreRefusedAndNothingIsPutForward() {
        long id = of(found());
        for (String hours : List.of("-1", "1000.01", "1e9")) {
            assertThat(refusal(() -> deciding.propose(shop.act(qa), id, complete(Decision.SCRAP, hours)))
                            .field())
                    .isEqualTo("hours");
        }
        assertThat(state(id)).isEqualTo(NonconformanceState.OPEN);
    }

    @Test
    void aProgramThatLeavesThingsOutIsRefusedAndNeverAnsweredWithAnError() throws Exception {
        WholeShop.Frame frame = found();
        long id = of(frame);
        String base = "/api/v1/nonconformances";
        long operation = shop.at(frame).line().operationId();
        for (String[] sent : new String[][] {
            {base + "/" + id + "/decision", ""},
            {base + "/" + id + "/decision", ",\"decision\":\"REWORK\""},
            {base + "/" + id + "/decision", ",\"decision\":\"FORGET\",\"words\":\"x\""},
            {base + "/" + id + "/agreement", ""},
            {base + "/" + id + "/fault", ""},
            {base + "/" + id + "/closing", ""},
            {base, ",\"travellerId\":" + frame.travellerId() + ",\"operationId\":" + operation},
            {base, ""},
        }) {
            MockHttpServletResponse answer = mvc.perform(post(sent[0])
                            .with(csrf())
                            .with(Signed.on(crew.byId(qa)))
                            .contentType(MediaType.APPLICATION_JSON)
                            .content("{\"actId\":\"" + UUID.randomUUID() + "\"" + sent[1] + "}"))
                    .andReturn()
                    .getResponse();
            assertThat(answer.getStatus()).as(sent[0] + sent[1]).isBetween(400, 499);
            assertThat(answer.getContentType()).startsWith("application/problem+json");
        }
        assertThat(state(id)).isEqualTo(NonconformanceState.OPEN);
    }

    private Refusal refusedConcession(
            long id, @Nullable String limits, @Nullable LocalDate until, boolean changes, @Nullable String customer) {
        return refusal(() -> deciding.propose(shop.act(qa), id, concession(limits, until, changes, customer)));
    }

    private static Proposal concession(
            @Nullable String limits, @Nullable LocalDate until, boolean changes, @Nullable String customer) {
        return new Proposal(
                Decision.CONCESSION,
                "looked at it",
                null,
                limits,
                until,
                changes,
                customer,
                false,
                null,
                null,
                Set.of());
    }

    @Test
    void aLeadWhoSignedTheOperationAtFaultTookPartInIt() {
        WholeShop.Frame frame = shop.frame(SmallRoute.of(
                        SmallRoute.op("120")
                                .step("hardness")
                                .hold(org.trammel.shop.routes.Signer.QA)
                                .sheet(),
                        SmallRoute.op("200").step("pack").sheet())
                .sheet());
        long tested = shop.at(frame).line().operationId();
        shop.tickAll(frame, worker);
        beans.getBean(org.trammel.shop.travellers.Signing.class)
                .sign(shop.act(qa), tested, qa, org.trammel.shop.routes.Signer.QA);
        opening.byHand(shop.act(worker), frame.travellerId(), tested, null, null, "wrong coupon");
        long id = of(frame);
        assertThat(refusal(() -> deciding.propose(
                                shop.act(qa),
                                id,
                                new Proposal(
                                        Decision.REWORK,
                                        "again",
                                        "120",
                                        null,
                                        null,
                                        false,
                                        null,
                                        false,
                                        null,
                                        null,
                                        Set.of())))
                        .why())
                .contains("took part");
        long other = shop.hire(Role.QA_LEAD);
        assertThat(deciding.propose(
                        shop.act(other),
                        id,
                        new Proposal(
                                Decision.REWORK, "again", "120", null, null, false, null, false, null, null, Set.of())))
                .isTrue();
    }
}
