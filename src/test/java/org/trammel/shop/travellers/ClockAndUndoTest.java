package org.trammel.shop.travellers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.trammel.shop.floor.SmallRoute.op;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.routes.Signer;
import org.trammel.shop.routes.StepSheet;

class ClockAndUndoTest extends AtTheBench {

    @Test
    void aClosedWindowKeepsTheOperationShutUntilItsStartIsDoneAgain() {
        var frame = floor.frame(SmallRoute.of(
                        op("140").step("blast").sheet(), op("150").step("spray").sheet())
                .window("BLAST", 240, "140", "150")
                .sheet());
        floor.tickAll(frame, worker);
        clock.pass(Duration.ofMinutes(240));
        assertThat(floor.sheet(frame).inTheWay()).isEmpty();
        clock.pass(Duration.ofMinutes(1));
        List<Long> spray = List.of(floor.at(frame).steps().get(0).stepId());
        refused(() -> bench.tick(floor.act(worker), spray, null, null), "BLAST", "closed at");
        rework.redoForClock(floor.act(worker), floor.at(frame).line().operationId(), "BLAST");
        assertThat(floor.at(frame).line().code()).isEqualTo("140");
        floor.tickAll(frame, worker);
        bench.tick(floor.act(worker), spray, null, null);
    }

    @Test
    void aWaitingTimeKeepsTheOperationShutUntilItIsOver() {
        var frame = floor.frame(SmallRoute.of(
                        op("070").step("weld").sheet(), op("110").step("age").sheet())
                .wait("NATURAL-AGE", 72 * 60, "070", "110")
                .sheet());
        floor.tickAll(frame, worker);
        List<Long> age = List.of(floor.at(frame).steps().get(0).stepId());
        clock.pass(Duration.ofHours(72).minusSeconds(1));
        refused(() -> bench.tick(floor.act(worker), age, null, null), "ends at");
        clock.pass(Duration.ofSeconds(1));
        bench.tick(floor.act(worker), age, null, null);
    }

    @Test
    void aWindowClosesOnTheEarliestPossibleStartAndADeviceThatRunsAheadGainsNothing() {
        SmallRoute route = SmallRoute.of(
                        op("090").step("quench").sheet(),
                        op("100").step("measure").sheet())
                .window("W", 60, "090", "100");
        var late = floor.frame(route.sheet());
        bench.tick(
                floor.act(worker, clock.instant().minus(Duration.ofMinutes(10))),
                List.of(floor.at(late).steps().get(0).stepId()),
                null,
                null);
        assertThat(floor.sheet(late).clocks().get(0).endsAt())
                .isEqualTo(clock.instant().plus(Duration.ofMinutes(50)));
        var ahead = floor.frame(route.sheet());
        bench.tick(
                floor.act(worker, clock.instant().plus(Duration.ofHours(2))),
                List.of(floor.at(ahead).steps().get(0).stepId()),
                null,
                null);
        assertThat(floor.sheet(ahead).clocks().get(0).endsAt())
                .isEqualTo(clock.instant().plus(Duration.ofMinutes(60)));
    }

    @Test
    void aTickIsTakenBackFreelyForTwoMinutesThenWithAReasonThenOnlyByTheQaLead() {
        var frame = floor.frame(SmallRoute.of(
                        op("030").step("cut").step("deburr").sheet(),
                        op("040").step("form").sheet())
                .sheet());
        long cut = floor.at(frame).steps().get(0).stepId();
        bench.tick(floor.act(worker), List.of(cut), null, null);
        clock.pass(Duration.ofMinutes(2));
        refused(() -> bench.untick(floor.act(second), cut, "not mine"), "ticked by");
        bench.untick(floor.act(worker), cut, null);
        bench.tick(floor.act(worker), List.of(cut), null, null);
        clock.pass(Duration.ofSeconds(121));
        refused(() -> bench.untick(floor.act(worker), cut, null), "free 2 minutes are over");
        bench.untick(floor.act(worker), cut, "wrong tube");
        floor.tickAll(frame, worker);
        floor.tickAll(frame, worker);
        refused(() -> bench.untick(floor.act(worker), cut, "wrong tube"), "later operation has begun");
        bench.untick(floor.act(qa), cut, "wrong tube after all");
        assertThat(floor.at(frame).line().code()).isEqualTo("030");
    }

    @Test
    void takingBackATickOpensTheSignedPointAgainAndItsSignatureNoLongerCounts() {
        var frame = floor.frame(SmallRoute.of(
                        op("080").step("a").hold(Signer.SECOND).sheet(),
                        op("090").step("b").sheet())
                .sheet());
        long step = floor.at(frame).steps().get(0).stepId();
        floor.tickAll(frame, worker);
        long point = floor.at(frame).line().operationId();
        signing.sign(floor.act(second), point, second, Signer.SECOND);
        refused(() -> bench.untick(floor.act(worker), step, null), "signed");
        bench.untick(floor.act(qa), step, "seen from the root side: not through");
        floor.tickAll(frame, worker);
        assertThat(floor.at(frame).line().state()).isEqualTo(OperationState.AT_POINT);
        signing.sign(floor.act(second), point, second, Signer.SECOND);
        assertThat(floor.at(frame).line().code()).isEqualTo("090");
    }

