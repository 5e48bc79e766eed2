package org.trammel.calc.metrology;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.units.DecimalSign;

/**
 * Whether a typed reading is likely what was measured. It never refuses a reading, it asks: a true reading far outside
 * is typed once more and stands.
 *
 * <p>Asked about: a value more than so many tolerances off, with the slip that most simply explains it (decimal sign
 * moved, neighbouring digits swapped, sign dropped, inch for millimetre, °F for °C), and the same value three times
 * running, which a gauge that moves between readings seldom shows.
 */
public sealed interface Plausibility {

    /** Nothing to ask. */
    record Plausible() implements Plausibility {}

    /**
     * Ask before it is taken.
     *
     * @param tolerancesOff how many tolerances off it lies, rounded down
     * @param slip the likely slip, if one explains the value
     */
    record FarOff(BigDecimal value, long tolerancesOff, Optional<Slip> slip) implements Plausibility {

        /** The question, with the value that was likely meant. */
        public String words(DecimalSign sign) {
            String off = sign.write(value) + " is " + tolerancesOff + " tolerances off.";
            return slip.map(s -> off + " Did you mean " + sign.write(s.meant()) + "? "
                            + s.kind().words())
                    .orElse(off + " Read the gauge again and type it once more.");
        }
    }

    /** Ask whether the gauge was read each time. */
    record SameAgain(BigDecimal value, int times) implements Plausibility {

        public String words(DecimalSign sign) {
            return sign.write(value) + " was typed " + times + " times running. Read the gauge anew for each point.";
        }
    }

    /** A value that was likely meant, and how it came to be mistyped. */
    record Slip(Kind kind, BigDecimal meant) {

        /** Ways to mistype, the likelier first. */
        public enum Kind {
            DECIMAL_SIGN("The decimal sign may have slipped."),
            SWAPPED_DIGITS("Two digits may be swapped."),
            DROPPED_SIGN("The side may be the other one."),
            INCHES("This looks like inches; millimetres are asked for."),
            FAHRENHEIT("This looks like °F; °C are asked for.");

            private final String words;

            Kind(String words) {
                this.words = words;
            }

            /** One sentence. */
            public String words() {
                return words;
            }
        }
    }

    /** Equal values running that are asked about. */
    int SAME_RUNNING = 3;

    /**
     * Looks at one typed value.
     *
     * @param nominal nominal value, or null if the characteristic has limits only
     * @param tolerances how many tolerances off is asked about, such as 5
     * @param unit unit of the value, such as "mm", "°C", "°"
     */
    static Plausibility of(
            BigDecimal value, @Nullable BigDecimal nominal, Limits limits, BigDecimal tolerances, String unit) {
        ExpectedSpan span = ExpectedSpan.of(nominal, limits);
        BigDecimal off = value.subtract(span.middle()).abs();
        if (span.tolerance().signum() == 0 || off.compareTo(tolerances.multiply(span.tolerance())) <= 0) {
            return new Plausible();
        }
        long times = off.divide(span.tolerance(), 0, RoundingMode.DOWN).longValue();
        return new FarOff(
                value,
                times,
                Slips.of(value, unit).stream()
                        .filter(slip -> span.reaches(slip.meant()))
                        .findFirst());
    }

    /**
     * Looks for the same value typed again and again.
     *
     * @param running values in the order they were typed, the newest last
     */
    static Plausibility ofRun(List<BigDecimal> running) {
        if (running.isEmpty()) {
            return new Plausible();
        }
        BigDecimal newest = running.get(running.size() - 1);
        int same = 0;
        for (int i = running.size() - 1; i >= 0 && running.get(i).compareTo(newest) == 0; i--) {
            same++;
        }
        return same >= SAME_RUNNING ? new SameAgain(newest, same) : new Plausible();
    }
}
