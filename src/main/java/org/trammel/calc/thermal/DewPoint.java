package org.trammel.calc.thermal;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.units.Answer;

/**
 * Temperature at which the water in the air begins to settle on a surface.
 *
 * <pre>
 * e(T) = 6.112 hPa · exp(b T / (c + T))      over water b = 17.62, c = 243.12; over ice b = 22.46, c = 272.62
 * RH / 100 · e_water(T air) = e(T point):   γ = ln(RH / 100) + 17.62 T / (243.12 + T);   T point = c γ / (b − γ)
 * </pre>
 *
 * T in °C, RH relative humidity over water in percent, below 0 °C too, as hygrometers show it. At 0 °C and above there is one
 * point. Below, two: the dew point over water that has not frozen, and the frost point over ice, which lies higher, half a
 * kelvin at −5 °C. Both are told, and the margin of a surface is taken from the frost point, where the first of the two begins
 * to settle.
 *
 * <p>Valid for air of −45 to 60 °C. Source: Magnus form with the constants of Sonntag, Z. Meteorol. 70 (1990) 340, also WMO
 * No. 8, Annex 4.B. Accuracy about 0.1 K in the air of a workshop, less than that of the hygrometer.
 *
 * @param water_degC the dew point, over water
 * @param frost_degC the frost point, over ice; null where the dew point is not below 0 °C
 */
public record DewPoint(double water_degC, @Nullable Double frost_degC) {

    static final double LEAST_AIR_DEG_C = -45;
    static final double GREATEST_AIR_DEG_C = 60;

    private static final double WATER_B = 17.62;
    private static final double WATER_C = 243.12;
    private static final double ICE_B = 22.46;
    private static final double ICE_C = 272.62;

    /** Which of the points is meant. */
    public enum Over {
        WATER,
        ICE
    }

    /**
     * Computes the dew point.
     *
     * @param air_degC air temperature
     * @param humidity_percent relative humidity over water
     */
    public static Answer<DewPoint> of(BigDecimal air_degC, BigDecimal humidity_percent) {
        double air = air_degC.doubleValue();
        double humidity = humidity_percent.doubleValue();
        Wanted wanted = new Wanted()
                .holds(
                        air >= LEAST_AIR_DEG_C && air <= GREATEST_AIR_DEG_C,
                        "air",
                        "The air temperature, " + Said.figure(air, 3) + " °C, lies outside −45 to 60 °C.")
                .holds(
                        humidity > 0 && humidity <= 100,
                        "humidity",
                        "The humidity, " + Said.figure(humidity, 3) + " %, does not lie above 0 and up to 100 %.");
        if (!wanted.met()) {
            return wanted.refusal();
        }
        double gamma = Math.log(humidity / 100) + WATER_B * air / (WATER_C + air);
        double water = WATER_C * gamma / (WATER_B - gamma);
        return Answer.of(new DewPoint(water, water < 0 ? Double.valueOf(ICE_C * gamma / (ICE_B - gamma)) : null));
    }

    /** Which point the margin is taken from. */
    public Over over() {
        return frost_degC == null ? Over.WATER : Over.ICE;
    }

    /** The point at which water or ice first settles. */
    public double settles_degC() {
        return frost_degC == null ? water_degC : frost_degC;
    }

    /**
     * How much warmer than that a surface is, rounded down to a hundredth of a kelvin so that rounding never makes a margin
     * large enough.
     *
     * @return margin in K
     */
    public BigDecimal margin_K(BigDecimal surface_degC) {
        return surface_degC.subtract(BigDecimal.valueOf(settles_degC())).setScale(2, RoundingMode.FLOOR);
    }

    /** The least temperature of a surface with such a margin, rounded up to a tenth of a degree. */
    public BigDecimal leastSurface_degC(BigDecimal margin_K) {
        return BigDecimal.valueOf(settles_degC()).add(margin_K).setScale(1, RoundingMode.CEILING);
    }
}
