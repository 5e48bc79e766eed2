package org.trammel.calc.thermal;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Temperature at which the water in the air begins to settle on a surface.
 *
 * <pre>γ = ln(RH / 100) + 17,62 T / (243,12 + T);  Td = 243,12 γ / (17,62 − γ)</pre>
 *
 * T air temperature in °C, RH relative humidity over water in percent, Td dew point in °C. Valid for −45 to 60 °C;
 * outside, and for humidities that are not above 0 and up to 100 %, there is no answer. Below 0 °C the value is the dew
 * point over water, not the frost point over ice, which lies up to half a kelvin higher at −5 °C.
 *
 * <p>Source: Magnus form with the constants of Sonntag, Z. Meteorol. 70 (1990) 340, also WMO No. 8, Annex 4.B. Accuracy
 * about 0,1 K in the air of a workshop, less than that of the hygrometer.
 */
public sealed interface DewPoint {

    /** The dew point is known. */
    record Determined(double degC) implements DewPoint {

        /**
         * How much warmer than the dew point a surface is, rounded down to a hundredth of a kelvin so that rounding
         * never makes a margin large enough.
         *
         * @return margin in K
         */
        public BigDecimal marginK(BigDecimal surfaceDegC) {
            return surfaceDegC.subtract(BigDecimal.valueOf(degC)).setScale(2, RoundingMode.FLOOR);
        }
    }

    /** Air temperature or humidity is out of the range of the formula. */
    record NotDeterminable(String reason) implements DewPoint {}

    double LEAST_AIR_DEG_C = -45;
    double GREATEST_AIR_DEG_C = 60;

    /**
     * Computes the dew point.
     *
     * @param airDegC air temperature in °C
     * @param humidityPercent relative humidity in percent
     */
    static DewPoint of(BigDecimal airDegC, BigDecimal humidityPercent) {
        double air = airDegC.doubleValue();
        double humidity = humidityPercent.doubleValue();
        if (!(air >= LEAST_AIR_DEG_C && air <= GREATEST_AIR_DEG_C)) {
            return new NotDeterminable("The air temperature lies outside −45 to 60 °C.");
        }
        if (!(humidity > 0 && humidity <= 100)) {
            return new NotDeterminable("The humidity lies outside 0 to 100 %.");
        }
        double gamma = Math.log(humidity / 100) + 17.62 * air / (243.12 + air);
        return new Determined(243.12 * gamma / (17.62 - gamma));
    }
}
