package org.trammel.calc.metrology;

import java.util.ArrayList;
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
        List<Vec> points = new ArrayList<>(spots.size());
        for (Spot spot : spots) {
            points.add(spot.at(q));
        }
        return points;
    }

    /** Weights of a fit: by the own variances, all alike where one of them is zero. */
    static double[] weights(List<Spot> spots) {
        double least = Double.MAX_VALUE;
        for (Spot spot : spots) {
            least = Math.min(least, spot.ownVariance_mm2());
        }
        double[] weights = new double[spots.size()];
        for (int i = 0; i < weights.length; i++) {
            weights[i] = least > 0 ? least / spots.get(i).ownVariance_mm2() : 1;
        }
        return weights;
    }
}
