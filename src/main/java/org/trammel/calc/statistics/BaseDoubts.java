package org.trammel.calc.statistics;

import java.util.ArrayList;
import java.util.List;
import org.trammel.calc.statistics.ControlChart.Alarm;
import org.trammel.calc.units.Answer;

/**
 * What speaks against a base period, in words, for whoever chooses it: few readings, alarms inside the base itself,
 * neighbours that resemble each other.
 *
 * <pre>neighbours: |r₁| > 1.96/√n</pre>
 *
 * r₁ autocorrelation at lag 1. Positive makes σ from neighbours, and so the limits, too small. Source: bounds of
 * autocorrelation of independent readings, NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.3.1; twenty readings are
 * common practice.
 *
 * @param sentences one for each doubt; empty if nothing speaks against it
 */
public record BaseDoubts(List<String> sentences) {

    public BaseDoubts {
        sentences = List.copyOf(sentences);
    }

    /** Looks at the readings that a base of single readings would be taken from. */
    public static Answer<BaseDoubts> of(List<Double> readings) {
        return Baseline.ofReadings(readings)
                .then(base -> ControlChart.individuals(readings, base, RunRule.LIMITS_ALONE))
                .then(chart -> Answer.of(new BaseDoubts(doubts(Summary.ofNumbers(Summary.numbers(readings)), chart))));
    }

    private static List<String> doubts(Summary summary, ControlChart chart) {
        List<String> sentences = new ArrayList<>();
        if (summary.count() < Baseline.USUAL_LEAST) {
            sentences.add("The base has " + summary.count() + " readings: limits from fewer than "
                    + Baseline.USUAL_LEAST + " may be far off.");
        }
        for (Alarm alarm : chart.alarms()) {
            sentences.add("The base does not stand still by its own limits. " + alarm.words());
        }
        if (Math.abs(summary.neighbours()) > Interval.Z / Math.sqrt(summary.count())) {
            sentences.add(
                    summary.neighbours() > 0
                            ? "Neighbouring readings of the base resemble each other: the limits are too narrow, or the"
                                    + " process wandered."
                            : "Neighbouring readings of the base go up and down in turn: two causes may be mixed, and the"
                                    + " limits are too wide.");
        }
        return sentences;
    }
}
