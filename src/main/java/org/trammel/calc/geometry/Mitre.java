package org.trammel.calc.geometry;

import java.util.ArrayList;
import java.util.List;
import org.trammel.calc.units.Answer;

/**
 * One end of a tube as it is cut: the curve, how to hold it for a hole saw, and what to look at first.
 *
 * @param curve of the tube's outside
 * @param fixture for the saw
 * @param cautions in the order of how much they spoil
 */
public record Mitre(MitreCurve curve, FixtureSetting fixture, List<Caution> cautions) {

    public Mitre {
        cautions = List.copyOf(cautions);
    }

    /** Cuts a joint by the shop's rules; without an answer where there is no curve. */
    public static Answer<Mitre> of(Joint joint, SawRules rules) {
        return rules.check()
                .orElse(() -> MitreCurve.of(joint, MitreCurve.USUAL_STATIONS))
                .then(curve -> {
                    FixtureSetting fixture = FixtureSetting.of(joint, rules);
                    return Answer.of(new Mitre(curve, fixture, cautions(joint, fixture, rules)));
                });
    }

    private static List<Caution> cautions(Joint joint, FixtureSetting fixture, SawRules rules) {
        List<Caution> cautions = new ArrayList<>();
        if (joint.hasFeatherEdge()) {
            cautions.add(new Caution(
                    Caution.Kind.FEATHER_EDGE,
                    "A side of the tube of " + Objections.shown(joint.tube().acrossPlane_mm())
                            + " ends where its mate of " + Objections.shown(joint.mateOutside_mm())
                            + " ends: the cut runs out to a feather edge. Form the tube or decide."));
        }
        double angle = joint.includedAngle_rad();
        double acute = Math.min(angle, Math.PI - angle);
        if (acute < rules.shallowest_rad()) {
            cautions.add(new Caution(
                    Caution.Kind.SHALLOW_ANGLE,
                    "The tube leans to its mate at " + Written.degrees(acute) + ", below "
                            + Written.degrees(rules.shallowest_rad())
                            + ": cut by the template or on a mill, not with a hole saw."));
        }
        if (joint.tube().wall_mm() > rules.thinWall_mm()) {
            cautions.add(new Caution(
                    Caution.Kind.BORE_TEMPLATE,
                    "The wall of " + Objections.shown(joint.tube().wall_mm()) + " is above "
                            + Objections.shown(rules.thinWall_mm()) + ": mark the bore by its own template too."));
        }
        if (fixture.holeSaw_mm() instanceof Answer.NotDeterminable<Double> none) {
            cautions.add(new Caution(
                    Caution.Kind.NO_HOLE_SAW, none.gaps().get(0).words() + " A smaller one would leave a gap."));
        }
        return cautions;
    }

    /** The curve of the bore, on the outside of the mate. */
    public MitreCurve bore() {
        return MitreCurve.boreOf(curve);
    }
}
