package org.trammel.shop.drift;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.statistics.Capability;
import org.trammel.calc.statistics.Histogram;
import org.trammel.calc.statistics.Normality;
import org.trammel.calc.statistics.Shape;
import org.trammel.calc.units.Answer;

/**
 * How what is read of an axis fits between its limits.
 *
 * @param stand where the chart stands: of a process that moved an index tells nothing
 * @param choices the different limits frames had, those of most readings first
 * @param chosen those that are compared with; null if no reading has any
 * @param points compared, oldest first; {@code values} are what is compared of each
 * @param left readings that have other limits
 * @param capability or why there is none
 */
record AxisFit(
        Series series,
        Standing.Stand stand,
        List<Limits> choices,
        @Nullable Limits chosen,
        List<Point> points,
        List<Double> values,
        int left,
        Shape shape,
        BigDecimal wanted,
        Answer<Capability> capability,
        Answer<Normality> normality,
        Answer<Histogram> histogram) {

    /**
     * Limits as deviations from the nominal, in the unit of the chart.
     *
     * @param lower null where only the other side is limited; likewise {@code upper}
     * @param readings how many have them
     */
    public record Limits(
            @Nullable BigDecimal lower, @Nullable BigDecimal upper, int readings) {

        /** How a form names them. */
        public String key() {
            return (lower == null ? "" : lower.toPlainString()) + ".." + (upper == null ? "" : upper.toPlainString());
        }
    }

    /** What the chart says of the process, where it matters; empty where nothing is to be said. */
    public String doubt() {
        return switch (stand) {
            case DRIFTS, DRIFTED ->
                "The process moved while these were read, as the chart says: the index is of a mixture and foretells nothing.";
            case NO_BASE -> "No base was taken, so nothing says whether the process stood still while these were read.";
            case EMPTY, STILL -> "";
        };
    }
}
