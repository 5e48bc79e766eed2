package org.trammel.calc.geometry;

import java.util.List;
import org.trammel.calc.units.Answer;

/**
 * What a frame should weigh, uncoated, and how well that is known.
 *
 * <pre>
 * tube         m = n ρ π Σ (D t̄ − (t₁² + t₁t₂ + t₂²)/3) l      one wall, t₁ = t₂ = t:  n ρ π (D − t) t l
 *              u = n ρ π Σ (D − t̄) l · a/√3                     one wall:  m/t · a/√3
 * bored part   m = ρ π/4 (D² − d²) l                            u = 0
 * pieces, weld m and u as given
 * frame        m = Σ m                                          u = √Σ u²
 * </pre>
 *
 * D outside, d bore, t wall (t̄ its mean over a stretch from t₁ to t₂), l length, mm; ρ density; n how many alike; a
 * half width within which walls lie, every value as likely as the next, mm.
 *
 * <p>Walls of one tube and of tubes alike are one draw of one lot: they are off together, so their doubts add before
 * they are squared (n stands before the root). Different tubes, pieces and weld are off independently. The doubt about a
 * wall is counted at the mean diameter, not at the outside: larger by t/(D − t), some percent, for the outside has a
 * tolerance too.
 *
 * <p>Validity: walls below half the outside; lengths are those of the blanks between the mitres' shortest points, so
 * that what a mitre leaves beyond them stands against what it takes. Accuracy: that of double precision for the formula.
 *
 * <p>Source: volume of the hollow cylinder and of a hollow frustum of even taper; rectangular distribution and root sum
 * of squares, JCGM 100:2008, 4.3.7 and 5.1.2, fully correlated inputs 5.2.2.
 *
 * @param lines one for each part, in the order given
 * @param mass_kg of all
 * @param u_kg standard uncertainty of that
 */
public record ExpectedMass(List<Line> lines, double mass_kg, double u_kg) {

    /** kg per m³ times mm³. */
    private static final double PER_CUBIC_MM = 1e-9;

    public ExpectedMass {
        lines = List.copyOf(lines);
    }

    /**
     * A part's share.
     *
     * @param mass_kg of all of its kind in the frame
     * @param u_kg standard uncertainty of that
     */
    public record Line(FramePart part, double mass_kg, double u_kg) {}

    /**
     * Adds a frame up; without an answer where a part cannot be.
     *
     * @param parts all that the frame has before it is coated
     * @param wallHalfWidth_mm a; 0.05 is what drawn tube of frames usually keeps
     */
    public static Answer<ExpectedMass> of(List<? extends FramePart> parts, double wallHalfWidth_mm) {
        Asked asked = new Asked();
        asked.holds(!parts.isEmpty(), "parts", "No part is given: there is nothing to weigh.");
        asked.notBelow0("wallHalfWidth", "half width of the walls", wallHalfWidth_mm, " mm");
        parts.forEach(part -> ask(asked, part));
        if (!asked.met()) {
            return asked.refusal();
        }
        List<Line> lines =
                parts.stream().map(part -> line(part, wallHalfWidth_mm)).toList();
        double mass = lines.stream().mapToDouble(Line::mass_kg).sum();
        double u = Math.sqrt(
                lines.stream().mapToDouble(line -> line.u_kg() * line.u_kg()).sum());
        asked.holds(
                Double.isFinite(mass) && Double.isFinite(u),
                "parts",
                "The parts together come to a mass that is no number: a size is far too large.");
        return asked.met() ? Answer.of(new ExpectedMass(lines, mass, u)) : asked.refusal();
    }

