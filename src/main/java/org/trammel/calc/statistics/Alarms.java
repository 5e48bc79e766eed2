package org.trammel.calc.statistics;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.trammel.calc.statistics.ControlChart.Alarm;
import org.trammel.calc.statistics.ControlChart.Plotted;
import org.trammel.calc.statistics.ControlChart.Point;
import org.trammel.calc.statistics.ControlChart.Trace;

/** Gathers what is found on the traces of one chart. */
final class Alarms {

    private final List<Alarm> found = new ArrayList<>();
    private final String noun;
    private final double scale;

    /**
     * Begins.
     *
     * @param noun what a place in the list holds, as a sentence begins
     * @param scale by which figures are written; above 0
     */
    Alarms(String noun, double scale) {
        this.noun = noun;
        this.scale = scale;
    }

    /** Tells each point of a trace beyond its limits. */
    void beyond(Trace trace) {
        for (Point point : trace.points()) {
            if (point.value() > point.upper() || point.value() < point.lower()) {
                found.add(beyond(trace.plotted(), point));
            }
        }
    }

    /** Tells each point of a trace that completes a pattern; limits too, if they are among the rules. */
    void patterns(Trace trace, double sigma, Set<RunRule> rules) {
        Runs runs = new Runs();
        RunRule[] looked = rules.toArray(new RunRule[0]);
        for (Point point : trace.points()) {
            runs.take((point.value() - trace.centre()) / sigma);
            for (RunRule rule : looked) {
                if (rule == RunRule.BEYOND_LIMITS) {
                    if (point.value() > point.upper() || point.value() < point.lower()) {
                        found.add(beyond(trace.plotted(), point));
                    }
                } else if (runs.completes(rule)) {
                    found.add(pattern(trace, point, rule));
                }
            }
        }
    }

    private Alarm pattern(Trace trace, Point point, RunRule rule) {
        String words = at(point) + "the " + trace.plotted().words() + ", " + Written.to(point.value(), scale)
                + ", completes " + rule.found() + " of the centre line " + Written.to(trace.centre(), scale) + ".";
        return new Alarm(point.index(), trace.plotted(), rule, words);
    }

    private Alarm beyond(Plotted plotted, Point point) {
        boolean above = point.value() > point.upper();
        String words = at(point) + "the " + plotted.words() + ", " + Written.to(point.value(), scale)
                + (above ? ", is above its upper limit " : ", is below its lower limit ")
                + Written.to(above ? point.upper() : point.lower(), scale) + ".";
        return new Alarm(point.index(), plotted, RunRule.BEYOND_LIMITS, words);
    }

    private String at(Point point) {
        return noun + " " + (point.index() + 1) + ": ";
    }

    List<Alarm> inOrder() {
        found.sort(Comparator.comparingInt(Alarm::index));
        return found;
    }
}
