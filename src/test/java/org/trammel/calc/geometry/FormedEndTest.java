package org.trammel.calc.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.trammel.calc.units.Answer;

class FormedEndTest {

    private static FormedEnd formed(double round, double inPlane) {
        return ((Answer.Determined<FormedEnd>) FormedEnd.of(round, inPlane, 60)).value();
    }

    /** Worked apart: 42 round, 35 in the plane, 131,95 round the outside. */
    @Test
    void theWorkedOvalIsReached() {
        FormedEnd end = formed(42, 35);
        assertThat(end.acrossFrame_mm()).isCloseTo(48.46, within(0.005));
        assertThat(end.perimeter_mm()).isCloseTo(131.95, within(0.005));
    }

    /** Ramanujan, Quarterly Journal of Mathematics 45 (1914) 350: an approximation of another kind, to parts in 1e9 here. */
    @ParameterizedTest
    @CsvSource({"42, 35", "42, 48.46", "38, 30", "31.8, 31.8", "22, 17", "42, 58"})
    void thePerimeterIsKept(double round, double inPlane) {
        FormedEnd end = formed(round, inPlane);
        double a = end.inFramePlane_mm() / 2;
        double b = end.acrossFrame_mm() / 2;
        double h = Math.pow((a - b) / (a + b), 2);
        double ramanujan = Math.PI * (a + b) * (1 + 3 * h / (10 + Math.sqrt(4 - 3 * h)));
        assertThat(ramanujan).isCloseTo(Math.PI * round, within(Math.PI * round * 2e-6));
        assertThat(end.onTube(1).perimeter_mm()).isCloseTo(Math.PI * round, within(1e-10));
        assertThat(end.onShell(1).perimeter_mm()).isCloseTo(Math.PI * round, within(1e-10));
    }

    @Test
    void formingThereAndBackIsTheSameOval() {
        FormedEnd there = formed(42, 35);
        assertThat(formed(42, there.acrossFrame_mm()).acrossFrame_mm()).isCloseTo(35, within(1e-10));
        assertThat(formed(84, 70).acrossFrame_mm()).isCloseTo(2 * there.acrossFrame_mm(), within(1e-10));
        assertThat(formed(42, 42).acrossFrame_mm()).isEqualTo(42);
    }

    @Test
    void theShellLiesAcrossTheFrame() {
        FormedEnd end = formed(42, 35);
        assertThat(end.onShell(1.4)).isEqualTo(new Section(end.acrossFrame_mm(), 35, 1.4));
        assertThat(end.onTube(1.4)).isEqualTo(new Section(35, end.acrossFrame_mm(), 1.4));
    }

    @ParameterizedTest
    @CsvSource({
        "42, 20, 60, inFramePlane, 'A tube of 42 mm is formed to between 21 mm and 58.511 mm, not to 20 mm.'",
        "42, 66, 60, inFramePlane, 'A tube of 42 mm is formed to between 21 mm and 58.511 mm, not to 66 mm.'",
        "NaN, 35, 60, tubeOutside, The tube's outside before forming of no number is not above 0 and at most 10 m.",
        "42, NaN, 60, inFramePlane, The formed axis in the frame's plane of no number is not above 0 and at most 10 m.",
        "42, 35, 0, zone, The formed zone of 0 mm is not above 0 and at most 10 m.",
    })
    void whatCannotBeFormedIsNamed(double round, double inPlane, double zone, String input, String words) {
        assertThat(FormedEnd.of(round, inPlane, zone)).isEqualTo(Answer.none(input, words));
    }
}
