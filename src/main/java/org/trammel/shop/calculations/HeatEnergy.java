package org.trammel.shop.calculations;

import io.swagger.v3.oas.annotations.media.Schema;
import java.math.BigDecimal;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.thermal.Activation;
import org.trammel.shop.web.OnlyTheseNames;

/** How strongly a change hastens with temperature. */
@OnlyTheseNames
record HeatEnergy(
        BigDecimal usualKJPerMol,

        @Schema(description = "the least that is held possible; the usual if left out") @Nullable
        BigDecimal lowKJPerMol,

        @Schema(description = "the greatest; the usual if left out") @Nullable
        BigDecimal highKJPerMol,

        @Schema(description = "whose value it is") String source) {

    Activation activation() {
        double usual = usualKJPerMol.doubleValue();
        return NotComputed.unless(
                Activation.of(usual, NotComputed.or(lowKJPerMol, usual), NotComputed.or(highKJPerMol, usual), source),
                FIELD);
    }

    private static final UnaryOperator<String> FIELD = input -> switch (input) {
        case "lowActivation" -> "activation.lowKJPerMol";
        case "highActivation" -> "activation.highKJPerMol";
        case "activationSource" -> "activation.source";
        default -> "activation.usualKJPerMol";
    };
}
