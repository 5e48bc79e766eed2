package org.trammel.calc.metrology;

/**
 * What is measured of a frame's straightness and of its side view. Lengths in millimetres, angles in radians inside and
 * in degrees where they are judged.
 *
 * <pre>
 * n        unit normal of the datum plane, to the drive side; the plane lies midway between the shell's faces
 * lean     asin(a · n), a the tube's axis from its lower to its upper end
 * twist    lean of the head tube − lean of the seat tube
 * offset   distance of a point from the datum plane
 * yaw      atan((L_drive − L_non-drive) / w), L from the shell's axis to the axle's ends, w between these
 * over 60  gap at the fore (upper) edge − gap at the aft (lower) one, on 60 mm
 * </pre>
 *
 * Positive is to the drive side; a stay longer, a yaw with the stay longer on the drive side; gaps that open forwards or
 * upwards. Head and seat angle rise rearwards from the horizontal, which is laid so that the line from the shell to the
 * measured rear axle has the direction the drawing gives it.
 *
 * <p>Source: definitions of the trade, common practice; lean and twist are never the same thing, since a frame that lies
 * askew leans with both tubes and twists with neither.
 */
public enum Deviation {
    HEAD_TUBE_LEAN("head-tube lean", true, true, "headTube", "two stations or more of the head tube"),
    SEAT_TUBE_LEAN("seat-tube lean", true, true, "seatTube", "two stations or more of the seat tube"),
    TWIST("twist", true, true, "headTube", "two stations or more each of head tube and seat tube"),
    HEAD_TUBE_OFFSET("head-tube offset", false, true, "headTube", "two stations or more of the head tube"),
    REAR_AXLE_OFFSET("rear-axle offset", false, true, "axle", "readings of both inner dropout faces at the axle"),
    AXLE_WIDTH("axle width", false, false, "axle", "readings of both inner dropout faces at the axle"),
    DROPOUTS_FORE_AFT(
            "dropout parallelism fore and aft", false, false, "dropouts", "gaps fore and aft, or points of both faces"),
    DROPOUTS_UP_DOWN(
            "dropout parallelism up and down", false, false, "dropouts", "gaps up and down, or points of both faces"),
    CHAINSTAY_DIFFERENCE(
            "chainstay difference", false, true, "stays", "the distance of both axle ends from the shell's axis"),
    REAR_YAW("yaw of the rear axle", true, true, "stays", "both stay lengths and the axle width"),
    HEAD_ANGLE("head angle", true, false, "side", Needs.SIDE),
    SEAT_ANGLE("seat angle", true, false, "side", Needs.SIDE + " and the seat tube"),
    STACK("stack", false, false, "side", Needs.SIDE),
    REACH("reach", false, false, "side", Needs.SIDE);

    /** A constant of its own class, which an enum's constants may name before its fields exist. */
    private static final class Needs {
        private static final String SIDE =
                "positions, in the side view, of the shell's axis, the rear axle and the head tube";
    }

    private final String words;
    private final boolean angle;
    private final boolean mirrored;
    private final String input;
    private final String needs;

    Deviation(String words, boolean angle, boolean mirrored, String input, String needs) {
        this.words = words;
        this.angle = angle;
        this.mirrored = mirrored;
        this.input = input;
        this.needs = needs;
    }

    /** As a sentence has it. */
    public String words() {
        return words;
    }

    /** Whether it is an angle: radians inside, degrees where it is judged. */
    public boolean angle() {
        return angle;
    }

    /** Whether its sign changes when drive and non-drive side are exchanged. */
    public boolean mirrored() {
        return mirrored;
    }

    /** Whether pushing changes it; the side view is left as it was welded. */
    public boolean settable() {
        return !input.equals("side");
    }

    /** Unit it is stated and judged in. */
    public String unit() {
        return angle ? "°" : "mm";
    }

    /** Name of the input it hangs on. */
    String input() {
        return input;
    }

    /** Why there is none where that was not read. */
    String missing() {
        return "The " + words + " needs " + needs + ", which were not read.";
    }
}
