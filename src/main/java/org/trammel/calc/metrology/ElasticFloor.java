package org.trammel.calc.metrology;

import java.util.ArrayList;
import java.util.List;
import org.trammel.calc.units.Answer;

/**
 * How far the end of a tube can be pushed before anything stays, and how far it comes back.
 *
 * <pre>
 * I = π (D⁴ − d⁴) / 64,   Z = 2 I / D,   Z_p = (D³ − d³) / 6,   k = Z_p / Z
 * floor   δ = σ_y Z L² / (3 E I)      force  F = σ_y Z / L
 * spring-back after any set: between δ and k δ;  push for a set s: between s + δ and s + k δ
 * </pre>
 *
 * D, d outside and inside diameter, L free length from the clamped node to the end, E Young's modulus, σ_y yield strength
 * in the present temper. The end comes back by what the last force bends elastically, F L³ / (3 E I); it lies between the
 * force at which the outermost fibre yields and the one at which the whole section does, k times that.
 *
 * <p>Valid for a straight round tube clamped at one node, deflections below a tenth of its length, a material that yields
 * without hardening much, and no dent; hardening and a second stay come on top. The floor tells why a set after ageing is
 * forbidden: the same set needs a push several times as far, through a node that has little left to give. It is physics,
 * not permission; the shop's own limits on set, attempts and temper decide.
 *
 * <p>Source: cantilever with an end load and plastic bending of beams, as in S. P. Timoshenko, Strength of Materials,
 * part I (deflection) and part II (plastic bending); from memory.
 *
 * @param momentOfArea_mm4 I
 * @param sectionModulus_mm3 Z
 * @param floor_mm δ
 * @param force_N F
 * @param shapeFactor k
 */
public record ElasticFloor(
        double momentOfArea_mm4, double sectionModulus_mm3, double floor_mm, double force_N, double shapeFactor) {

    /** Where a deflection is no longer small. */
    private static final double SMALL = 0.1;

    /**
     * What a push needs.
     *
     * @param least_mm no less will leave the set
     * @param most_mm no more is needed where the material does not harden
     * @param first_mm to begin with: so much of the least that it is approached from below
     */
    public record Push(double least_mm, double most_mm, double first_mm) {}

    /**
     * Computes it.
     *
     * @param outside_mm D
     * @param wall_mm below half of D
     * @param length_mm L
     * @param youngsModulus_MPa E; aluminium 70 000, steel 205 000, titanium alloys about 105 000
     * @param yield_MPa σ_y in the present temper
     */
    public static Answer<ElasticFloor> of(
            double outside_mm, double wall_mm, double length_mm, double youngsModulus_MPa, double yield_MPa) {
        List<Answer.Gap> gaps = new ArrayList<>();
        above0(gaps, "outside", "outside diameter", outside_mm, " mm");
        above0(gaps, "wall", "wall", wall_mm, " mm");
        above0(gaps, "length", "free length", length_mm, " mm");
        above0(gaps, "youngsModulus", "Young's modulus", youngsModulus_MPa, " MPa");
        above0(gaps, "yield", "yield strength", yield_MPa, " MPa");
        if (gaps.isEmpty() && 2 * wall_mm >= outside_mm) {
            gaps.add(new Answer.Gap(
                    "wall",
                    "The wall, " + Figure.written(wall_mm) + " mm, is not below half the outside, "
                            + Figure.written(outside_mm / 2) + " mm."));
        }
        if (!gaps.isEmpty()) {
            return new Answer.NotDeterminable<>(gaps);
        }
        double inside = outside_mm - 2 * wall_mm;
        double i = Math.PI / 64 * (Math.pow(outside_mm, 4) - Math.pow(inside, 4));
        double z = 2 * i / outside_mm;
        double floor = yield_MPa * z * length_mm * length_mm / (3 * youngsModulus_MPa * i);
        if (!(floor <= SMALL * length_mm)) {
            return Answer.none(
                    "length",
                    "The end would move " + Figure.written(floor)
                            + " mm before it yields, more than a tenth of the free" + " length, "
                            + Figure.written(length_mm) + " mm: the formula is for small deflections.");
        }
        double plastic = (Math.pow(outside_mm, 3) - Math.pow(inside, 3)) / 6;
        return Answer.of(new ElasticFloor(i, z, floor, yield_MPa * z / length_mm, plastic / z));
    }

    private static void above0(List<Answer.Gap> gaps, String input, String what, double figure, String unit) {
        if (!(Double.isFinite(figure) && figure > 0)) {
            gaps.add(new Answer.Gap(
                    input,
                    "The " + what + ", " + Figure.written(figure) + (Double.isFinite(figure) ? unit : "")
                            + ", is not above 0."));
        }
    }

    /**
     * What a set needs, from bending alone; the shop's own history of the tube set tells better.
     *
     * @param set_mm wanted at the end, above 0
     * @param share of the least push to begin with, such as 0.85
     */
    public Answer<Push> pushFor(double set_mm, double share) {
        if (!(Double.isFinite(set_mm) && set_mm > 0)) {
            return Answer.none("set", "The set, " + Figure.written(set_mm) + " mm, is not above 0: nothing to push.");
        }
        if (!(share > 0 && share <= 1)) {
            return Answer.none(
                    "share", "The share to begin with, " + Figure.written(share) + ", is not between 0 and 1.");
        }
        double least = set_mm + floor_mm;
        return Answer.of(new Push(least, set_mm + shapeFactor * floor_mm, share * least));
    }
}
