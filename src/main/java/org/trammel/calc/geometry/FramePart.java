package org.trammel.calc.geometry;

import java.util.List;

/**
 * What a frame's mass is made of. Each is possible by itself as a value; {@link ExpectedMass#of} tells whether it can be.
 *
 * <p>Densities, in kg/m³, are the caller's, with their source; usual ones are 2700 (aluminium 6061), 2780 (7005), 7850
 * (25CrMo4), 4480 (titanium 3Al-2.5V).
 */
public sealed interface FramePart {

    /** As the cut list names it, such as "down tube". */
    String name();

    /**
     * A tube, or several alike such as a pair of stays.
     *
     * @param outside_mm diameter of the round tube; a formed end keeps its perimeter and so very nearly its mass
     * @param sections end to end; one for a plain-gauge tube
     * @param density_kgPerM3 of the metal
     * @param count how many of them are in the frame
     */
    record Tube(String name, double outside_mm, List<Section> sections, double density_kgPerM3, int count)
            implements FramePart {

        public Tube {
            sections = List.copyOf(sections);
        }

        /** A tube of one wall. */
        public static Tube plain(
                String name, double outside_mm, double wall_mm, double length_mm, double density_kgPerM3, int count) {
            return new Tube(
                    name, outside_mm, List.of(new Section(wall_mm, wall_mm, length_mm)), density_kgPerM3, count);
        }

        double length_mm() {
            return sections.stream().mapToDouble(Section::length_mm).sum();
        }

        /** The same length drawn to one wall. */
        Tube withWall(double wall_mm) {
            return plain(name, outside_mm, wall_mm, length_mm(), density_kgPerM3, count);
        }
    }

    /**
     * A stretch of a tube: of one wall, or between two butts where the wall changes evenly.
     *
     * @param wallFrom_mm at its near end
     * @param wallTo_mm at its far end; the same where the wall does not change
     * @param length_mm along the axis
     */
    record Section(double wallFrom_mm, double wallTo_mm, double length_mm) {

        double meanWall_mm() {
            return (wallFrom_mm + wallTo_mm) / 2;
        }
    }

    /** A turned part with a bore, such as head tube and shell; its sizes are held so closely that no doubt is counted. */
    record Bored(String name, double outside_mm, double bore_mm, double length_mm, double density_kgPerM3)
            implements FramePart {}

    /**
     * Parts whose mass is known from the scale or the data sheet: dropouts, bridges, bosses, pivot parts.
     *
     * @param mass_kg of all of them together
     * @param u_kg standard uncertainty of that mass
     * @param count how many of them are in the frame
     */
    record Pieces(String name, double mass_kg, double u_kg, int count) implements FramePart {}

    /**
     * What welding or brazing adds.
     *
     * @param mass_kg as the shop's weighed frames have shown
     * @param u_kg standard uncertainty of that mass
     */
    record Weld(String name, double mass_kg, double u_kg) implements FramePart {}
}