    private static Line line(FramePart part, double wallHalfWidth_mm) {
        if (part instanceof FramePart.Tube tube) {
            return new Line(tube, mass_kg(tube), massPerWall_kg(tube) * wallHalfWidth_mm / Math.sqrt(3));
        }
        if (part instanceof FramePart.Bored bored) {
            double area = Math.PI / 4 * (square(bored.outside_mm()) - square(bored.bore_mm()));
            return new Line(bored, bored.density_kgPerM3() * PER_CUBIC_MM * area * bored.length_mm(), 0);
        }
        if (part instanceof FramePart.Pieces pieces) {
            return new Line(pieces, pieces.mass_kg(), pieces.u_kg());
        }
        FramePart.Weld weld = (FramePart.Weld) part;
        return new Line(weld, weld.mass_kg(), weld.u_kg());
    }

    /** Of all tubes alike. */
    static double mass_kg(FramePart.Tube tube) {
        double volume = tube.sections().stream()
                .mapToDouble(section -> section.length_mm()
                        * (tube.outside_mm() * section.meanWall_mm()
                                - (square(section.wallFrom_mm())
                                                + section.wallFrom_mm() * section.wallTo_mm()
                                                + square(section.wallTo_mm()))
                                        / 3))
                .sum();
        return tube.count() * tube.density_kgPerM3() * PER_CUBIC_MM * Math.PI * volume;
    }

    private static double massPerWall_kg(FramePart.Tube tube) {
        double area = tube.sections().stream()
                .mapToDouble(section -> section.length_mm() * (tube.outside_mm() - section.meanWall_mm()))
                .sum();
        return tube.count() * tube.density_kgPerM3() * PER_CUBIC_MM * Math.PI * area;
    }

    private static double square(double x) {
        return x * x;
    }

    private static void ask(Asked asked, FramePart part) {
        String of = " of the " + part.name();
        if (part instanceof FramePart.Tube tube) {
            asked.above0("outside", "outside" + of, tube.outside_mm(), " mm");
            asked.above0("density", "density" + of, tube.density_kgPerM3(), " kg/m³");
            asked.holds(tube.count() >= 1, "count", "The count" + of + ", " + tube.count() + ", is not above 0.");
            asked.holds(!tube.sections().isEmpty(), "sections", "Nothing says how long the " + part.name() + " is.");
            for (FramePart.Section section : tube.sections()) {
                asked.above0("length", "length" + of, section.length_mm(), " mm");
                askWall(asked, tube, section.wallFrom_mm());
                askWall(asked, tube, section.wallTo_mm());
            }
        } else if (part instanceof FramePart.Bored bored) {
            asked.above0("outside", "outside" + of, bored.outside_mm(), " mm");
            asked.above0("length", "length" + of, bored.length_mm(), " mm");
            asked.above0("density", "density" + of, bored.density_kgPerM3(), " kg/m³");
            if (asked.notBelow0("bore", "bore" + of, bored.bore_mm(), " mm")) {
                asked.holds(
                        !(bored.bore_mm() >= bored.outside_mm()),
                        "bore",
                        "The bore" + of + ", " + Asked.written(bored.bore_mm(), " mm")
                                + ", leaves nothing of its outside, " + Asked.written(bored.outside_mm(), " mm") + ".");
            }
        } else if (part instanceof FramePart.Pieces pieces) {
            asked.notBelow0("mass", "mass" + of, pieces.mass_kg(), " kg");
            asked.notBelow0("u", "uncertainty of the mass" + of, pieces.u_kg(), " kg");
            asked.holds(pieces.count() >= 1, "count", "The count" + of + ", " + pieces.count() + ", is not above 0.");
        } else if (part instanceof FramePart.Weld weld) {
            asked.notBelow0("mass", "mass" + of, weld.mass_kg(), " kg");
            asked.notBelow0("u", "uncertainty of the mass" + of, weld.u_kg(), " kg");
        }
    }

    private static void askWall(Asked asked, FramePart.Tube tube, double wall_mm) {
        if (asked.above0("wall", "wall of the " + tube.name(), wall_mm, " mm")) {
            asked.holds(
                    !(wall_mm >= tube.outside_mm() / 2),
                    "wall",
                    "The wall of the " + tube.name() + ", " + Asked.written(wall_mm, " mm")
                            + ", is not below half its outside, " + Asked.written(tube.outside_mm() / 2, " mm") + ".");
        }
    }
}
