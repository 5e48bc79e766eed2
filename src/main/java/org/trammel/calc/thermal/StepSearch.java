package org.trammel.calc.thermal;

import java.util.ArrayList;
import java.util.List;

/** Finds the steps of a programme in a trace, and judges each. */
final class StepSearch {

    private static final int MOST_SHADES = 50;

    private final LoadTrace trace;
    private final RunRules rules;

    StepSearch(LoadTrace trace, RunRules rules) {
        this.trace = trace;
        this.rules = rules;
    }

    List<StepResult> results(List<OvenStep> steps) {
        List<List<TimeInBand.Part>> inBand = new ArrayList<>();
        for (OvenStep step : steps) {
            inBand.add(TimeInBand.parts(
                    trace, step.least_degC() - rules.coldestPlace_K(), step.most_degC() - rules.coldestPlace_K()));
        }
        List<StepResult> results = new ArrayList<>();
        double begin = 0;
        double left = 0;
        double since = 0;
        for (int i = 0; i < steps.size(); i++) {
            double entered = entry(inBand.get(i), begin);
            if (Double.isNaN(entered)) {
                results.add(notReached(steps.get(i), since));
                continue;
            }
            double end = i + 1 < steps.size() ? entry(inBand.get(i + 1), entered) : trace.length_s();
            end = Double.isNaN(end) ? trace.length_s() : end;
            List<TimeInBand.Part> soak = within(inBand.get(i), entered, end);
            double settled = i + 1 < steps.size() ? beforeNext(steps.get(i), entered, end) : end;
            results.add(result(steps.get(i), soak, left, entered, settled));
            begin = end;
            since = entered;
            left = soak.get(soak.size() - 1).until_s();
        }
        return results;
    }

    /** When a band is first entered from a second on; no number if never. */
    private static double entry(List<TimeInBand.Part> parts, double from) {
        for (TimeInBand.Part part : parts) {
            if (part.until_s() > from) {
                return Math.max(from, part.from_s());
            }
        }
        return Double.NaN;
    }

    private static List<TimeInBand.Part> within(List<TimeInBand.Part> parts, double from, double until) {
        List<TimeInBand.Part> within = new ArrayList<>();
        for (TimeInBand.Part part : parts) {
            if (part.until_s() > from && part.from_s() < until) {
                within.add(part);
            }
        }
        return within;
    }

    /** The last second before the next step at which no load thermocouple was above the band: what follows is the way there. */
    private double beforeNext(OvenStep step, double entered, double end) {
        double last = entered;
        for (int row = trace.row(entered); row < trace.rows() && trace.time_s(row) <= end; row++) {
            if (trace.hottest_degC(row, 0) + rules.hottestPlace_K() <= step.most_degC()) {
                last = Math.max(last, trace.time_s(row));
            }
        }
        return last;
    }

    private StepResult notReached(OvenStep step, double begin) {
        double hottest = Double.NEGATIVE_INFINITY;
        for (int row = trace.row(begin); row < trace.rows(); row++) {
            hottest = Math.max(hottest, trace.coldest_degC(row, 0));
        }
        return new StepResult(
                step,
                new TimeInBand(0, 0, 0, 0, null, null),
                List.of(),
                null,
                null,
                null,
                List.of(new Finding(
                        Judged.NOT_CONFORMING,
                        "The coldest load thermocouple never lay in " + step.band() + "; it came to "
                                + Said.degC(hottest + rules.coldestPlace_K()) + ".")));
    }

    private StepResult result(OvenStep step, List<TimeInBand.Part> parts, double left, double entered, double end) {
        TimeInBand soak = TimeInBand.of(trace, parts);
        double hottest = hottest(entered, end) + rules.hottestPlace_K();
        double spread = spread(parts);
        double rise = rise(left, entered);
        double hidden = trace.hidden_h(entered, end);
        List<Finding> findings = new ArrayList<>();
        findings.add(soak(step, soak));
        if (step.longestSoak_h() != null) {
            findings.add(Finding.upTo(
                    RunVerdict.reaches(step.longestSoak_h(), soak.total_h()),
                    hidden,
                    "The soak took " + Said.hours(soak.total_h()) + "; at most " + Said.hours(step.longestSoak_h())
                            + " are allowed."));
        }
        double overshoot = step.overshoot_K() == null ? step.above_K() : step.overshoot_K();
        findings.add(Finding.upTo(
                hottest - step.set_degC() <= overshoot + 1e-9,
                hidden,
                "The hottest load thermocouple came to " + Said.degC(hottest) + ", "
                        + Said.kelvins(Math.abs(hottest - step.set_degC()))
                        + (hottest < step.set_degC() ? " below " : " above ") + Said.degC(step.set_degC())
                        + "; at most "
                        + Said.kelvins(overshoot) + " above it are allowed."));
        if (step.spread_K() != null) {
            findings.add(Finding.upTo(
                    spread <= step.spread_K() + 1e-9,
                    hidden,
                    "The load thermocouples differed by up to " + Said.kelvins(spread) + "; at most "
                            + Said.kelvins(step.spread_K()) + " are allowed."));
        }
        if (step.steepestRise_KPerH() != null) {
            findings.add(Finding.upTo(
                    rise <= step.steepestRise_KPerH() + 1e-6,
                    trace.hidden_h(left, entered),
                    "On the way to it a load thermocouple rose by up to " + Said.figure(rise, 1) + " K/h; at most "
                            + Said.figure(step.steepestRise_KPerH(), 1) + " K/h are allowed."));
        }
        List<LoadTrace.Stretch> shades = parts.stream()
                .limit(MOST_SHADES)
                .map(part -> new LoadTrace.Stretch(trace.at(part.from_s()), trace.at(part.until_s())))
                .toList();
        return new StepResult(step, soak, shades, hottest, spread, rise, findings);
    }

