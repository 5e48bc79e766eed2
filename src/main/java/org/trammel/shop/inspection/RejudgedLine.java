package org.trammel.shop.inspection;

import java.math.BigDecimal;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A reading judged again, with the figures.
 *
 * @param tag of the frame or part while it is in the shop, as it stands in addresses; null once it is not
 * @param value as it was reduced, in {@code unit}
 * @param least least it may truly have been; null where no span can be said
 * @param greatest greatest it may truly have been; null where no span can be said
 * @param guardBand it was judged with, and is again
 * @param verdict it was given
 * @param why the outcome in a sentence's end
 * @param inDoubt whether it is not cleared and a characteristic stood on it when it was judged again
 * @param waits whether it is in doubt and nothing was read in its place yet
 */
public record RejudgedLine(
        long readingId,
        String serial,
        @Nullable String tag,
        long travellerId,
        long characteristicId,
        String code,
        BigDecimal value,
        String unit,
        String gauge,
        @Nullable BigDecimal least,
        @Nullable BigDecimal greatest,
        @Nullable BigDecimal nominal,
        @Nullable BigDecimal lowerLimit,
        @Nullable BigDecimal upperLimit,
        BigDecimal guardBand,
        Verdict verdict,
        ReadingOutcome outcome,
        String why,
        boolean inDoubt,
        boolean waits,
        Instant at) {

    static RejudgedLine of(RejudgedReading judged, Reading r, @Nullable String tag, boolean waits) {
        return new RejudgedLine(
                r.id(),
                judged.serial(),
                tag,
                r.travellerId(),
                r.characteristicId(),
                r.characteristicCode(),
                r.value(),
                r.unit(),
                r.gaugeCode(),
                judged.least(),
                judged.greatest(),
                r.nominal(),
                r.lowerLimit(),
                r.upperLimit(),
                r.guardBand(),
                r.verdict(),
                judged.outcome(),
                judged.ground().words(),
                judged.inDoubt(),
                waits,
                r.at());
    }
}
