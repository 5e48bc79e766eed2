package org.trammel.calc.geometry;

import java.util.stream.Stream;
import org.trammel.calc.units.Answer;

/**
 * The tubes of a swing arm with nothing on the frame: its lower members from the pivot's bosses to the dropouts, its upper
 * members from the tube across at the shock's moving eye to the dropouts.
 *
 * <pre>
 * lower, at the pivot   on the pivot's axis, as far from the middle plane as the arm's sides are seen from above
 * upper                 as {@link ArmUpper} places it
 * both, at the rear     g before the axle on their line of the side view, axle width / 2 + o from the middle plane
 * </pre>
 *
 * g and o as the arm's sides end. Both mates lie across the frame, so
 * that each member is cut on its mate as a chainstay on the shell. Lengths are counted from the mates' axes. Validity: round
 * members that lie over their lines of the side view, the upper ones straight. Source: space trigonometry. Accuracy that of
 * double precision.
 *
 * @param lowerPath axis of the drive side's lower member, from the pivot's axis
 * @param upperPath axis of the drive side's upper member, from the cross tube's axis
 * @param lower stock; its first end is at the pivot
 * @param upper stock; its first end is at the shock
 * @param mates what they are cut on
 */
public record ArmTubes(BentStay lowerPath, BentStay upperPath, TubeStock lower, TubeStock upper, Mates mates) {

    /**
     * What the members are cut on and slotted for.
     *
     * @param bossOutside_mm diameter of the pivot's bosses
     * @param crossOutside_mm diameter of the tube across at the shock's moving eye
     * @param upperInside_mm between the upper members there
     * @param plate the dropouts
     */
    public record Mates(double bossOutside_mm, double crossOutside_mm, double upperInside_mm, DropoutPlate plate) {}

    /**
     * Places the upper members beside the sides of the plan; without an answer where they have no length or a size cannot be.
     *
     * @param plan the arm from above, whose sides are the lower members
     * @param eye the shock's moving eye in the side view, nothing on the frame
     * @param ends where the members end before the axle
     */
    public static Answer<ArmTubes> of(
            ArmPlan plan, Point eye, TubeStock lower, TubeStock upper, Mates mates, ArmPlan.Ends ends) {
        ArmUpper.Sizes sizes = new ArmUpper.Sizes(mates.upperInside_mm(), upper.outside_mm(), mates.crossOutside_mm());
        Objections objections = new Objections()
                .length("arm.boss", "outside of the swing arm's bosses", mates.bossOutside_mm())
                .unless(
                        Math.abs(lower.outside_mm() - plan.sizes().width_mm()) < 0.05,
                        "chainstay.outside",
                        () -> "The swing arm's sides are "
                                + Objections.shown(plan.sizes().width_mm())
                                + " wide and its chainstays " + Objections.shown(lower.outside_mm())
                                + ": only round sides can be cut.");
        ArmUpper.check(objections, plan, eye, sizes, ends);
        lower.check(objections, FrameTube.CHAINSTAY);
        upper.check(objections, FrameTube.SEATSTAY);
        mates.plate().check(objections);
        return objections
                .orElse(() -> ArmUpper.of(plan, eye, sizes, ends))
                .then(placed -> Answer.of(new ArmTubes(plan.side(), placed.path(), lower, upper, mates)));
    }

    /** Lower and upper member as they are cut. */
    public CutList cuts(SawRules rules) {
        return CutList.gathered(Stream.of(
                cut(FrameTube.CHAINSTAY, lowerPath, lower, "pivot boss", mates.bossOutside_mm(), rules),
                cut(FrameTube.SEATSTAY, upperPath, upper, "cross tube", mates.crossOutside_mm(), rules)));
    }

    private Answer<CutPiece> cut(
            FrameTube tube, BentStay path, TubeStock stock, String mate, double mate_mm, SawRules rules) {
        SpacePoint across = SpacePoint.DRIVE_SIDE;
        return new PieceCut(tube, stock, path.developed_mm(), rules)
                .mitreOne(
                        mate,
                        mate_mm,
                        EndFrame.of(path.atFront(), across),
                        across,
                        Section.round(stock.outside_mm(), stock.profile().wallAtOne_mm()))
                .endTwo(new EndCut.Slotted(DropoutSlot.in(stock.outside_mm(), path.atRear(), mates.plate())))
                .piece();
    }
}
