package org.trammel.shop.calculations;

import io.swagger.v3.oas.annotations.media.Schema;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.thermal.CurePair;
import org.trammel.calc.thermal.CureWindow;
import org.trammel.shop.web.OnlyTheseNames;

/** What the sheet of a powder prints, and what the metal saw. */
@OnlyTheseNames
record CureRequest(
        @Schema(description = "minutes at metal temperature that cure in full, 20 at most")
        List<Pair> pairs,

        @Schema(description = "only with a single pair") @Nullable
        BigDecimal energyKJPerMol,

        @Schema(description = "share of full cure; 1 if left out") @Nullable
        BigDecimal least,

        @Schema(description = "share of full cure; 1.5 if left out") @Nullable
        BigDecimal most,

        @Schema(description = "of the metal") @Nullable OvenRecord record,

        @Schema(description = "in place of a record, with minutes") @Nullable
        BigDecimal metalDegC,

        @Nullable BigDecimal minutes) {

    private static final int MOST_PAIRS = 20;

    @OnlyTheseNames
    @Schema(name = "CurePair")
    record Pair(BigDecimal metalDegC, BigDecimal minutes) {}

    CureWindow window() {
        NotComputed.boundedBy(MOST_PAIRS, "pairs", pairs);
        return NotComputed.unless(
                CureWindow.of(
                        pairs.stream()
                                .map(pair -> new CurePair(
                                        pair.metalDegC().doubleValue(),
                                        pair.minutes().doubleValue()))
                                .toList(),
                        energyKJPerMol == null ? null : energyKJPerMol.doubleValue(),
                        NotComputed.or(least, CureWindow.USUAL_LEAST),
                        NotComputed.or(most, CureWindow.USUAL_MOST)),
                CureRequest::field);
    }

    static String field(String input) {
        if (input.endsWith("temperature")) {
            return input.replace("temperature", "metalDegC");
        }
        return input.equals("activation") ? "energyKJPerMol" : OvenRecord.field(input);
    }
}
