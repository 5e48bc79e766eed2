package org.trammel.calc.welding;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.trammel.calc.units.Answer;

/**
 * How often the room inside a tube must be flushed with gas until its oxygen has thinned to a share.
 *
 * <pre>
 * c(n) = c0 · exp(−n):   n = ln(209 000 / c)
 * </pre>
 *
 * c oxygen in ppm by volume; 209 000 ppm is its share of dry air; n volumes of the room that have flowed through, for gas that
 * mixes perfectly with what is there. Real rooms have corners: the meter decides, and a shop flushes a multiple of it.
 *
 * <p>Source: balance of a stirred room, textbook; share of oxygen, US Standard Atmosphere 1976, 20.9 %.
 *
 * @param volumes rounded up to a hundredth
 */
public record Purge(BigDecimal volumes) {

    private static final double AIR_PPM = 209_000;

    /**
     * Computes it.
     *
     * @param oxygen_ppm what is to be reached
     */
    public static Answer<Purge> to(BigDecimal oxygen_ppm) {
        Reasons reasons = new Reasons().above(oxygen_ppm, BigDecimal.valueOf(209_000), "oxygen", "The oxygen", "ppm");
        return reasons.none()
                ? Answer.of(new Purge(BigDecimal.valueOf(Math.log(AIR_PPM / oxygen_ppm.doubleValue()))
                        .setScale(2, RoundingMode.CEILING)))
                : reasons.answer();
    }

    /**
     * Time until so much gas has flowed through a room.
     *
     * @param room_L volume inside
     * @param flow_L_per_min of the gas
     * @return minutes, rounded up to a tenth
     */
    public Answer<BigDecimal> minutes(BigDecimal room_L, BigDecimal flow_L_per_min) {
        Reasons reasons = new Reasons()
                .above(room_L, BigDecimal.valueOf(1000), "room", "The room inside", "L")
                .above(flow_L_per_min, BigDecimal.valueOf(200), "flow", "The flow of gas", "L/min");
        return reasons.none()
                ? Answer.of(volumes.multiply(room_L).divide(flow_L_per_min, 1, RoundingMode.CEILING))
                : reasons.answer();
    }
}
