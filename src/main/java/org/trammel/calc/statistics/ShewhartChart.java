package org.trammel.calc.statistics;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.trammel.calc.statistics.ControlChart.Kind;
import org.trammel.calc.statistics.ControlChart.Plotted;
import org.trammel.calc.statistics.ControlChart.Point;
import org.trammel.calc.statistics.ControlChart.Trace;
import org.trammel.calc.units.Answer;

/**
 * Charts with limits three standard deviations of what is plotted from its centre.
 *
 * <pre>
 * single readings    x̄ ∓ 3 σ        steps between neighbours   centre d₂(2) σ,  limits 0 and D₄(2) d₂(2) σ
 * means of groups    x̄ ∓ 3 σ/√n     ranges                     centre d₂ σ,  limits D₃ d₂ σ and D₄ d₂ σ
 *                                   standard deviations        centre c₄ σ,  limits B₃ c₄ σ and B₄ c₄ σ
 * </pre>
 *
 * x̄ and σ of the baseline, n size of the groups. With σ = R̄/d₂ or s̄/c₄ these are x̄ ∓ A₂ R̄, D₃ R̄, D₄ R̄, x̄ ∓ A₃ s̄, B₃ s̄,
 * B₄ s̄ of the printed tables. Validity: independent readings, nearly normal; single readings bear skewness badly. A
 * point on its limit is no alarm.
 *
 * <p>Source: ISO 7870-2 (Shewhart control charts); NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.1 and 6.3.2.2.
 */
final class ShewhartChart {

    private ShewhartChart() {}

    static Answer<ControlChart> individuals(
            ChartedBefore before, List<Double> readings, Baseline baseline, Set<RunRule> rules) {
        return ChartedBefore.answer(before.ask(readings, baseline), () -> singles(before, readings, baseline, rules));
    }

    private static ControlChart singles(
            ChartedBefore before, List<Double> readings, Baseline baseline, Set<RunRule> rules) {
        double sigma = baseline.sigma();
        ControlConstants two = ControlConstants.forSize(2);
        double step = two.d2() * sigma;
        double highest = two.rangeUpper() * step;
        double lower = baseline.mean() - 3 * sigma;
        double upper = baseline.mean() + 3 * sigma;
        List<Point> singles = new ArrayList<>(readings.size());
        List<Point> steps = new ArrayList<>(readings.size());
        int index = before.count();
        Double last = before.recent().isEmpty()
                ? null
                : before.recent().get(before.recent().size() - 1);
        for (Double reading : readings) {
            singles.add(new Point(index, reading, lower, upper));
            if (last != null) {
                steps.add(new Point(index, Math.abs(reading - last), 0, highest));
            }
            last = reading;
            index++;
        }
        Trace reading = new Trace(Plotted.READING, baseline.mean(), singles);
        Trace moving = new Trace(Plotted.MOVING_RANGE, step, steps);
        return chart(Kind.INDIVIDUALS, baseline, before.recent(), reading, sigma, moving, rules);
    }

    static Answer<ControlChart> meansAndRanges(List<List<Double>> groups, Baseline baseline, Set<RunRule> rules) {
        return Groups.of(groups).then(each -> {
            ControlConstants of = ControlConstants.forSize(each.size());
            Spread ranges = new Spread(Plotted.RANGE, Groups::range, of.d2(), of.rangeLower(), of.rangeUpper());
            return grouped(Kind.MEANS_AND_RANGES, each, baseline, ranges, rules);
        });
    }

    static Answer<ControlChart> meansAndDeviations(List<List<Double>> groups, Baseline baseline, Set<RunRule> rules) {
        return Groups.of(groups).then(each -> {
            ControlConstants of = ControlConstants.forSize(each.size());
            Spread deviations = new Spread(
                    Plotted.DEVIATION, Summary::deviation, of.c4(), of.deviationLower(), of.deviationUpper());
            return grouped(Kind.MEANS_AND_DEVIATIONS, each, baseline, deviations, rules);
        });
    }

    /** How the spread of groups is charted: its mean in units of σ, and limits by that mean. */
    private record Spread(Plotted plotted, ToDoubleFunction<Summary> figure, double mean, double lower, double upper) {}

    private static Answer<ControlChart> grouped(
            Kind kind, Groups groups, Baseline baseline, Spread spread, Set<RunRule> rules) {
        Asked asked = new Asked();
        baseline.ask(asked, groups.size());
        if (!asked.met()) {
            return asked.refusal();
        }
        double ofMeans = baseline.sigma() / Math.sqrt(groups.size());
        double centre = spread.mean() * baseline.sigma();
        List<Point> means = new ArrayList<>();
        List<Point> spreads = new ArrayList<>();
        for (int i = 0; i < groups.summaries().size(); i++) {
            Summary group = groups.summaries().get(i);
            means.add(new Point(i, group.mean(), baseline.mean() - 3 * ofMeans, baseline.mean() + 3 * ofMeans));
            double figure = spread.figure().applyAsDouble(group);
            spreads.add(new Point(i, figure, spread.lower() * centre, spread.upper() * centre));
        }
        Trace upper = new Trace(Plotted.MEAN, baseline.mean(), means);
        Trace under = new Trace(spread.plotted(), centre, spreads);
        return Answer.of(chart(kind, baseline, List.of(), upper, ofMeans, under, rules));
    }

    private static ControlChart chart(
            Kind kind,
            Baseline baseline,
            List<Double> recent,
            Trace centres,
            double sigma,
            Trace spreads,
            Set<RunRule> rules) {
        Alarms alarms = new Alarms(sigma);
        alarms.patterns(recent, centres, rules.isEmpty() ? rules : EnumSet.copyOf(rules));
        if (rules.contains(RunRule.BEYOND_LIMITS)) {
            alarms.beyond(spreads);
        }
        return new ControlChart(kind, baseline, List.of(centres, spreads), alarms.inOrder());
    }
}
