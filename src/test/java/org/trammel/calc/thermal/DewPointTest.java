package org.trammel.calc.thermal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.trammel.calc.units.Answer;

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
        DewPoint dewPoint = point(BigDecimal.valueOf(16), BigDecimal.valueOf(71));
        assertThat(dewPoint.margin_K(BigDecimal.valueOf(13))).isBetween(new BigDecimal("2.0"), new BigDecimal("2.3"));
        assertThat(new DewPoint(10.001, null).margin_K(BigDecimal.valueOf(13))).isEqualByComparingTo("2.99");
    }

    /** Worked by hand: 21 °C and 68 % give 14.87 °C; metal of 17.2 °C is 2.3 K above, of 18.5 °C 3.6 K; 3 K from 17.9 on. */
    @Test
    void metalIsWarmEnoughFromAMarginOn() {
        DewPoint dewPoint = point(BigDecimal.valueOf(21), BigDecimal.valueOf(68));
        assertThat(dewPoint.settles_degC()).isCloseTo(14.87, within(0.005));
        assertThat(dewPoint.over()).isEqualTo(DewPoint.Over.WATER);
        assertThat(dewPoint.margin_K(new BigDecimal("17.2"))).isEqualByComparingTo("2.33");
        assertThat(dewPoint.margin_K(new BigDecimal("18.5"))).isEqualByComparingTo("3.63");
        assertThat(dewPoint.leastSurface_degC(BigDecimal.valueOf(3))).isEqualByComparingTo("17.9");
    }

    /**
     * The coating maker's sheet prints 4.1 for air of 5 °C and 50 %, its sign lost: the frost point. Over water −4.58, over ice
     * −4.04, computed apart.
     */
    @Test
    void belowZeroTheFrostPointIsToldBesideTheDewPointAndDecides() {
        DewPoint dewPoint = point(BigDecimal.valueOf(5), BigDecimal.valueOf(50));
        assertThat(dewPoint.water_degC()).isCloseTo(-4.58, within(0.005));
        assertThat(dewPoint.frost_degC()).isCloseTo(-4.04, within(0.005)).isCloseTo(-4.1, within(0.1));
        assertThat(dewPoint.over()).isEqualTo(DewPoint.Over.ICE);
        assertThat(dewPoint.margin_K(BigDecimal.ZERO)).isEqualByComparingTo("4.04");
    }

    /** Relative humidity for 25 °C with a dew point of 15 °C is 53.80 %: a test value of MetPy, by other constants. */
    @Test
    void theHumidityOfAWeatherLibraryComesBack() {
        assertThat(degC(BigDecimal.valueOf(25), new BigDecimal("53.80"))).isCloseTo(15, within(0.02));
    }

    @ParameterizedTest
    @CsvSource({"20, 0", "20, -1", "20, 100.1", "60.1, 50", "-45.1, 50", "1000, 50"})
    void outsideItsRangeThereIsNoAnswer(BigDecimal air, BigDecimal humidity) {
        assertThat(DewPoint.of(air, humidity)).isInstanceOf(Answer.NotDeterminable.class);
    }

    private static double degC(BigDecimal air, BigDecimal humidity) {
        return point(air, humidity).water_degC();
    }

    private static DewPoint point(BigDecimal air, BigDecimal humidity) {
        return OvenRuns.value(DewPoint.of(air, humidity));
    }
}
