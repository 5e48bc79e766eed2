package org.trammel.shop.designs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.trammel.calc.geometry.ArmPlan;
import org.trammel.calc.geometry.Clearances;
import org.trammel.calc.geometry.DemoFrames;
import org.trammel.calc.geometry.FrameGeometry;
import org.trammel.calc.geometry.Point;
import org.trammel.calc.geometry.RearPlan;
import org.trammel.calc.geometry.RearView;
import org.trammel.calc.geometry.SawRules;
import org.trammel.calc.geometry.SpacePoint;
import org.trammel.calc.geometry.TubeAxes;
import org.trammel.calc.units.Answer;

/**
 * The frames of the invented workshop from what their orders give, and from nothing else. Expected figures are those of
 * frames.csv, which a script written apart from this project computed; the room of the tyre is searched for point by point.
 */
class InventedFramesTest {

    /** Of the bends in 24 corners and of this search, a degree and a millimetre apart. */
    private static final double SEARCHED_MM = 0.2;

    /** Of the bends in 24 corners: an arc of 120 and at most 20°, 120 (1 − cos(20° / 48)). */
    private static final double CORNERED_MM = 0.004;

    private static Stream<DemoFrames.Row> frames() {
        return DemoFrames.all();
    }

    /** All whose orders say what holds the rear wheel and how wide its tyre is. */
    private static Stream<DemoFrames.Row> fromAbove() {
        return frames().filter(row ->
                row.has("seatstay_at_seat_mm") || SwingFrame.names().contains(row.name()));
    }

    private static Map<String, String> typed(DemoFrames.Row row) {
        Map<String, String> typed = new TreeMap<>();
        SwingFrame.inputs(row.name()).forEach((input, amount) -> typed.put(input.code(), amount.toPlainString()));
        return typed;
    }

    private static ComputedFrame computed(DemoFrames.Row row) {
        return ComputedFrame.of(typed(row), SawRules.usual(List.of()));
    }

    private static <T> T value(Answer<T> answer) {
        assertThat(answer).isInstanceOf(Answer.Determined.class);
        return ((Answer.Determined<T>) answer).value();
    }

    @ParameterizedTest
    @MethodSource("frames")
    void everyFrameFollowsFromItsInputsAlone(DemoFrames.Row row) {
        ComputedFrame frame = computed(row);
        FrameGeometry geometry = value(frame.geometry());
        assertThat(geometry.stack_mm()).isCloseTo(row.number("stack"), within(1e-6));
        assertThat(geometry.wheelbase_mm()).isCloseTo(row.number("wheelbase"), within(1e-6));
        assertThat(geometry.frontCentre_mm()).isCloseTo(row.number("front_centre"), within(1e-6));
        assertThat(geometry.trail_mm()).isCloseTo(row.number("trail"), within(1e-6));
        assertThat(geometry.effectiveTopTube_mm()).isCloseTo(row.number("TT_eff"), within(1e-6));
        TubeAxes axes = value(frame.axes());
        assertThat(axes.topTube_mm()).isCloseTo(row.number("TT_len"), within(1e-6));
        assertThat(value(frame.side()).members()).isNotEmpty();
        boolean swings = SwingFrame.names().contains(row.name());
        assertThat(value(frame.cuts()).pieces()).hasSize(row.has("seatstay_at_seat_mm") || swings ? 5 : 3);
        assertThat(value(frame.frontCuts()).pieces()).hasSize(row.has("seatstay_at_seat_mm") ? 5 : 3);
        assertThat(value(frame.cuts()).notCut()).isEmpty();
    }

