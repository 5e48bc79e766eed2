package org.trammel.shop.nonconformance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.trammel.shop.floor.SmallRoute.op;

import java.util.List;
import java.util.Set;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.trammel.shop.Statements;
import org.trammel.shop.floor.Floor;
import org.trammel.shop.floor.FloorTest;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.Signed;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.routes.Signer;
import org.trammel.shop.travellers.OperationState;
import org.trammel.shop.travellers.Signing;

/** Nobody decides about work they did, read or signed, and somebody always can. */
@FloorTest
class WhoDecidesTest {

    @Autowired
    private MockMvc mvc;

    @Autowired
    private Crew crew;

    @Autowired
    private Floor floor;

    @Autowired
    private Signing signing;

    @Autowired
    private Deciding deciding;

    @Autowired
    private Opening opening;

    @Autowired
    private NonconformanceReads reads;

    @Autowired
    private Statements statements;

    private long worker;
    private long qa;
    private long owner;
    private String calliper;

    @BeforeEach
    void openTheFloor() {
        floor.open();
        worker = floor.hire(Role.STATION_WORKER);
        qa = floor.hire(Role.QA_LEAD);
        owner = floor.hire(Role.OWNER);
        calliper = floor.gauge("CALLIPER", "mm", null);
    }

    @Test
    void whoeverSignedTheOperationAtFaultDecidesNothingAboutItAndIsToldSo() throws Exception {
        var frame = floor.frame(SmallRoute.of(
                        op("080").step("look over").hold(Signer.QA).sheet(),
                        op("100").step("lay down").plain("100-1", "0.3").sheet())
                .sheet());
        floor.tickAll(frame, worker);
        signing.sign(floor.act(qa), floor.at(frame).line().operationId(), qa, Signer.QA);
        long id = refusedReading(frame);
        deciding.blame(floor.act(owner), id, "080");
        refused(() -> deciding.propose(floor.act(qa), id, proposal(Decision.REWORK, "080")), "took part", "080");
        refused(() -> deciding.blame(floor.act(qa), id, "100"), "took part", "080");
        assertThat(deciding.byId(id).state()).isEqualTo(NonconformanceState.OPEN);
        assertThat(page(id, qa)).contains("You do not decide this one", "You took part in operation 080");
        assertThat(page(id, owner)).doesNotContain("You do not decide this one");
        assertThat(page(id, floor.hire(Role.AUDITOR)))
                .contains("You do not decide this one", "The QA lead and the owner decide")
                .doesNotContain("You took part");
    }

    private String page(long id, long by) throws Exception {
        return mvc.perform(get("/nonconformances/" + id).with(Signed.on(crew.byId(by))))
                .andReturn()
                .getResponse()
                .getContentAsString();
    }

    @Test
    void whoeverNamedAnotherOperationAsFaultWhereTheyWorkedThemselvesDoesNotDecide() {
        var frame = floor.frame(SmallRoute.of(
                        op("080").step("look over").sheet(),
                        op("100").step("lay down").step("read").sheet())
                .sheet());
        floor.tickAll(frame, worker);
        floor.tickFirst(frame, qa);
        long at = floor.at(frame).line().operationId();
        opening.byHand(floor.act(qa), frame.travellerId(), at, null, "080", "a dent");
        long id = deciding.of(frame.serial()).get(0).id();
        refused(() -> deciding.propose(floor.act(qa), id, proposal(Decision.REWORK, "080")), "opened", "100");
        assertThat(deciding.propose(floor.act(floor.hire(Role.QA_LEAD)), id, proposal(Decision.REWORK, "080")))
                .isTrue();
    }

    @Test
    void aReadingThatConformsWhenReadAgainIsClearedByAWordOfTheQaLeadAndNotBefore() {
        var frame = floor.frame(
                SmallRoute.of(op("100").step("lay down").plain("100-1", "0.3").sheet())
                        .sheet());
        floor.tickAll(frame, worker);
        long characteristic = floor.at(frame).characteristics().get(0).characteristicId();
        long id = refusedReading(frame);
        refused(() -> deciding.propose(floor.act(qa), id, proposal(Decision.CLEARED, null)), "not conforming");
        floor.read(worker, characteristic, calliper, "0.1");
        assertThat(floor.at(frame).line().state()).isEqualTo(OperationState.IN_WORK);
        refused(() -> deciding.propose(floor.act(worker), id, proposal(Decision.CLEARED, null)), "took part");
        assertThat(deciding.propose(floor.act(qa), id, proposal(Decision.CLEARED, null)))
                .isTrue();
        assertThat(floor.sheet(frame).operations().get(0).state()).isEqualTo(OperationState.DONE);
    }

    @Test
    void aClearanceIsNotCarriedOutOnceANewerReadingSaysOtherwise() {
        var frame = floor.frame(
                SmallRoute.of(op("100").step("lay down").plain("100-1", "0.3").sheet())
                        .sheet());
        floor.tickAll(frame, worker);
        long characteristic = floor.at(frame).characteristics().get(0).characteristicId();
        long id = refusedReading(frame);
        floor.read(worker, characteristic, calliper, "0.1");
        floor.read(worker, characteristic, calliper, "0.4");
        refused(() -> deciding.propose(floor.act(qa), id, proposal(Decision.CLEARED, null)), "not conforming");
        assertThat(floor.at(frame).line().state()).isEqualTo(OperationState.IN_WORK);
    }

    @Test
    void aPageOfNonconformancesIsReadInFiveStatementsHoweverManyThereAre() throws Exception {
        for (int i = 0; i < 3; i++) {
            var frame = floor.frame(SmallRoute.of(
                            op("100").step("lay down").plain("100-1", "0.3").sheet())
                    .sheet());
            floor.tickAll(frame, worker);
            refusedReading(frame);
        }
        assertThat(statements.during(() -> reads.page(Long.MAX_VALUE, 50))).hasSizeLessThanOrEqualTo(5);
        assertThat(statements.during(() -> reads.undecided())).hasSizeLessThanOrEqualTo(5);
    }

    private long refusedReading(Floor.Frame frame) {
        floor.read(worker, floor.at(frame).characteristics().get(0).characteristicId(), calliper, "0.4");
        return deciding.of(frame.serial()).get(0).id();
    }

    private static Proposal proposal(Decision decision, String from) {
        return new Proposal(decision, "looked at it", from, null, null, false, null, false, null, null, Set.of());
    }

    private static void refused(ThrowingCallable deed, String... facts) {
        assertThatThrownBy(deed)
                .isInstanceOfSatisfying(
                        Refusal.class,
                        refusal ->
                                assertThat(refusal.what() + " " + refusal.why()).contains(List.of(facts)));
    }
}
