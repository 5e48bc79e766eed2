package org.trammel.shop.designs;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.geometry.ArmTubes;
import org.trammel.calc.geometry.BentStay;
import org.trammel.calc.geometry.CutList;
import org.trammel.calc.geometry.FormedEnd;
import org.trammel.calc.geometry.FormedPlace;
import org.trammel.calc.geometry.FrameGeometry;
import org.trammel.calc.geometry.FrameTube;
import org.trammel.calc.geometry.JointPlaces;
import org.trammel.calc.geometry.Layout;
import org.trammel.calc.geometry.Point;
import org.trammel.calc.geometry.RearView;
import org.trammel.calc.geometry.SawRules;
import org.trammel.calc.geometry.SideView;
import org.trammel.calc.geometry.StaySet;
import org.trammel.calc.geometry.Tandem;
import org.trammel.calc.geometry.TubeAxes;
import org.trammel.calc.geometry.TubeSet;
import org.trammel.calc.units.Answer;
import org.trammel.shop.routes.Kinds;

/**
 * What follows from the geometry inputs of a revision. Whatever cannot be computed says which input is missing or cannot
 * be; nothing is guessed in its place.
 *
 * @param geometry nodes and lengths; of a tandem those of its front part, as if the chainstay began at the front shell
 * @param tandem where its rear shell lies; null for a frame with one shell
 * @param axes top tube and down tube
 * @param side the view from the drive side
 * @param tubes what they are made of, and how their ends are formed
 * @param rear the rear end from above
 * @param frontCuts the tubes of a frame with stays, or of a front triangle, as they are cut
 * @param arm lower and upper members of a swing arm
 * @param cuts all tubes that are cut; those of a swing arm where it is asked for them
 */
