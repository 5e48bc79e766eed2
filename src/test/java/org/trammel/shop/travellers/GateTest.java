package org.trammel.shop.travellers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.trammel.shop.floor.SmallRoute.op;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.routes.Signer;

class GateTest extends AtTheBench {

    @Test
    void theLastTickFinishesAnOperationWithoutAPointAndTheNextIsAtHand() {
        var frame = floor.frame(SmallRoute.of(
                        op("030").step("cut").step("deburr").sheet(),
                        op("040").step("form").sheet())
                .sheet());
        floor.tickAll(frame, worker);
        assertThat(floor.at(frame).line().code()).isEqualTo("040");
        assertThat(floor.sheet(frame).operations().get(0).state()).isEqualTo(OperationState.DONE);
    }

    @Test
    void aLaterOperationDoesNotBeginBeforeTheOneBeforeItIsDone() {
        var frame = floor.frame(SmallRoute.of(
                        op("030").step("cut").sheet(), op("040").step("form").sheet())
                .sheet());
        long later = floor.sheet(frame).operations().get(1).operationId();
        long step = travellers.operation(later).steps().get(0).stepId();
        refused(() -> bench.tick(floor.act(worker), List.of(step), null, null), "030", "comes first");
    }

    @Test
    void aStepIsNotTickedBeforeAnEarlierOneUnlessAReasonIsGiven() {
        var frame = floor.frame(
                SmallRoute.of(op("070").step("node 1").step("node 2").sheet()).sheet());
        long second = floor.at(frame).steps().get(1).stepId();
        refused(() -> bench.tick(floor.act(worker), List.of(second), null, null), "node 1");
        bench.tick(floor.act(worker), List.of(second), null, "node 1 waits for a plug");
        assertThat(floor.at(frame).steps().get(1).ticked()).isTrue();
    }

    @Test
    void theSameActSentTwiceTicksOnce() {
        var frame = floor.frame(
                SmallRoute.of(op("030").step("cut").step("deburr").sheet()).sheet());
        Act act = floor.act(worker);
        List<Long> step = List.of(floor.at(frame).steps().get(0).stepId());
        bench.tick(act, step, null, null);
        bench.tick(act, step, null, null);
        assertThat(floor.at(frame).steps().get(0).ticked()).isTrue();
    }

    @Test
    void aSecondTickOfTheSameStepIsRefusedAndSaysWhoTickedItWhen() {
        var frame = floor.frame(
                SmallRoute.of(op("030").step("cut").step("deburr").sheet()).sheet());
        List<Long> step = List.of(floor.at(frame).steps().get(0).stepId());
        bench.tick(floor.act(worker), step, null, null);
        refused(() -> bench.tick(floor.act(second), step, null, null), "Person", "was ticked at 08:30");
    }

    @Test
    void aHoldPointStaysShutUntilItIsSignedByWhoTookNoPart() {
        var frame = floor.frame(SmallRoute.of(
                        op("080").step("look over").hold(Signer.SECOND).sheet(),
                        op("090").step("x").sheet())
                .sheet());
        floor.tickAll(frame, worker);
        long point = floor.at(frame).line().operationId();
        assertThat(floor.at(frame).line().state()).isEqualTo(OperationState.AT_POINT);
        refused(() -> signing.sign(floor.act(worker), point, worker, Signer.SECOND), "ticked or measured");
        refused(() -> signing.passWitness(floor.act(second), point), "hold point");
        signing.sign(floor.act(second), point, second, Signer.SECOND);
        assertThat(floor.at(frame).line().code()).isEqualTo("090");
    }

    @Test
    void anApprenticeTicksAndDoesNotSign() {
        long apprentice = floor.hire(Role.APPRENTICE);
        var frame = floor.frame(
                SmallRoute.of(op("080").step("a").hold(Signer.SECOND).sheet()).sheet());
        floor.tickAll(frame, apprentice);
        long other = floor.hire(Role.APPRENTICE);
        refused(
                () -> signing.sign(floor.act(other), floor.at(frame).line().operationId(), other, Signer.SECOND),
                "apprentice");
    }

    @Test
    void anAuditorChangesNothing() {
        long auditor = floor.hire(Role.AUDITOR);
        var frame = floor.frame(SmallRoute.of(op("030").step("a").sheet()).sheet());
        List<Long> step = List.of(floor.at(frame).steps().get(0).stepId());
        refused(() -> bench.tick(floor.act(auditor), step, null, null), "auditor");
        refused(() -> remarks.note(floor.act(auditor), frame.travellerId(), null, "x"), "auditor");
    }

