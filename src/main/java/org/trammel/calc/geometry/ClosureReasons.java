package org.trammel.calc.geometry;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.units.Answer;

/**
 * Why a step of a closure comes to nothing, in a sentence that names what was given.
 *
 * @param plan the order of the steps
 * @param given the given places, as bits
 * @param figures as far as they are known
 */
record ClosureReasons(ClosurePlan plan, int given, Figures figures) {

    private static final int ANGLES = 90;

    /** Of a relation that gives no value, or one that cannot be. */
    Answer.Gap ofDirect(ClosurePlan.Direct direct, double value) {
        Relation relation = direct.relation();
        if (!Double.isNaN(value) && !Double.isInfinite(value)) {
            return outside(direct.place(), value);
        }
        if (relation.isTriangle()) {
            return tooShort(relation, direct.place());
        }
        if (isAngle(direct.place())) {
            List<Figures> reached = new ArrayList<>();
            for (int i = 0; i <= ANGLES; i++) {
                Figures at = figures.copy();
                at.put(direct.place(), Math.toRadians(i));
                reached.add(at);
            }
            return unreached(direct.place(), relation, reached);
        }
        return contradiction(direct.place(), relation);
    }

    /** Of a trial that never fulfils its check. */
    Answer.Gap ofTrial(ClosurePlan.Trial trial, List<Figures> reached) {
        return unreached(trial.place(), trial.check(), reached);
    }

    private static String words(int place) {
        return place == Figures.ALONG
                ? "length from the head tube's top to the axle"
                : Dimension.at(place).words();
    }

    private static String written(int place, double value) {
        return place == Figures.ALONG ? Written.mm(value) : Dimension.at(place).written(value);
    }

    private Answer.Gap outside(int place, double value) {
        Dimension cause = cause(place);
        return new Answer.Gap(
                cause.input(),
                "With the " + told(cause) + " the " + words(place) + " would come to " + written(place, value)
                        + ", which cannot be.");
    }

    private Answer.Gap tooShort(Relation relation, int sought) {
        Dimension slant = relation.dimensions()[0];
        Dimension leg =
                relation.dimensions()[1].ordinal() == sought ? relation.dimensions()[2] : relation.dimensions()[1];
        return new Answer.Gap(
                isGiven(slant) ? slant.input() : cause(leg.ordinal()).input(),
                "The " + slant.words() + " of " + slant.written(figures.of(slant)) + " is shorter than the "
                        + leg.words() + " of " + leg.written(Math.abs(figures.of(leg))) + ".");
    }

    private Answer.Gap unreached(int place, Relation relation, List<Figures> reached) {
        int aim = aim(place, relation);
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (Figures at : reached) {
            double value = relation.solve(aim, at, 0);
            if (Double.isFinite(value)) {
                least = Math.min(least, value);
                most = Math.max(most, value);
            }
        }
        if (aim == place || least > most) {
            return contradiction(place, relation);
        }
        Dimension cause = cause(aim);
        String wanted = words(aim) + " of " + written(aim, figures.at(aim));
        return new Answer.Gap(
                cause.input(),
                "No " + words(place) + " gives a " + wanted
                        + (cause.ordinal() == aim ? "" : ", which follows from the " + told(cause) + ",")
                        + " with the other figures; it would lie between " + written(aim, least) + " and "
                        + written(aim, most) + ".");
    }

    /** What a relation was to give: a dimension asked for, else one that follows from such, else any that is known. */
    private int aim(int place, Relation relation) {
        Dimension told = asked(relation);
        if (told != null) {
            return told.ordinal();
        }
        int any = place;
        for (int others = relation.mask() & ~(1 << place); others != 0; others &= others - 1) {
            int other = Integer.numberOfTrailingZeros(others);
            boolean known = (reliable() >> other & 1) == 1;
            if (known && isAsked(cause(other))) {
                return other;
            }
            any = known && any == place && !isAngle(other) ? other : any;
        }
        return any;
    }

    /** Places that were known before the step. */
    private int reliable() {
        int known = given;
        for (ClosurePlan.Step step : plan.steps()) {
            if (step instanceof ClosurePlan.Direct direct) {
                known |= 1 << direct.place();
            } else {
                break;
            }
        }
        return known;
    }

    private static boolean isAngle(int place) {
        return place < Figures.ALONG && Dimension.at(place).isAngle();
    }

    private static boolean isAsked(Dimension dimension) {
        return dimension.compareTo(Dimension.STACK) >= 0;
    }

    private Answer.Gap contradiction(int place, Relation relation) {
        Dimension cause = cause(relation, place, 1 << place);
        return new Answer.Gap(
                cause.input(), "The " + told(cause) + " leaves no " + words(place) + " with the other figures.");
    }

    private String told(Dimension dimension) {
        return dimension.words() + " of " + dimension.written(figures.of(dimension));
    }

    private boolean isGiven(Dimension dimension) {
        return (given >> dimension.ordinal() & 1) == 1;
    }

    /** The given dimension of a relation that a frame is asked for by, not built from. */
    private @Nullable Dimension asked(Relation relation) {
        for (Dimension dimension : relation.dimensions()) {
            if (isGiven(dimension) && isAsked(dimension)) {
                return dimension;
            }
        }
        return null;
    }

    private Dimension cause(int place) {
        return cause(place, 0);
    }

    /** What was given that a place follows from. */
    private Dimension cause(int place, int seen) {
        if (place < Figures.ALONG && isGiven(Dimension.at(place))) {
            return Dimension.at(place);
        }
        for (ClosurePlan.Step step : plan.steps()) {
            if (step instanceof ClosurePlan.Direct direct && direct.place() == place) {
                return cause(direct.relation(), place, seen | 1 << place);
            }
            if (step instanceof ClosurePlan.Trial trial
                    && (trial.place() == place
                            || trial.steps().stream().anyMatch(follows -> follows.place() == place))) {
                return cause(trial.check(), place, seen | 1 << place);
            }
        }
        return Dimension.HEAD_ANGLE;
    }

    private Dimension cause(Relation relation, int place, int seen) {
        Dimension asked = asked(relation);
        if (asked != null) {
            return asked;
        }
        Dimension first = Dimension.at(Math.min(place, Figures.ALONG - 1));
        for (int others = relation.mask() & ~seen & ~given; others != 0; others &= others - 1) {
            Dimension cause = cause(Integer.numberOfTrailingZeros(others), seen | others);
            if (isAsked(cause)) {
                return cause;
            }
        }
        for (Dimension dimension : relation.dimensions()) {
            if (isGiven(dimension)) {
                return dimension;
            }
        }
        return first;
    }
}
