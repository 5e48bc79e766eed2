package org.trammel.shop.drift;

import java.math.BigDecimal;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.statistics.CumulativeSumSetting;
import org.trammel.calc.statistics.WeightedMeanSetting;

/**
 * A base to be taken.
 *
 * @param first how many readings, of {@link Base.Kind#FIRST}
 * @param from first day of a period; of the other kinds the first day that is charted, null for all
 * @param until last day of a period
 * @param centre and {@code sigma} in the unit of the chart, of {@link Base.Kind#GIVEN}
 * @param source where the figures come from
 * @param reason why it is taken now, such as that the jig was checked
 * @param seen id of the base in force where it was chosen; null if there was none
 */
public record NewBase(
        Base.Kind kind,
        @Nullable Integer first,
        @Nullable LocalDate from,
        @Nullable LocalDate until,
        @Nullable BigDecimal centre,
        @Nullable BigDecimal sigma,
        BigDecimal weight,
        BigDecimal width,
        BigDecimal slack,
        BigDecimal decision,
        boolean stopsJig,
        String source,
        String reason,
        @Nullable Long seen) {

    WeightedMeanSetting weightedMean() {
        return new WeightedMeanSetting(weight.doubleValue(), width.doubleValue(), false);
    }

    CumulativeSumSetting cumulativeSum() {
        return new CumulativeSumSetting(slack.doubleValue(), decision.doubleValue());
    }
}
