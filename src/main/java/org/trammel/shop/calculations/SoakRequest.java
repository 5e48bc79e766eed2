package org.trammel.shop.calculations;

import io.swagger.v3.oas.annotations.media.Schema;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.thermal.OvenProgramme;
import org.trammel.calc.thermal.OvenStep;
import org.trammel.shop.web.OnlyTheseNames;

/** A record and the programme it is judged by. */
@OnlyTheseNames
record SoakRequest(
        OvenRecord record,

        @Schema(description = "of the programme, 20 at most; bands that follow each other do not touch")
        List<Step> steps,

        @Schema(description = "no thermocouple may reach it") @Nullable
        BigDecimal neverDegC,

        @Schema(description = "by the oven's survey, 0 or below; 0 if left out") @Nullable
        BigDecimal coldestPlaceK,

        @Schema(description = "by the oven's survey, 0 or above; 0 if left out") @Nullable
        BigDecimal hottestPlaceK) {

    @OnlyTheseNames
    record Step(
            BigDecimal setDegC,
            BigDecimal belowK,
            BigDecimal aboveK,
            BigDecimal soakH,
            @Nullable BigDecimal longestSoakH,

            @Schema(description = "whether the soak must be one part; false if left out") @Nullable
            Boolean unbroken,

            @Schema(description = "of the hottest load thermocouple above the set temperature; aboveK if left out")
            @Nullable
            BigDecimal overshootK,

            @Schema(description = "most that load thermocouples may differ in the soak") @Nullable
            BigDecimal spreadK,

            @Schema(description = "of any load thermocouple on the way to the step, over a quarter of an hour")
            @Nullable
            BigDecimal steepestRiseKPerH) {

        OvenStep step() {
            return new OvenStep(
                    setDegC.doubleValue(),
                    belowK.doubleValue(),
                    aboveK.doubleValue(),
                    soakH.doubleValue(),
                    figure(longestSoakH),
                    Boolean.TRUE.equals(unbroken),
                    figure(overshootK),
                    figure(spreadK),
                    figure(steepestRiseKPerH));
        }
    }

    private static @Nullable Double figure(@Nullable BigDecimal figure) {
        return figure == null ? null : figure.doubleValue();
    }

    OvenProgramme programme() {
        return NotComputed.unless(
                OvenProgramme.of(steps.stream().map(Step::step).toList(), figure(neverDegC), null), SoakRequest::field);
    }

    static String field(String input) {
        String last = input.substring(input.indexOf('.') + 1);
        return switch (last) {
            case "set", "never" -> input + "DegC";
            case "below", "above", "overshoot", "spread" -> input + "K";
            case "soak", "longestSoak" -> input + "H";
            case "steepestRise" -> input + "KPerH";
            default -> OvenRecord.field(input);
        };
    }
}
