package org.trammel.calc.metrology;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lengths at 20 °C, against worked values of handbook coefficients and against the terms of JCGM 100:2008, H.1. */
class AtTwentyTest {

    /** Coefficients of expansion from data sheets: 6061 23.6, 7005 23.1, 4130 12.2, Ti-3Al-2.5V 9.61, steel scale 11.5. */
    @ParameterizedTest(name = "{0} mm read at {1} °C with α {2}, scale {3}: {4}")
    @CsvSource({
        "560.106, 28, 23.6, 0, 560.0003, 0.00005",
        "1000.236, 30, 23.6, 0, 1000.000, 0.0005",
        "1000.231, 30, 23.1, 0, 1000.000, 0.0005",
        "1000.122, 30, 12.2, 0, 1000.000, 0.0005",
        "1000.0961, 30, 9.61, 0, 1000.000, 0.0005",
        "600, 30, 23.6, 11.5, 599.9274, 0.0001"
    })
    void aLengthReadWarmIsShorterAtTwenty(
            String read, String degC, String part, String scale, double expected, double off) {
        AtTwenty at = AtTwenty.of(of(degC, "0", part, "0"), of(degC, "0", scale, "0"));
        assertThat(at.length(new BigDecimal(read)).doubleValue()).isCloseTo(expected, within(off));
    }

    /** 44 mm · 23.6e-6 · 15 K = 0.0156 mm, by hand. */
    @Test
    void aBoreOfAluminiumAtThirtyFiveReadsSixteenThousandthsTooMuch() {
        AtTwenty at = AtTwenty.of(of("35", "0", "23.6", "0"), of("20", "0", "11.5", "0"));
        assertThat(44 - at.length(new BigDecimal("44")).doubleValue()).isCloseTo(0.016, within(0.0005));
    }

    /** The variances of the four terms add: 44² ((23.6e-6·1)² + (15·1e-6)² + (11.5e-6·0.5)²) = (1.26 µm)², by hand. */
    @Test
    void whatIsNotKnownOfTemperatureAndExpansionIsDoubt() {
        AtTwenty at = AtTwenty.of(of("35", "1", "23.6", "1"), of("20", "0.5", "11.5", "1"));
        double byHand = 44 * Math.sqrt(Math.pow(23.6e-6, 2) + Math.pow(15e-6, 2) + Math.pow(11.5e-6 * 0.5, 2));
        assertThat(at.u(BigDecimal.ZERO, new BigDecimal("44")).doubleValue()).isCloseTo(byHand, within(1e-5));
        assertThat(at.u(new BigDecimal("0.002"), new BigDecimal("44")).doubleValue())
                .isCloseTo(Math.hypot(0.002, byHand), within(1e-5));
    }

    @Test
    void whatIsAtTwentyIsNotChanged() {
        AtTwenty at = AtTwenty.of(of("20", "0", "23.6", "1"), of("20", "0", "11.5", "1"));
        assertThat(at.length(new BigDecimal("43.951"))).isEqualByComparingTo("43.951");
        assertThat(at.u(new BigDecimal("0.002"), new BigDecimal("44"))).isEqualByComparingTo("0.002");
    }

    private static AtTwenty.Expanding of(String degC, String u, String alpha, String uAlpha) {
        return new AtTwenty.Expanding(
                new BigDecimal(degC),
                new BigDecimal(u),
                new BigDecimal(alpha).movePointLeft(6),
                new BigDecimal(uAlpha).movePointLeft(6));
    }
}
