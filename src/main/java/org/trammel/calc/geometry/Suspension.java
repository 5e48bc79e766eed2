package org.trammel.calc.geometry;

import java.util.List;
import java.util.stream.IntStream;
import org.trammel.calc.units.Answer;

/**
 * A rear end on one pivot that drives its shock directly.
 *
 * <pre>
 * e = arm eye − pivot, carried by the swing       ℓ(s) = |frame eye − arm eye(s)|
 * lever h = −dℓ/dφ = (frame eye − arm eye) · (e_y, −e_x) / ℓ
 * ratio = −ds/dℓ = (x pivot − x axle) / h         mean ratio = travel / (ℓ(0) − ℓ(travel))
 * change = (ratio at start − ratio at end) / ratio at start
 * </pre>
 *
 * s travel as in {@link Swing}, mm; φ rotation, rad; ℓ shock length, mm; h how far the shock's line passes the pivot, mm;
 * ratio without unit. A change below 0 is a ratio that rises towards the end: the wheel finds the shock softer there.
 *
 * <p>Validity: middle plane, rigid parts, no play; a shock that shortens over the whole travel. Accuracy: double
 * precision. Source: plane kinematics of a crank that drives a slider; the names of the figures are common practice.
 *
 * @param swing of the axle
 * @param shock its two figures
 * @param armEye the shock's eye on the swing arm, with nothing on the frame
 * @param frameEye the shock's eye on the frame
 */
public record Suspension(Swing swing, Shock shock, Point armEye, Point frameEye) {

    /** How far eye places may be from the shock's figures: what a drawing rounds off. */
    private static final double ROUNDED_mm = 0.1;

    /** Which of the two places that suit a shock its frame eye takes. */
    public enum FrameEye {
        HIGHER,
        LOWER
    }

    /** The suspension at a travel. */
    public record At(
            double travel_mm, double rotation_rad, Point axle, Point armEye, double shockLength_mm, double ratio) {}

    /**
     * Finds the frame eye so that the shock is extended at no travel and bottomed at all of it.
     *
     * @param arm_mm pivot to the shock's eye on the swing arm
     * @param armAngle_rad of that arm from straight ahead, rising
     * @param frameEye of the two places, which
     */
    public static Answer<Suspension> of(
            Swing swing, double arm_mm, double armAngle_rad, Shock shock, FrameEye frameEye) {
        Asked asked = new Asked();
        asked.above0("shockArm", "arm from pivot to shock", arm_mm, " mm");
        asked.number("shockArmAngle", "angle of the arm from pivot to shock", armAngle_rad);
        shock.asked(asked);
        if (!asked.met()) {
            return asked.refusal();
        }
        Point start = swing.pivot().plus(Point.at(armAngle_rad).times(arm_mm));
        Point end = swing.carried(start, swing.travel_mm());
        double way = start.distance_mm(end);
        if (!(way >= shock.stroke_mm())) {
            return Answer.none(
                    "shockStroke",
                    "The stroke of " + Asked.written(shock.stroke_mm(), " mm")
                            + " is longer than the way of the shock's eye over the travel, "
                            + Asked.written(way, " mm") + ": no place of the other eye uses all of it.");
        }
        if (!(way <= shock.length_mm() + shock.bottomed_mm())) {
            return Answer.none(
                    "shockLength",
                    "The shock of " + Asked.written(shock.length_mm(), " mm")
                            + " is too short for the way of its eye over the travel, "
                            + Asked.written(way, " mm") + ".");
        }
        Point along = end.minus(start).times(1 / way);
        double far = (way * way + (shock.length_mm() - shock.bottomed_mm()) * (shock.length_mm() + shock.bottomed_mm()))
                / (2 * way);
        double aside = Math.sqrt(Math.max(0, (shock.length_mm() - far) * (shock.length_mm() + far)));
        Point left = new Point(-along.y_mm(), along.x_mm()).times(aside);
        Point foot = start.plus(along.times(far));
        boolean leftIsHigher = left.y_mm() > 0 || left.y_mm() == 0 && left.x_mm() > 0;
        Point place = leftIsHigher == (frameEye == FrameEye.HIGHER) ? foot.plus(left) : foot.minus(left);
        return driven(new Suspension(swing, shock, start, place));
    }

