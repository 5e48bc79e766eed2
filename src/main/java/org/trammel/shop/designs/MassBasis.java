package org.trammel.shop.designs;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.springframework.stereotype.Component;
import org.trammel.calc.geometry.MassComparison;
import org.trammel.calc.units.Answer;
import org.trammel.calc.units.TypedNumber;
import org.trammel.shop.settings.Setting;
import org.trammel.shop.settings.Settings;

/** What the shop knows of its metals and its tube, from its settings: masses are computed and compared by it. */
@Component
class MassBasis {

    private static final double KG_PER_G = 1e-3;

    private final Settings settings;

    MassBasis(Settings settings) {
        this.settings = settings;
    }

    /**
     * What a frame of one metal is computed with.
     *
     * @param source of the density
     * @param wallHalfWidth_mm so far a wall may lie from the drawing
     * @param uOfParts_kg standard uncertainty of all dropouts, or pivot parts, together
     * @param uOfWeld_kg standard uncertainty of what welding adds
     */
    record Metal(
            double density_kgPerM3, String source, double wallHalfWidth_mm, double uOfParts_kg, double uOfWeld_kg) {}

    /** Without an answer for a metal that the shop does not build from. */
    Answer<Metal> of(String metal) {
        if (!FrameWords.metals().containsKey(metal)) {
            return Answer.none("metal", "The density of " + metal + " is not known.");
        }
        Setting density = settings.inForce("mass.density." + metal.toLowerCase(Locale.ROOT));
        return Answer.of(new Metal(
                Double.parseDouble(density.value()),
                density.source(),
                settings.number("mass.wall").doubleValue(),
                KG_PER_G * settings.number("mass.u.parts").doubleValue(),
                KG_PER_G * settings.number("mass.u.weld").doubleValue()));
    }

    /** Where to look, with the doubt of the scale. */
    MassComparison.Search search(double scaleU_kg) {
        return new MassComparison.Search(
                scaleU_kg,
                settings.number("mass.flag").doubleValue(),
                figures("mass.walls").stream().filter(wall -> wall > 0).toList(),
                figures("mass.weld.shares").stream().filter(share -> share >= 0).toList());
    }

    /** A text setting keeps what was typed; what is no number in it is left out. */
    private List<Double> figures(String key) {
        return Arrays.stream(settings.text(key).split(";"))
                .map(TypedNumber::of)
                .filter(TypedNumber.Read.class::isInstance)
                .map(read -> ((TypedNumber.Read) read).value().doubleValue())
                .distinct()
                .toList();
    }
}
