package org.trammel.shop.calculations;

import io.swagger.v3.oas.annotations.media.Schema;
import org.trammel.calc.thermal.EquivalentHours;

/** Hours at the reference temperature. */
record EquivalentTimeAnswer(
        @Schema(description = "of the coldest load thermocouple")
        Worth coldest,

        @Schema(description = "of the hottest") Worth hottest,

        @Schema(description = "what of the coldest's lies where the record has gaps")
        Worth inGaps) {

    @Schema(name = "EquivalentHours")
    record Worth(
            double usualH,

            @Schema(description = "by the low activation energy")
            double lowEnergyH,

            @Schema(description = "by the high one") double highEnergyH) {

        static Worth of(EquivalentHours hours) {
            return new Worth(hours.usual_h(), hours.lowEnergy_h(), hours.highEnergy_h());
        }
    }
}
