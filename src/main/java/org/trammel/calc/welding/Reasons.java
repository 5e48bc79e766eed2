package org.trammel.calc.welding;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.trammel.calc.units.Answer;

/** Collects what stands in the way of a value. */
final class Reasons {

    private final List<Answer.Gap> gaps = new ArrayList<>();

    Reasons above(BigDecimal value, BigDecimal most, String input, String what, String unit) {
        String end = unit.isEmpty() ? "" : " " + unit;
        return holds(
                value.signum() > 0 && value.compareTo(most) <= 0,
                input,
                what + ", " + value.toPlainString() + end + ", does not lie above 0 and up to " + most.toPlainString()
                        + end + ".");
    }

    Reasons holds(boolean met, String input, String words) {
        if (!met) {
            gaps.add(new Answer.Gap(input, words));
        }
        return this;
    }

    boolean none() {
        return gaps.isEmpty();
    }

    <T> Answer<T> answer() {
        return new Answer.NotDeterminable<>(gaps);
    }
}
