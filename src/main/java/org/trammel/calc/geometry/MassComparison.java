package org.trammel.calc.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.trammel.calc.units.Answer;

/**
 * A weighed frame beside what it should weigh, and what single cause comes nearest to the difference.
 *
 * <pre>
 * Δ = weighed − expected      u = √(u(expected)² + u(scale)²)      flagged where |Δ| &gt; limit · u
 * cause: c = the change of mass it makes;  left over = Δ − c;  the smaller |Δ − c|, the nearer the cause
 * </pre>
 *
 * Causes looked at: each tube, or any number of tubes alike, drawn to another wall on hand (outside and length kept);
 * one of the pieces missing or doubled; the weld's usual amount times each share given. Shares, not any amount, since weld
 * of any amount would account for every difference and stand before all else. Only causes that bring the difference down
 * are kept. A tube that is missing is seen without a scale and not looked for. A near cause is
 * a place to look, not a finding: two small causes can add up to the same.
 *
 * <p>Source: sum of independent uncertainties JCGM 100:2008, 5.1.2; the ranking is common practice of weighing a part
 * against its drawing.
 *
 * @param expected what it is compared with
 * @param weighed_kg the uncoated frame on the scale
 * @param difference_kg Δ
 * @param u_kg standard uncertainty of the difference
 * @param limit how many u a difference may have, from where it is flagged beyond
 * @param causes nearest first
 */
public record MassComparison(
        ExpectedMass expected,
        double weighed_kg,
        double difference_kg,
        double u_kg,
        double limit,
        List<RankedCause> causes) {

    public MassComparison {
        causes = List.copyOf(causes);
    }

    /**
     * A cause and how near it comes.
     *
     * @param change_kg what it adds to the frame; below 0 where it takes away
     * @param leftOver_kg what of the difference it does not account for
     * @param explains whether that is within the limit
     */
    public record RankedCause(MassCause cause, double change_kg, double leftOver_kg, boolean explains) {}

    /**
     * The scale, and where to look.
     *
     * @param scaleU_kg standard uncertainty of the weighing
     * @param limit in standard uncertainties, above 0; 3 is common practice for a flag
     * @param walls_mm walls of tube on hand
     * @param weldShares of the expected weld, such as 0.5, 1.5 and 2
     */
    public record Search(double scaleU_kg, double limit, List<Double> walls_mm, List<Double> weldShares) {

        public Search {
            walls_mm = List.copyOf(walls_mm);
            weldShares = List.copyOf(weldShares);
        }
    }

    /** Compares; without an answer where the weighed mass is none or nothing is uncertain. */
    public static Answer<MassComparison> of(ExpectedMass expected, double weighed_kg, Search search) {
        Asked asked = new Asked();
        asked.above0("weighed", "weighed mass", weighed_kg, " kg");
        asked.notBelow0("scaleU", "uncertainty of the scale", search.scaleU_kg(), " kg");
        asked.above0("limit", "limit of the difference", search.limit(), " u");
        search.walls_mm().forEach(wall -> asked.above0("walls", "wall on hand", wall, " mm"));
        search.weldShares().forEach(share -> asked.notBelow0("weldShares", "share of the weld", share, ""));
        if (!asked.met()) {
            return asked.refusal();
        }
        double u = Math.hypot(expected.u_kg(), search.scaleU_kg());
        if (!(u > 0)) {
            return Answer.none(
                    "u", "The expected mass and the scale have no uncertainty: a difference has no measure.");
        }
        double difference = weighed_kg - expected.mass_kg();
        List<RankedCause> causes = new ArrayList<>();
        for (ExpectedMass.Line line : expected.lines()) {
            look(causes, line.part(), difference, search, search.limit() * u);
        }
        causes.sort(Comparator.comparingDouble(cause -> Math.abs(cause.leftOver_kg())));
        return Answer.of(new MassComparison(expected, weighed_kg, difference, u, search.limit(), causes));
    }

    /** The difference measured in its own standard uncertainty, with its sign. */
    public double differenceInU() {
        return difference_kg / u_kg;
    }

    /** Whether the frame is to be looked at before it goes on. */
    public boolean flagged() {
        return Math.abs(difference_kg) > limit * u_kg;
    }

    private static void look(
            List<RankedCause> causes, FramePart part, double difference, Search search, double within_kg) {
        if (part instanceof FramePart.Tube tube) {
            Set<Double> walls = new TreeSet<>(search.walls_mm());
            walls.removeIf(wall -> wall >= tube.outside_mm() / 2);
            for (double wall : walls) {
                double each = (ExpectedMass.mass_kg(tube.withWall(wall)) - ExpectedMass.mass_kg(tube)) / tube.count();
                for (int count = 1; count <= tube.count(); count++) {
                    keep(causes, new MassCause.OtherWall(tube, wall, count), count * each, difference, within_kg);
                }
            }
        } else if (part instanceof FramePart.Pieces pieces) {
            double each = pieces.mass_kg() / pieces.count();
            keep(causes, new MassCause.Missing(pieces), -each, difference, within_kg);
            keep(causes, new MassCause.Doubled(pieces), each, difference, within_kg);
        } else if (part instanceof FramePart.Weld weld) {
            for (double share : new TreeSet<>(search.weldShares())) {
                double there = share * weld.mass_kg();
                keep(causes, new MassCause.OtherWeld(weld, there), there - weld.mass_kg(), difference, within_kg);
            }
        }
    }

    private static void keep(
            List<RankedCause> causes, MassCause cause, double change, double difference, double within_kg) {
        double leftOver = difference - change;
        if (Math.abs(leftOver) < Math.abs(difference)) {
            causes.add(new RankedCause(cause, change, leftOver, Math.abs(leftOver) <= within_kg));
        }
    }
}
