package org.trammel.calc.metrology;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;

/**
 * A frame as a function of what was read on it: from the values of all quantities, in their order, to all deviations that
 * they tell, in the order of {@link Deviation}.
 */
final class FrameModel implements UnaryOperator<double[]> {

    private final List<Quantity> quantities;
    private final Datum.Source datum;
    private final List<FramePart> parts;
    private final List<Deviation> told;

    FrameModel(List<Quantity> quantities, Datum.Source datum, List<FramePart> parts) {
        this.quantities = List.copyOf(quantities);
        this.datum = datum;
        this.parts = List.copyOf(parts);
        Set<Deviation> all = new TreeSet<>();
        this.parts.forEach(part -> all.addAll(part.tells()));
        this.told = new ArrayList<>(all);
    }

    List<Quantity> quantities() {
        return quantities;
    }

    Datum.Source datum() {
        return datum;
    }

    List<FramePart> parts() {
        return parts;
    }

    List<Deviation> told() {
        return told;
    }

    @Override
    public double[] apply(double[] q) {
        Datum plane = datum.at(q);
        Map<Deviation, Double> into = new EnumMap<>(Deviation.class);
        parts.forEach(part -> part.tell(q, plane, into));
        double[] y = new double[told.size()];
        for (int j = 0; j < y.length; j++) {
            y[j] = into.getOrDefault(told.get(j), 0.0);
        }
        return y;
    }
}
