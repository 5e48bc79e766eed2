package org.trammel.shop.travellers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.trammel.shop.floor.SmallRoute.op;

import java.time.Duration;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.trammel.shop.floor.Floor;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.people.Role;
import org.trammel.shop.routes.Signer;
import org.trammel.shop.routes.StepSheet;

/** How far a hold reaches once work has gone past the operation it was placed on. */
class HoldReachTest extends AtTheBench {

    /** Meets a window: it cannot be undone. */
    private static final StepSheet SPRAYED = new StepSheet("spray", "", false, true, null, null, null);

    private static final String HOLD = "not looked at yet";

    @Test
    void aHoldOfAnOperationThatIsDoneHoldsWhatFollowsIt() {
        var frame = floor.frame(SmallRoute.of(
                        op("120").step("measure hardness").sheet(),
                        op("150").irreversible().step("spray").sheet())
                .sheet());
        long measured = floor.at(frame).line().operationId();
        floor.tickAll(frame, worker);
        long hold = place(frame, HoldScope.OPERATION, measured, HoldReason.NONCONFORMANCE);
        refused(() -> bench.tick(floor.act(worker), next(frame), null, null), "on hold", HOLD);
        refused(() -> holds.lift(floor.act(worker), hold, "it is fine"), "took part");
        holds.lift(floor.act(qa), hold, "hard enough by the laboratory");
        bench.tick(floor.act(worker), next(frame), null, null);
    }

    @Test
    void anApprenticeHoldsForSafetyAndDoesNotSayWhatWasFoundOut() {
        var frame = floor.frame(
                SmallRoute.of(op("030").step("cut").step("deburr").sheet()).sheet());
        long apprentice = floor.hire(Role.APPRENTICE);
        for (HoldReason reason : List.of(HoldReason.NONCONFORMANCE, HoldReason.LOT_TRACE, HoldReason.GAUGE_TRACE)) {
            refused(() -> byHand(frame, apprentice, reason), reason.word(), "apprentice", "Call QA");
        }
        assertThat(floor.sheet(frame).holds()).isEmpty();
        byHand(frame, apprentice, HoldReason.SAFETY);
        assertThat(floor.sheet(frame).holds()).hasSize(1);
    }

    private long byHand(Floor.Frame frame, long person, HoldReason reason) {
        return holds.place(
                floor.act(person),
                new Holds.Request(frame.travellerId(), HoldScope.FRAME, null, reason, "a noise", "by hand", Set.of()));
    }

    @Test
    void whatWasFreedUnderAHoldGoesOnAndWhatFollowsItDoesNot() {
        var frame = floor.frame(SmallRoute.of(
                        op("100").step("cold-set").sheet(),
                        op("105").step("wash").sheet())
                .sheet());
        long at = floor.at(frame).line().operationId();
        long hold = place(frame, HoldScope.OPERATION, at, HoldReason.GAUGE_TRACE);
        holds.free(floor.act(qa), hold, at, "the window will not wait");
        refused(() -> holds.free(floor.act(qa), hold, at, "once more"), "freed before");
        floor.tickAll(frame, worker);
        assertThat(floor.at(frame).line().code()).isEqualTo("105");
        refused(() -> bench.tick(floor.act(worker), next(frame), null, null), "on hold");
    }

    @Test
    void aStepThatCannotBeUndoneWaitsForTheHoldAlsoInAnOperationThatWasFreed() {
        var frame = floor.frame(SmallRoute.of(op("140")
                        .step("blast")
                        .step(new StepSheet("strike the serial", "", false, true, null, null, null))
                        .sheet())
                .sheet());
        long at = floor.at(frame).line().operationId();
        long hold = place(frame, HoldScope.FRAME, null, HoldReason.OVEN_TRACE);
        holds.free(floor.act(qa), hold, at, "the blast clock runs");
        bench.tick(floor.act(worker), next(frame), null, null);
        refused(() -> bench.tick(floor.act(worker), next(frame), null, null), "on hold");
    }

