package org.trammel.shop.calculations;

import io.swagger.v3.oas.annotations.media.Schema;
import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.scheduling.Blank;
import org.trammel.calc.scheduling.Saw;
import org.trammel.calc.scheduling.TubeKind;
import org.trammel.calc.scheduling.TubeStock;
import org.trammel.shop.web.OnlyTheseNames;

/** Blanks of plain-gauge tube, and the bars and remnants on the rack. */
@OnlyTheseNames
record NestingRequest(
        @Schema(description = "200 at most") List<Piece> blanks,
        @Schema(description = "100 entries at most") List<Length> stock,
        @Schema(description = "what each cut takes") BigDecimal kerfMm,

        @Schema(description = "shortest remnant that goes back to the rack")
        BigDecimal keepFromMm) {

    static final int MOST_BLANKS = 200;
    static final int MOST_STOCK = 100;
    private static final int MOST_ALIKE = 1000;

    @OnlyTheseNames
    record Piece(
            @Schema(description = "of the tube, such as seat tube")
            String name,

            @Schema(description = "serial or number of its frame")
            String frame,

            @Schema(description = "outside and wall, as the rack has it written")
            String section,

            String alloy,
            BigDecimal lengthMm,

            @Schema(description = "lower is cut sooner; 0 if left out") @Nullable
            Integer urgency) {

        Blank blank(String at) {
            return new Blank(
                    NotComputed.named(name, at + "name"),
                    NotComputed.named(frame, at + "frame"),
                    kind(section, alloy, at),
                    lengthMm.doubleValue(),
                    Objects.requireNonNullElse(urgency, 0));
        }
    }

    @OnlyTheseNames
    record Length(
            String section,
            String alloy,
            @Schema(description = "what is left keeps it") String lot,
            BigDecimal lengthMm,

            @Schema(description = "how many alike, 1000 at most; 1 if left out") @Nullable
            Integer count,

            @Schema(description = "left over from a bar cut before, used up first; false if left out") @Nullable
            Boolean remnant) {

        TubeStock bars(String at) {
            return new TubeStock(
                    kind(section, alloy, at),
                    NotComputed.named(lot, at + "lot"),
                    lengthMm.doubleValue(),
                    NotComputed.count(count, MOST_ALIKE, at + "count"),
                    Boolean.TRUE.equals(remnant));
        }
    }

    private static TubeKind kind(String section, String alloy, String at) {
        return new TubeKind(NotComputed.named(section, at + "section"), NotComputed.named(alloy, at + "alloy"));
    }

    Saw saw() {
        return new Saw(kerfMm.doubleValue(), keepFromMm.doubleValue());
    }
}
