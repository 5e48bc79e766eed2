package org.trammel.shop.designs;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.geometry.ArmPlan;
import org.trammel.calc.geometry.ArmTubes;
import org.trammel.calc.geometry.ArmUpper;
import org.trammel.calc.geometry.FormedEnd;
import org.trammel.calc.geometry.FormedPlace;
import org.trammel.calc.geometry.FrameGeometry;
import org.trammel.calc.geometry.FrameTube;
import org.trammel.calc.geometry.Point;
import org.trammel.calc.geometry.RearPlan;
import org.trammel.calc.geometry.RearView;
import org.trammel.calc.geometry.StayBend;
import org.trammel.calc.geometry.StaySet;
import org.trammel.calc.geometry.TubeSet;
import org.trammel.calc.geometry.TyreRoom;
import org.trammel.calc.units.Answer;

/** The rear end of a revision from above: with stays or a swing arm, and the tyre that turns in it. */
final class RearInputs {

    /** So far depth and width of a side may differ that is still called round. */
    private static final double ROUND_MM = 0.05;

    private final GivenInputs in;

    RearInputs(GivenInputs in) {
        this.in = in;
    }

    /** What a sheet shows of it. */
    Answer<RearView> seen(FrameGeometry geometry, Answer<TubeSet> tubes) {
        return in.has(GeometryInput.PIVOT_AHEAD)
                ? arm(geometry).then(Answer::<RearView>of)
                : tubes.then(this::stays).then(stays -> plan(geometry, stays));
    }

    /** Between the tyre and chainstays or the arm's sides. */
    Answer<TyreRoom> room(FrameGeometry geometry, Answer<TubeSet> tubes) {
        Answer<GivenInputs> tyre = in.all(GeometryInput.REAR_TYRE_WIDTH);
        return in.has(GeometryInput.PIVOT_AHEAD)
                ? tyre.then(there -> arm(geometry))
                        .then(arm -> TyreRoom.beside(
                                geometry, arm.side(), arm.sizes().width_mm(), tyre_mm()))
                : tyre.then(there -> tubes)
                        .then(this::stays)
                        .then(stays -> TyreRoom.beside(geometry, stays.chainstayPath(), widest_mm(stays), tyre_mm()));
    }

    /** Between the tyre and the seatstays or the arm's upper members. */
    Answer<TyreRoom> upperRoom(FrameGeometry geometry, Answer<TubeSet> tubes) {
        Answer<GivenInputs> tyre = in.all(GeometryInput.REAR_TYRE_WIDTH);
        return in.has(GeometryInput.PIVOT_AHEAD)
                ? tyre.then(there -> upper(geometry))
                        .then(upper -> TyreRoom.beside(
                                geometry, upper.path(), upper.sizes().outside_mm(), tyre_mm()))
                : tyre.then(there -> tubes)
                        .then(this::stays)
                        .then(stays -> TyreRoom.beside(
                                geometry, stays.seatstayPath(), stays.seatstay().outside_mm(), tyre_mm()));
    }

    /** The upper members of a swing arm, whatever is known of what else it is cut from. */
    Answer<ArmUpper> upper(FrameGeometry geometry) {
        return in.all(GeometryInput.ARM_UPPER_INSIDE, GeometryInput.SEATSTAY_OUTSIDE)
                .then(there -> arm(geometry))
                .then(arm -> SwingInputs.suspension(in, geometry)
                        .then(rear -> ArmUpper.of(
                                arm,
                                rear.armEye(),
                                new ArmUpper.Sizes(
                                        in.number(GeometryInput.ARM_UPPER_INSIDE),
                                        in.number(GeometryInput.SEATSTAY_OUTSIDE),
                                        in.has(GeometryInput.ARM_CROSS) ? in.number(GeometryInput.ARM_CROSS) : null),
                                new TubeInputs(in).ends(List.of()))));
    }

    /** What an arm's sheet cannot show, a sentence each. */
    List<String> notShown() {
        List<String> sentences = new ArrayList<>();
        notShown(sentences, "The pivot bosses are not drawn", GeometryInput.ARM_BOSS, GeometryInput.ARM_OVER);
        notShown(sentences, "The bridge is not drawn", GeometryInput.ARM_BRIDGE, GeometryInput.ARM_BRIDGE_OUTSIDE);
        notShown(sentences, "The tube across at the shock is not drawn", GeometryInput.ARM_CROSS);
        notShown(sentences, "The tyre and its room are not drawn", GeometryInput.REAR_TYRE_WIDTH);
        return sentences;
    }

    private void notShown(List<String> sentences, String what, GeometryInput... needed) {
        if (in.all(needed) instanceof Answer.NotDeterminable<GivenInputs> none) {
            sentences.add(
                    what + ". " + none.gaps().stream().map(Answer.Gap::words).collect(Collectors.joining(" ")));
        }
    }

    private Answer<StaySet> stays(TubeSet tubes) {
        StaySet stays = tubes.stays();
        return stays == null
                ? Answer.none(GeometryInput.CHAINSTAY_OUTSIDE.code(), "The frame has no stays.")
                : Answer.of(stays);
    }

    private Answer<RearView> plan(FrameGeometry geometry, StaySet stays) {
        return in.all(GeometryInput.SHELL_WIDTH)
                .then(there -> RearPlan.of(
                        geometry,
                        stays.chainstayPath(),
                        new RearPlan.Sizes(
                                in.number(GeometryInput.SHELL_OUTSIDE),
                                in.number(GeometryInput.SHELL_BORE, 0),
                                in.number(GeometryInput.SHELL_WIDTH),
                                in.number(GeometryInput.AXLE_WIDTH),
                                stays.chainstay().outside_mm(),
                                widest_mm(stays),
                                stays.plate(),
                                tyre_mm())))
                .then(Answer::of);
    }

