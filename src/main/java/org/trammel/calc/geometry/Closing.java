package org.trammel.calc.geometry;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.units.Answer;

/** Goes through a plan with the given values and keeps every frame that comes out, or why none does. */
final class Closing {

    /** Samples of a trial over its span. */
    private static final int SAMPLES = 180;

    /** Samples where those find nothing: what follows from a tried value may be possible over a few millimetres only. */
    private static final int FINE_SAMPLES = 3600;

    /** A trial of a length spans so many times the longest given one. */
    private static final double SPAN = 3;

    private final ClosurePlan plan;
    private final int given;
    private final List<Figures> found = new ArrayList<>();
    private double longest_mm;
    private int furthest = -1;
    private Answer.@Nullable Gap gap;

    Closing(ClosurePlan plan, int given) {
        this.plan = plan;
        this.given = given;
    }

    /** Every way to fill in the given figures. */
    List<Figures> all(Figures figures) {
        for (int place = 0; place < Figures.ALONG; place++) {
            if ((given >> place & 1) == 1 && !Dimension.at(place).isAngle()) {
                longest_mm = Math.max(longest_mm, Math.abs(figures.at(place)));
            }
        }
        step(0, figures);
        return found;
    }

    /** Why the furthest way came to nothing, if one did. */
    Answer.@Nullable Gap gap() {
        return gap;
    }

    private void step(int index, Figures figures) {
        if (index == plan.steps().size()) {
            found.add(figures.copy());
            return;
        }
        ClosurePlan.Step step = plan.steps().get(index);
        if (step instanceof ClosurePlan.Direct direct) {
            direct(index, direct, figures);
        } else if (step instanceof ClosurePlan.Trial trial) {
            trial(index, trial, figures);
        }
    }

    private void direct(int index, ClosurePlan.Direct direct, Figures figures) {
        double first = Double.NaN;
        for (int branch = 0; branch < direct.relation().branches(direct.place()); branch++) {
            double value = direct.relation().solve(direct.place(), figures, branch);
            if (branch == 1 && (value == first || Double.isNaN(value))) {
                continue;
            }
            first = value;
            figures.put(direct.place(), value);
            if (figures.allowsAt(direct.place())) {
                step(index + 1, figures);
            } else {
                fails(index, () -> reasons(figures).ofDirect(direct, value));
            }
        }
    }

    private void trial(int index, ClosurePlan.Trial trial, Figures figures) {
        boolean any = tried(index, trial, figures, SAMPLES) || tried(index, trial, figures, FINE_SAMPLES);
        if (!any) {
            fails(index, () -> reasons(figures).ofTrial(trial, reached(trial, figures)));
        }
    }

    private boolean tried(int index, ClosurePlan.Trial trial, Figures figures, int samples) {
        boolean any = false;
        for (int ways = 0; ways < ways(trial); ways++) {
            int way = ways;
            Figures tried = figures.copy();
            for (double root : Roots.of(value -> left(trial, value, way, tried), from(trial), to(trial), samples)) {
                Figures next = figures.copy();
                if (!Double.isNaN(left(trial, root, way, next)) && next.allowsAt(trial.place())) {
                    any = true;
                    step(index + 1, next);
                }
            }
        }
        return any;
    }

    /** What is left over of the check for a value that is tried. */
    private static double left(ClosurePlan.Trial trial, double value, int way, Figures figures) {
        figures.put(trial.place(), value);
        int fork = 0;
        for (ClosurePlan.Direct step : trial.steps()) {
            int branch = 0;
            if (step.relation().branches(step.place()) == 2) {
                branch = way >> fork & 1;
                fork++;
            }
            figures.put(step.place(), step.relation().solve(step.place(), figures, branch));
            if (!figures.allowsAt(step.place())) {
                return Double.NaN;
            }
        }
        return trial.check().misfit_mm(figures);
    }

    private static boolean isAngle(ClosurePlan.Trial trial) {
        return trial.place() < Figures.ALONG && Dimension.at(trial.place()).isAngle();
    }

    private double from(ClosurePlan.Trial trial) {
        return isAngle(trial) ? 0 : -SPAN * longest_mm;
    }

    private double to(ClosurePlan.Trial trial) {
        return isAngle(trial) ? Math.PI / 2 : SPAN * longest_mm;
    }

    private static int ways(ClosurePlan.Trial trial) {
        int forks = 0;
        for (ClosurePlan.Direct step : trial.steps()) {
            forks += step.relation().branches(step.place()) - 1;
        }
        return 1 << forks;
    }

    /** Every state that the trial reaches, its check aside. */
    private List<Figures> reached(ClosurePlan.Trial trial, Figures figures) {
        List<Figures> reached = new ArrayList<>();
        for (int way = 0; way < ways(trial); way++) {
            for (int i = 0; i <= SAMPLES; i++) {
                Figures tried = figures.copy();
                double value = from(trial) + (to(trial) - from(trial)) * i / SAMPLES;
                if (!Double.isNaN(left(trial, value, way, tried))) {
                    reached.add(tried);
                }
            }
        }
        return reached;
    }

    private ClosureReasons reasons(Figures figures) {
        return new ClosureReasons(plan, given, figures);
    }

    private void fails(int index, java.util.function.Supplier<Answer.Gap> why) {
        if (index > furthest) {
            furthest = index;
            gap = why.get();
        }
    }
}
