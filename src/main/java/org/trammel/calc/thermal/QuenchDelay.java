package org.trammel.calc.thermal;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.units.Answer;

/**
 * How long a load took from the door to the water, from two taps that two clocks saw: that of the device and that of the
 * server, to which a tap comes a little later.
 *
 * <p>Tapped on one device, each clock tells the time between on its own, and the truth is taken to lie from the shorter to
 * the longer. Tapped on two devices, whose clocks nobody compared, each tap lies between its device's time and its arrival.
 * What is shown to be short enough is so at its longest.
 *
 * @param least_s the shortest it can have been
 * @param most_s the longest
 */
public record QuenchDelay(BigDecimal least_s, BigDecimal most_s) {

    /** A device's time is believed while it lies so near before the arrival. */
    private static final Duration BELIEVED = Duration.ofMinutes(10);

    /**
     * A tap.
     *
     * @param device which it was; null for one that is not known
     * @param deviceAt what its clock showed; null if it told nothing
     * @param arrived when the server had it
     */
    public record Tap(@Nullable Long device, @Nullable Instant deviceAt, Instant arrived) {

        private Instant earliest() {
            return deviceAt == null || deviceAt.isAfter(arrived) || deviceAt.isBefore(arrived.minus(BELIEVED))
                    ? arrived
                    : deviceAt;
        }
    }

    /** Without an answer where the water comes before the door. */
    public static Answer<QuenchDelay> of(Tap out, Tap in) {
        Duration arrived = Duration.between(out.arrived(), in.arrived());
        boolean one = out.device() != null && out.device().equals(in.device());
        List<Duration> told = one && out.deviceAt() != null && in.deviceAt() != null
                ? List.of(arrived, Duration.between(out.deviceAt(), in.deviceAt()))
                : one || out.deviceAt() == null && in.deviceAt() == null
                        ? List.of(arrived)
                        : Stream.of(
                                        Duration.between(out.arrived(), in.earliest()),
                                        Duration.between(out.earliest(), in.arrived()))
                                .toList();
        Duration least = told.stream().min(Duration::compareTo).orElseThrow();
        Duration most = told.stream().max(Duration::compareTo).orElseThrow();
        if (most.compareTo(Duration.ZERO) <= 0) {
            return Answer.none("in", "The water comes before the door.");
        }
        return Answer.of(new QuenchDelay(
                seconds(least.isNegative() ? Duration.ZERO : least, RoundingMode.FLOOR),
                seconds(most, RoundingMode.CEILING)));
    }

    private static BigDecimal seconds(Duration span, RoundingMode rounding) {
        return BigDecimal.valueOf(span.toNanos(), 9).setScale(2, rounding);
    }
}
