package org.trammel.calc.statistics;

import org.trammel.calc.units.Answer;

/**
 * How many of all, as a share, and between which shares the true one lies.
 *
 * <pre>( p + z²/2n ∓ z √( p(1 − p)/n + z²/4n² ) ) / (1 + z²/n),   p = k/n</pre>
 *
 * z = 1.96. Validity: each of the n went its way without the others; any k from 0 to n. The interval never leaves 0 to
 * 1 and has a width even if all or none were.
 *
 * <p>Source: E. B. Wilson, Journal of the American Statistical Association 22 (1927) 209; R. G. Newcombe, Statistics in
 * Medicine 17 (1998) 857, method 3.
 *
 * @param hits k
 * @param count n
 * @param share k/n
 * @param interval at 95 %
 */
public record Proportion(int hits, int count, double share, Interval interval) {

    /** Reckons a share. */
    public static Answer<Proportion> of(int hits, int count) {
        Asked asked = new Asked();
        asked.holds(count > 0, "count", "There are " + count + " to take a share of.");
        asked.holds(hits >= 0, "hits", "The count " + hits + " is below 0.");
        if (asked.met()) {
            asked.holds(hits <= count, "hits", hits + " of " + count + " are more than all.");
        }
        return asked.met() ? Answer.of(ofCounts(hits, count)) : asked.refusal();
    }

    private static Proportion ofCounts(int hits, int count) {
        double n = count;
        double share = hits / n;
        double z2 = Interval.Z * Interval.Z;
        double middle = share + z2 / 2 / n;
        double half = Interval.Z * Math.sqrt(share * (1 - share) / n + z2 / 4 / n / n);
        double whole = 1 + z2 / n;
        return new Proportion(
                hits,
                count,
                share,
                new Interval(hits == 0 ? 0 : (middle - half) / whole, hits == count ? 1 : (middle + half) / whole));
    }
}
