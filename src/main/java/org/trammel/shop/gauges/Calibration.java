package org.trammel.shop.gauges;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One calibration of a gauge.
 *
 * @param dueOn last day the gauge may be used by it; null if it does not stand
 * @param certificate number of the certificate, or of the shop's own record
 * @param asFound what was found before anything was adjusted, in words; may be empty
 * @param found what the points say
 * @param stands whether the gauge may be used by it: it was found right, or was put right
 * @param putRight whether it was adjusted, and is right as it was left
 * @param asLeft what was done and how it was left; may be empty
 * @param unit of the points; empty without any
 * @param points errors as found, in the order of their values
 */
public record Calibration(
        LocalDate calibratedOn,
        @Nullable LocalDate dueOn,
        String certificate,
        String asFound,
        AsFound found,
        boolean stands,
        boolean putRight,
        String asLeft,
        String unit,
        List<CalibrationPoint> points,
        long by,
        Instant at) {

    public Calibration {
        points = List.copyOf(points);
    }

    /** The point that takes most of what is permitted. */
    public Optional<CalibrationPoint> worst() {
        return worst(points);
    }

    static Optional<CalibrationPoint> worst(List<CalibrationPoint> points) {
        // Shares of different permissible errors are compared without dividing.
        Comparator<CalibrationPoint> byShare = (one, other) -> one.error()
                .abs()
                .multiply(other.permissible())
                .compareTo(other.error().abs().multiply(one.permissible()));
        return points.stream().max(byShare);
    }

    /** Whether any error is greater than it may be. */
    static boolean over(List<CalibrationPoint> points) {
        return points.stream().anyMatch(CalibrationPoint::over);
    }

    /** The least error found, 0 among them. */
    static BigDecimal least(List<CalibrationPoint> points) {
        return points.stream().map(CalibrationPoint::error).reduce(BigDecimal.ZERO, BigDecimal::min);
    }

    /** The greatest error found, 0 among them. */
    static BigDecimal greatest(List<CalibrationPoint> points) {
        return points.stream().map(CalibrationPoint::error).reduce(BigDecimal.ZERO, BigDecimal::max);
    }
}
