package org.trammel.shop.inspection;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.calc.metrology.Limits;
import org.trammel.calc.metrology.ReadingError;
import org.trammel.calc.metrology.ReadingSpan;
import org.trammel.calc.metrology.Reduction;
import org.trammel.calc.units.Answer;

/**
 * Judges a reading again over the span its value may have had, by the limits, the rule and the guard band it was judged
 * by. It is cleared where its verdict is the same at every value of the span.
 */
@Component
class SpanJudge {

    /** What becomes of a reading, and why; no span where none can be said. */
    record Found(
            ReadingOutcome outcome, Ground ground, @Nullable TrueSpan span) {}

    /**
     * @param error null if nobody knows it
     * @param byHeights what is known from the raw heights, by reading
     * @param ofFigures whether several gauges read it, or it was computed from what one read: then the error is not its own
     */
    Found of(
            Reading reading,
            Reduction reduction,
            @Nullable GaugeError error,
            Map<Long, Answer<List<TrueSpan>>> byHeights,
            boolean ofFigures) {
        if (error == null) {
            return open(reading, Ground.ERROR_UNKNOWN);
        }
        Answer<List<TrueSpan>> known = byHeights.get(reading.id());
        if (known != null) {
            return known.then(spans -> over(reading, reduction, spans)) instanceof Answer.Determined<TrueSpan> there
                    ? judged(reading, there.value())
                    : open(reading, Ground.HEIGHTS_UNKNOWN);
        }
        if (!Objects.equals(reading.gaugeId(), error.gaugeId()) || reading.reductionId() != null || ofFigures) {
            return open(reading, Ground.HEIGHTS_UNKNOWN);
        }
        if (!reading.unit().equals(error.unit())) {
            return open(reading, Ground.OTHER_UNIT);
        }
        return plain(reading, reduction, error) instanceof Answer.Determined<TrueSpan> there
                ? judged(reading, there.value())
                : open(reading, Ground.HEIGHTS_UNKNOWN);
    }

    private static Answer<TrueSpan> over(Reading reading, Reduction reduction, List<TrueSpan> spans) {
        List<BigDecimal> least = spans.stream().map(TrueSpan::least).toList();
        List<BigDecimal> greatest = spans.stream().map(TrueSpan::greatest).toList();
        if (limits(reading).ofSize(reading.nominal())) {
            return ReadingSpan.overSizes(
                            spans.size() == 1 ? Reduction.SINGLE : reduction, least, greatest, limits(reading))
                    .then(span -> Answer.of(new TrueSpan(span.least(), span.greatest())));
        }
        return spans.size() == 1
                ? Answer.of(spans.get(0))
                : ReadingSpan.over(reduction, least, greatest, limits(reading))
                        .then(span -> Answer.of(new TrueSpan(span.least(), span.greatest())));
    }

    private static Limits limits(Reading reading) {
        return reading.lowerLimit() == null && reading.upperLimit() == null
                ? Limits.between(BigDecimal.ZERO, BigDecimal.ZERO)
                : new Limits(reading.lowerLimit(), reading.upperLimit());
    }

    /** The span of values that were read with the gauge itself, in the unit of its error. */
    private static Answer<TrueSpan> plain(Reading reading, Reduction reduction, GaugeError error) {
        if (error.least().compareTo(error.greatest()) == 0) {
            return Answer.of(new TrueSpan(reading.value(), reading.value()));
        }
        BigDecimal alike = error.unit().equals("mm") ? error.equalWithin_mm() : BigDecimal.ZERO;
        boolean size = limits(reading).ofSize(reading.nominal())
                && reduction != Reduction.SPAN
                && reduction != Reduction.COAXIAL;
        Answer<ReadingSpan> found = size
                ? ReadingSpan.overSizes(
                        reduction,
                        reading.judgedRaw().stream()
                                .map(value -> value.subtract(error.greatest()))
                                .toList(),
                        reading.judgedRaw().stream()
                                .map(value -> value.subtract(error.least()))
                                .toList(),
                        limits(reading))
                : ReadingSpan.of(
                        reduction,
                        reading.judgedRaw(),
                        limits(reading),
                        new ReadingError(error.gaugeCode(), error.least(), error.greatest(), alike));
        return found.then(span -> Answer.of(new TrueSpan(span.least(), span.greatest())));
    }

    private static Found open(Reading reading, Ground ground) {
        return reading.verdict() == Verdict.NOTED
                ? new Found(ReadingOutcome.CLEARED, Ground.NOTED, null)
                : new Found(ReadingOutcome.MEASURE_AGAIN, ground, null);
    }

    private static Found judged(Reading reading, TrueSpan span) {
        if (reading.verdict() == Verdict.NOTED) {
            return new Found(ReadingOutcome.CLEARED, Ground.NOTED, span);
        }
        return stands(reading, span)
                ? new Found(ReadingOutcome.CLEARED, Ground.STANDS, span)
                : new Found(ReadingOutcome.MEASURE_AGAIN, Ground.MAY_DIFFER, span);
    }

    private static boolean stands(Reading reading, TrueSpan span) {
        BigDecimal g = reading.guardBand();
        BigDecimal lower = reading.lowerLimit();
        BigDecimal upper = reading.upperLimit();
        return switch (reading.verdict()) {
            case NOTED -> true;
            case CONFORMING ->
                (lower == null || span.least().compareTo(lower.add(g)) >= 0)
                        && (upper == null || span.greatest().compareTo(upper.subtract(g)) <= 0);
            case NOT_CONFORMING ->
                lower != null && span.greatest().compareTo(lower.subtract(g)) < 0
                        || upper != null && span.least().compareTo(upper.add(g)) > 0;
            case UNDECIDED -> within(span, lower, g) || within(span, upper, g);
        };
    }

    /** Whether the whole span lies within the guard band of one limit, not on its conforming edge. */
    private static boolean within(TrueSpan span, @Nullable BigDecimal limit, BigDecimal g) {
        return limit != null
                && span.least().compareTo(limit.subtract(g)) > 0
                && span.greatest().compareTo(limit.add(g)) < 0;
    }
}
