package org.trammel.calc.statistics;

import java.util.ArrayList;
import java.util.List;
import org.trammel.calc.statistics.ControlChart.Kind;
import org.trammel.calc.statistics.ControlChart.Plotted;
import org.trammel.calc.statistics.ControlChart.Point;
import org.trammel.calc.statistics.ControlChart.Trace;
import org.trammel.calc.units.Answer;

/**
 * The cumulative sum in tabular form.
 *
 * <pre>
 * above  Sᵢ = max(0, Sᵢ₋₁ + xᵢ − x̄ − k σ)
 * below  Tᵢ = min(0, Tᵢ₋₁ + xᵢ − x̄ + k σ)
 * alarm where S > h σ or T < −h σ;  S₀ = T₀ = 0
 * </pre>
 *
 * x̄ and σ of the baseline. The sum below is kept negative, as it is drawn. Sums go on after an alarm. Validity:
 * independent readings, nearly normal.
 *
 * <p>Source: E. S. Page, Continuous inspection schemes, Biometrika 41 (1954) 100; NIST/SEMATECH e-Handbook of
 * Statistical Methods, 6.3.2.3; D. C. Montgomery, Introduction to Statistical Quality Control, chapter on the tabular
 * cusum.
 */
final class CumulativeSumChart {

    private CumulativeSumChart() {}

    static Answer<ControlChart> of(List<Double> readings, Baseline baseline, CumulativeSumSetting setting) {
        Asked asked = new Asked();
        asked.numbers("readings", "Reading", readings);
        asked.holds(!readings.isEmpty(), "readings", "There is no reading to chart.");
        baseline.ask(asked, 1);
        asked.notBelow0("slack", "slack", setting.slack());
        asked.above0("decision", "height at which a sum is an alarm", setting.decision());
        if (!asked.met()) {
            return asked.refusal();
        }
        double slack = setting.slack() * baseline.sigma();
        double decision = setting.decision() * baseline.sigma();
        double above = 0;
        double below = 0;
        List<Point> sumsAbove = new ArrayList<>(readings.size());
        List<Point> sumsBelow = new ArrayList<>(readings.size());
        for (int i = 0; i < readings.size(); i++) {
            double off = readings.get(i) - baseline.mean();
            above = Math.max(0, above + off - slack);
            below = Math.min(0, below + off + slack);
            sumsAbove.add(new Point(i, above, 0, decision));
            sumsBelow.add(new Point(i, below, -decision, 0));
        }
        Trace upper = new Trace(Plotted.SUM_ABOVE, 0, sumsAbove);
        Trace lower = new Trace(Plotted.SUM_BELOW, 0, sumsBelow);
        Alarms alarms = new Alarms(baseline.sigma());
        alarms.beyond(upper);
        alarms.beyond(lower);
        return Answer.of(new ControlChart(Kind.CUMULATIVE_SUM, baseline, List.of(upper, lower), alarms.inOrder()));
    }
}