record ComputedFrame(
        Answer<FrameGeometry> geometry,
        @Nullable Answer<Tandem> tandem,
        Answer<TubeAxes> axes,
        Answer<SideView> side,
        Answer<TubeSet> tubes,
        Answer<RearView> rear,
        Answer<CutList> frontCuts,
        Answer<ArmTubes> arm,
        Answer<CutList> cuts) {

    /** What is not computed for a tandem, as the input of a gap. */
    static final String TANDEM = "tandem";

    /** Outsides of stays where the drawing gives none: they are drawn, never cut, by these. */
    private static final double DRAWN_CHAINSTAY_MM = 22;

    private static final double DRAWN_SEATSTAY_MM = 16;

    /** Of a revision, whose kind says whether a second shell is missing. */
    static ComputedFrame of(DesignSheet sheet, SawRules rules) {
        return of(new GivenInputs(sheet.geometry()), sheet.kind().equals(Kinds.TANDEM), rules);
    }

    static ComputedFrame of(Map<String, String> typed, SawRules rules) {
        return of(new GivenInputs(typed), false, rules);
    }

    private static ComputedFrame of(GivenInputs in, boolean tandem, SawRules rules) {
        Answer<FrameGeometry> geometry = layout(in).then(FrameGeometry::of);
        Answer<TubeAxes> axes = TubeInputs.with(geometry, places(in), TubeAxes::of);
        Answer<TubeSet> tubes = geometry.then(there -> new TubeInputs(in).set(there));
        RearInputs rear = new RearInputs(in);
        Answer<CutList> front = TubeInputs.with(axes, tubes, (there, set) -> CutList.of(there, set, rules));
        Answer<ArmTubes> arm = geometry.then(rear::tubes);
        if (tandem || in.has(GeometryInput.SHELL_TO_SHELL)) {
            Answer<GivenInputs> shells = in.all(GeometryInput.SHELL_TO_SHELL);
            return new ComputedFrame(
                    geometry,
                    shells.then(there -> layout(in))
                            .then(layout -> Tandem.of(layout, in.number(GeometryInput.SHELL_TO_SHELL))),
                    axes,
                    notOfATandem("The view from the drive side"),
                    tubes,
                    notOfATandem("The view of the rear end"),
                    shells.then(there -> front),
                    arm,
                    shells.then(there -> front));
        }
        return new ComputedFrame(
                geometry,
                null,
                axes,
                axes.then(there -> side(in, there)),
                tubes,
                geometry.then(there -> rear.seen(there, tubes)),
                front,
                arm,
                rear.asksForTheArmsTubes() ? front.then(list -> Answer.of(list.and(cut(arm, rules)))) : front);
    }

    boolean isTandem() {
        return tandem != null;
    }

    /** Nothing is drawn of a tandem behind its front seat tube but where the rear shell and the rear axle lie. */
    static <T> Answer<T> notOfATandem(String what) {
        return Answer.none(TANDEM, what + " of a tandem is not computed.");
    }

    /** Its centre, from the front shell of a tandem, else from the shell. */
    Answer<Point> rearAxle() {
        return tandem == null
                ? geometry.then(frame -> Answer.of(frame.rearAxle()))
                : tandem.then(frame -> Answer.of(frame.rearAxle()));
    }

    /** Axle to axle along the ground. */
    Answer<Double> wheelbase_mm() {
        return tandem == null
                ? geometry.then(frame -> Answer.of(frame.wheelbase_mm()))
                : tandem.then(frame -> Answer.of(frame.wheelbase_mm()));
    }

    /** What keeps the arm from being cut keeps nothing else. */
    private static CutList cut(Answer<ArmTubes> arm, SawRules rules) {
        return arm instanceof Answer.Determined<ArmTubes> there
                ? there.value().cuts(rules)
                : new CutList(List.of(), ((Answer.NotDeterminable<ArmTubes>) arm).gaps());
    }

    /** Where a stay or a member of a swing arm runs. */
    Map<FrameTube, BentStay> paths() {
        if (arm instanceof Answer.Determined<ArmTubes> there) {
            return Map.of(
                    FrameTube.CHAINSTAY,
                    there.value().lowerPath(),
                    FrameTube.SEATSTAY,
                    there.value().upperPath());
        }
        StaySet stays =
                tubes instanceof Answer.Determined<TubeSet> set ? set.value().stays() : null;
        return stays == null
                ? Map.of()
                : Map.of(FrameTube.CHAINSTAY, stays.chainstayPath(), FrameTube.SEATSTAY, stays.seatstayPath());
    }

    /** The view from the drive side alone. */
    static Answer<SideView> side(Map<String, String> typed) {
        GivenInputs in = new GivenInputs(typed);
        if (in.has(GeometryInput.SHELL_TO_SHELL)) {
            return notOfATandem("The view from the drive side");
        }
        return TubeInputs.with(layout(in).then(FrameGeometry::of), places(in), TubeAxes::of)
                .then(axes -> side(in, axes));
    }

    private static Answer<Layout> layout(GivenInputs in) {
        return in.all(
                        GeometryInput.HEAD_ANGLE,
                        GeometryInput.SEAT_ANGLE,
                        GeometryInput.REACH,
                        GeometryInput.HEAD_TUBE,
                        GeometryInput.LOWER_STACK,
                        GeometryInput.FORK_LENGTH,
                        GeometryInput.FORK_OFFSET,
                        GeometryInput.SHELL_DROP,
                        GeometryInput.CHAINSTAY,
                        GeometryInput.SEAT_TUBE,
                        GeometryInput.FRONT_WHEEL_RADIUS,
                        GeometryInput.REAR_WHEEL_RADIUS)
                .then(there -> Answer.of(new Layout(
                        Math.toRadians(in.number(GeometryInput.HEAD_ANGLE)),
                        Math.toRadians(in.number(GeometryInput.SEAT_ANGLE)),
                        in.number(GeometryInput.REACH),
                        in.number(GeometryInput.HEAD_TUBE),
                        in.number(GeometryInput.LOWER_STACK),
                        in.number(GeometryInput.FORK_LENGTH),
                        in.number(GeometryInput.FORK_OFFSET),
                        in.number(GeometryInput.SHELL_DROP),
                        in.number(GeometryInput.CHAINSTAY),
                        in.number(GeometryInput.SEAT_TUBE),
                        in.number(GeometryInput.SEAT_TUBE_OFFSET, 0),
                        in.number(GeometryInput.FRONT_WHEEL_RADIUS),
                        in.number(GeometryInput.REAR_WHEEL_RADIUS))));
    }

    private static Answer<JointPlaces> places(GivenInputs in) {
        return in.all(GeometryInput.TOP_TUBE_AT_HEAD, GeometryInput.DOWN_TUBE_AT_HEAD, GeometryInput.TOP_TUBE_AT_SEAT)
                .then(there -> Answer.of(new JointPlaces(
                        in.number(GeometryInput.TOP_TUBE_AT_HEAD),
                        in.number(GeometryInput.DOWN_TUBE_AT_HEAD),
                        in.number(GeometryInput.TOP_TUBE_AT_SEAT))));
    }

    private static Answer<SideView> side(GivenInputs in, TubeAxes axes) {
        return in.all(
                        GeometryInput.HEAD_TUBE_OUTSIDE,
                        GeometryInput.DOWN_TUBE_OUTSIDE,
                        GeometryInput.TOP_TUBE_OUTSIDE,
                        GeometryInput.SEAT_TUBE_OUTSIDE,
                        GeometryInput.SHELL_OUTSIDE)
                .then(there -> in.has(GeometryInput.PIVOT_AHEAD) ? swinging(in, axes) : rigid(in, axes))
                .then(view -> Answer.of(
                        // ends that cannot be formed as they are typed are drawn round; the cut list says why
                        new TubeInputs(in).formed() instanceof Answer.Determined<Map<FormedPlace, FormedEnd>> ends
                                ? view.formed(ends.value())
                                : view));
    }

    private static Answer<SideView> rigid(GivenInputs in, TubeAxes axes) {
        return in.all(GeometryInput.SEATSTAY_AT_SEAT)
                .then(there -> Answer.of(SideView.rigid(
                        axes, axes.geometry().onSeatTube(in.number(GeometryInput.SEATSTAY_AT_SEAT)), outsides(in))));
    }

    private static Answer<SideView> swinging(GivenInputs in, TubeAxes axes) {
        return SwingInputs.suspension(in, axes.geometry())
                .then(rear -> Answer.of(
                        SideView.swinging(axes, rear.swing().pivot(), rear.armEye(), rear.frameEye(), outsides(in))));
    }

    private static SideView.Outsides outsides(GivenInputs in) {
        return new SideView.Outsides(
                in.number(GeometryInput.HEAD_TUBE_OUTSIDE),
                in.number(GeometryInput.DOWN_TUBE_OUTSIDE),
                in.number(GeometryInput.TOP_TUBE_OUTSIDE),
                in.number(GeometryInput.SEAT_TUBE_OUTSIDE),
                in.has(GeometryInput.PIVOT_AHEAD) && in.has(GeometryInput.ARM_SIDE)
                        ? in.number(GeometryInput.ARM_SIDE)
                        : in.number(GeometryInput.CHAINSTAY_OUTSIDE, DRAWN_CHAINSTAY_MM),
                in.number(GeometryInput.SEATSTAY_OUTSIDE, DRAWN_SEATSTAY_MM),
                in.number(GeometryInput.SHELL_OUTSIDE),
                in.number(GeometryInput.SHELL_BORE, 0));
    }
}
