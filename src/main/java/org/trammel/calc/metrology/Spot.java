package org.trammel.calc.metrology;

import java.util.List;

/**
 * Where something lies, as the readings have it.
 *
 * @param place from the values of all quantities
 * @param ownVariance_mm2 what of its doubt no other spot shares; says how much it weighs in a fit
 */
record Spot(String name, Place place, double ownVariance_mm2) {

    /** From the values of all quantities to a point. */
    @FunctionalInterface
    interface Place {
        Vec at(double[] q);
    }

    Vec at(double[] q) {
        return place.at(q);
    }

    static List<Vec> at(List<Spot> spots, double[] q) {
        return spots.stream().map(spot -> spot.at(q)).toList();
    }

    /** Weights of a fit: by the own variances, all alike where one of them is zero. */
    static double[] weights(List<Spot> spots) {
        double least = spots.stream().mapToDouble(Spot::ownVariance_mm2).min().orElse(0);
        return spots.stream()
                .mapToDouble(spot -> least > 0 ? least / spot.ownVariance_mm2() : 1)
                .toArray();
    }
}
