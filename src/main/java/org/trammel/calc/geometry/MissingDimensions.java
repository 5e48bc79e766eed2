package org.trammel.calc.geometry;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** What is missing where a plan does not come to an end: for every knot of relations that hang together, how many. */
final class MissingDimensions {

    private MissingDimensions() {}

    static List<ClosureOutcome.Missing> of(ClosurePlan plan, Independence independence, Set<Dimension> given) {
        if (independence.isComplete()) {
            return List.of(easing(given));
        }
        List<ClosureOutcome.Missing> missing = new ArrayList<>();
        int unknown = ((1 << Figures.ALONG + 1) - 1) & ~plan.known();
        while (unknown != 0) {
            int knot = knot(Integer.lowestOneBit(unknown), plan);
            int relations = 0;
            for (Relation relation : Relation.values()) {
                if ((plan.left() >> relation.ordinal() & 1) == 1 && (relation.mask() & knot) != 0) {
                    relations++;
                }
            }
            List<Dimension> among = new ArrayList<>();
            for (int place = 0; place < Figures.ALONG; place++) {
                if ((knot >> place & 1) == 1 && independence.lacks(Dimension.at(place))) {
                    among.add(Dimension.at(place));
                }
            }
            missing.add(new ClosureOutcome.Missing(Integer.bitCount(knot) - relations, among));
            unknown &= ~knot;
        }
        return missing;
    }

    /** Where enough is given but two values would have to be tried at once: one more, with which that is not so. */
    private static ClosureOutcome.Missing easing(Set<Dimension> given) {
        List<Dimension> among = new ArrayList<>();
        for (int place = 0; place < Figures.ALONG; place++) {
            Set<Dimension> more = EnumSet.copyOf(given);
            if (more.add(Dimension.at(place))
                    && ClosurePlan.of(Independence.of(more).used()).isComplete()) {
                among.add(Dimension.at(place));
            }
        }
        return new ClosureOutcome.Missing(1, among);
    }

    /** Every unknown place that hangs together with one. */
    private static int knot(int one, ClosurePlan plan) {
        int knot = one;
        boolean grows = true;
        while (grows) {
            grows = false;
            for (Relation relation : Relation.values()) {
                int unknown = relation.mask() & ~plan.known();
                if ((plan.left() >> relation.ordinal() & 1) == 1 && (unknown & knot) != 0 && (unknown & ~knot) != 0) {
                    knot |= unknown;
                    grows = true;
                }
            }
        }
        return knot;
    }
}
