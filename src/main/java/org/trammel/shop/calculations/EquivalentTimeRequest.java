package org.trammel.shop.calculations;

import io.swagger.v3.oas.annotations.media.Schema;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.thermal.AgeingSchedule;
import org.trammel.shop.web.OnlyTheseNames;

/** A recorded run, or soaks that are planned. */
@OnlyTheseNames
record EquivalentTimeRequest(
        BigDecimal referenceDegC,
        HeatEnergy activation,
        @Nullable OvenRecord record,

        @Schema(description = "in place of a record, 20 at most") @Nullable
        List<Planned> soaks) {

    static final int MOST_SOAKS = 20;

    @OnlyTheseNames
    @Schema(name = "PlannedSoak")
    record Planned(BigDecimal degC, BigDecimal hours) {

        AgeingSchedule.Soak soak() {
            return new AgeingSchedule.Soak(degC.doubleValue(), hours.doubleValue());
        }
    }
}
