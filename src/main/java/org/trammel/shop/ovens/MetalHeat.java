package org.trammel.shop.ovens;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.trammel.calc.thermal.Activation;
import org.trammel.calc.thermal.EquivalentHours;
import org.trammel.calc.units.Answer;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.settings.Settings;

/**
 * How the heat of a metal that ages is counted in this shop.
 *
 * @param alloy as published schedules call it
 * @param age_h hours of the usual age at the reference temperature
 * @param share of the age that may be added after it
 * @param overaged a programme worth more than so many times the longest published age is refused
 */
record MetalHeat(
        String metal,
        String alloy,
        Activation activation,
        double reference_degC,
        double age_h,
        double share,
        double overaged) {

    private static final Set<String> AGED = Set.of("AL6061", "AL7005");

    /** Empty for a metal that is not aged. */
    static Optional<MetalHeat> of(String metal, Settings settings) {
        if (!AGED.contains(metal)) {
            return Optional.empty();
        }
        String key = "heat." + metal.toLowerCase(Locale.ROOT) + ".";
        return Optional.of(new MetalHeat(
                metal,
                metal.substring(2),
                activation(settings, key),
                number(settings, key + "reference"),
                number(settings, key + "age"),
                number(settings, key + "share") / 100,
                number(settings, key + "overaged")));
    }

    private static Activation activation(Settings settings, String key) {
        Answer<Activation> answer = Activation.of(
                number(settings, key + "energy"),
                number(settings, key + "energy.low"),
                number(settings, key + "energy.high"),
                settings.inForce(key + "energy").source());
        if (answer instanceof Answer.NotDeterminable<Activation> none) {
            throw Refusal.state(
                    "No heat is computed.",
                    none.gaps().get(0).words(),
                    "Let the QA lead put the settings under Heat right.");
        }
        return ((Answer.Determined<Activation>) answer).value();
    }

    private static double number(Settings settings, String key) {
        return settings.number(key).doubleValue();
    }

    /** What the soaks of a programme are worth, ramps not counted. */
    EquivalentHours worth(Programme programme) {
        return programme.soaks().stream()
                .map(soak -> activation.equivalent(soak.hours(), soak.degC(), reference_degC))
                .reduce(EquivalentHours.NONE, EquivalentHours::plus);
    }
}