    /** Takes both eyes where they are drawn, and looks whether the shock fits between them. */
    public static Answer<Suspension> between(Swing swing, Point armEye, Point frameEye, Shock shock) {
        Asked asked = new Asked();
        Swing.place(asked, "armEye", "shock's eye on the swing arm", armEye);
        Swing.place(asked, "frameEye", "shock's eye on the frame", frameEye);
        shock.asked(asked);
        if (!asked.met()) {
            return asked.refusal();
        }
        Suspension suspension = new Suspension(swing, shock, armEye, frameEye);
        double extended = armEye.distance_mm(frameEye);
        double over = shock.length_mm() - extended;
        if (!(Math.abs(over) <= ROUNDED_mm)) {
            return Answer.none(
                    "shockLength",
                    "The shock of " + Asked.written(shock.length_mm(), " mm") + " is "
                            + Asked.written(Math.abs(over), " mm") + (over > 0 ? " longer" : " shorter")
                            + " than the way between its eyes, " + Asked.written(extended, " mm") + ".");
        }
        double end = suspension.length_mm(swing.travel_mm());
        if (!(end >= shock.bottomed_mm() - ROUNDED_mm)) {
            return Answer.none(
                    "travel",
                    "The travel of " + Asked.written(swing.travel_mm(), " mm") + " would press the shock to "
                            + Asked.written(end, " mm") + ", and it bottoms at "
                            + Asked.written(shock.bottomed_mm(), " mm") + ".");
        }
        return driven(suspension);
    }

    /**
     * The lever keeps its sign between two travels at which it has the same one, as no arm here turns by half a turn; so
     * start and end tell.
     */
    private static Answer<Suspension> driven(Suspension suspension) {
        if (!(suspension.armEye.distance_mm(suspension.swing.pivot()) > 0)) {
            return Answer.none(
                    "armEye", "The shock's eye on the swing arm lies on the pivot: nothing drives the shock.");
        }
        for (double travel : new double[] {0, suspension.swing.travel_mm()}) {
            double lever = suspension.lever_mm(travel);
            if (!(lever > 1e-6)) {
                return Answer.none(
                        "frameEye",
                        "At a travel of " + Asked.written(travel, " mm") + " the shock does not get shorter: its line "
                                + (lever < -1e-6
                                        ? "passes the pivot by " + Asked.written(-lever, " mm")
                                                + " on the side that pulls it."
                                        : "runs through the pivot."));
            }
        }
        return Answer.of(suspension);
    }

    private double length_mm(double travel_mm) {
        return swing.carried(armEye, travel_mm).distance_mm(frameEye);
    }

    /** h: how far the shock's line passes the pivot; above 0 on the side on which a rising axle shortens the shock. */
    private double lever_mm(double travel_mm) {
        Point eye = swing.carried(armEye, travel_mm);
        Point toFrame = frameEye.minus(eye);
        return toFrame.cross(eye.minus(swing.pivot())) / toFrame.length_mm();
    }

    /** Everything at a travel; one outside the swing is taken as the nearest end. */
    public At at(double travel_mm) {
        double travel = Math.max(0, Math.min(swing.travel_mm(), travel_mm));
        return new At(
                travel,
                swing.rotation_rad(travel),
                swing.axleAt(travel),
                swing.carried(armEye, travel),
                length_mm(travel),
                swing.behind_mm(travel) / lever_mm(travel));
    }

    /** The curve of ratio, axle path and shock length, at even steps of travel from none to all, at least one step. */
    public List<At> curve(int steps) {
        int least = Math.max(1, steps);
        return IntStream.rangeClosed(0, least)
                .mapToObj(i -> at(i == least ? swing.travel_mm() : swing.travel_mm() * i / least))
                .toList();
    }

    /** Ratio at a share of the travel: 0 at its start, 0.3 at usual sag, 1 at its end. */
    public double ratioAt(double share) {
        return at(share * swing.travel_mm()).ratio();
    }

    /** Travel by what the shock gets shorter over it. */
    public double meanRatio() {
        return swing.travel_mm() / (length_mm(0) - length_mm(swing.travel_mm()));
    }

    /** Of the ratio from start to end, as a share of the start; below 0 where it rises. */
    public double change() {
        return (ratioAt(0) - ratioAt(1)) / ratioAt(0);
    }

    /** Eye to eye with nothing on the frame: measured when the rear end is joined. */
    public double extended_mm() {
        return length_mm(0);
    }

    /** Eye to eye at the end of the travel: measured when the rear end is joined, without spring or air. */
    public double bottomed_mm() {
        return length_mm(swing.travel_mm());
    }

    /** Travel at which the shock has a length; the nearest end where it never has. By halving, to 1e-9 mm. */
    public double travelAt_mm(double shockLength_mm) {
        double low = 0;
        double high = swing.travel_mm();
        while (high - low > 1e-9) {
            double middle = (low + high) / 2;
            if (middle == low || middle == high) {
                break;
            }
            if (length_mm(middle) > shockLength_mm) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }
}
