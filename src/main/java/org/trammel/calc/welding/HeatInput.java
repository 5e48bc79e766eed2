package org.trammel.calc.welding;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.trammel.calc.units.Answer;

/**
 * Heat put into a length of weld by an arc.
 *
 * <pre>
 * Q = η · U · I / (1000 · v),   v = length / time
 * </pre>
 *
 * η share of the arc's power that reaches the work, no unit; U arc voltage in V; I current in A; v travel speed in mm/s; Q in
 * kJ/mm. An estimate: of a current that pulses the mean says too little. Valid for an arc that travels; of a torch there is no
 * such figure.
 *
 * <p>Source: form of EN 1011-1, heat input; η is a figure of the procedure, with a source of its own.
 *
 * @param kJPerMm rounded to four decimals
 */
public record HeatInput(BigDecimal kJPerMm) {

    private static final BigDecimal MOST_V = BigDecimal.valueOf(100);
    private static final BigDecimal MOST_A = BigDecimal.valueOf(1000);
    private static final BigDecimal MOST_MM = BigDecimal.valueOf(10_000);
    private static final BigDecimal MOST_S = BigDecimal.valueOf(36_000);
    private static final BigDecimal JOULES = BigDecimal.valueOf(1000);

    /**
     * Computes it.
     *
     * @param efficiency above 0, at most 1
     * @param length_mm length of weld laid in the time
     * @param seconds arc time
     */
    public static Answer<HeatInput> of(
            BigDecimal efficiency, BigDecimal volts, BigDecimal amps, BigDecimal length_mm, BigDecimal seconds) {
        Reasons reasons = new Reasons()
                .above(efficiency, BigDecimal.ONE, "efficiency", "The share of the arc that reaches the work", "")
                .above(volts, MOST_V, "volts", "The arc voltage", "V")
                .above(amps, MOST_A, "amps", "The current", "A")
                .above(length_mm, MOST_MM, "length", "The length of the weld", "mm")
                .above(seconds, MOST_S, "seconds", "The time of the arc", "s");
        if (!reasons.none()) {
            return reasons.answer();
        }
        return Answer.of(new HeatInput(efficiency
                .multiply(volts)
                .multiply(amps)
                .multiply(seconds)
                .divide(length_mm.multiply(JOULES), MathContext.DECIMAL64)
                .setScale(4, RoundingMode.HALF_UP)));
    }
}
