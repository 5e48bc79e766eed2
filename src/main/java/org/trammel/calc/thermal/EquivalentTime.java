package org.trammel.calc.thermal;

import org.trammel.calc.units.Answer;

/**
 * What the heat of a run is worth in hours at a reference temperature.
 *
 * <pre>t = ∫ k(T(τ)) dτ,  k as in {@link Activation}</pre>
 *
 * T runs straight between readings; each line is cut into even steps of a minute or less, and over each the integral is
 * taken by Simpson's rule, which for straight lines below 5 K/min is right to a millionth. Rates of the raw readings alone
 * would be wrong for readings far apart.
 *
 * @param reference_degC T₀
 * @param coldest of the coldest load thermocouple: as little as any part of the load got
 * @param hottest of the hottest: as much as any part may have got
 * @param inGaps what of the coldest's lies where the record has gaps
 */
public record EquivalentTime(
        double reference_degC, EquivalentHours coldest, EquivalentHours hottest, EquivalentHours inGaps) {

    private static final double STEP_S = 60;

    /** Where another thermocouple becomes the coldest or the hottest on the way, the line has a corner. */
    private static final double CORNER_STEP_S = 2;

    /** Computes over the whole trace. */
    public static Answer<EquivalentTime> of(LoadTrace trace, double reference_degC, Activation activation) {
        Wanted wanted = new Wanted().temperature("reference", "reference temperature", reference_degC);
        if (!wanted.met()) {
            return wanted.refusal();
        }
        Sum usual = sum(trace, reference_degC, activation.usual_kJPerMol());
        Sum low = sum(trace, reference_degC, activation.low_kJPerMol());
        Sum high = sum(trace, reference_degC, activation.high_kJPerMol());
        return Answer.of(new EquivalentTime(
                reference_degC,
                new EquivalentHours(usual.coldest, low.coldest, high.coldest),
                new EquivalentHours(usual.hottest, low.hottest, high.hottest),
                new EquivalentHours(usual.inGaps, low.inGaps, high.inGaps)));
    }

    /** Hours. */
    private record Sum(double coldest, double hottest, double inGaps) {}

    private static Sum sum(LoadTrace trace, double reference, double energy) {
        boolean one = trace.channels().size() == 1;
        double coldest = 0;
        double hottest = 0;
        double inGaps = 0;
        double coldBefore = Activation.factor(trace.coldest_degC(0, 0), reference, energy);
        double hotBefore = one ? coldBefore : Activation.factor(trace.hottest_degC(0, 0), reference, energy);
        for (int row = 0; row + 1 < trace.rows(); row++) {
            double width = trace.time_s(row + 1) - trace.time_s(row);
            int steps = (int) Math.ceil(width / (one || trace.straight(row) ? STEP_S : CORNER_STEP_S));
            double cold = 0;
            double hot = 0;
            for (int step = 0; step < steps; step++) {
                double middle = (step + 0.5) / steps;
                double end = (step + 1.0) / steps;
                double coldEnd = Activation.factor(trace.coldest_degC(row, end), reference, energy);
                cold += coldBefore
                        + 4 * Activation.factor(trace.coldest_degC(row, middle), reference, energy)
                        + coldEnd;
                coldBefore = coldEnd;
                if (!one) {
                    double hotEnd = Activation.factor(trace.hottest_degC(row, end), reference, energy);
                    hot += hotBefore
                            + 4 * Activation.factor(trace.hottest_degC(row, middle), reference, energy)
                            + hotEnd;
                    hotBefore = hotEnd;
                }
            }
            double hours = width / steps / 6 / 3600;
            coldest += cold * hours;
            hottest += hot * hours;
            inGaps += trace.gap(row) ? cold * hours : 0;
        }
        return new Sum(coldest, one ? coldest : hottest, inGaps);
    }
}
