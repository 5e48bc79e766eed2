package org.trammel.calc.statistics;

/**
 * How a weighted mean is taken and judged.
 *
 * @param weight λ of the newest reading, above 0 and at most 1; 0.2 finds shifts of about one σ
 * @param width L, half the distance of the limits in standard deviations of the mean
 * @param settled whether the limits are those reached after many readings from the first one on; otherwise they open as
 *     the mean gathers readings, and early shifts are found sooner
 */
public record WeightedMeanSetting(double weight, double width, boolean settled) {

    /** λ 0.2, L 2.7, opening limits: common practice. */
    public static final WeightedMeanSetting USUAL = new WeightedMeanSetting(0.2, 2.7, false);
}
