package org.trammel.calc.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.trammel.calc.units.Answer;

/** A swing arm from above: places worked by hand, its room against stepping along the side, and what cannot be drawn. */
class ArmPlanTest {

    private static final DropoutPlate PLATE = new DropoutPlate(6, 0.1, 25);
    private static final Point PIVOT = new Point(22, 72);

    private static FrameGeometry geometry() {
        return DemoFrames.all()
                .filter(row -> row.name().equals("O-104"))
                .findFirst()
                .orElseThrow()
                .geometry();
    }

    private static Answer<ArmPlan> arm(ArmPlan.Sizes sizes, ArmPlan.Ends ends) {
        return ArmPlan.of(geometry(), PIVOT, sizes, ends);
    }

    private static ArmPlan.Sizes sizes(double inside, double width, double axle, Double tyre) {
        return new ArmPlan.Sizes(inside, width, null, null, axle, PLATE, tyre);
    }

    private static ArmPlan.Ends ends(StayBend... bends) {
        return new ArmPlan.Ends(18, 4, List.of(bends));
    }

    private static ArmPlan value(Answer<ArmPlan> answer) {
        assertThat(answer).isInstanceOf(Answer.Determined.class);
        return ((Answer.Determined<ArmPlan>) answer).value();
    }

    /**
     * The axle lies √(436² − 32²) = 434,8241 behind the shell and 32 above it, so √(456,8241² + 40²) = 458,5720 from the
     * pivot; the side begins 24 + 11 from the middle plane and ends 18 before the axle, 74 + 4 from it.
     */
    @Test
    void aSideRunsFromThePivotToTheDropout() {
        ArmPlan arm = value(arm(sizes(48, 22, 148, null), ends()));
        assertThat(arm.reach_mm()).isCloseTo(458.5720, within(1e-4));
        assertThat(arm.axis()).hasSize(2);
        assertThat(arm.axis().get(0)).isEqualTo(new SpacePoint(22, 72, 35));
        SpacePoint end = arm.axis().get(1);
        assertThat(end.x_mm()).isCloseTo(-434.8241 + 18 * 456.8241 / 458.5720, within(1e-4));
        assertThat(end.y_mm()).isCloseTo(32 + 18 * 40 / 458.5720, within(1e-4));
        assertThat(end.z_mm()).isEqualTo(78);
        assertThat(arm.tyreRoom()).isEmpty();
    }

    /** The line from (458,572; 35) to (18; 78) passes (340; 0) at 20518,6 / 442,666 = 46,352; less 30 and 11. */
    @Test
    void theTyresRoomIsWhatItsSideLeaves() {
        assertThat(value(arm(sizes(48, 22, 148, 60.0), ends()))
                        .tyreRoom()
                        .orElseThrow()
                        .room_mm())
                .isCloseTo(5.352, within(1e-3));
    }

    /** 40 apart all along is 40 less half a tyre of 30 and half a side of 20, wherever the wheel stands. */
    @Test
    void parallelSidesLeaveWhatTheirHalvesLeave() {
        assertThat(value(arm(sizes(60, 20, 72, 30.0), ends()))
                        .tyreRoom()
                        .orElseThrow()
                        .room_mm())
                .isCloseTo(15, within(1e-9));
    }

    /** The bridge 70 on the way of 458,5720: at 22 − 70 × 456,8241 / 458,5720, between sides at 35 + 43 × 70 / 440,5720. */
    @Test
    void aBridgeReachesFromSideToSide() {
        ArmPlan arm = value(arm(sizes(48, 22, 148, null), ends()));
        double x = arm.bridgeX_mm(new ArmPlan.Bridge(70, 18));
        assertThat(x).isCloseTo(-47.7332, within(1e-4));
        assertThat(arm.sideZ_mm(x)).isCloseTo(41.8320, within(1e-4));
    }

    static Stream<ArmPlan> bent() {
        return Stream.of(new StayBend(70, 6, 120), new StayBend(120, 14, 90), new StayBend(200, 3, 0))
                .map(bend -> value(arm(sizes(48, 22, 148, 60.0), ends(bend))));
    }

    /** The tyre is every point as far from its core as half its width; the core is a circle about the axle. */
    @ParameterizedTest
    @MethodSource("bent")
    void theRoomBesideABentSideIsTheLeastThatSteppingFinds(ArmPlan arm) {
        double least = Double.POSITIVE_INFINITY;
        Point axle = geometry().rearAxle();
        List<SpacePoint> axis = arm.axis();
        for (int i = 1; i < axis.size(); i++) {
            for (int step = 0; step <= 20_000; step++) {
                SpacePoint at = axis.get(i - 1).between(axis.get(i), step / 20_000.0);
                double fromCore = Math.hypot(at.x_mm() - axle.x_mm(), at.y_mm() - axle.y_mm()) - 340;
                least = Math.min(least, Math.hypot(fromCore, at.z_mm()));
            }
        }
        assertThat(arm.tyreRoom().orElseThrow().room_mm()).isCloseTo(least - 30 - 11, within(1e-6));
        assertThat(arm.tyreRoom().orElseThrow().room_mm())
                .as("a bend outward makes room")
                .isGreaterThan(5.352);
    }

    private static List<String> objections(Answer<ArmPlan> answer) {
        assertThat(answer).isInstanceOf(Answer.NotDeterminable.class);
        return ((Answer.NotDeterminable<ArmPlan>) answer)
                .gaps().stream().map(Answer.Gap::words).toList();
    }

    @Test
    void whatCannotBeDrawnIsNamed() {
        assertThat(objections(arm(
                        new ArmPlan.Sizes(
                                48, 22, new ArmPlan.Bosses(34, 40), new ArmPlan.Bridge(600, 18), 148, PLATE, 400.0),
                        new ArmPlan.Ends(500, 4, List.of()))))
                .containsExactly(
                        "Between pivot and dropout no room is left for a side of the swing arm: the axle is 458.572 mm"
                                + " from the pivot and the side ends 500 mm before the axle.",
                        "Over its bosses the swing arm measures 40 mm, not more than the 48 mm inside between its sides.",
                        "The swing arm's bridge 600 mm from the pivot is not between pivot and axle, which are 458.572 mm"
                                + " apart.",
                        "The rear tyre's width of 400 mm does not fit its wheel of 370 mm radius.");
        assertThat(objections(arm(sizes(Double.NaN, -1, 1e308, null), ends()))).hasSize(3);
        assertThat(objections(arm(sizes(48, 22, 148, null), ends(new StayBend(70, 6, 5000)))))
                .singleElement()
                .asString()
                .startsWith("Sides of the swing arm: Bend 1 with a radius of 5000 mm begins");
        assertThat(objections(arm(sizes(48, 22, 148, null), ends(new StayBend(600, 6, 0)))))
                .singleElement()
                .asString()
                .startsWith("Sides of the swing arm: The bend at 600 mm is not between 0 mm and the stay's end");
    }
}
