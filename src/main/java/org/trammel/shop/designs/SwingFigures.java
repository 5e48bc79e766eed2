package org.trammel.shop.designs;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.trammel.calc.geometry.FormedPlace;
import org.trammel.calc.geometry.FrameGeometry;
import org.trammel.calc.geometry.Point;
import org.trammel.calc.geometry.Suspension;
import org.trammel.calc.geometry.SwingClearance;
import org.trammel.calc.units.Answer;
import org.trammel.calc.units.DecimalSign;

/**
 * What is left over the whole travel between what swings, which is tyre, swing arm and shock, and the two tubes of the
 * front triangle before it.
 */
final class SwingFigures {

    private final GivenInputs in;
    private final ComputedFrame frame;
    private final GateLimits limits;
    private final Answer<Suspension> rear;

    SwingFigures(GivenInputs in, ComputedFrame frame, GateLimits limits) {
        this.in = in;
        this.frame = frame;
        this.limits = limits;
        this.rear = frame.geometry().then(geometry -> SwingInputs.suspension(in, geometry));
    }

    /** The seat tube, from its foot to its top, as high all along as its end at the shell where that is formed higher. */
    static Answer<SwingClearance.Axis> seatTube(GivenInputs in, FrameGeometry geometry) {
        return new TubeInputs(in)
                .outermost_mm(FormedPlace.SEAT_TUBE_AT_SHELL)
                .then(outermost ->
                        Answer.of(new SwingClearance.Axis(geometry.seatTubeFoot(), geometry.seatTubeTop(), outermost)));
    }

    private Answer<SwingClearance.Axis> downTube() {
        return frame.axes()
                .then(axes -> new TubeInputs(in)
                        .outermost_mm(FormedPlace.DOWN_TUBE_AT_SHELL)
                        .then(outermost -> Answer.of(
                                new SwingClearance.Axis(FrameGeometry.SHELL, axes.downTubeAtHead(), outermost))));
    }

    /** One figure for each of the three and each tube; a part of the swing arm that is not given stands as missing. */
    List<Answer<List<CheckFigure>>> all() {
        List<Answer<List<CheckFigure>>> figures = new ArrayList<>();
        Answer<SwingClearance.Axis> seatTube = frame.geometry().then(geometry -> seatTube(in, geometry));
        figures.add(figure("tyre to seat tube", "swing.tyre", seatTube, this::tyre));
        figures.add(figure("tyre to down tube", "swing.tyre", downTube(), this::tyre));
        figures.addAll(arm("swing arm to seat tube", seatTube));
        figures.addAll(arm("swing arm to down tube", downTube()));
        figures.add(figure("shock to seat tube", "swing.shock", seatTube, this::shock));
        figures.add(figure("shock to down tube", "swing.shock", downTube(), this::shock));
        return figures;
    }

    private Answer<List<CheckFigure>> figure(
            String label,
            String limit,
            Answer<SwingClearance.Axis> tube,
            Function<SwingClearance.Axis, Answer<SwingClearance>> room) {
        return tube.then(room).then(least -> Answer.of(List.of(made(label, limit, least))));
    }

    private CheckFigure made(String label, String limit, SwingClearance least) {
        String at =
                DecimalSign.COMMA.write(BigDecimal.valueOf(least.travel_mm()).setScale(1, RoundingMode.HALF_EVEN));
        return CheckFigure.atLeast(label + ", least at " + at + " of travel", least.clearance_mm(), limits.of(limit));
    }

    private Answer<SwingClearance> tyre(SwingClearance.Axis tube) {
        return rear.then(there ->
                Answer.of(SwingClearance.leastOfTyre(there.swing(), tube, in.number(GeometryInput.REAR_WHEEL_RADIUS))));
    }

    private Answer<SwingClearance> shock(SwingClearance.Axis tube) {
        return rear.then(there -> in.all(GeometryInput.SHOCK_OUTSIDE, GeometryInput.SHOCK_EYE_OUTSIDE)
                .then(given -> Answer.of(SwingClearance.leastOfShock(
                        there,
                        tube,
                        new SwingClearance.ShockShape(
                                in.number(GeometryInput.SHOCK_OUTSIDE),
                                in.number(GeometryInput.SHOCK_EYE, 0),
                                in.number(GeometryInput.SHOCK_EYE_OUTSIDE))))));
    }

    /** The nearer of its sides and its bridge, as far as they are given. */
    private List<Answer<List<CheckFigure>>> arm(String label, Answer<SwingClearance.Axis> tube) {
        List<Answer<SwingClearance>> parts = List.of(tube.then(this::sides), tube.then(this::bridge));
        Stream<Answer<List<CheckFigure>>> nearest = parts.stream()
                .filter(Answer.Determined.class::isInstance)
                .map(part -> ((Answer.Determined<SwingClearance>) part).value())
                .min(Comparator.comparingDouble(SwingClearance::clearance_mm))
                .map(least -> Answer.of(List.of(made(label, "swing.arm", least))))
                .stream();
        Stream<Answer<List<CheckFigure>>> missing = parts.stream()
                .filter(Answer.NotDeterminable.class::isInstance)
                .map(part -> part.then(never -> Answer.of(List.of())));
        return Stream.concat(nearest, missing).toList();
    }

    private Answer<SwingClearance> sides(SwingClearance.Axis tube) {
        return rear.then(there -> in.all(GeometryInput.ARM_INSIDE, GeometryInput.ARM_SIDE)
                .then(given -> Answer.of(SwingClearance.leastOfSides(
                        there.swing(),
                        tube,
                        List.of(there.swing().axle(), there.armEye()),
                        in.number(GeometryInput.ARM_SIDE),
                        in.number(GeometryInput.ARM_INSIDE)))));
    }

    private Answer<SwingClearance> bridge(SwingClearance.Axis tube) {
        return rear.then(there -> in.all(GeometryInput.ARM_BRIDGE, GeometryInput.ARM_BRIDGE_OUTSIDE)
                .then(given -> {
                    Point pivot = there.swing().pivot();
                    Point axle = there.swing().axle();
                    double share =
                            in.number(GeometryInput.ARM_BRIDGE) / there.swing().radius_mm();
                    Point middle = new Point(
                            pivot.x_mm() + share * (axle.x_mm() - pivot.x_mm()),
                            pivot.y_mm() + share * (axle.y_mm() - pivot.y_mm()));
                    return Answer.of(SwingClearance.leastOfRound(
                            there.swing(), tube, middle, in.number(GeometryInput.ARM_BRIDGE_OUTSIDE)));
                }));
    }
}
