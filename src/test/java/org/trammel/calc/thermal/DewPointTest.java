package org.trammel.calc.thermal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DewPointTest {

    /** Dew-point table of a coating maker's data sheet (no. 1650, 2013), printed to a tenth of a degree. */
    @ParameterizedTest
    @CsvSource({
        "20, 50, 9.3",
        "20, 55, 10.7",
        "20, 60, 12.0",
        "20, 65, 13.3",
        "25, 50, 13.8",
        "25, 55, 15.3",
        "25, 60, 16.7",
        "10, 60, 2.6",
        "10, 80, 6.7",
        "10, 90, 8.4"
    })
    void theTableOfACoatingMakerComesOut(BigDecimal air, BigDecimal humidity, double printed) {
        assertThat(degC(air, humidity)).isCloseTo(printed, within(0.1));
    }

    /** Public test values of a meteorological library (MetPy, dewpoint_from_relative_humidity), printed as integers. */
    @ParameterizedTest
    @CsvSource({"30, 30, 11", "25, 45, 12", "10, 55, 1", "20, 80, 16", "25, 85, 22"})
    void theTestValuesOfAWeatherLibraryComeOut(BigDecimal air, BigDecimal humidity, double printed) {
        assertThat(degC(air, humidity)).isCloseTo(printed, within(0.55));
    }

    @Test
    void saturatedAirIsAtItsDewPoint() {
        assertThat(degC(BigDecimal.valueOf(18), BigDecimal.valueOf(100))).isCloseTo(18, within(1e-9));
    }

    /** Example of a paint guide: air 16 °C and 71 %, surface 13 °C, less than 3 K above the dew point of 11 °C: stop. */
    @Test
    void theMarginOfASurfaceIsJudgedWithoutRoundingUp() {
        DewPoint.Determined dewPoint =
                (DewPoint.Determined) DewPoint.of(BigDecimal.valueOf(16), BigDecimal.valueOf(71));
        assertThat(dewPoint.marginK(BigDecimal.valueOf(13))).isBetween(new BigDecimal("2.0"), new BigDecimal("2.3"));
        assertThat(new DewPoint.Determined(10.001).marginK(BigDecimal.valueOf(13)))
                .isEqualByComparingTo("2.99");
    }

    @ParameterizedTest
    @CsvSource({"20, 0", "20, -1", "20, 100.1", "60.1, 50", "-45.1, 50", "1000, 50"})
    void outsideItsRangeThereIsNoAnswer(BigDecimal air, BigDecimal humidity) {
        assertThat(DewPoint.of(air, humidity)).isInstanceOf(DewPoint.NotDeterminable.class);
    }

    private static double degC(BigDecimal air, BigDecimal humidity) {
        return ((DewPoint.Determined) DewPoint.of(air, humidity)).degC();
    }
}
