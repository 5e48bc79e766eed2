package org.trammel.calc.metrology;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.trammel.calc.units.Answer;

/** What is asked of readings before anything is computed from them; keeps a sentence for each that falls short. */
final class Asked {

    private static final double MM_PER_INCH = 25.4;

    private final List<Answer.Gap> gaps = new ArrayList<>();
    private final Map<String, RawReading> named = new HashMap<>();

    boolean holds(boolean met, String input, String words) {
        if (!met) {
            gaps.add(new Answer.Gap(input, words));
        }
        return met;
    }

    boolean met() {
        return gaps.isEmpty();
    }

    <T> Answer<T> refusal() {
        return new Answer.NotDeterminable<>(gaps);
    }

    /** Asks for a figure, a name of its own and a known doubt. */
    void reading(String input, RawReading reading) {
        holds(
                named.put(reading.name(), reading) == null,
                input,
                "The reading " + reading.name() + " is there twice: delete one, or name its station.");
        sound(input, reading);
    }

    /** The same for a diameter that several stations share. */
    void sharedReading(String input, RawReading reading) {
        RawReading before = named.put(reading.name(), reading);
        holds(
                before == null || before.equals(reading),
                input,
                "The reading " + reading.name() + " is there twice with different figures.");
        sound(input, reading);
    }

    private void sound(String input, RawReading reading) {
        holds(Double.isFinite(reading.value_mm()), input, "The reading " + reading.name() + " is no number.");
        doubt(input, reading.name(), reading.contributions());
    }

    /** Asks for contributions that are figures and not all zero. */
    void doubt(String input, String name, List<Contribution> contributions) {
        boolean figures = contributions.stream().allMatch(one -> Double.isFinite(one.u()));
        holds(figures, input, "A contribution to the uncertainty of " + name + " is no number.");
        holds(
                !figures || contributions.stream().anyMatch(one -> one.u() != 0),
                input,
                "The uncertainty of " + name + " is zero or not given: state at least what its gauge brings.");
        holds(
                contributions.stream().allMatch(one -> one.sharedAs() != null || one.u() >= 0),
                input,
                "A contribution of its own to the uncertainty of " + name + " is below zero.");
    }

    /** Asks for a figure somebody can have read, and says where inches would explain it. */
    boolean within(String input, String what, double figure_mm, double least_mm, double most_mm) {
        return holds(
                figure_mm >= least_mm && figure_mm <= most_mm,
                input,
                "The " + what + ", " + Figure.written(figure_mm) + " mm, is not between " + Figure.written(least_mm)
                        + " and " + Figure.written(most_mm) + " mm."
                        + inches(figure_mm, figure_mm * MM_PER_INCH >= least_mm && figure_mm * MM_PER_INCH <= most_mm));
    }

    /** A sentence to add where a figure makes sense in inches. */
    static String inches(double figure, boolean explains) {
        return explains
                ? " As inches it would be " + Figure.written(figure * MM_PER_INCH)
                        + " mm: type millimetres and read it again."
                : " Read it again.";
    }

    static double fromInches(double figure) {
        return figure * MM_PER_INCH;
    }
}
