package org.trammel.calc.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
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
                        .map(tyre -> plan(
                                frame.geometry(), straight(StaysTest.stays(frame)), 12 + random.nextInt(14), tyre)));
    }

    private static BentStay straight(Stays stays) {
        return bent(stays, List.of());
    }

    private static BentStay bent(Stays stays, List<StayBend> bends) {
        return ((Answer.Determined<BentStay>) BentStay.of(stays.chainstay(), bends)).value();
    }

    private static RearPlan plan(FrameGeometry geometry, BentStay stay, double stay_mm, double tyre_mm) {
        return ((Answer.Determined<RearPlan>)
                        RearPlan.of(geometry, stay, new RearPlan.Sizes(42, 33.5, 73, 148, stay_mm, PLATE, tyre_mm)))
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
            SpacePoint front = plan.chainstay().chord().front();
            SpacePoint rear = plan.chainstay().chord().rear();
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
        assertThat(plan(geometry, straight(stays), 20, 30)
                        .tyreRoom()
                        .orElseThrow()
                        .room_mm())
                .isCloseTo(15, within(1e-9));
    }

    /** A sharp corner is where its two lines meet; a round one keeps its length and comes to the same end. */
    @Test
    void aBentAxisRunsOverItsCornersAndEndsAtTheDropout() {
        Stays stays = StaysTest.stays(StaysTest.withStays().findFirst().orElseThrow());
        BentStay sharp = bent(stays, List.of(new StayBend(120, 15, 0)));
        SpacePoint corner = sharp.axis(1).get(1);
        Stay chord = stays.chainstay();
        double along = corner.minus(chord.front()).dot(chord.rearward());
        assertThat(along).isCloseTo(120, within(1e-9));
        assertThat(Math.sqrt(Math.pow(corner.minus(chord.front()).length_mm(), 2) - along * along))
                .isCloseTo(15, within(1e-9));
        BentStay round = bent(stays, List.of(new StayBend(120, 15, 90), new StayBend(260, -6, 140)));
        List<SpacePoint> axis = round.axis(400);
        double length = 0;
        for (int i = 1; i < axis.size(); i++) {
            length += axis.get(i).minus(axis.get(i - 1)).length_mm();
        }
        assertThat(length).isCloseTo(round.developed_mm(), within(1e-4));
        SpacePoint last =
                axis.get(axis.size() - 1).minus(axis.get(axis.size() - 2)).unit();
        assertThat(last.minus(round.atRear()).length_mm()).isLessThan(1e-6);
    }

    /** A bend outward makes room, one inward takes it. */
    @Test
    void aBendMovesTheTyresRoom() {
        DemoFrames.Row frame = StaysTest.withStays().findFirst().orElseThrow();
        Stays stays = StaysTest.stays(frame);
        double straight = plan(frame.geometry(), straight(stays), 22, 40)
                .tyreRoom()
                .orElseThrow()
                .room_mm();
        assertThat(plan(frame.geometry(), bent(stays, List.of(new StayBend(80, 12, 100))), 22, 40)
                        .tyreRoom()
                        .orElseThrow()
                        .room_mm())
                .isGreaterThan(straight + 5);
        assertThat(plan(frame.geometry(), bent(stays, List.of(new StayBend(80, -12, 100))), 22, 40)
                        .tyreRoom()
                        .orElseThrow()
                        .room_mm())
                .isLessThan(straight - 5);
    }

    @Test
    void withoutATyreThereIsNoRoomToTell() {
        DemoFrames.Row frame = StaysTest.withStays().findFirst().orElseThrow();
        RearPlan plan = ((Answer.Determined<RearPlan>) RearPlan.of(
                        frame.geometry(),
                        straight(StaysTest.stays(frame)),
                        new RearPlan.Sizes(42, 0, 73, 148, 22, PLATE, null)))
                .value();
        assertThat(plan.tyreRoom()).isEqualTo(Optional.empty());
    }

    @Test
    void whatCannotBeDrawnIsNamed() {
        DemoFrames.Row frame = StaysTest.withStays().findFirst().orElseThrow();
        assertThat(RearPlan.of(
                        frame.geometry(),
                        straight(StaysTest.stays(frame)),
                        new RearPlan.Sizes(42, 0, 73, 148, 22, PLATE, 370.0)))
                .isEqualTo(Answer.none(
                        "tyreWidth", "The rear tyre's width of 370 mm does not fit its wheel of 370 mm radius."));
        assertThat(RearPlan.of(
                        frame.geometry(),
                        straight(StaysTest.stays(frame)),
                        new RearPlan.Sizes(42, 0, Double.NaN, 148, 22, PLATE, null)))
                .isInstanceOf(Answer.NotDeterminable.class);
    }
}
