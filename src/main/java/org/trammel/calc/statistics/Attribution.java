package org.trammel.calc.statistics;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.trammel.calc.units.Answer;

/**
 * What a shift hangs on: differences between jigs, welders, tube sets, each freed from what the others add.
 *
 * <pre>
 * y = μ + jig + welder + tube set + ε   by least squares     s² = Σ (y − ŷ)² / (n − rank)
 * difference d with standard error e:   t = d/e, proven where |t| > t(1 − 0.05/(2 m); n − rank)
 * factor:  F = ((left without it − left)/(rank − rank without it)) / s²
 * </pre>
 *
 * m how many pairs of levels the factor has (Bonferroni: all its pairs together are wrongly called in at most 5 %).
 * Validity: additions that do not hang on each other, independent normal errors of one size. A difference that readings
 * cannot separate from another factor is refused, with what went together and one frame that would begin to separate it.
 *
 * <p>Source: S. R. Searle, Linear Models (1971), chapters 5 and 7; NIST/SEMATECH e-Handbook of Statistical Methods,
 * 7.4.3 (analysis of variance) and 7.4.7.3 (Bonferroni); chapters of Searle from memory.
 *
 * @param count n
 * @param mean of all readings
 * @param residualDeviation s
 * @param degreesOfFreedom n − rank
 * @param effects one for each factor, in the order asked, or why it has none
 */
public record Attribution(
        int count, double mean, double residualDeviation, int degreesOfFreedom, List<Answer<Effect>> effects) {

    public Attribution {
        effects = List.copyOf(effects);
    }

    /**
     * A reading with what had a hand in it.
     *
     * @param levels for each factor's name, such as "jig", the one that was used
     */
    public record Reading(double value, Map<String, String> levels) {

        public Reading {
            levels = Map.copyOf(levels);
        }
    }

    /**
     * What one factor adds.
     *
     * @param f ratio of what the factor takes up to s²
     * @param probability of an F as large if it added nothing, 0 to 1
     * @param differences of every two levels that can be separated, the largest first
     * @param open sentences for levels that cannot, one less than there are sets of levels apart
     */
    public record Effect(String factor, double f, double probability, List<Difference> differences, List<String> open) {

        public Effect {
            differences = List.copyOf(differences);
            open = List.copyOf(open);
        }
    }

    /**
     * How far one level lies above another.
     *
     * @param difference not below 0
     * @param needed t from which on a difference is proven
     */
    public record Difference(
            String higher, String lower, double difference, double standardError, double t, double needed) {

        public boolean proven() {
            return t > needed;
        }
    }

    /**
     * Looks for what the readings hang on.
     *
     * @param factors names of what may have a hand in it; every reading names its level of each
     */
    public static Answer<Attribution> of(List<String> factors, List<Reading> readings) {
        Asked asked = new Asked();
        asked.holds(!factors.isEmpty(), "factors", "Nothing is named that the readings could hang on.");
        asked.numbers(
                "readings", "Reading", readings.stream().map(Reading::value).toList());
        asked.holds(readings.size() >= 3, "readings", "Fewer than three readings tell nothing apart.");
        for (String factor : factors) {
            for (int i = 0; i < readings.size(); i++) {
                if (!asked.holds(
                        readings.get(i).levels().containsKey(factor),
                        factor,
                        "Reading " + (i + 1) + " does not name its " + factor + ".")) {
                    break;
                }
            }
        }
        return asked.met() ? Separation.attribution(factors, readings) : asked.refusal();
    }

    /** What was found, a sentence or more for each factor. */
    public List<String> sentences() {
        List<String> sentences = new ArrayList<>();
        for (int i = 0; i < effects.size(); i++) {
            sentences.addAll(sentencesOf(i));
        }
        return sentences;
    }

    /**
     * What was found by one factor, or why nothing.
     *
     * @param factor its place among those asked, from 0
     */
    public List<String> sentencesOf(int factor) {
        List<String> sentences = new ArrayList<>();
        if (effects.get(factor) instanceof Answer.NotDeterminable<Effect> none) {
            none.gaps().forEach(gap -> sentences.add(gap.words()));
            return sentences;
        }
        Effect effect = ((Answer.Determined<Effect>) effects.get(factor)).value();
        List<String> proven = new ArrayList<>();
        for (Difference each : effect.differences()) {
            if (each.proven()) {
                proven.add(each.higher() + " lies " + Written.to(each.difference(), 10 * residualDeviation) + " above "
                        + each.lower() + " (t " + Written.decimals(each.t(), 1) + ", "
                        + Written.decimals(each.needed(), 1) + " would do)");
            }
        }
        sentences.add(
                proven.isEmpty()
                        ? "No difference by " + effect.factor() + " is proven."
                        : "By " + effect.factor() + ": " + String.join("; ", proven) + ".");
        sentences.addAll(effect.open());
        return sentences;
    }
}
