package org.trammel.calc.metrology;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.trammel.calc.units.Answer;
import org.trammel.calc.units.DecimalSign;

/**
 * What becomes of verdicts whose readings were taken with a gauge that failed its calibration since. Every deviation is
 * recomputed from the raw heights over the whole span of the possible error; its results are not corrected but tried.
 *
 * <p>Cleared by calculation is what conforms wherever in the span the truth lies. A verdict is monotone in the value
 * between the limits, so both ends of the span tell all of it.
 *
 * @param error the span
 * @param deviations of those that have limits, in the order of {@link Deviation}
 */
public record Rejudgement(ReadingError error, List<Rejudged> deviations) {

    public Rejudgement {
        deviations = List.copyOf(deviations);
    }

    /** What is to be done about a verdict. */
    public enum Outcome {
        /** No reading of the gauge is in it. */
        NOT_TOUCHED("not touched"),
        /** Conforms whatever the error was. */
        CLEARED("cleared by calculation"),
        /** Calculation cannot tell. */
        MEASURE_AGAIN("measure again");

        private final String words;

        Outcome(String words) {
            this.words = words;
        }

        /** As a sentence has it. */
        public String words() {
            return words;
        }
    }

    /**
     * One deviation over the span.
     *
     * @param measured as it was read
     * @param least mm, or rad for an angle
     * @param greatest the same
     * @param asRead verdict on the reading
     * @param atLeast verdict on the least value
     * @param atGreatest verdict on the greatest value
     */
    public record Rejudged(
            MeasuredDeviation measured,
            double least,
            double greatest,
            ConformityDecision asRead,
            ConformityDecision atLeast,
            ConformityDecision atGreatest,
            Outcome outcome) {

        /** Least value in mm or degrees. */
        public BigDecimal judgedLeast() {
            return atLeast.basis().value();
        }

        /** Greatest value in mm or degrees. */
        public BigDecimal judgedGreatest() {
            return atGreatest.basis().value();
        }

        /** Whether the gauge's readings are in it and its error is not. */
        public boolean cancels() {
            return outcome != Outcome.NOT_TOUCHED
                    && judgedGreatest().subtract(judgedLeast()).doubleValue() < 1e-6;
        }

        /** One sentence. */
        public String words(DecimalSign sign) {
            String what = "The " + measured.what().words();
            String unit = measured.what().unit().equals("mm") ? " mm" : "°";
            if (outcome == Outcome.NOT_TOUCHED) {
                return what + " has no reading of this gauge in it.";
            }
            if (cancels()) {
                return what + ", " + sign.write(Figure.rounded(judgedLeast().doubleValue(), 3)) + unit
                        + ", is a difference in which the error of the gauge falls out: " + outcome.words() + ".";
            }
            return what + " lies between "
                    + sign.write(Figure.rounded(judgedLeast().doubleValue(), 3)) + " and "
                    + sign.write(Figure.rounded(judgedGreatest().doubleValue(), 3)) + unit
                    + ", whatever the error was: " + outcome.words() + ".";
        }
    }

    /** Of all deviations together: one that must be measured again makes it so. */
    public Outcome outcome() {
        return deviations.stream().map(Rejudged::outcome).max(Enum::compareTo).orElse(Outcome.NOT_TOUCHED);
    }

    /**
     * Re-judges a frame.
     *
     * @param readings raw, as they were stored
     * @param judging of each deviation that has limits
     */
    public static Answer<Rejudgement> of(
            AlignmentReadings readings, ReadingError error, Map<Deviation, Judging> judging) {
        return Alignment.model(readings).then(model -> {
            Propagation propagation = Propagation.of(model.quantities(), model);
            List<DeviationSpan> spans = DeviationSpan.of(model, propagation, error);
            List<Rejudged> all = new ArrayList<>();
            for (int j = 0; j < spans.size(); j++) {
                DeviationSpan span = spans.get(j);
                Judging how = judging.get(span.what());
                if (how != null && span.coordinate() != null) {
                    return Answer.none(
                            "gauge",
                            "The reading " + span.coordinate() + " was taken with " + error.gauge()
                                    + " and is a coordinate: an error over what a gauge reads says nothing of it, so it is measured"
                                    + " again.");
                }
                if (how != null) {
                    all.add(rejudged(
                            new MeasuredDeviation(span.what(), span.value(), propagation.budget(j)), span, how));
                }
            }
            return Answer.of(new Rejudgement(error, all));
        });
    }

    private static Rejudged rejudged(MeasuredDeviation measured, DeviationSpan span, Judging how) {
        ConformityDecision atLeast = how.judge(new MeasuredDeviation(measured.what(), span.least(), measured.budget()));
        ConformityDecision atGreatest =
                how.judge(new MeasuredDeviation(measured.what(), span.greatest(), measured.budget()));
        Outcome outcome = Outcome.MEASURE_AGAIN;
        if (!span.touched()) {
            outcome = Outcome.NOT_TOUCHED;
        } else if (atLeast instanceof ConformityDecision.Conforming
                && atGreatest instanceof ConformityDecision.Conforming) {
            outcome = Outcome.CLEARED;
        }
        return new Rejudged(measured, span.least(), span.greatest(), how.judge(measured), atLeast, atGreatest, outcome);
    }
}
