package org.trammel.calc.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.trammel.calc.units.Answer;

/** The room between tyre and stay against one found by stepping along the stay, and by hand for a stay that is parallel. */
class RearPlanTest {

    private static final DropoutPlate PLATE = new DropoutPlate(6, 0.1, 25);

    static Stream<RearPlan> plans() {
        Random random = new Random(45);
        return StaysTest.withStays()
                .flatMap(frame -> Stream.of(28.0, 42.0, 61.0)
                        .map(tyre -> plan(frame.geometry(), StaysTest.stays(frame), 12 + random.nextInt(14), tyre)));
    }

    private static RearPlan plan(FrameGeometry geometry, Stays stays, double stay_mm, double tyre_mm) {
        return ((Answer.Determined<RearPlan>)
                        RearPlan.of(geometry, stays, new RearPlan.Sizes(42, 33.5, 73, 148, stay_mm, PLATE, tyre_mm)))
                .value();
    }

    /** The tyre is every point as far from its core as half its width; the core is a circle about the axle. */
    @ParameterizedTest
    @MethodSource("plans")
    void theRoomIsTheLeastThatSteppingFinds(RearPlan plan) {
        double tyre = plan.sizes().tyreWidth_mm();
        double core = plan.geometry().layout().rearWheelRadius_mm() - tyre / 2;
        Point axle = plan.geometry().rearAxle();
        double least = Double.POSITIVE_INFINITY;
        int steps = 200_000;
        for (int i = 0; i <= steps; i++) {
            double share = (double) i / steps;
            SpacePoint front = plan.chainstay().front();
            SpacePoint rear = plan.chainstay().rear();
            double x = front.x_mm() + (rear.x_mm() - front.x_mm()) * share;
            double y = front.y_mm() + (rear.y_mm() - front.y_mm()) * share;
            double z = front.z_mm() + (rear.z_mm() - front.z_mm()) * share;
            double fromCore = Math.hypot(x - axle.x_mm(), y - axle.y_mm()) - core;
            least = Math.min(least, Math.hypot(fromCore, z));
        }
        assertThat(plan.tyreRoom().orElseThrow().room_mm())
                .isCloseTo(least - tyre / 2 - plan.sizes().chainstayOutside_mm() / 2, within(1e-6));
    }

    /** 40 mm from the middle plane, 30 mm of tyre and 20 mm of stay on each side of it: 40 − 15 − 10. */
    @Test
    void aStayBesideTheTyreLeavesWhatTheirHalvesLeave() {
        FrameGeometry geometry = DemoFrames.all().findFirst().orElseThrow().geometry();
        Point axle = geometry.rearAxle();
        Stays stays = new Stays(
                new Stay(new SpacePoint(0, 0, 40), new SpacePoint(axle.x_mm() * 0.9, axle.y_mm() * 0.9, 40)),
                new Stay(new SpacePoint(0, 300, 20), new SpacePoint(-400, 60, 70)),
                1,
                1);
        assertThat(plan(geometry, stays, 20, 30).tyreRoom().orElseThrow().room_mm())
                .isCloseTo(15, within(1e-9));
    }

    @Test
    void withoutATyreThereIsNoRoomToTell() {
        DemoFrames.Row frame = StaysTest.withStays().findFirst().orElseThrow();
        RearPlan plan = ((Answer.Determined<RearPlan>) RearPlan.of(
                        frame.geometry(), StaysTest.stays(frame), new RearPlan.Sizes(42, 0, 73, 148, 22, PLATE, null)))
                .value();
        assertThat(plan.tyreRoom()).isEqualTo(Optional.empty());
    }

    @Test
    void whatCannotBeDrawnIsNamed() {
        DemoFrames.Row frame = StaysTest.withStays().findFirst().orElseThrow();
        assertThat(RearPlan.of(
                        frame.geometry(), StaysTest.stays(frame), new RearPlan.Sizes(42, 0, 73, 148, 22, PLATE, 370.0)))
                .isEqualTo(Answer.none(
                        "tyreWidth", "The rear tyre's width of 370 mm does not fit its wheel of 370 mm radius."));
        assertThat(RearPlan.of(
                        frame.geometry(),
                        StaysTest.stays(frame),
                        new RearPlan.Sizes(42, 0, Double.NaN, 148, 22, PLATE, null)))
                .isInstanceOf(Answer.NotDeterminable.class);
    }
}
