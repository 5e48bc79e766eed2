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

    static Answer<ControlChart> of(
            ChartedBefore before, List<Double> readings, Baseline baseline, WeightedMeanSetting setting) {
        Asked asked = before.ask(readings, baseline);
        asked.share("weight", "weight of the newest reading", setting.weight());
        asked.above0("width", "width of the limits", setting.width());
        return ChartedBefore.answer(asked, () -> charted(before, readings, baseline, setting));
    }

    private static ControlChart charted(
            ChartedBefore before, List<Double> readings, Baseline baseline, WeightedMeanSetting setting) {
        double weight = setting.weight();
        double widest = setting.width() * baseline.sigma() * Math.sqrt(weight / (2 - weight));
        double mean = before.mean();
        List<Point> points = new ArrayList<>(readings.size());
        for (int i = 0; i < readings.size(); i++) {
            mean = weight * readings.get(i) + (1 - weight) * mean;
            int index = before.count() + i;
            double left = Math.pow(1 - weight, 2.0 * (index + 1));
            double width = setting.settled() ? widest : widest * Math.sqrt(1 - left);
            points.add(new Point(index, mean, baseline.mean() - width, baseline.mean() + width));
        }
        Trace trace = new Trace(Plotted.WEIGHTED_MEAN, baseline.mean(), points);
        Alarms alarms = new Alarms(baseline.sigma());
        alarms.beyond(trace);
        return new ControlChart(Kind.WEIGHTED_MEAN, baseline, List.of(trace), alarms.inOrder());
    }
}
