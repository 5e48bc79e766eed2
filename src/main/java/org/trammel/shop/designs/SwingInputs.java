package org.trammel.shop.designs;

import org.trammel.calc.geometry.FrameGeometry;
import org.trammel.calc.geometry.Point;
import org.trammel.calc.geometry.Shock;
import org.trammel.calc.geometry.Suspension;
import org.trammel.calc.geometry.Swing;
import org.trammel.calc.units.Answer;

/** The rear end that swings, from the inputs of a revision. */
final class SwingInputs {

    private SwingInputs() {}

    /** Without an answer where an input is missing, or where the axle cannot swing so or drive its shock so. */
    static Answer<Suspension> suspension(GivenInputs in, FrameGeometry geometry) {
        return in.all(
                        GeometryInput.PIVOT_AHEAD,
                        GeometryInput.PIVOT_ABOVE,
                        GeometryInput.SHOCK_ARM,
                        GeometryInput.SHOCK_ARM_ANGLE,
                        GeometryInput.TRAVEL,
                        GeometryInput.SHOCK_LENGTH,
                        GeometryInput.SHOCK_STROKE)
                .then(there -> Swing.of(
                        place(in, GeometryInput.PIVOT_AHEAD, GeometryInput.PIVOT_ABOVE),
                        geometry.rearAxle(),
                        in.number(GeometryInput.TRAVEL)))
                .then(swing -> driven(in, swing));
    }

    private static Answer<Suspension> driven(GivenInputs in, Swing swing) {
        double arm = in.number(GeometryInput.SHOCK_ARM);
        double angle = Math.toRadians(in.number(GeometryInput.SHOCK_ARM_ANGLE));
        Shock shock = new Shock(in.number(GeometryInput.SHOCK_LENGTH), in.number(GeometryInput.SHOCK_STROKE));
        if (!in.has(GeometryInput.FRAME_EYE_AHEAD) && !in.has(GeometryInput.FRAME_EYE_ABOVE)) {
            return Suspension.of(swing, arm, angle, shock, Suspension.FrameEye.HIGHER);
        }
        return in.all(GeometryInput.FRAME_EYE_AHEAD, GeometryInput.FRAME_EYE_ABOVE)
                .then(there -> Suspension.between(
                        swing,
                        new Point(
                                swing.pivot().x_mm() + arm * Math.cos(angle),
                                swing.pivot().y_mm() + arm * Math.sin(angle)),
                        place(in, GeometryInput.FRAME_EYE_AHEAD, GeometryInput.FRAME_EYE_ABOVE),
                        shock));
    }

    private static Point place(GivenInputs in, GeometryInput ahead, GeometryInput above) {
        return new Point(in.number(ahead), in.number(above));
    }
}