    @Test
    void twoSignaturesOfOnePointComeFromTwoPeople() {
        long both = floor.hire(Role.QA_LEAD, Role.OWNER);
        var frame = floor.frame(
                SmallRoute.of(op("190").step("a").hold(Signer.QA, Signer.OWNER).sheet())
                        .sheet());
        floor.tickAll(frame, worker);
        long point = floor.at(frame).line().operationId();
        signing.sign(floor.act(both), point, both, Signer.QA);
        refused(() -> signing.sign(floor.act(both), point, both, Signer.OWNER), "different people");
        refused(() -> signing.sign(floor.act(qa), point, qa, Signer.OWNER), "owner");
        signing.sign(floor.act(owner), point, owner, Signer.OWNER);
        assertThat(floor.sheet(frame).head().state()).isEqualTo(TravellerState.FINISHED);
    }

    @Test
    void anUnqualifiedWelderDoesNotBegin() {
        var frame = floor.frame(
                SmallRoute.of(op("070").qualified("WELD:AL:141").step("node").sheet())
                        .sheet());
        List<Long> step = List.of(floor.at(frame).steps().get(0).stepId());
        refused(
                () -> bench.tick(floor.act(worker), step, null, null),
                "holds no qualification to weld aluminium (WELD:AL:141)");
        long welder = floor.qualified("WELD:AL:141", Role.WELDER);
        bench.tick(floor.act(welder), step, null, null);
    }

    @Test
    void aFrameOnHoldIsNotCoatedUntilTheHoldIsLiftedByWhoMay() {
        var frame = floor.frame(
                SmallRoute.of(op("150").irreversible().step("spray").sheet()).sheet());
        long hold = hold(frame, HoldScope.FRAME, HoldReason.LOT_TRACE, Set.of(qa));
        List<Long> step = List.of(floor.at(frame).steps().get(0).stepId());
        refused(() -> bench.tick(floor.act(worker), step, null, null), "on hold", "lot trace");
        refused(() -> holds.lift(floor.act(worker), hold, "it is fine"), "QA lead");
        refused(() -> holds.lift(floor.act(qa), hold, "it is fine"), "took part");
        long deputy = floor.hire(Role.QA_LEAD);
        holds.lift(floor.act(deputy), hold, "beads read by spectrometer: right alloy");
        bench.tick(floor.act(worker), step, null, null);
    }

    @Test
    void aSafetyHoldIsLiftedByQaLeadAndOwnerTogether() {
        var frame = floor.frame(SmallRoute.of(op("180").step("torque").sheet()).sheet());
        long hold = hold(frame, HoldScope.FRAME, HoldReason.SAFETY, Set.of());
        assertThat(holds.lift(floor.act(qa), hold, "looked at")).isFalse();
        assertThat(holds.lift(floor.act(qa), hold, "looked at")).isFalse();
        assertThat(holds.lift(floor.act(owner), hold, "looked at")).isTrue();
    }

    @Test
    void aHoldKeepsAnOperationFromFinishingAndLiftingItFinishesIt() {
        var frame = floor.frame(SmallRoute.of(
                        op("130").step("ream").step("face").sheet(),
                        op("140").step("blast").sheet())
                .sheet());
        bench.tick(floor.act(worker), List.of(floor.at(frame).steps().get(0).stepId()), null, null);
        long hold = hold(frame, HoldScope.FRAME, HoldReason.MATERIAL, Set.of());
        bench.tick(floor.act(worker), List.of(floor.at(frame).steps().get(1).stepId()), null, null);
        assertThat(floor.at(frame).line().state()).isEqualTo(OperationState.IN_WORK);
        holds.lift(floor.act(second), hold, "the bearing came");
        assertThat(floor.at(frame).line().code()).isEqualTo("140");
    }

    @Test
    void aReversibleOperationIsFreedUnderAHoldThatStaysAndAnIrreversibleOneIsNot() {
        var frame = floor.frame(SmallRoute.of(
                        op("100").step("cold-set").sheet(),
                        op("110").irreversible().step("age").sheet())
                .sheet());
        long hold = hold(frame, HoldScope.FRAME, HoldReason.LOT_TRACE, Set.of());
        long at = floor.at(frame).line().operationId();
        long ageing = floor.sheet(frame).operations().get(1).operationId();
        refused(() -> holds.free(floor.act(worker), hold, at, "the window will not wait"), "QA lead");
        refused(() -> holds.free(floor.act(qa), hold, ageing, "hurry"), "cannot be undone");
        holds.free(floor.act(qa), hold, at, "the window will not wait");
        floor.tickAll(frame, worker);
        List<Long> age = List.of(floor.at(frame).steps().get(0).stepId());
        refused(() -> bench.tick(floor.act(worker), age, null, null), "on hold");
    }

