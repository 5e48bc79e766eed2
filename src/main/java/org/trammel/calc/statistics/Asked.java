package org.trammel.calc.statistics;

import java.util.ArrayList;
import java.util.List;
import org.trammel.calc.units.Answer;

/** What is asked of readings and settings before anything is computed from them; keeps a sentence for each slip. */
final class Asked {

    /** Beyond this squares of readings and their sums would no longer be numbers. */
    private static final double LARGEST = 1e100;

    /** Of the largest reading: what is left of a spread below it is rounding of the readings themselves. */
    private static final double ROUNDING = 1e-13;

    private final List<Answer.Gap> gaps = new ArrayList<>();

    /**
     * Asks for readings that are numbers.
     *
     * @param what one of them, as a sentence begins, such as "Reading"
     */
    boolean numbers(String input, String what, List<Double> readings) {
        for (int i = 0; i < readings.size(); i++) {
            double reading = readings.get(i);
            if (!holds(!Double.isNaN(reading), input, what + " " + (i + 1) + " is no number.")
                    || !holds(
                            Math.abs(reading) <= LARGEST,
                            input,
                            what + " " + (i + 1) + " is too large to reckon with.")) {
                return false;
            }
        }
        return true;
    }

    boolean number(String input, String what, double figure) {
        return holds(Math.abs(figure) <= LARGEST, input, "The " + what + " is no number that can be reckoned with.");
    }

    boolean above0(String input, String what, double figure) {
        return number(input, what, figure)
                && holds(figure > 0, input, "The " + what + ", " + Written.plain(figure) + ", is not above 0.");
    }

    boolean notBelow0(String input, String what, double figure) {
        return number(input, what, figure)
                && holds(figure >= 0, input, "The " + what + ", " + Written.plain(figure) + ", is below 0.");
    }

    boolean share(String input, String what, double figure) {
        return number(input, what, figure)
                && holds(
                        figure > 0 && figure <= 1,
                        input,
                        "The " + what + ", " + Written.plain(figure) + ", is not above 0 and at most 1.");
    }

    /** Whether readings differ by more than their own rounding. */
    static boolean spread(double deviation, double largest) {
        return deviation > ROUNDING * largest;
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
}
