package org.trammel.calc.thermal;

import org.trammel.calc.units.Answer;

/**
 * The ageing that a run fell short of.
 *
 * @param missing_h at the reference temperature; 0 where nothing is missing
 * @param soak_h what that takes at the temperature of the top-up, by the usual activation energy
 * @param longestSoak_h the longest it takes by the activation energies held possible
 * @param shortestSoak_h the shortest
 */
public record TopUp(double missing_h, double soak_h, double longestSoak_h, double shortestSoak_h) {

    /**
     * Computes.
     *
     * @param wanted_h equivalent hours that the age should have
     * @param got what it has
     * @param reference_degC at which both are counted
     * @param topUp_degC at which the rest is done
     */
    public static Answer<TopUp> of(
            double wanted_h, EquivalentHours got, double reference_degC, double topUp_degC, Activation activation) {
        Wanted wanted = new Wanted()
                .above0("wanted", "wanted equivalent time", wanted_h, " h")
                .notBelow0("got", "equivalent time so far", got.least_h(), " h")
                .temperature("reference", "reference temperature", reference_degC)
                .temperature("topUp", "temperature of the top-up", topUp_degC);
        if (!wanted.met()) {
            return wanted.refusal();
        }
        EquivalentHours hour = activation.equivalent(1, topUp_degC, reference_degC);
        double usual = missing(wanted_h, got.usual_h()) / hour.usual_h();
        double low = missing(wanted_h, got.lowEnergy_h()) / hour.lowEnergy_h();
        double high = missing(wanted_h, got.highEnergy_h()) / hour.highEnergy_h();
        if (!Double.isFinite(usual + low + high)) {
            return Answer.none("topUp", "At " + Said.degC(topUp_degC) + " the missing time would never be made up.");
        }
        return Answer.of(new TopUp(
                missing(wanted_h, got.usual_h()),
                usual,
                Math.max(usual, Math.max(low, high)),
                Math.min(usual, Math.min(low, high))));
    }

    private static double missing(double wanted_h, double got_h) {
        return Math.max(0, wanted_h - got_h);
    }
}
