package org.trammel.calc.statistics;

import java.util.List;
import org.trammel.calc.units.Answer;

/**
 * The plain figures of a row of readings.
 *
 * <pre>
 * mean       x̄ = Σ x / n,  corrected by  Σ (x − x̄) / n
 * deviation  s = √( (Σ (x − x̄)² − (Σ (x − x̄))² / n) / (n − 1) )
 * neighbours r = Σ (xᵢ − x̄)(xᵢ₊₁ − x̄) / Σ (x − x̄)²
 * </pre>
 *
 * Validity: two readings or more. Readings that agree to their last digit have s = 0 and r is then given as 0.
 * Accuracy: two passes over the readings with the correction above, so that a small spread of large readings keeps its
 * digits.
 *
 * <p>Source: T. F. Chan, G. H. Golub, R. J. LeVeque, Algorithms for computing the sample variance, The American
 * Statistician 37 (1983) 242, the corrected two-pass algorithm (page from memory); autocorrelation at lag 1 as
 * NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.12.
 *
 * @param count n
 * @param mean x̄
 * @param deviation s; 0 if all agree
 * @param least smallest reading
 * @param most largest reading
 * @param neighbours autocorrelation at lag 1, −1 to 1: how far a reading resembles the one before it
 */
public record Summary(int count, double mean, double deviation, double least, double most, double neighbours) {

    /** Sums up two readings or more. */
    public static Answer<Summary> of(List<Double> readings) {
        Asked asked = new Asked();
        asked.numbers("readings", "Reading", readings);
        asked.holds(
                readings.size() >= 2,
                "readings",
                readings.isEmpty()
                        ? "There is no reading."
                        : "There is one reading only: it has no spread that could be told.");
        return asked.met() ? Answer.of(ofNumbers(numbers(readings))) : asked.refusal();
    }

    static double[] numbers(List<Double> readings) {
        return readings.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** The same of readings known to be numbers, two or more. */
    static Summary ofNumbers(double[] x) {
        double first = mean(x);
        double sum = 0;
        double squares = 0;
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (double each : x) {
            double off = each - first;
            sum += off;
            squares += off * off;
            least = Math.min(least, each);
            most = Math.max(most, each);
        }
        double centred = Math.max(0, squares - sum * sum / x.length);
        double deviation = Math.sqrt(centred / (x.length - 1));
        double mean = first + sum / x.length;
        if (!Asked.spread(deviation, Math.max(Math.abs(least), Math.abs(most)))) {
            return new Summary(x.length, mean, 0, least, most, 0);
        }
        double together = 0;
        for (int i = 1; i < x.length; i++) {
            together += (x[i - 1] - mean) * (x[i] - mean);
        }
        return new Summary(x.length, mean, deviation, least, most, together / centred);
    }

    private static double mean(double[] x) {
        double sum = 0;
        for (double each : x) {
            sum += each;
        }
        return sum / x.length;
    }
}
