package org.trammel.calc.metrology;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Least and greatest value of every result while the errors of groups of inputs run over their span independently.
 *
 * <p>The results are recomputed from the raw figures at corners of the span; which corner is told by the effect of each
 * group alone and then bettered by turning single groups until none helps, which finds the extremes of functions that are
 * nearly linear. What a result bows between the ends of a group's span is added on both sides, so that an extreme inside
 * is covered too: along one group a parabola rises above its ends by no more than its middle stands off the chord, and
 * the sum over the groups covers all. Of results that are linear, as all of a frame are to the last digits, the bounds are
 * exact.
 */
final class ErrorSpan {

    /** What a chord leaves of rounding is no bow. */
    private static final double ROUNDING = 1e-10;

    private final FrameModel model;
    private final double[] read;
    private final List<List<Integer>> groups;
    private final double low;
    private final double high;
    private final Map<BitSet, double[]> corners = new HashMap<>();

    /**
     * Sets the span up.
     *
     * @param groups of quantities that share an error; quantities outside all groups have none
     */
    ErrorSpan(FrameModel model, List<List<Integer>> groups, double low, double high) {
        this.model = model;
        this.read = Propagation.values(model.quantities());
        this.groups = groups;
        this.low = low;
        this.high = high;
    }

    /** For each result its least and its greatest value. */
    List<double[]> bounds() {
        double[] base = at(new BitSet());
        double[] bow = bow(base);
        List<double[]> all = new ArrayList<>();
        for (int j = 0; j < base.length; j++) {
            all.add(new double[] {extreme(j, -1) - bow[j], extreme(j, 1) + bow[j]});
        }
        return all;
    }

    private double[] bow(double[] base) {
        double[] bow = new double[base.length];
        for (int g = 0; g < groups.size(); g++) {
            BitSet alone = new BitSet();
            alone.set(g);
            double[] end = at(alone);
            double[] middle = model.apply(shifted(alone, (low + high) / 2));
            for (int j = 0; j < bow.length; j++) {
                double off = Math.abs(middle[j] - (base[j] + end[j]) / 2);
                bow[j] += off > ROUNDING ? off : 0;
            }
        }
        return bow;
    }

    private double extreme(int j, int sign) {
        BitSet at = new BitSet();
        double base = at(at)[j];
        for (int g = 0; g < groups.size(); g++) {
            BitSet alone = new BitSet();
            alone.set(g);
            at.set(g, sign * (at(alone)[j] - base) > 0);
        }
        double best = sign * at(at)[j];
        boolean better = true;
        while (better) {
            better = false;
            for (int g = 0; g < groups.size(); g++) {
                at.flip(g);
                double turned = sign * at(at)[j];
                if (turned > best) {
                    best = turned;
                    better = true;
                } else {
                    at.flip(g);
                }
            }
        }
        return sign * best;
    }

    private double[] at(BitSet high) {
        double[] known = corners.get(high);
        if (known == null) {
            known = model.apply(shifted(high, this.high));
            corners.put((BitSet) high.clone(), known);
        }
        return known;
    }

    /** The readings freed of an error that is so much for the named groups and the least for the others. */
    private double[] shifted(BitSet named, double error) {
        double[] q = read.clone();
        for (int g = 0; g < groups.size(); g++) {
            for (int i : groups.get(g)) {
                q[i] -= named.get(g) ? error : low;
            }
        }
        return q;
    }
}
