package org.trammel.calc.geometry;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.units.Answer;

/**
 * The rear end seen from above: shell, chainstays, dropouts, and the tyre where its width is known.
 *
 * <p>Validity: stays straight or bent across the side view, in which their line runs to the axle.
 *
 * @param geometry the frame
 * @param chainstay axis of the drive side's chainstay; the other one is its mirror image
 * @param sizes what is drawn about the axes
 */
public record RearPlan(FrameGeometry geometry, BentStay chainstay, Sizes sizes) implements RearView {

    private static final int CORNERS_A_BEND = 24;

    /**
     * Sizes of what is seen.
     *
     * @param shellOutside_mm diameter
     * @param shellBore_mm diameter; 0 where it is not known
     * @param shellWidth_mm along its axis
     * @param axleWidth_mm between the faces that hold the hub
     * @param chainstayOutside_mm diameter
     * @param chainstayWidest_mm as wide as it is anywhere across the side view; more than its diameter where it is pressed flat
     * @param plate the dropouts
     * @param tyreWidth_mm of the rear tyre; null where it is not known
     */
    public record Sizes(
            double shellOutside_mm,
            double shellBore_mm,
            double shellWidth_mm,
            double axleWidth_mm,
            double chainstayOutside_mm,
            double chainstayWidest_mm,
            DropoutPlate plate,
            @Nullable Double tyreWidth_mm) {

        /** With stays that are round from end to end. */
        public Sizes(
                double shellOutside_mm,
                double shellBore_mm,
                double shellWidth_mm,
                double axleWidth_mm,
                double chainstayOutside_mm,
                DropoutPlate plate,
                @Nullable Double tyreWidth_mm) {
            this(
                    shellOutside_mm,
                    shellBore_mm,
                    shellWidth_mm,
                    axleWidth_mm,
                    chainstayOutside_mm,
                    chainstayOutside_mm,
                    plate,
                    tyreWidth_mm);
        }
    }

    /** Looks whether it can be drawn. */
    public static Answer<RearPlan> of(FrameGeometry geometry, BentStay chainstay, Sizes sizes) {
        return TyreRoom.fits(
                        new Objections()
                                .length("shellWidth", "shell's width", sizes.shellWidth_mm())
                                .length("chainstay.outside", "chainstay's outside", sizes.chainstayOutside_mm()),
                        geometry,
                        sizes.tyreWidth_mm())
                .orElse(() -> Answer.of(new RearPlan(geometry, chainstay, sizes)));
    }

    @Override
    public Optional<TyreRoom> tyreRoom() {
        return TyreRoom.along(geometry, axis(), sizes.chainstayWidest_mm(), sizes.tyreWidth_mm());
    }

    /** The chainstay's axis from the shell to its rear end. */
    public List<SpacePoint> axis() {
        return chainstay.axis(CORNERS_A_BEND);
    }
}
