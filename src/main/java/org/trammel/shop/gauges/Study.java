package org.trammel.shop.gauges;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.statistics.GaugeStudy;
import org.trammel.calc.units.Answer;

/**
 * A study of a gauge with what it comes to.
 *
 * @param tolerance width of what the gauge is to judge, in the unit; null if none was given
 * @param readings in the order they were entered; appraisers by letters unless the reader is the QA lead
 * @param byVariances null where there is none; then {@code withoutVariances} says why
 * @param byRanges null where there is none; then {@code withoutRanges} says why
 */
public record Study(
        long id,
        String gauge,
        String what,
        String unit,
        @Nullable BigDecimal tolerance,
        List<StudyReading> readings,
        @Nullable GaugeStudy byVariances,
        String withoutVariances,
        @Nullable GaugeStudy byRanges,
        String withoutRanges,
        long by,
        Instant at) {

    static String reason(Answer<GaugeStudy> answer) {
        return answer instanceof Answer.NotDeterminable<GaugeStudy> none
                ? String.join(" ", none.gaps().stream().map(Answer.Gap::words).toList())
                : "";
    }

    static @Nullable GaugeStudy value(Answer<GaugeStudy> answer) {
        return answer instanceof Answer.Determined<GaugeStudy> there ? there.value() : null;
    }
}
