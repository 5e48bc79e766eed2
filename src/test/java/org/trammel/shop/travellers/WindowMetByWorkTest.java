package org.trammel.shop.travellers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.trammel.shop.floor.SmallRoute.op;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.trammel.shop.floor.Floor;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.routes.StepSheet;

/** A window is met by the work it is about; neither a look at the masks nor a scan is the work. */
class WindowMetByWorkTest extends AtTheBench {

    private static StepSheet work(String text) {
        return new StepSheet(text, "", false, true, null, null, null);
    }

    private Floor.Frame blasted() {
        Floor.Frame frame = floor.frame(SmallRoute.of(
                        op("140").step("blast").sheet(),
                        op("150")
                                .outside()
                                .step("masks checked")
                                .step("booth clean")
                                .step(work("sprayed"))
                                .step(work("cured"))
                                .sheet(),
                        op("160").step("finish").sheet())
                .window("BLAST", 240, "140", "150")
                .sheet());
        floor.tickAll(frame, worker);
        return frame;
    }

    private void tick(Floor.Frame frame, int number) {
        bench.tick(
                floor.act(worker),
                List.of(floor.at(frame).steps().get(number - 1).stepId()),
                null,
                null);
    }

    private ClockState window(Floor.Frame frame) {
        return floor.sheet(frame).clocks().get(0).state();
    }

    @Test
    void aStepThatPreparesTheWorkLeavesTheWindowRunningAndEveryTickBeforeTheWorkIsJudged() {
        Floor.Frame frame = blasted();
        clock.pass(Duration.ofMinutes(239));
        tick(frame, 1);
        assertThat(window(frame)).isEqualTo(ClockState.RUNNING);
        clock.pass(Duration.ofMinutes(2));
        refused(() -> tick(frame, 2), "Operation 150", "cannot go on", "BLAST", "closed at", "Do operation 140 again");
        refused(() -> tick(frame, 3), "BLAST", "closed at");
        assertThat(floor.sheet(frame).inTheWay()).hasSize(1);
        assertThat(floor.sheet(frame).inTheWay().get(0).why()).contains("BLAST closed");
    }

    @Test
    void theWorkMeetsItAndWhatFollowsTheWorkMayTakeItsTime() {
        Floor.Frame frame = blasted();
        tick(frame, 1);
        tick(frame, 2);
        clock.pass(Duration.ofMinutes(240));
        tick(frame, 3);
        assertThat(window(frame)).isEqualTo(ClockState.MET);
        clock.pass(Duration.ofDays(1));
        tick(frame, 4);
        assertThat(floor.at(frame).line().code()).isEqualTo("160");
    }

    @Test
    void aClosedWindowIsOpenedByDoingItsStartAgainAlsoWhereTheOperationWasPrepared() {
        Floor.Frame frame = blasted();
        tick(frame, 1);
        clock.pass(Duration.ofMinutes(241));
        rework.redoForClock(floor.act(worker), floor.at(frame).line().operationId(), "BLAST");
        assertThat(floor.at(frame).line().code()).isEqualTo("140");
        floor.tickAll(frame, worker);
        assertThat(floor.at(frame).line().code()).isEqualTo("150");
        assertThat(floor.at(frame).steps()).noneMatch(FrameSheet.StepLine::ticked);
        floor.tickAll(frame, worker);
        assertThat(floor.at(frame).line().code()).isEqualTo("160");
        assertThat(window(frame)).isEqualTo(ClockState.MET);
    }

    @Test
    void theTickOfTheWorkTakenBackIsJudgedWhenItIsGivenAgain() {
        Floor.Frame frame = blasted();
        tick(frame, 1);
        tick(frame, 2);
        tick(frame, 3);
        long sprayed = floor.at(frame).steps().get(2).stepId();
        bench.untick(floor.act(worker), sprayed, "it was the other frame");
        assertThat(window(frame)).isEqualTo(ClockState.RUNNING);
        clock.pass(Duration.ofMinutes(241));
        refused(() -> tick(frame, 3), "BLAST", "closed at");
    }

    @Test
    void theStartTickedAnewWhileTheNextOperationIsPreparedStillRuns() {
        Floor.Frame frame = floor.frame(SmallRoute.of(
                        op("140").step("blast", "BLAST").sheet(),
                        op("150").step("masks checked").step(work("sprayed")).sheet())
                .window("BLAST", 240, "140", "150")
                .sheet());
        long blast = floor.at(frame).steps().get(0).stepId();
        floor.tickAll(frame, worker);
        tick(frame, 1);
        bench.untick(floor.act(qa), blast, "looked at it again");
        bench.tick(floor.act(worker), List.of(blast), null, null);
        assertThat(window(frame)).isEqualTo(ClockState.RUNNING);
        clock.pass(Duration.ofMinutes(241));
        refused(() -> tick(frame, 2), "BLAST", "closed at");
    }

    @Test
    void withoutAStepThatCannotBeUndoneTheLastTickMeetsIt() {
        Floor.Frame frame = floor.frame(SmallRoute.of(
                        op("150").step("spray").sheet(),
                        op("155").step("film off").step("edge looked at").sheet(),
                        op("160").step("finish").sheet())
                .window("DEMASK", 120, "150", "155")
                .sheet());
        floor.tickAll(frame, worker);
        tick(frame, 1);
        assertThat(window(frame)).isEqualTo(ClockState.RUNNING);
        tick(frame, 2);
        assertThat(window(frame)).isEqualTo(ClockState.MET);
    }

    @Test
    void aFrameSentOutInTimeIsInTimeAndOneSentLateIsRefused() {
        Floor.Frame frame = blasted();
        tick(frame, 1);
        outside.send(floor.act(worker), floor.at(frame).line().operationId(), "Coater Two");
        assertThat(window(frame)).isEqualTo(ClockState.MET);
        Floor.Frame late = blasted();
        tick(late, 1);
        clock.pass(Duration.ofMinutes(241));
        long at = floor.at(late).line().operationId();
        refused(() -> outside.send(floor.act(worker), at, "Coater Two"), "BLAST", "closed at");
    }
}
