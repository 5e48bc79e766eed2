package org.trammel.calc.metrology;

import java.util.ArrayList;
import java.util.List;

/**
 * One figure as it was read from a gauge, never corrected.
 *
 * @param name of the station, once in a measurement, such as "ST at 100"
 * @param value_mm as read
 * @param gauge id of the gauge
 * @param contributions causes of doubt; at least one above zero
 */
public record RawReading(String name, double value_mm, String gauge, List<Contribution> contributions) {

    public RawReading {
        contributions = List.copyOf(contributions);
    }

    /** The same station, read as another figure. */
    public RawReading read(double other_mm) {
        return new RawReading(name, other_mm, gauge, contributions);
    }

    /** The same figure with one more cause of doubt. */
    public RawReading with(Contribution more) {
        List<Contribution> all = new ArrayList<>(contributions);
        all.add(more);
        return new RawReading(name, value_mm, gauge, all);
    }

    /** Variance of what is this reading's own, mm². */
    double ownVariance_mm2() {
        return contributions.stream()
                .filter(cause -> cause.sharedAs() == null)
                .mapToDouble(cause -> cause.u() * cause.u())
                .sum();
    }
}
