package org.trammel.shop.drift;

import java.math.BigDecimal;
import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.statistics.ScaledDeviation;
import org.trammel.calc.units.Answer;

/**
 * A reading of a series, before anything was set straight.
 *
 * @param key names it among all readings for ever
 * @param frame a serial, or what the frame was called before this program
 * @param part of the frame; null if it comes from before this program
 * @param earlier whether it comes from before this program
 * @param value in the unit of the series, as are nominal and limits
 * @param welder as written down then; null if not known
 * @param source of an earlier one; empty otherwise
 */
public record Point(
        String key,
        String frame,
        @Nullable String part,
        boolean earlier,
        BigDecimal value,
        @Nullable BigDecimal nominal,
        @Nullable BigDecimal lowerLimit,
        @Nullable BigDecimal upperLimit,
        Instant at,
        @Nullable String welder,
        @Nullable String tubeSet,
        String source) {

    /** What the chart shows of it, or why it shows nothing. */
    Answer<Double> charted(boolean scaled) {
        if (nominal == null) {
            return Answer.none("nominal", "There is no nominal to take a deviation from.");
        }
        if (!scaled) {
            return Answer.of(value.subtract(nominal).doubleValue());
        }
        if (lowerLimit == null || upperLimit == null) {
            return Answer.none("limits", "It is limited on one side only: there is no tolerance to scale by.");
        }
        return ScaledDeviation.of(
                        value.doubleValue(), nominal.doubleValue(), lowerLimit.doubleValue(), upperLimit.doubleValue())
                .then(scaledTo -> Answer.of(scaledTo.share()));
    }
}
