package org.trammel.shop.travellers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.trammel.shop.floor.SmallRoute.op;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.shop.floor.Floor;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.people.Role;
import org.trammel.shop.routes.Signer;
import org.trammel.shop.routes.StepSheet;

/** A step that asks for a second person is ticked by somebody who did none of the operation. */
class SecondPersonTest extends AtTheBench {

    private static final StepSheet LOOK =
            new StepSheet("second person looks", "", false, false, null, null, null, null, true);

    @Autowired
    private Beforehand beforehand;

    @Test
    void whoTightenedThemDoesNotTickThatASecondPersonLooked() {
        Floor.Frame frame = assembly();
        List<FrameSheet.StepLine> steps = floor.at(frame).steps();
        tick(worker, steps.get(0));
        tick(second, steps.get(1));
        for (long doer : List.of(worker, second)) {
            refused(() -> tick(doer, steps.get(2)), "A second person looks here", "was not ticked");
            assertThat(beforehand.bars(steps.get(2).stepId(), doer)).isPresent();
        }
        assertThat(beforehand.bars(steps.get(2).stepId(), qa)).isEmpty();
        tick(qa, steps.get(2));
        assertThat(floor.at(frame).line().state()).isEqualTo(OperationState.AT_POINT);
    }

    @Test
    void whoLookedAsTheSecondPersonSignsAsTheSecondAndNotAsTheWorker() {
        Floor.Frame frame = assembly();
        FrameSheet.OperationSheetOfFrame at = floor.at(frame);
        tick(worker, at.steps().get(0));
        tick(worker, at.steps().get(1));
        tick(second, at.steps().get(2));
        long point = at.line().operationId();
        refused(() -> signing.sign(floor.act(second), point, second, Signer.WORKER), "did none of the work");
        signing.sign(floor.act(worker), point, worker, Signer.WORKER);
        signing.sign(floor.act(second), point, second, Signer.SECOND);
        assertThat(floor.at(frame).line().code()).isEqualTo("200");
    }

    @Test
    void whoLookedDoesNoneOfTheWorkAfterwards() {
        Floor.Frame frame = assembly();
        List<FrameSheet.StepLine> steps = floor.at(frame).steps();
        tick(worker, steps.get(0));
        bench.tick(floor.act(second), List.of(steps.get(2).stepId()), null, "the bars are on, the wheels come");
        refused(() -> tick(second, steps.get(1)), "as the second person");
        tick(worker, steps.get(1));
        assertThat(floor.at(frame).line().state()).isEqualTo(OperationState.AT_POINT);
    }

    /** Measuring is never refused; what was looked at by somebody who measured since does not pass the gate. */
    @Test
    void whoLookedAndMeasuredSinceDoesNotCountAsTheSecond() {
        Floor.Frame frame = floor.frame(SmallRoute.of(op("180")
                        .step("brakes")
                        .step(LOOK)
                        .plain("180-1", "0.3")
                        .hold(Signer.SECOND)
                        .sheet())
                .sheet());
        String calliper = floor.gauge("CALLIPER", "mm", null);
        FrameSheet.OperationSheetOfFrame at = floor.at(frame);
        tick(worker, at.steps().get(0));
        tick(second, at.steps().get(1));
        floor.read(second, at.characteristics().get(0).characteristicId(), calliper, "0.1");
        long point = at.line().operationId();
        refused(() -> signing.sign(floor.act(qa), point, qa, Signer.SECOND), "did work of it");
        bench.untick(floor.act(second), at.steps().get(1).stepId(), "measured it too");
        tick(owner, at.steps().get(1));
        signing.sign(floor.act(qa), point, qa, Signer.SECOND);
    }

    /** Only whoever does the work needs the qualification of the operation. */
    @Test
    void theSecondPersonNeedsNoQualificationOfTheOperation() {
        long fitter = floor.qualified("TORQUE", Role.STATION_WORKER);
        Floor.Frame frame = floor.frame(SmallRoute.of(op("180")
                        .qualified("TORQUE")
                        .step("brakes")
                        .step(LOOK)
                        .hold(Signer.SECOND)
                        .sheet())
                .sheet());
        List<FrameSheet.StepLine> steps = floor.at(frame).steps();
        refused(() -> tick(worker, steps.get(0)), "TORQUE");
        tick(fitter, steps.get(0));
        tick(second, steps.get(1));
        assertThat(floor.at(frame).line().state()).isEqualTo(OperationState.AT_POINT);
    }

    private Floor.Frame assembly() {
        return floor.frame(SmallRoute.of(
                        op("180")
                                .step("brakes")
                                .step("wheels")
                                .step(LOOK)
                                .hold(Signer.WORKER, Signer.SECOND)
                                .sheet(),
                        op("200").step("pack").sheet())
                .sheet());
    }

    private void tick(long by, FrameSheet.StepLine step) {
        bench.tick(floor.act(by), List.of(step.stepId()), null, null);
    }
}
