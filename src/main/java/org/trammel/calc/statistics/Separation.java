package org.trammel.calc.statistics;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.distribution.continuous.FDistribution;
import org.hipparchus.distribution.continuous.TDistribution;
import org.hipparchus.linear.RealVector;
import org.trammel.calc.statistics.Attribution.Difference;
import org.trammel.calc.statistics.Attribution.Effect;
import org.trammel.calc.units.Answer;

/** The work behind {@link Attribution}: one set of readings, once laid out by its causes. */
final class Separation {

    private final List<String> factors;
    private final double[] y;
    private final Causes causes;
    private final Confounding confounding;
    private final RealVector additions;
    private final double left;

    private Separation(List<String> factors, List<List<String>> levels, double[] y) {
        this.factors = factors;
        this.y = y;
        causes = new Causes(levels);
        confounding = Confounding.of(factors, levels);
        additions = causes.additions(y);
        left = causes.left(y, additions);
    }

    static Answer<Attribution> attribution(List<String> factors, List<Attribution.Reading> readings) {
        double[] y = readings.stream().mapToDouble(Attribution.Reading::value).toArray();
        Summary summary = Summary.ofNumbers(y);
        for (int i = 0; i < y.length; i++) {
            y[i] -= summary.mean();
        }
        List<List<String>> levels = readings.stream()
                .map(reading -> factors.stream().map(reading.levels()::get).toList())
                .toList();
        Separation separation = new Separation(factors, levels, y);
        int degreesOfFreedom = y.length - separation.causes.rank();
        if (degreesOfFreedom < 1) {
            return Answer.none(
                    "readings",
                    "The " + y.length + " readings are no more than what they may hang on: nothing is left to tell a"
                            + " difference from chance.");
        }
        double s = Math.sqrt(separation.left / degreesOfFreedom);
        if (!Asked.spread(s, Math.max(Math.abs(summary.least()), Math.abs(summary.most())))) {
            return Answer.none(
                    "readings",
                    "Readings made alike agree to the last digit: without spread a difference cannot be told from"
                            + " chance. Finer readings would show.");
        }
        List<Answer<Effect>> effects = new ArrayList<>();
        for (int f = 0; f < factors.size(); f++) {
            effects.add(separation.effect(f, s, degreesOfFreedom));
        }
        return Answer.of(new Attribution(y.length, summary.mean(), s, degreesOfFreedom, effects));
    }

    private Answer<Effect> effect(int f, double s, int degreesOfFreedom) {
        String factor = factors.get(f);
        List<String> levels = causes.levels(f);
        if (levels.size() == 1) {
            return Answer.none(
                    factor,
                    "All readings come from " + factor + " " + levels.get(0) + ": there is no other to compare.");
        }
        List<List<String>> apart = apart(f, levels);
        List<String> open = new ArrayList<>();
        for (List<String> set : apart.subList(1, apart.size())) {
            open.add(confounding.words(f, apart.get(0).get(0), set.get(0)));
        }
        double pairs = levels.size() * (levels.size() - 1) / 2.0;
        double needed =
                new TDistribution(degreesOfFreedom).inverseCumulativeProbability(1 - (1 - Interval.LEVEL) / 2 / pairs);
        List<Difference> differences = new ArrayList<>();
        for (List<String> set : apart) {
            for (int i = 0; i < set.size(); i++) {
                for (String other : set.subList(i + 1, set.size())) {
                    differences.add(difference(f, set.get(i), other, s, needed));
                }
            }
        }
        if (differences.isEmpty()) {
            return new Answer.NotDeterminable<>(
                    open.stream().map(words -> new Answer.Gap(factor, words)).toList());
        }
        differences.sort((a, b) -> Double.compare(b.difference(), a.difference()));
        Causes without = confounding.without().get(f);
        int taken = causes.rank() - without.rank();
        double ratio = Math.max(0, (without.left(y, without.additions(y)) - left) / taken / (s * s));
        double probability = 1 - new FDistribution(taken, degreesOfFreedom).cumulativeProbability(ratio);
        return Answer.of(new Effect(factor, ratio, probability, differences, open));
    }

    /** Sets of levels; those of one set can be compared, those of two cannot. */
    private List<List<String>> apart(int f, List<String> levels) {
        List<List<String>> sets = new ArrayList<>();
        for (String level : levels) {
            List<String> fitting = sets.stream()
                    .filter(set -> causes.separates(f, set.get(0), level))
                    .findFirst()
                    .orElse(null);
            if (fitting == null) {
                fitting = new ArrayList<>();
                sets.add(fitting);
            }
            fitting.add(level);
        }
        return sets;
    }

    private Difference difference(int f, String one, String other, double s, double needed) {
        double difference = causes.difference(additions, f, one, other);
        double error = s * causes.error(f, one, other);
        return new Difference(
                difference >= 0 ? one : other,
                difference >= 0 ? other : one,
                Math.abs(difference),
                error,
                Math.abs(difference) / error,
                needed);
    }
}
