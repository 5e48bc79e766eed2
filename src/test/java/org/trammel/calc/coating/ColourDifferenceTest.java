package org.trammel.calc.coating;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.trammel.calc.units.Answer;

class ColourDifferenceTest {

    private static ColourDifference of(double l1, double a1, double b1, double l2, double a2, double b2) {
        return ((Answer.Determined<ColourDifference>)
                        ColourDifference.of(new ColourDifference.Lab(l1, a1, b1), new ColourDifference.Lab(l2, a2, b2)))
                .value();
    }

    /** All pairs of table 1 in Sharma, Wu, Dalal, Color Research and Application 30 (2005) 21, four decimals. */
    @ParameterizedTest
    @CsvSource({
        "50.0000, 2.6772, -79.7751, 50.0000, 0.0000, -82.7485, 2.0425",
        "50.0000, 3.1571, -77.2803, 50.0000, 0.0000, -82.7485, 2.8615",
        "50.0000, 2.8361, -74.0200, 50.0000, 0.0000, -82.7485, 3.4412",
        "50.0000, -1.3802, -84.2814, 50.0000, 0.0000, -82.7485, 1.0000",
        "50.0000, -1.1848, -84.8006, 50.0000, 0.0000, -82.7485, 1.0000",
        "50.0000, -0.9009, -85.5211, 50.0000, 0.0000, -82.7485, 1.0000",
        "50.0000, 0.0000, 0.0000, 50.0000, -1.0000, 2.0000, 2.3669",
        "50.0000, -1.0000, 2.0000, 50.0000, 0.0000, 0.0000, 2.3669",
        "50.0000, 2.4900, -0.0010, 50.0000, -2.4900, 0.0009, 7.1792",
        "50.0000, 2.4900, -0.0010, 50.0000, -2.4900, 0.0010, 7.1792",
        "50.0000, 2.4900, -0.0010, 50.0000, -2.4900, 0.0011, 7.2195",
        "50.0000, 2.4900, -0.0010, 50.0000, -2.4900, 0.0012, 7.2195",
        "50.0000, -0.0010, 2.4900, 50.0000, 0.0009, -2.4900, 4.8045",
        "50.0000, -0.0010, 2.4900, 50.0000, 0.0010, -2.4900, 4.8045",
        "50.0000, -0.0010, 2.4900, 50.0000, 0.0011, -2.4900, 4.7461",
        "50.0000, 2.5000, 0.0000, 50.0000, 0.0000, -2.5000, 4.3065",
        "50.0000, 2.5000, 0.0000, 73.0000, 25.0000, -18.0000, 27.1492",
        "50.0000, 2.5000, 0.0000, 61.0000, -5.0000, 29.0000, 22.8977",
        "50.0000, 2.5000, 0.0000, 56.0000, -27.0000, -3.0000, 31.9030",
        "50.0000, 2.5000, 0.0000, 58.0000, 24.0000, 15.0000, 19.4535",
        "50.0000, 2.5000, 0.0000, 50.0000, 3.1736, 0.5854, 1.0000",
        "50.0000, 2.5000, 0.0000, 50.0000, 3.2972, 0.0000, 1.0000",
        "50.0000, 2.5000, 0.0000, 50.0000, 1.8634, 0.5757, 1.0000",
        "50.0000, 2.5000, 0.0000, 50.0000, 3.2592, 0.3350, 1.0000",
        "60.2574, -34.0099, 36.2677, 60.4626, -34.1751, 39.4387, 1.2644",
        "63.0109, -31.0961, -5.8663, 62.8187, -29.7946, -4.0864, 1.2630",
        "61.2901, 3.7196, -5.3901, 61.4292, 2.2480, -4.9620, 1.8731",
        "35.0831, -44.1164, 3.7933, 35.0232, -40.0716, 1.5901, 1.8645",
        "22.7233, 20.0904, -46.6940, 23.0331, 14.9730, -42.5619, 2.0373",
        "36.4612, 47.8580, 18.3852, 36.2715, 50.5065, 21.2231, 1.4146",
        "90.8027, -2.0831, 1.4410, 91.1528, -1.6435, 0.0447, 1.4441",
        "90.9257, -0.5406, -0.9208, 88.6381, -0.8985, -0.7239, 1.5381",
        "6.7747, -0.2908, -2.4247, 5.8714, -0.0985, -2.2286, 0.6377",
        "2.0776, 0.0795, -1.1350, 0.9033, -0.0636, -0.5514, 0.9082"
    })
    void thePublishedPairsComeOut(double l1, double a1, double b1, double l2, double a2, double b2, double published) {
        assertThat(of(l1, a1, b1, l2, a2, b2).e00()).isCloseTo(published, within(5e-5));
        assertThat(of(l2, a2, b2, l1, a1, b1).e00()).isCloseTo(published, within(5e-5));
    }

