package org.trammel.calc.thermal;

import org.trammel.calc.units.Answer;

/**
 * How strongly a change in the metal hastens with temperature.
 *
 * <pre>k(T) = exp(−E / R · (1 / T − 1 / T₀))</pre>
 *
 * k without unit: how many hours at the reference T₀ one hour at T is worth; T in kelvins; R = 8.314462618 J/(mol K). No one
 * value of E is agreed on for any alloy, so a low and a high one go along and every result is told with both.
 *
 * <p>Source: Arrhenius rate; R of CODATA 2018. As mean kinetic temperature and as sum of equivalent times common to
 * pharmacy (USP 1160) and heat treatment.
 *
 * @param usual_kJPerMol E that judges
 * @param low_kJPerMol the least E that is held possible
 * @param high_kJPerMol the greatest
 * @param source whose value it is
 */
public record Activation(double usual_kJPerMol, double low_kJPerMol, double high_kJPerMol, String source) {

    /** Gas constant, J/(mol K). */
    public static final double R_J_PER_MOL_K = 8.314462618;

    static final double ZERO_DEG_C_K = 273.15;

    private static final double MOST_KJ_PER_MOL = 1000;

    /** Checks; a value without a source is no value. */
    public static Answer<Activation> of(
            double usual_kJPerMol, double low_kJPerMol, double high_kJPerMol, String source) {
        Wanted wanted = new Wanted()
                .above0("lowActivation", "low activation energy", low_kJPerMol, " kJ/mol")
                .above0("activation", "activation energy", usual_kJPerMol, " kJ/mol")
                .above0("highActivation", "high activation energy", high_kJPerMol, " kJ/mol")
                .holds(
                        !(high_kJPerMol > MOST_KJ_PER_MOL),
                        "highActivation",
                        "The high activation energy, " + Said.figure(high_kJPerMol, 3) + " kJ/mol, is more than "
                                + Said.figure(MOST_KJ_PER_MOL, 0) + " kJ/mol.")
                .holds(!source.isBlank(), "activationSource", "The activation energy has no source.");
        if (wanted.met()) {
            wanted.holds(
                    low_kJPerMol <= usual_kJPerMol && usual_kJPerMol <= high_kJPerMol,
                    "activation",
                    "The activation energy of " + Said.figure(usual_kJPerMol, 3)
                            + " kJ/mol does not lie between its low " + Said.figure(low_kJPerMol, 3) + " and its high "
                            + Said.figure(high_kJPerMol, 3) + ".");
        }
        return wanted.met()
                ? Answer.of(new Activation(usual_kJPerMol, low_kJPerMol, high_kJPerMol, source))
                : wanted.refusal();
    }

    /** k for one activation energy. */
    public static double factor(double degC, double reference_degC, double energy_kJPerMol) {
        return Math.exp(-energy_kJPerMol
                * 1000
                / R_J_PER_MOL_K
                * (1 / (degC + ZERO_DEG_C_K) - 1 / (reference_degC + ZERO_DEG_C_K)));
    }

    /** What so many hours at one temperature are worth at another. */
    public EquivalentHours equivalent(double hours, double degC, double reference_degC) {
        return new EquivalentHours(
                hours * factor(degC, reference_degC, usual_kJPerMol),
                hours * factor(degC, reference_degC, low_kJPerMol),
                hours * factor(degC, reference_degC, high_kJPerMol));
    }
}
