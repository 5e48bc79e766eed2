package org.trammel.shop.calculations;

import io.swagger.v3.oas.annotations.media.Schema;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.statistics.Shape;
import org.trammel.calc.statistics.Tolerance;
import org.trammel.shop.web.OnlyTheseNames;

/** Readings of a process that stood still, and what is allowed. */
@OnlyTheseNames
record CapabilityRequest(
        @Schema(description = "in one unit, any; from 20 to 1000")
        List<BigDecimal> readings,

        Limits tolerance,

        @Schema(
                description =
                        "how the readings are taken to be distributed; NORMAL if left out. LOG_NORMAL and WEIBULL for"
                                + " readings above 0, AS_READ from 740 readings on")
        @Nullable
        Shape shape,

        @Schema(description = "the index that is asked for, above 0 and at most 100; 1.33 if left out") @Nullable
        BigDecimal wanted) {

    private static final int MOST_READINGS = 1_000;
    private static final double USUAL_WANTED = 1.33;
    private static final double MOST_WANTED = 100;

    @OnlyTheseNames
    @Schema(name = "ToleranceLimits", description = "one or both, in the unit of the readings")
    record Limits(@Nullable BigDecimal lower, @Nullable BigDecimal upper) {}

    List<Double> taken() {
        return SentReadings.bounded(readings, MOST_READINGS, "readings");
    }

    Tolerance allowed() {
        return new Tolerance(figure(tolerance.lower()), figure(tolerance.upper()));
    }

    private static @Nullable Double figure(@Nullable BigDecimal figure) {
        return figure == null ? null : figure.doubleValue();
    }

    double goal() {
        double goal = NotComputed.or(wanted, USUAL_WANTED);
        if (!(goal > 0 && goal <= MOST_WANTED)) {
            throw NotComputed.input("wanted", "An index of " + wanted + " is not above 0 and at most 100.");
        }
        return goal;
    }
}