    /** Of a chainstay that is pressed lower than it is round the oval, as if it were so all along. */
    private double widest_mm(StaySet stays) {
        double round = stays.chainstay().outside_mm();
        if (new TubeInputs(in).formed() instanceof Answer.Determined<Map<FormedPlace, FormedEnd>> ends) {
            FormedEnd end = ends.value().get(FormedPlace.CHAINSTAY_AT_SHELL);
            return end == null ? round : Math.max(round, end.acrossFrame_mm());
        }
        return round;
    }

    private @Nullable Double tyre_mm() {
        return in.has(GeometryInput.REAR_TYRE_WIDTH) ? in.number(GeometryInput.REAR_TYRE_WIDTH) : null;
    }

    Answer<ArmPlan> arm(FrameGeometry geometry) {
        return in.all(
                        GeometryInput.PIVOT_AHEAD,
                        GeometryInput.PIVOT_ABOVE,
                        GeometryInput.AXLE_WIDTH,
                        GeometryInput.ARM_INSIDE,
                        GeometryInput.ARM_WIDTH)
                .then(there -> bends())
                .then(bends -> ArmPlan.of(
                        geometry,
                        new Point(in.number(GeometryInput.PIVOT_AHEAD), in.number(GeometryInput.PIVOT_ABOVE)),
                        new ArmPlan.Sizes(
                                in.number(GeometryInput.ARM_INSIDE),
                                in.number(GeometryInput.ARM_WIDTH),
                                bosses(),
                                bridge(),
                                in.number(GeometryInput.AXLE_WIDTH),
                                new TubeInputs(in).plate(),
                                tyre_mm()),
                        new TubeInputs(in).ends(bends)));
    }

    /** Whether the drawing is to know the tubes of a swing arm. */
    boolean asksForTheArmsTubes() {
        return in.has(GeometryInput.PIVOT_AHEAD)
                && (in.has(GeometryInput.ARM_CROSS) || in.has(GeometryInput.ARM_UPPER_INSIDE));
    }

    /** Lower and upper members of a swing arm; without an answer where they are not given, or not round. */
    Answer<ArmTubes> tubes(FrameGeometry geometry) {
        TubeInputs tubes = new TubeInputs(in);
        return in.all(
                        GeometryInput.ARM_CROSS,
                        GeometryInput.ARM_UPPER_INSIDE,
                        GeometryInput.ARM_BOSS,
                        GeometryInput.ARM_SIDE,
                        GeometryInput.ARM_WIDTH)
                .then(there -> round())
                .then(there -> tubes.ofTheArm())
                .then(stock -> arm(geometry)
                        .then(arm -> SwingInputs.suspension(in, geometry)
                                .then(rear -> ArmTubes.of(
                                        arm,
                                        rear.armEye(),
                                        stock.get(FrameTube.CHAINSTAY),
                                        stock.get(FrameTube.SEATSTAY),
                                        new ArmTubes.Mates(
                                                in.number(GeometryInput.ARM_BOSS),
                                                in.number(GeometryInput.ARM_CROSS),
                                                in.number(GeometryInput.ARM_UPPER_INSIDE),
                                                tubes.plate()),
                                        tubes.ends(List.of())))));
    }

    private Answer<GivenInputs> round() {
        double deep = in.number(GeometryInput.ARM_SIDE);
        double wide = in.number(GeometryInput.ARM_WIDTH);
        return Math.abs(deep - wide) < ROUND_MM
                ? Answer.of(in)
                : Answer.none(
                        GeometryInput.ARM_SIDE.code(),
                        "The swing arm's sides are " + GeometryInput.ARM_SIDE.written(deep) + " deep and "
                                + GeometryInput.ARM_WIDTH.written(wide)
                                + " wide: only round sides are cut by the drawing.");
    }

    ArmPlan.@Nullable Bridge bridge() {
        return in.has(GeometryInput.ARM_BRIDGE) && in.has(GeometryInput.ARM_BRIDGE_OUTSIDE)
                ? new ArmPlan.Bridge(in.number(GeometryInput.ARM_BRIDGE), in.number(GeometryInput.ARM_BRIDGE_OUTSIDE))
                : null;
    }

    private ArmPlan.@Nullable Bosses bosses() {
        return in.has(GeometryInput.ARM_BOSS) && in.has(GeometryInput.ARM_OVER)
                ? new ArmPlan.Bosses(in.number(GeometryInput.ARM_BOSS), in.number(GeometryInput.ARM_OVER))
                : null;
    }

    /** None, or the one that is given whole. */
    private Answer<List<StayBend>> bends() {
        if (Stream.of(GeometryInput.ARM_BEND, GeometryInput.ARM_BEND_OUT, GeometryInput.ARM_BEND_RADIUS)
                .noneMatch(in::has)) {
            return Answer.of(List.of());
        }
        return in.all(GeometryInput.ARM_BEND, GeometryInput.ARM_BEND_OUT, GeometryInput.ARM_BEND_RADIUS)
                .then(there -> Answer.of(List.of(new StayBend(
                        in.number(GeometryInput.ARM_BEND),
                        in.number(GeometryInput.ARM_BEND_OUT),
                        in.number(GeometryInput.ARM_BEND_RADIUS)))));
    }
}
