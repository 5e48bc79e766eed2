package org.trammel.shop.drift;

import java.math.BigDecimal;
import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.statistics.Baseline;
import org.trammel.calc.statistics.CumulativeSumSetting;
import org.trammel.calc.statistics.WeightedMeanSetting;

/**
 * What the limits of a series are made of, frozen.
 *
 * @param centre and {@code sigma} in the unit of the chart
 * @param readings how many it was taken from; 0 if it was given
 * @param startsAt first reading of the base, or the first that is charted over a given one; null: from the very first
 * @param endsAt last reading of the base; null if it was given
 * @param weight λ of the weighted mean, {@code width} L of its limits
 * @param slack k of the cumulative sum, {@code decision} h, both in σ
 * @param stopsJig whether an alarm stops the jig
 */
public record Base(
        long id,
        long seriesId,
        Kind kind,
        BigDecimal centre,
        BigDecimal sigma,
        int readings,
        @Nullable Instant startsAt,
        @Nullable Instant endsAt,
        BigDecimal weight,
        BigDecimal width,
        BigDecimal slack,
        BigDecimal decision,
        boolean stopsJig,
        String source,
        String reason,
        long by,
        Instant at) {

    /** How a base is chosen. */
    public enum Kind {
        /** So many readings from the first one on. */
        FIRST("the first readings"),
        /** All readings between two days. */
        PERIOD("a period"),
        /** Centre and standard deviation from elsewhere. */
        GIVEN("given by hand");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    Baseline baseline() {
        Baseline.Origin origin = kind == Kind.GIVEN ? Baseline.Origin.GIVEN : Baseline.Origin.MOVING_RANGES;
        return new Baseline(centre.doubleValue(), sigma.doubleValue(), readings, 1, origin);
    }

    WeightedMeanSetting weightedMean() {
        return new WeightedMeanSetting(weight.doubleValue(), width.doubleValue(), false);
    }

    CumulativeSumSetting cumulativeSum() {
        return new CumulativeSumSetting(slack.doubleValue(), decision.doubleValue());
    }

    /** Whether a reading was taken since this base begins, and so is charted over it. */
    boolean charts(Instant readAt) {
        return startsAt == null || !readAt.isBefore(startsAt);
    }

    /** Whether a reading is one the base was taken from. */
    boolean holds(Instant readAt) {
        return endsAt != null && charts(readAt) && !readAt.isAfter(endsAt);
    }
}
