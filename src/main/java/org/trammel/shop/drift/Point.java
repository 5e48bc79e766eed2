package org.trammel.shop.drift;

import java.math.BigDecimal;
import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.statistics.ScaledDeviation;
import org.trammel.calc.units.Answer;

/**
 * A reading of a frame, before anything was set straight.
 *
 * @param key names it among all readings for ever
 * @param piece first traveller of the piece it was read of; null if it comes from before this program
 * @param frame a serial, or what the frame was called before this program
 * @param part of the frame; null if it comes from before this program
 * @param earlier whether it comes from before this program
 * @param value in {@code unit}, as are nominal and limits
 * @param jig null if none was noted
 * @param welder initials, several joined by a plus; of an earlier one as written down then; null if not known
 * @param tubeSet lots of tube, several joined by a plus; likewise
 * @param source of an earlier one; empty otherwise
 */
public record Point(
        String key,
        @Nullable Long piece,
        String frame,
        @Nullable String part,
        boolean earlier,
        BigDecimal value,
        String unit,
        @Nullable BigDecimal nominal,
        @Nullable BigDecimal lowerLimit,
        @Nullable BigDecimal upperLimit,
        Instant at,
        @Nullable String jig,
        @Nullable String welder,
        @Nullable String tubeSet,
        String source) {

    /** How keys of those from before this program begin. */
    static final String EARLIER = "earlier:";

    /** Those of any other. */
    static final String READING = "reading:";

    /** The number that its key ends in. */
    long numberOfKey() {
        return Long.parseLong(key.substring(key.indexOf(':') + 1));
    }

    /** Number of a reading from before this program; null of any other. */
    public @Nullable Long historyId() {
        return earlier ? Long.valueOf(numberOfKey()) : null;
    }

    /** Which jig, welder or tube set had a hand in it; null if not known. */
    @Nullable
    String level(Factor factor) {
        return switch (factor) {
            case JIG -> jig;
            case WELDER -> welder;
            case TUBE_SET -> tubeSet;
        };
    }

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
