package org.trammel.calc.thermal;

import java.util.ArrayList;
import java.util.List;
import org.trammel.calc.units.Answer;

/** What is asked of figures before anything is computed from them; keeps a sentence for each that falls short. */
final class Wanted {

    static final double LEAST_DEG_C = -80;
    static final double GREATEST_DEG_C = 1300;

    private final List<Answer.Gap> gaps = new ArrayList<>();

    Wanted above0(String input, String what, double figure, String unit) {
        return holds(
                Double.isFinite(figure) && figure > 0,
                input,
                "The " + what + ", " + Said.figure(figure, 3) + unit + ", is not above 0.");
    }

    Wanted notBelow0(String input, String what, double figure, String unit) {
        return holds(
                Double.isFinite(figure) && figure >= 0,
                input,
                "The " + what + ", " + Said.figure(figure, 3) + unit + ", is not 0 or above.");
    }

    /** A temperature that an oven or its load can have. */
    Wanted temperature(String input, String what, double degC) {
        return holds(
                degC >= LEAST_DEG_C && degC <= GREATEST_DEG_C,
                input,
                "The " + what + ", " + Said.figure(degC, 3) + " °C, is not from " + Said.degC(LEAST_DEG_C) + " to "
                        + Said.degC(GREATEST_DEG_C) + ".");
    }

    Wanted holds(boolean met, String input, String words) {
        if (!met) {
            gaps.add(new Answer.Gap(input, words));
        }
        return this;
    }

    boolean met() {
        return gaps.isEmpty();
    }

    <T> Answer<T> refusal() {
        return new Answer.NotDeterminable<>(gaps);
    }
}
