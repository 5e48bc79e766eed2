package org.trammel.calc.geometry;

import java.util.ArrayList;
import java.util.List;
import org.trammel.calc.units.Answer;

/** What is asked of inputs before anything is computed from them; keeps a sentence for each that falls short. */
final class Asked {

    private final List<Answer.Gap> gaps = new ArrayList<>();

    /**
     * Asks for a finite figure above zero.
     *
     * @param what named as a sentence goes on, such as "wall of the down tube"
     * @param unit with the blank before it, or empty
     */
    boolean above0(String input, String what, double figure, String unit) {
        return holds(
                Double.isFinite(figure) && figure > 0,
                input,
                "The " + what + ", " + written(figure, unit) + ", is not above 0.");
    }

    /** Asks for a finite figure, zero allowed. */
    boolean notBelow0(String input, String what, double figure, String unit) {
        return holds(
                Double.isFinite(figure) && figure >= 0,
                input,
                "The " + what + ", " + written(figure, unit) + ", is not 0 or above.");
    }

    /** Asks for a finite figure of any sign. */
    boolean number(String input, String what, double figure) {
        return holds(Double.isFinite(figure), input, "The " + what + " is no number.");
    }

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

    /** To a thousandth, so that no figure is written as one that would do. */
    static String written(double figure, String unit) {
        return Double.isFinite(figure) ? Written.figure(figure, 3) + unit : "no number";
    }
}