    /** Tubes that run past an end of the head tube are nobody's decision: of the welds alone three frames say so in writing. */
    @ParameterizedTest
    @MethodSource("frames")
    void everyTubeLiesInsideTheEndsOfItsHeadTube(DemoFrames.Row row) {
        TubeAxes axes = value(computed(row).axes());
        Map<GeometryInput, BigDecimal> given = SwingFrame.inputs(row.name());
        Clearances.HeadTubeRoom room = value(Clearances.headTube(
                axes.geometry(),
                given.get(GeometryInput.HEAD_TUBE_OUTSIDE).doubleValue() / 2,
                new Clearances.TubeAtHead(
                        axes.topTubeAtHead(),
                        axes.topTubeAtSeat(),
                        given.get(GeometryInput.TOP_TUBE_OUTSIDE).doubleValue() / 2),
                new Clearances.TubeAtHead(
                        axes.downTubeAtHead(),
                        FrameGeometry.SHELL,
                        given.get(GeometryInput.DOWN_TUBE_OUTSIDE).doubleValue() / 2),
                8));
        assertThat(room.upperEnd().value_mm()).isGreaterThanOrEqualTo(4);
        assertThat(room.lowerEnd().value_mm()).isGreaterThanOrEqualTo(4);
        assertThat(room.toes().isMet())
                .isEqualTo(!List.of("O-102", "O-113", "O-118").contains(row.name()));
    }

    /** The ring of the tyre against the axis of stay or side, every millimetre of it against every half degree of the ring. */
    @ParameterizedTest
    @MethodSource("fromAbove")
    void everyTyreTurnsFreeOfStaysAndSwingArm(DemoFrames.Row row) {
        ComputedFrame frame = computed(row);
        RearView rear = value(frame.rear());
        FrameGeometry geometry = value(frame.geometry());
        Map<GeometryInput, BigDecimal> given = SwingFrame.inputs(row.name());
        boolean arm = rear instanceof ArmPlan;
        List<SpacePoint> axis = arm ? ((ArmPlan) rear).axis() : ((RearPlan) rear).axis();
        double tyre = given.get(GeometryInput.REAR_TYRE_WIDTH).doubleValue();
        double least = fromTheRing(
                geometry.rearAxle(), given.get(GeometryInput.REAR_WHEEL_RADIUS).doubleValue() - tyre / 2, axis);
        double across = given.get(arm ? GeometryInput.ARM_WIDTH : GeometryInput.CHAINSTAY_OUTSIDE)
                .doubleValue();
        double room = rear.tyreRoom().orElseThrow().room_mm();
        assertThat(room).isCloseTo(least - tyre / 2 - across / 2, within(SEARCHED_MM));
        assertThat(room).as("what a tyre and its mud want, common practice").isGreaterThanOrEqualTo(6);
        assertThat(value(new RearInputs(new GivenInputs(typed(row))).room(geometry, frame.tubes())))
                .isEqualTo(rear.tyreRoom().orElseThrow());
    }

    /** Against tyre_room.csv, for which a script beside it walked along every seatstay and upper member. */
    @ParameterizedTest
    @MethodSource("fromAbove")
    void everyTyreTurnsFreeOfSeatstaysAndUpperMembers(DemoFrames.Row row) {
        ComputedFrame frame = computed(row);
        double script = DemoFrames.read("/geometry/tyre_room.csv").stream()
                .filter(one -> one.name().equals(row.name()))
                .findFirst()
                .orElseThrow()
                .number("room");
        double room = value(
                        new RearInputs(new GivenInputs(typed(row))).upperRoom(value(frame.geometry()), frame.tubes()))
                .room_mm();
        assertThat(room).isCloseTo(script, within(CORNERED_MM));
        assertThat(room).as("what a tyre and its mud want, common practice").isGreaterThanOrEqualTo(6);
    }

    private static double fromTheRing(Point axle, double core, List<SpacePoint> axis) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 1; i < axis.size(); i++) {
            SpacePoint from = axis.get(i - 1);
            SpacePoint to = axis.get(i);
            int steps = 1 + (int) Math.abs(to.x_mm() - from.x_mm());
            for (int step = 0; step <= steps; step++) {
                double share = (double) step / steps;
                double x = from.x_mm() + share * (to.x_mm() - from.x_mm());
                double y = from.y_mm() + share * (to.y_mm() - from.y_mm());
                double z = from.z_mm() + share * (to.z_mm() - from.z_mm());
                for (int half = -120; half <= 120; half++) {
                    double turn = Math.toRadians(half / 2.0);
                    double dx = x - axle.x_mm() - core * Math.cos(turn);
                    double dy = y - axle.y_mm() - core * Math.sin(turn);
                    least = Math.min(least, Math.sqrt(dx * dx + dy * dy + z * z));
                }
            }
        }
        return least;
    }
}