    @Test
    void theOlderOneIsTheDistance() {
        assertThat(of(50, 3, 0, 50, 0, 4).ab()).isEqualTo(5);
        assertThat(of(52, 0, 0, 50, 0, 0).ab()).isEqualTo(2);
        assertThat(of(41, -13, 27, 41, -13, 27).e00()).isZero();
    }

    @ParameterizedTest
    @CsvSource({"101, 0, 0", "-1, 0, 0", "NaN, 0, 0", "50, 300, 0", "50, 0, NaN"})
    void whatIsNoColourIsRefused(double l, double a, double b) {
        assertThat(ColourDifference.of(new ColourDifference.Lab(l, a, b), new ColourDifference.Lab(50, 0, 0)))
                .isInstanceOf(Answer.NotDeterminable.class);
    }

    /** Grades as gauge makers print them, ISO 2409 beside ASTM D3359 B. */
    @ParameterizedTest
    @CsvSource({
        "0, 0, 5B",
        "0.1, 1, 4B",
        "5, 1, 4B",
        "5.1, 2, 3B",
        "15, 2, 3B",
        "35, 3, 2B",
        "36, 4, 1B",
        "65, 4, 1B",
        "66, 5, 0B",
        "100, 5, 0B"
    })
    void aCrossCutIsGraded(BigDecimal flaked, int grade, String other) {
        assertThat(CrossCut.of(flaked)).isEqualTo(Answer.of(new CrossCut(grade, other)));
    }

    /** Cut spacing as gauge makers print it: 1 mm up to 60 µm on hard bases, 2 on soft ones; 2 up to 120; 3 up to 250. */
    @ParameterizedTest
    @CsvSource({"60, false, 1", "60, true, 2", "61, false, 2", "120, true, 2", "121, false, 3", "250, true, 3"})
    void cutsLieFurtherApartInThickFilms(BigDecimal film, boolean soft, int spacing) {
        assertThat(CrossCut.spacing_mm(film, soft)).isEqualTo(Answer.of(spacing));
    }

    @Test
    void whatTheCrossCutIsNotForIsRefused() {
        assertThat(CrossCut.spacing_mm(BigDecimal.valueOf(251), false)).isInstanceOf(Answer.NotDeterminable.class);
        assertThat(CrossCut.of(BigDecimal.valueOf(101))).isInstanceOf(Answer.NotDeterminable.class);
        assertThat(CrossCut.of(BigDecimal.valueOf(-1))).isInstanceOf(Answer.NotDeterminable.class);
    }

    /** 60° first, 20° above 70, 85° below 10: ISO 2813, from memory. */
    @ParameterizedTest
    @CsvSource({"70, SIXTY_DEG", "70.1, TWENTY_DEG", "10, SIXTY_DEG", "9.9, EIGHTY_FIVE_DEG"})
    void glossIsReadOnceMoreWhereItTellsMost(BigDecimal at60, GlossAngle angle) {
        assertThat(GlossAngle.of(at60)).isEqualTo(angle);
    }
}
