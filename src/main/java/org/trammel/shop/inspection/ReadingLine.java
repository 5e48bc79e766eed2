package org.trammel.shop.inspection;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.routes.Rule;

/**
 * A reading as the screens and the programs read it.
 *
 * @param value the reduced value, in {@code unit}
 * @param u standard uncertainty in {@code unit}; null for an aid
 * @param guardBand in {@code unit}; 0 under the plain rule
 * @param toTwenty what was added to the reduced value to give it at 20 °C; null if it was not corrected
 * @param reductionId the reduction of raw figures it came from; null if it was read as it is
 * @param record the record that gave it, such as that of a run; null if it was read and keyed
 * @param replaced true if a correction took its place
 */
public record ReadingLine(
        long readingId,
        long characteristicId,
        long operationId,
        long travellerId,
        String code,
        List<BigDecimal> raw,
        BigDecimal value,
        String unit,
        @Nullable BigDecimal u,
        String gauge,
        @Nullable BigDecimal temperatureDegC,
        @Nullable BigDecimal toTwenty,
        @Nullable BigDecimal nominal,
        @Nullable BigDecimal lowerLimit,
        @Nullable BigDecimal upperLimit,
        Rule ruleAsked,
        Rule ruleUsed,
        @Nullable BigDecimal factor,
        BigDecimal guardBand,
        Verdict verdict,
        boolean deciding,
        boolean alike,
        long personId,
        Instant at,
        @Nullable Instant deviceAt,
        @Nullable Long replacesId,
        @Nullable String reason,
        @Nullable Long reductionId,
        @Nullable String record,
        boolean replaced) {

    static ReadingLine of(Reading r, boolean replaced) {
        return new ReadingLine(
                r.id(),
                r.characteristicId(),
                r.operationId(),
                r.travellerId(),
                r.characteristicCode(),
                r.raw(),
                r.value(),
                r.unit(),
                r.u(),
                r.gaugeCode(),
                r.temperatureDegC(),
                r.toTwenty(),
                r.nominal(),
                r.lowerLimit(),
                r.upperLimit(),
                r.ruleAsked(),
                r.ruleUsed(),
                r.factor(),
                r.guardBand(),
                r.verdict(),
                r.deciding(),
                r.alike(),
                r.personId(),
                r.at(),
                r.deviceAt(),
                r.replacesId(),
                r.reason(),
                r.reductionId(),
                r.record(),
                replaced);
    }
}
