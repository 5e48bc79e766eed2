package org.trammel.calc.welding;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.trammel.calc.units.Answer;

class HeatAndPurgeTest {

    /** 0.6 · 14 V · 95 A · 60 / (150 mm/min · 1000) = 0.3192 kJ/mm, form of EN 1011-1, worked by hand. */
    @Test
    void heatInputIsThatOfTheStandardsForm() {
        assertThat(heat("0.6", "14", "95", "150", "60")).isEqualByComparingTo("0.3192");
    }

    /** 0.8 · 25 V · 200 A at 5 mm/s = 800 J/mm, worked by hand. */
    @Test
    void aFasterArcOfMorePowerPutsInItsShare() {
        assertThat(heat("0.8", "25", "200", "50", "10")).isEqualByComparingTo("0.8");
    }

    @Test
    void noArcNoLengthAndNoTimeAreSentences() {
        assertThat(gap(HeatInput.of(d("0.6"), d("0"), d("95"), d("150"), d("60"))))
                .isEqualTo("The arc voltage, 0 V, does not lie above 0 and up to 100 V.");
        assertThat(gap(HeatInput.of(d("0.6"), d("14"), d("95"), d("-1"), d("60"))))
                .contains("length of the weld, -1 mm");
        assertThat(gap(HeatInput.of(d("1.1"), d("14"), d("95"), d("150"), d("60"))))
                .contains("1.1");
        assertThat(((Answer.NotDeterminable<HeatInput>) HeatInput.of(d("0.6"), d("14"), d("0"), d("150"), d("0")))
                        .gaps())
                .extracting(Answer.Gap::input)
                .containsExactly("amps", "seconds");
    }

    /** ln(209 000 / 50) = 8.338, worked by hand; 1.78 L at 8 L/min then takes 1.86 min. */
    @Test
    void aRoomIsFlushedByTheLogarithmOfItsOxygen() {
        Purge purge = ((Answer.Determined<Purge>) Purge.to(d("50"))).value();
        assertThat(purge.volumes()).isEqualByComparingTo("8.34");
        assertThat(((Answer.Determined<BigDecimal>) purge.minutes(d("1.78"), d("8"))).value())
                .isEqualByComparingTo("1.9");
    }

    /** ln(209 000 / 209 000 / e⁻¹) = 1 by the definition of e. */
    @Test
    void oneVolumeThinsToAnEth() {
        assertThat(((Answer.Determined<Purge>) Purge.to(new BigDecimal("76886.8")))
                        .value()
                        .volumes())
                .isBetween(d("1.00"), d("1.01"));
    }

    @Test
    void noOxygenNoRoomAndNoFlowAreSentences() {
        assertThat(gap(Purge.to(d("0")))).contains("The oxygen, 0 ppm");
        Purge purge = new Purge(d("8.34"));
        assertThat(gap(purge.minutes(d("0"), d("8")))).contains("room inside, 0 L");
        assertThat(gap(purge.minutes(d("1.78"), d("0")))).contains("flow of gas, 0 L/min");
    }

    private static BigDecimal heat(String efficiency, String volts, String amps, String length, String seconds) {
        return ((Answer.Determined<HeatInput>) HeatInput.of(d(efficiency), d(volts), d(amps), d(length), d(seconds)))
                .value()
                .kJPerMm();
    }

    private static String gap(Answer<?> answer) {
        return ((Answer.NotDeterminable<?>) answer).gaps().get(0).words();
    }

    private static BigDecimal d(String figure) {
        return new BigDecimal(figure);
    }
}
