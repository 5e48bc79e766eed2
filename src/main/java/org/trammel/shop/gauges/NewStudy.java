package org.trammel.shop.gauges;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A study of a gauge as it is entered.
 *
 * @param what what was measured
 * @param unit one the gauge reads
 * @param tolerance width of what the gauge is to judge, in the unit, above 0; null if it judges nothing yet
 */
public record NewStudy(String what, String unit, @Nullable BigDecimal tolerance, List<StudyReading> readings) {

    public NewStudy {
        readings = List.copyOf(readings);
    }
}