    @Test
    void aWitnessPointIsPassedAfterThirtyMinutesWithoutAWitness() {
        var frame = floor.frame(
                SmallRoute.of(op("060").step("tack").witness().sheet()).sheet());
        floor.tickAll(frame, worker);
        long point = floor.at(frame).line().operationId();
        clock.pass(Duration.ofMinutes(29));
        refused(() -> signing.passWitness(floor.act(worker), point), "30 minutes");
        clock.pass(Duration.ofMinutes(1));
        signing.passWitness(floor.act(worker), point);
        assertThat(floor.sheet(frame).head().state()).isEqualTo(TravellerState.FINISHED);
    }

    @Test
    void aColdSetWindowIsNoLongerWaitedForWhenWhatItServesIsConforming() {
        String setUp = floor.gauge("TWIST", "°", "0.02");
        var frame = floor.frame(SmallRoute.of(
                        op("090").step("quench").sheet(),
                        op("100").guarded("100-1", "0.30", "COLD-SET", 2).sheet(),
                        op("110").step("age").sheet())
                .window("COLD-SET", 240, "090")
                .sheet());
        floor.tickAll(frame, worker);
        assertThat(floor.sheet(frame).clocks().get(0).state()).isEqualTo(ClockState.RUNNING);
        floor.read(worker, floor.at(frame).characteristics().get(0).characteristicId(), setUp, "0.1");
        assertThat(floor.sheet(frame).clocks().get(0).state()).isEqualTo(ClockState.MET);
    }

    @Test
    void aReasonLongerThanIsKeptIsRefused() {
        var frame = floor.frame(
                SmallRoute.of(op("030").step("cut").step("deburr").sheet()).sheet());
        long cut = floor.at(frame).steps().get(0).stepId();
        long deburr = floor.at(frame).steps().get(1).stepId();
        String essay = "x".repeat(1001);
        refused(() -> bench.tick(floor.act(worker), List.of(deburr), null, essay), "1001 characters", "1000");
        bench.tick(floor.act(worker), List.of(cut), null, null);
        refused(() -> bench.untick(floor.act(worker), cut, essay), "1001 characters", "1000");
        assertThat(floor.at(frame).steps())
                .extracting(FrameSheet.StepLine::ticked)
                .containsExactly(true, false);
    }

    @Test
    void takingTheTickBackAndGivingItAgainOpensNoClosedWindow() {
        var frame = floor.frame(SmallRoute.of(
                        op("140").step("degrease").step("blast", "BLAST").sheet(),
                        op("150").step("spray").sheet())
                .window("BLAST", 240, "140", "150")
                .sheet());
        floor.tickAll(frame, worker);
        long blast = travellers
                .operation(floor.sheet(frame).operations().get(0).operationId())
                .steps()
                .get(1)
                .stepId();
        clock.pass(Duration.ofMinutes(230));
        bench.untick(floor.act(worker), blast, "looked at it again");
        clock.pass(Duration.ofMinutes(5));
        bench.tick(floor.act(worker), List.of(blast), null, null);
        clock.pass(Duration.ofMinutes(6));
        List<Long> spray = List.of(floor.at(frame).steps().get(0).stepId());
        refused(() -> bench.tick(floor.act(worker), spray, null, null), "BLAST", "closed at");
        bench.untick(floor.act(worker), blast, "once more");
        bench.tick(floor.act(worker), List.of(blast), null, null);
        refused(() -> bench.tick(floor.act(worker), spray, null, null), "BLAST", "closed at");
        rework.redoForClock(floor.act(worker), floor.at(frame).line().operationId(), "BLAST");
        floor.tickAll(frame, worker);
        bench.tick(floor.act(worker), spray, null, null);
    }

    @Test
    void doingAgainWhatHoldsAStepThatCannotBeUndoneIsForTheQaLead() {
        var frame = floor.frame(SmallRoute.of(
                        op("050").step("clean").sheet(),
                        op("060")
                                .step(new StepSheet("tack", "", false, true, null, null, null))
                                .sheet(),
                        op("070").step("weld").sheet())
                .window("CLEAN", 60, "050", "070")
                .sheet());
        floor.tickAll(frame, worker);
        floor.tickAll(frame, worker);
        clock.pass(Duration.ofMinutes(61));
        long weld = floor.at(frame).line().operationId();
        refused(() -> rework.redoForClock(floor.act(worker), weld, "CLEAN"), "cannot be undone", "QA lead");
        rework.redoForClock(floor.act(qa), weld, "CLEAN");
        assertThat(floor.at(frame).line().code()).isEqualTo("050");
    }
}
