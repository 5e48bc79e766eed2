package org.trammel.calc.statistics;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.statistics.GaugeStudy.Component;
import org.trammel.calc.statistics.GaugeStudy.Source;
import org.trammel.calc.units.Answer;

/**
 * Readings of a gauge study in their places.
 *
 * @param values by part, appraiser, trial
 */
record Crossed(List<String> parts, List<String> appraisers, double[][][] values) {

    static Answer<Crossed> of(List<GaugeStudy.Reading> readings, @Nullable Double tolerance) {
        Asked asked = new Asked();
        asked.numbers(
                "readings",
                "Reading",
                readings.stream().map(GaugeStudy.Reading::value).toList());
        if (tolerance != null) {
            asked.above0("tolerance", "width of the tolerance", tolerance);
        }
        Set<String> parts = new LinkedHashSet<>();
        Set<String> appraisers = new LinkedHashSet<>();
        Map<List<String>, List<Double>> cells = new LinkedHashMap<>();
        for (GaugeStudy.Reading reading : readings) {
            parts.add(reading.part());
            appraisers.add(reading.appraiser());
            cells.computeIfAbsent(List.of(reading.part(), reading.appraiser()), cell -> new ArrayList<>())
                    .add(reading.value());
        }
        asked.holds(parts.size() >= 2, "readings", "A study needs two parts or more, there are " + parts.size() + ".");
        asked.holds(
                appraisers.size() >= 2,
                "readings",
                "A study needs two appraisers or more, there are " + appraisers.size() + ".");
        int trials = cells.isEmpty() ? 0 : cells.values().iterator().next().size();
        asked.holds(trials >= 2, "readings", "Each must measure each part twice or more, else nothing repeats itself.");
        if (!asked.met()) {
            return asked.refusal();
        }
        double[][][] values = new double[parts.size()][appraisers.size()][];
        int p = 0;
        for (String part : parts) {
            int a = 0;
            for (String appraiser : appraisers) {
                List<Double> cell = cells.getOrDefault(List.of(part, appraiser), List.of());
                if (!asked.holds(
                        cell.size() == trials,
                        "readings",
                        "Part " + part + " was measured by " + appraiser + " " + cell.size() + " times and not "
                                + trials + " as the first: each must measure each as often.")) {
                    return asked.refusal();
                }
                values[p][a++] = Summary.numbers(cell);
            }
            p++;
        }
        return Answer.of(new Crossed(List.copyOf(parts), List.copyOf(appraisers), values));
    }

    int trials() {
        return values[0][0].length;
    }

    double mean() {
        double sum = 0;
        for (int p = 0; p < parts.size(); p++) {
            sum += partMean(p);
        }
        return sum / parts.size();
    }

    double partMean(int part) {
        double sum = 0;
        for (int a = 0; a < appraisers.size(); a++) {
            sum += cellMean(part, a);
        }
        return sum / appraisers.size();
    }

    double appraiserMean(int appraiser) {
        double sum = 0;
        for (int p = 0; p < parts.size(); p++) {
            sum += cellMean(p, appraiser);
        }
        return sum / parts.size();
    }

    double cellMean(int part, int appraiser) {
        return Summary.ofNumbers(values[part][appraiser]).mean();
    }

    double largest() {
        double largest = 0;
        for (double[][] part : values) {
            for (double[] cell : part) {
                for (double value : cell) {
                    largest = Math.max(largest, Math.abs(value));
                }
            }
        }
        return largest;
    }

    /** Without an answer where nothing repeats itself but exactly. */
    Answer<Crossed> spread(double repeatability) {
        return Asked.spread(repeatability, largest())
                ? Answer.of(this)
                : Answer.none(
                        "readings",
                        "Every appraiser reads the same every time: the gauge is too coarse to show how well it repeats.");
    }

    /** Puts a study together from what repeats, appraisers and parts add. */
    Answer<GaugeStudy> study(
            double repeatability,
            double reproducibility,
            double ofParts,
            @Nullable Double tolerance,
            GaugeStudy.@Nullable Variances variances,
            GaugeStudy.@Nullable Ranges ranges) {
        double gauge = Math.hypot(repeatability, reproducibility);
        double total = Math.hypot(gauge, ofParts);
        double[] deviations = {repeatability, reproducibility, gauge, ofParts, total};
        List<Component> components = new ArrayList<>();
        for (Source source : Source.values()) {
            double deviation = deviations[source.ordinal()];
            double share = deviation / total;
            components.add(new Component(
                    source, deviation, share * share, share, tolerance == null ? null : 6 * deviation / tolerance));
        }
        double raw = GaugeStudy.CATEGORIES_FACTOR * ofParts / gauge;
        int categories = (int) Math.max(1, Math.min(raw, Integer.MAX_VALUE));
        return Answer.of(new GaugeStudy(
                parts.size(), appraisers.size(), trials(), mean(), components, categories, raw, variances, ranges));
    }
}
