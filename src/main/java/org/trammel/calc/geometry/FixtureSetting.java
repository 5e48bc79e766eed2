package org.trammel.calc.geometry;

import org.trammel.calc.units.Answer;

/**
 * How a tube is held against a hole saw, whose axis then is the mate's.
 *
 * <pre>
 * swing = θ − 90°      a saw across the tube stands at 0
 * saw = the smallest at hand with mate ≤ saw ≤ mate + oversize
 * </pre>
 *
 * A saw smaller than the mate leaves the cut standing off at its sides; common practice.
 *
 * @param includedAngle_rad between the tube's axis and the saw's, the interior angle
 * @param offset_mm of the saw's axis beside the tube's, to the side where φ = 90° if below 0
 * @param holeSaw_mm the saw's diameter, or why none is at hand
 */
public record FixtureSetting(double includedAngle_rad, double offset_mm, Answer<Double> holeSaw_mm) {

    private static final double SAME_MM = 1e-6;

    static FixtureSetting of(Joint joint, SawRules rules) {
        return new FixtureSetting(joint.includedAngle_rad(), -joint.offset_mm(), saw(joint.mateOutside_mm(), rules));
    }

    private static Answer<Double> saw(double mate_mm, SawRules rules) {
        return rules.holeSaws_mm().stream()
                .filter(saw -> saw >= mate_mm - SAME_MM && saw <= mate_mm + rules.oversize_mm() + SAME_MM)
                .min(Double::compare)
                .map(Answer::of)
                .orElseGet(() -> Answer.none(
                        "holeSaws",
                        "No hole saw from " + Objections.shown(mate_mm) + " to "
                                + Objections.shown(mate_mm + rules.oversize_mm()) + " is at hand."));
    }

    /** From a cut straight across the tube; above 0 where the included angle is above 90°. */
    public double swing_rad() {
        return includedAngle_rad - Math.PI / 2;
    }
}
