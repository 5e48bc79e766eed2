package org.trammel.calc.statistics;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.trammel.calc.statistics.ControlChart.Alarm;
import org.trammel.calc.statistics.ControlChart.Point;
import org.trammel.calc.statistics.ControlChart.Trace;

/** Gathers what is found on the traces of one chart. */
final class Alarms {

    private final List<Alarm> found = new ArrayList<>();
    private final double sigma;

    /**
     * Begins.
     *
     * @param sigma standard deviation of readings or means; above 0
     */
    Alarms(double sigma) {
        this.sigma = sigma;
    }

    /** Tells each point of a trace beyond its limits. */
    void beyond(Trace trace) {
        trace.points().forEach(point -> beyond(trace, point));
    }

    private void beyond(Trace trace, Point point) {
        if (point.value() > point.upper()) {
            tell(trace, point, RunRule.BEYOND_LIMITS, point.upper());
        } else if (point.value() < point.lower()) {
            tell(trace, point, RunRule.BEYOND_LIMITS, point.lower());
        }
    }

    /**
     * Tells each point of a trace that completes a pattern; limits too, if they are among the rules.
     *
     * @param recent what was plotted before its first point, which a pattern may have begun with
     */
    void patterns(List<Double> recent, Trace trace, Set<RunRule> rules) {
        Runs runs = new Runs();
        recent.forEach(value -> runs.take((value - trace.centre()) / sigma));
        RunRule[] looked = rules.toArray(new RunRule[0]);
        for (Point point : trace.points()) {
            runs.take((point.value() - trace.centre()) / sigma);
            for (RunRule rule : looked) {
                if (rule == RunRule.BEYOND_LIMITS) {
                    beyond(trace, point);
                } else if (runs.completes(rule)) {
                    tell(trace, point, rule, trace.centre());
                }
            }
        }
    }

    private void tell(Trace trace, Point point, RunRule rule, double bound) {
        found.add(new Alarm(point.index(), trace.plotted(), rule, point.value(), bound, sigma));
    }

    List<Alarm> inOrder() {
        found.sort(Comparator.comparingInt(Alarm::index));
        return found;
    }
}
