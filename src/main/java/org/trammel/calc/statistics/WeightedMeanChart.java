package org.trammel.calc.statistics;

import java.util.ArrayList;
import java.util.List;
import org.trammel.calc.statistics.ControlChart.Kind;
import org.trammel.calc.statistics.ControlChart.Plotted;
import org.trammel.calc.statistics.ControlChart.Point;
import org.trammel.calc.statistics.ControlChart.Trace;
import org.trammel.calc.units.Answer;

/**
 * The exponentially weighted moving mean.
 *
 * <pre>
 * zᵢ = λ xᵢ + (1 − λ) zᵢ₋₁,  z₀ = x̄
 * limits  x̄ ∓ L σ √( λ/(2 − λ) · (1 − (1 − λ)²ⁱ) );  settled: without the last factor
 * </pre>
 *
 * x̄ and σ of the baseline, i counted from 1. Validity: independent readings; nearly any distribution for small λ. A mean
 * on its limit is no alarm; the mean goes on after an alarm and stays beyond until the process returns.
 *
 * <p>Source: S. W. Roberts, Control chart tests based on geometric moving averages, Technometrics 1 (1959) 239; J. M.
 * Lucas, M. S. Saccucci, Exponentially weighted moving average control schemes, Technometrics 32 (1990) 1;
 * NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.4 (settled limits).
 */
final class WeightedMeanChart {

    private WeightedMeanChart() {}

    static Answer<ControlChart> of(List<Double> readings, Baseline baseline, WeightedMeanSetting setting) {
        Asked asked = new Asked();
        asked.numbers("readings", "Reading", readings);
        asked.holds(!readings.isEmpty(), "readings", "There is no reading to chart.");
        baseline.ask(asked, 1);
        asked.share("weight", "weight of the newest reading", setting.weight());
        asked.above0("width", "width of the limits", setting.width());
        if (!asked.met()) {
            return asked.refusal();
        }
        double weight = setting.weight();
        double widest = setting.width() * baseline.sigma() * Math.sqrt(weight / (2 - weight));
        double left = 1;
        double mean = baseline.mean();
        List<Point> points = new ArrayList<>(readings.size());
        for (int i = 0; i < readings.size(); i++) {
            mean = weight * readings.get(i) + (1 - weight) * mean;
            left *= (1 - weight) * (1 - weight);
            double width = setting.settled() ? widest : widest * Math.sqrt(1 - left);
            points.add(new Point(i, mean, baseline.mean() - width, baseline.mean() + width));
        }
        Trace trace = new Trace(Plotted.WEIGHTED_MEAN, baseline.mean(), points);
        Alarms alarms = new Alarms(baseline.sigma());
        alarms.beyond(trace);
        return Answer.of(new ControlChart(Kind.WEIGHTED_MEAN, baseline, List.of(trace), alarms.inOrder()));
    }
}