    private static Finding soak(OvenStep step, TimeInBand soak) {
        double got = step.unbroken() ? soak.longest_h() : soak.total_h();
        double recorded = Math.max(0, got - soak.inGaps_h());
        Judged judged = !RunVerdict.reaches(got, step.soak_h())
                ? Judged.NOT_CONFORMING
                : RunVerdict.reaches(recorded, step.soak_h()) ? Judged.CONFORMING : Judged.UNDECIDED;
        return new Finding(
                judged,
                "The coldest load thermocouple lay in " + step.band() + " for " + Said.hours(soak.total_h())
                        + (soak.parts() > 1
                                ? " in " + soak.parts() + " parts, the longest " + Said.hours(soak.longest_h())
                                : "")
                        + (soak.inGaps_h() > 0
                                ? ", " + Said.hours(soak.inGaps_h()) + " of it in gaps of the record"
                                : "")
                        + "; at least " + Said.hours(step.soak_h()) + (step.unbroken() ? " in one part" : "")
                        + " are asked for.");
    }

    private double hottest(double from, double until) {
        double hottest = Double.NEGATIVE_INFINITY;
        for (int channel = 0; channel < trace.channels().size(); channel++) {
            hottest = Math.max(hottest, Math.max(trace.degC(channel, from), trace.degC(channel, until)));
            for (int row = trace.row(from) + 1; row < trace.rows() && trace.time_s(row) <= until; row++) {
                hottest = Math.max(hottest, trace.degC(channel, row));
            }
        }
        return hottest;
    }

    /** Greatest difference at the readings and at the ends of the parts. */
    private double spread(List<TimeInBand.Part> parts) {
        double spread = 0;
        for (TimeInBand.Part part : parts) {
            spread = Math.max(spread, Math.max(spreadAt(part.from_s()), spreadAt(part.until_s())));
            for (int row = trace.row(part.from_s()) + 1;
                    row < trace.rows() && trace.time_s(row) < part.until_s();
                    row++) {
                spread = Math.max(spread, trace.hottest_degC(row, 0) - trace.coldest_degC(row, 0));
            }
        }
        return spread;
    }

    private double spreadAt(double second) {
        double coldest = Double.POSITIVE_INFINITY;
        double hottest = Double.NEGATIVE_INFINITY;
        for (int channel = 0; channel < trace.channels().size(); channel++) {
            coldest = Math.min(coldest, trace.degC(channel, second));
            hottest = Math.max(hottest, trace.degC(channel, second));
        }
        return hottest - coldest;
    }

    /**
     * Steepest rise over a window of a given length. Between readings lines are straight, so that the rise over a window is
     * greatest where one of its ends stands on a reading or on an end of the way.
     */
    private double rise(double from, double until) {
        double window = Math.min(rules.rise().toMillis() / 1000.0, until - from);
        if (!(window > 0)) {
            return 0;
        }
        double steepest = Double.NEGATIVE_INFINITY;
        for (int channel = 0; channel < trace.channels().size(); channel++) {
            steepest = Math.max(steepest, rise(channel, from, window));
            steepest = Math.max(steepest, rise(channel, until - window, window));
            for (int row = trace.row(from) + 1; row < trace.rows() && trace.time_s(row) <= until; row++) {
                double second = trace.time_s(row);
                if (second + window <= until) {
                    steepest = Math.max(steepest, rise(channel, second, window));
                }
                if (second - window >= from) {
                    steepest = Math.max(steepest, rise(channel, second - window, window));
                }
            }
        }
        return steepest;
    }

    private double rise(int channel, double from, double window) {
        return (trace.degC(channel, from + window) - trace.degC(channel, from)) / window * 3600;
    }
}
