package org.trammel.shop.gauges;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A calibration as it is entered.
 *
 * @param dueOn last day the gauge may be used by it; null if it was found wrong and not put right
 * @param makerNumber number of the maker on the certificate; must be the gauge's own; null only where it has none
 * @param asFound in words; may be empty
 * @param unit of the points; empty takes the unit of the gauge's first range
 * @param points errors as found; none if the certificate gives no figures
 * @param putRight it was adjusted, and is right as it was left
 * @param asLeft what was done and how it was left; may be empty
 */
public record NewCalibration(
        LocalDate calibratedOn,
        @Nullable LocalDate dueOn,
        String certificate,
        @Nullable String makerNumber,
        String asFound,
        String unit,
        List<CalibrationPoint> points,
        boolean putRight,
        String asLeft) {

    public NewCalibration {
        points = List.copyOf(points);
    }
}
