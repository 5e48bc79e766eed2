package org.trammel.calc.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EllipseTest {

    /**
     * Complete elliptic integrals E(m) of Abramowitz and Stegun, Handbook of Mathematical Functions, table 17.1: perimeter
     * 4 a E(1 − b²/a²).
     */
    @ParameterizedTest
    @CsvSource({
        "0.0, 1.570796327",
        "0.1, 1.530757637",
        "0.5, 1.350643881",
        "0.9, 1.104774733",
    })
    void thePerimeterIsTheHandbooksCompleteIntegral(double m, double handbook) {
        double b = 10 * Math.sqrt(1 - m);
        assertThat(new Ellipse(10, b).perimeter_mm()).isCloseTo(40 * handbook, within(40 * 6e-10));
        assertThat(new Ellipse(b, 10).perimeter_mm()).isCloseTo(40 * handbook, within(40 * 6e-10));
    }

    /** Quadrature and the arithmetic-geometric mean have nothing in common but the ellipse. */
    @ParameterizedTest
    @CsvSource({"17.5, 24.23", "24.23, 17.5", "10, 30", "30, 10", "12, 12.0001"})
    void allArcsTogetherAreThePerimeter(double a, double b) {
        Ellipse ellipse = new Ellipse(a, b);
        assertThat(ellipse.arc_mm(2 * Math.PI)).isCloseTo(ellipse.perimeter_mm(), within(1e-9));
        double parts = 0;
        for (int i = 0; i < 12; i++) {
            parts += ellipse.arc_mm(i * Math.PI / 6, (i + 1) * Math.PI / 6);
        }
        assertThat(parts).isCloseTo(ellipse.perimeter_mm(), within(1e-9));
    }

    /** Against a polygon of very many sides, a construction of its own. */
    @Test
    void anArcIsTheLengthOfManyChords() {
        Ellipse ellipse = new Ellipse(17.5, 24.23);
        double chords = 0;
        int count = 200_000;
        for (int i = 0; i < count; i++) {
            double one = 0.3 + 1.7 * i / count;
            double next = 0.3 + 1.7 * (i + 1) / count;
            chords += Math.hypot(17.5 * (Math.cos(next) - Math.cos(one)), 24.23 * (Math.sin(next) - Math.sin(one)));
        }
        assertThat(ellipse.arc_mm(0.3, 2.0)).isCloseTo(chords, within(1e-8));
    }

    @Test
    void aHalfAxisIsFoundAgainFromThePerimeter() {
        assertThat(Ellipse.otherHalfAxis_mm(17.5, new Ellipse(17.5, 24).perimeter_mm()))
                .isCloseTo(24, within(1e-12));
        assertThat(Ellipse.otherHalfAxis_mm(24, new Ellipse(17.5, 24).perimeter_mm()))
                .isCloseTo(17.5, within(1e-12));
    }

    @Test
    void theParameterOfADirectionIsThePointSeenThere() {
        Ellipse ellipse = new Ellipse(10, 20);
        double angle = ellipse.parameterOf_rad(Math.PI / 4);
        assertThat(20 * Math.sin(angle)).isCloseTo(10 * Math.cos(angle), within(1e-12));
        assertThat(ellipse.parameterOf_rad(Math.PI / 2)).isCloseTo(Math.PI / 2, within(1e-12));
    }
}
