package org.trammel.calc.statistics;

/**
 * How sums are gathered and judged.
 *
 * @param slack k, what each reading may be off before it counts, in σ; half of the shift that is to be found soonest
 * @param decision h, above which a sum is an alarm, in σ
 */
public record CumulativeSumSetting(double slack, double decision) {

    /** k 0.5, h 4.77: a false alarm in about 370 readings, as with limits at three σ; from memory of common tables. */
    public static final CumulativeSumSetting USUAL = new CumulativeSumSetting(0.5, 4.77);
}