    @Test
    void nothingGoesOnAfterAnOperationThatWasOpenedAgain() {
        var frame = floor.frame(SmallRoute.of(
                        op("100").step("set").sheet(),
                        op("150")
                                .irreversible()
                                .step("earth")
                                .step("coat")
                                .hold(Signer.SECOND)
                                .sheet())
                .sheet());
        floor.tickAll(frame, worker);
        long set = travellers
                .operation(floor.sheet(frame).operations().get(0).operationId())
                .steps()
                .get(0)
                .stepId();
        List<FrameSheet.StepLine> coat = floor.at(frame).steps();
        long coating = floor.at(frame).line().operationId();
        bench.tick(floor.act(worker), List.of(coat.get(0).stepId()), null, null);
        bench.untick(floor.act(qa), set, "set on the wrong side");
        refused(() -> bench.tick(floor.act(worker), List.of(coat.get(1).stepId()), null, null), "100", "cannot go on");
        floor.tickAll(frame, worker);
        floor.tickAll(frame, worker);
        assertThat(floor.at(frame).line().state()).isEqualTo(OperationState.AT_POINT);
        bench.untick(floor.act(qa), set, "once more");
        refused(() -> signing.sign(floor.act(second), coating, second, Signer.SECOND), "100", "cannot go on");
    }

    @Test
    void whoWorkedWhereAHoldWasPlacedByHandDoesNotLiftItAndAnotherQaLeadDoes() {
        var frame =
                floor.frame(SmallRoute.of(op("080").step("a").step("b").sheet()).sheet());
        floor.tickFirst(frame, qa);
        long hold = hold(frame, HoldScope.FRAME, HoldReason.NONCONFORMANCE, Set.of());
        refused(() -> holds.lift(floor.act(qa), hold, "it is nothing"), "took part");
        long other = floor.hire(Role.QA_LEAD);
        assertThat(holds.lift(floor.act(other), hold, "looked at, nothing")).isTrue();
    }

    @Test
    void aFrameStandsAtItsFirstOpenOperationWhateverIsOpenedAgainLater() {
        var frame = floor.frame(SmallRoute.of(
                        op("120").step("measure").sheet(),
                        op("130").step("ream").step("face").hold(Signer.SECOND).sheet())
                .sheet());
        long measured = travellers
                .operation(floor.sheet(frame).operations().get(0).operationId())
                .steps()
                .get(0)
                .stepId();
        floor.tickAll(frame, worker);
        long machining = floor.at(frame).line().operationId();
        long face = floor.at(frame).steps().get(1).stepId();
        floor.tickAll(frame, worker);
        bench.untick(floor.act(qa), measured, "the wrong frame was measured");
        bench.untick(floor.act(worker), face, null);
        assertThat(floor.at(frame).line().code()).isEqualTo("120");
        refused(() -> bench.tick(floor.act(worker), List.of(face), null, null), "120", "comes first");
        refused(() -> signing.sign(floor.act(second), machining, second, Signer.SECOND), "in work");
    }

    @Test
    void stoppedWorkIsTakenUpAgainOnlyByWhoeverMayDoIt() {
        var frame = floor.frame(SmallRoute.of(op("070")
                        .qualified("WELD:AL:141")
                        .step("node 1")
                        .step("node 2")
                        .sheet())
                .sheet());
        long welder = floor.qualified("WELD:AL:141", Role.WELDER);
        long apprentice = floor.hire(Role.APPRENTICE);
        bench.tick(floor.act(welder), List.of(floor.at(frame).steps().get(0).stepId()), null, null);
        long at = floor.at(frame).line().operationId();
        bench.stop(floor.act(worker), at, "gas is empty");
        refused(() -> bench.resume(floor.act(worker), at), "was not taken up again", "WELD:AL:141");
        refused(() -> bench.resume(floor.act(apprentice), at), "was not taken up again", "WELD:AL:141");
        assertThat(floor.at(frame).line().state()).isEqualTo(OperationState.STOPPED);
        bench.resume(floor.act(welder), at);
        assertThat(floor.at(frame).line().state()).isEqualTo(OperationState.IN_WORK);
    }
}