    @Test
    void aHoldNamesAnOperationOfItsOwnFrameAndIsFreedOnlyForWhatItReaches() {
        SmallRoute route = SmallRoute.of(op("030").step("saw").sheet());
        var one = floor.frame(route.sheet());
        var other = floor.frame(route.sheet());
        long elsewhere = floor.at(other).line().operationId();
        refused(() -> place(one, HoldScope.OPERATION, elsewhere, HoldReason.MATERIAL), "another frame");
        long hold = place(one, HoldScope.FRAME, null, HoldReason.LOT_TRACE);
        refused(() -> holds.free(floor.act(qa), hold, elsewhere, "hurry"), "does not reach");
    }

    @Test
    void whileAnEarlierOperationIsOpenAgainNothingLaterGoesOn() {
        var frame = floor.frame(SmallRoute.of(
                        op("120").step("hardness").sheet(),
                        op("150").step("spray").step("cure").hold(Signer.SECOND).sheet())
                .sheet());
        List<Long> hardness = next(frame);
        floor.tickAll(frame, worker);
        List<Long> spray = next(frame);
        long coat = floor.at(frame).line().operationId();
        bench.tick(floor.act(worker), spray, null, null);
        List<Long> cure = next(frame);
        clock.pass(Duration.ofHours(1));
        bench.untick(floor.act(qa), hardness.get(0), "read on the wrong coupon");
        refused(() -> bench.tick(floor.act(worker), cure, null, null), "120", "comes first");
        bench.tick(floor.act(worker), hardness, null, null);
        bench.tick(floor.act(worker), cure, null, null);
        bench.untick(floor.act(qa), hardness.get(0), "once more");
        refused(() -> signing.sign(floor.act(second), coat, second, Signer.SECOND), "120", "comes first");
    }

    @Test
    void aClockWhoseGateHasBegunIsNotStartedByRecordingItsStartAnew() {
        var frame = floor.frame(SmallRoute.of(
                        op("140").step("blast").sheet(),
                        op("150").step(SPRAYED).step("cure").sheet())
                .window("BLAST", 240, "140", "150")
                .sheet());
        List<Long> blast = next(frame);
        floor.tickAll(frame, worker);
        bench.tick(floor.act(worker), next(frame), null, null);
        clock.pass(Duration.ofHours(2));
        bench.untick(floor.act(qa), blast.get(0), "ticked by the wrong person");
        bench.tick(floor.act(second), blast, null, null);
        assertThat(floor.sheet(frame).clocks()).extracting(ClockView::state).containsOnly(ClockState.MET);
    }

    private List<Long> next(Floor.Frame frame) {
        return List.of(floor.at(frame).steps().stream()
                .filter(s -> !s.ticked())
                .findFirst()
                .orElseThrow()
                .stepId());
    }

    private long place(Floor.Frame frame, HoldScope scope, Long operation, HoldReason reason) {
        return holds.place(
                floor.act(second),
                new Holds.Request(frame.travellerId(), scope, operation, reason, HOLD, "by hand", Set.of()));
    }

    @Test
    void aGateIsNotSignedUnderAHoldAlsoWhereItsWorkWasFreed() {
        var frame = floor.frame(SmallRoute.of(
                        op("100").step("measure").hold(Signer.SECOND).sheet(),
                        op("110").step("age").sheet())
                .sheet());
        long at = floor.at(frame).line().operationId();
        long hold = place(frame, HoldScope.FRAME, null, HoldReason.GAUGE_TRACE);
        holds.free(floor.act(qa), hold, at, "the window will not wait");
        floor.tickAll(frame, worker);
        assertThat(floor.at(frame).line().state()).isEqualTo(OperationState.AT_POINT);
        refused(() -> signing.sign(floor.act(second), at, second, Signer.SECOND), "on hold", HOLD);
        holds.lift(floor.act(qa), hold, "read with another gauge");
        signing.sign(floor.act(second), at, second, Signer.SECOND);
        assertThat(floor.at(frame).line().code()).isEqualTo("110");
    }
}
