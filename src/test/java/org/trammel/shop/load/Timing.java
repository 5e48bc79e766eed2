package org.trammel.shop.load;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** How long one thing took, over all rounds of a measurement. */
final class Timing {

    private final List<long[]> rounds = new ArrayList<>();
    private final List<Double> perSecond = new ArrayList<>();

    /** @param nanos of each time it was done in a round, by all clients */
    void add(long[] nanos, long wallNanos) {
        long[] sorted = nanos.clone();
        Arrays.sort(sorted);
        rounds.add(sorted);
        perSecond.add(nanos.length * 1e9 / wallNanos);
    }

    double medianMs() {
        return millis(all(), 0.5);
    }

    double p99Ms() {
        return millis(all(), 0.99);
    }

    /** The median over another's, round by round: the least and the most. */
    double[] ratiosTo(Timing other) {
        double[] ratios = new double[rounds.size()];
        for (int i = 0; i < ratios.length; i++) {
            ratios[i] = millis(rounds.get(i), 0.5) / millis(other.rounds.get(i), 0.5);
        }
        Arrays.sort(ratios);
        return ratios;
    }

    /** Number, least, median, 99 of 100 below, most, all in ms, and how many a second in the middling round. */
    String line() {
        long[] all = all();
        List<Double> rates = perSecond.stream().sorted().toList();
        return String.format(
                Locale.ROOT,
                "%6d | %7.2f | %7.2f | %7.2f | %7.2f | %6.0f",
                all.length,
                millis(all, 0),
                millis(all, 0.5),
                millis(all, 0.99),
                millis(all, 1),
                rates.get(rates.size() / 2));
    }

    private long[] all() {
        return rounds.stream().flatMapToLong(Arrays::stream).sorted().toArray();
    }

    /** The smallest time that so large a share of all did not exceed. */
    private static double millis(long[] sorted, double share) {
        int place = (int) Math.ceil(share * sorted.length) - 1;
        return sorted[Math.max(0, place)] / 1e6;
    }
}
