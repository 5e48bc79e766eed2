package org.trammel.calc.geometry;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * In which order the relations give what is not known. Where each one left has two unknowns or more, one unknown is
 * tried: as if it were known the others follow, until a relation is left over that tells the right value from the wrong.
 *
 * @param steps in order
 * @param known every place that is known at the end, as bits
 * @param left relations that still have an unknown, as bits
 */
record ClosurePlan(List<Step> steps, int known, int left) {

    /** A relation that gives one place, or a trial that gives several. */
    sealed interface Step {}

    /** A relation that gives a place by the others. */
    record Direct(Relation relation, int place) implements Step {}

    /** A place that is tried: the steps that follow from it, and the relation that is left over. */
    record Trial(int place, List<Direct> steps, Relation check) implements Step {}

    private static final Relation[] RELATIONS = Relation.values();

    /** What is tried first: the head angle, on which most depends. */
    private static final int[] TRIED = {
        Dimension.HEAD_ANGLE.ordinal(),
        Figures.ALONG,
        Dimension.STACK.ordinal(),
        Dimension.SHELL_DROP.ordinal(),
        Dimension.FRONT_CENTRE_LEVEL.ordinal(),
        Dimension.REACH.ordinal(),
        Dimension.FRONT_WHEEL_RADIUS.ordinal(),
        Dimension.FORK_OFFSET.ordinal(),
        Dimension.TRAIL.ordinal(),
        Dimension.MECHANICAL_TRAIL.ordinal(),
        Dimension.REAR_SHELL_DROP.ordinal(),
        Dimension.REAR_CENTRE_LEVEL.ordinal(),
        Dimension.SEAT_ANGLE.ordinal(),
    };

    boolean isComplete() {
        return left == 0 && Integer.bitCount(known) == Figures.ALONG + 1;
    }

    private static final int ALL = (1 << RELATIONS.length) - 1;

    /** Two sets of relations that say the same; what one of them leaves tied to two trials the other need not. */
    private static final int USUAL = ALL & ~(1 << Relation.STEERING_AXIS.ordinal());

    private static final int OTHER = ALL & ~(1 << Relation.TRAIL_ON_GROUND.ordinal());

    /** The order for given places, as bits; it breaks off where a place that is given follows from others. */
    static ClosurePlan of(int given) {
        ClosurePlan plan = of(given, USUAL);
        if (!plan.isComplete() && Integer.bitCount(given) + Integer.bitCount(USUAL) > Figures.ALONG) {
            ClosurePlan other = of(given, OTHER);
            return other.isComplete() ? other : plan;
        }
        return plan;
    }

    private static ClosurePlan of(int given, int relations) {
        List<Step> steps = new ArrayList<>();
        int known = given;
        int left = relations;
        while (true) {
            List<Direct> direct = new ArrayList<>();
            Relation over = follow(known, left, direct);
            for (Direct step : direct) {
                steps.add(step);
                known |= 1 << step.place();
                left &= ~(1 << step.relation().ordinal());
            }
            Trial trial = left == 0 || over != null ? null : trial(known, left);
            if (trial == null) {
                return new ClosurePlan(List.copyOf(steps), known, left);
            }
            steps.add(trial);
            known |= 1 << trial.place();
            left &= ~(1 << trial.check().ordinal());
            for (Direct step : trial.steps()) {
                known |= 1 << step.place();
                left &= ~(1 << step.relation().ordinal());
            }
        }
    }

    /** Adds the steps that follow one after the other; gives the first relation that is left over, if any is. */
    private static @org.jspecify.annotations.Nullable Relation follow(int known, int left, List<Direct> steps) {
        boolean further = true;
        while (further) {
            further = false;
            for (Relation relation : RELATIONS) {
                if ((left >> relation.ordinal() & 1) == 0) {
                    continue;
                }
                int unknown = relation.mask() & ~known;
                if (unknown == 0) {
                    return relation;
                }
                if ((unknown & unknown - 1) == 0) {
                    steps.add(new Direct(relation, Integer.numberOfTrailingZeros(unknown)));
                    known |= unknown;
                    left &= ~(1 << relation.ordinal());
                    further = true;
                }
            }
        }
        return null;
    }

    private static @org.jspecify.annotations.Nullable Trial trial(int known, int left) {
        for (int place : TRIED) {
            if ((known >> place & 1) == 1) {
                continue;
            }
            List<Direct> steps = new ArrayList<>();
            Relation check = follow(known | 1 << place, left, steps);
            if (check != null) {
                return new Trial(place, needed(check, steps), check);
            }
        }
        return null;
    }

    /** Those steps that lead to the check. */
    private static List<Direct> needed(Relation check, List<Direct> steps) {
        List<Direct> kept = new ArrayList<>();
        int wanted = check.mask();
        for (int i = steps.size() - 1; i >= 0; i--) {
            Direct step = steps.get(i);
            if ((wanted >> step.place() & 1) == 1) {
                kept.add(step);
                wanted |= step.relation().mask();
            }
        }
        Collections.reverse(kept);
        return List.copyOf(kept);
    }
}
