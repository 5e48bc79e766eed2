package org.trammel.calc.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.trammel.calc.geometry.CutListTest.value;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.trammel.calc.units.Answer;

class TilingTest {

    private static final Tiling.Frame FRAME = new Tiling.Frame(10, 30, 10);

    /** Free by hand: A4 190 by 247 or 277 by 160; letter 195,9 by 229,4 or 259,4 by 165,9. */
    @ParameterizedTest
    @CsvSource({
        "A4, 132, 62, false, 1",
        "A4, 190, 247, false, 1",
        "A4, 190.01, 100, true, 1",
        "A4, 300, 100, false, 2",
        "A4, 370, 247, false, 2",
        "A4, 380, 484, false, 6",
        "A4, 270, 155, true, 1",
        "US_LETTER, 195.9, 229.4, false, 1",
        "US_LETTER, 259.4, 165.9, true, 1",
        "US_LETTER, 196, 229, false, 2",
        "US_LETTER, 500, 160, true, 2",
    })
    void asFewSheetsAsCanBe(Paper paper, double width, double height, boolean lying, int sheets) {
        Tiling tiling = value(Tiling.of(width, height, paper, FRAME));
        assertThat(tiling.lying()).isEqualTo(lying);
        assertThat(tiling.sheets()).hasSize(sheets);
    }

    @Test
    void neighboursShareAStrip() {
        Tiling tiling = value(Tiling.of(370, 247, Paper.A4, FRAME));
        assertThat(tiling.sheets())
                .containsExactly(new Tiling.Sheet(0, 0, 0, 0, 190, 247), new Tiling.Sheet(0, 1, 180, 0, 190, 247));
    }

    /** Every point of the drawing is on a sheet, and no sheet is empty. */
    @Test
    void everythingIsShown() {
        Random random = new Random(5);
        for (int i = 0; i < 500; i++) {
            double width = 10 + 900 * random.nextDouble();
            double height = 10 + 900 * random.nextDouble();
            Tiling tiling = value(Tiling.of(width, height, Paper.values()[i % 2], FRAME));
            double x = width * random.nextDouble();
            double y = height * random.nextDouble();
            assertThat(tiling.sheets())
                    .as("%s by %s", width, height)
                    .anySatisfy(sheet -> {
                        assertThat(x).isBetween(sheet.left_mm(), sheet.left_mm() + sheet.width_mm());
                        assertThat(y).isBetween(sheet.bottom_mm(), sheet.bottom_mm() + sheet.height_mm());
                    })
                    .allSatisfy(sheet -> {
                        assertThat(sheet.left_mm()).isLessThan(width);
                        assertThat(sheet.bottom_mm()).isLessThan(height);
                    });
        }
    }

    /** ISO 216: the area of A4 is a sixteenth of a square metre, its sides in the ratio of the square root of 2. */
    @Test
    void theSheetsAreThoseOfTheirStandards() {
        assertThat(Paper.A4.width_mm() * Paper.A4.height_mm()).isCloseTo(1e6 / 16, within(150.0));
        assertThat(Paper.A4.height_mm() / Paper.A4.width_mm()).isCloseTo(Math.sqrt(2), within(0.005));
        assertThat(Paper.US_LETTER.width_mm()).isCloseTo(8.5 * 25.4, within(1e-9));
        assertThat(Paper.US_LETTER.height_mm()).isCloseTo(11 * 25.4, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({
        "NaN, 100, 10, 30, 10, width, The drawing's width of no number is not above 0 and at most 10 m.",
        "100, 0, 10, 30, 10, height, The drawing's height of 0 mm is not above 0 and at most 10 m.",
        "100, 100, 106, 30, 10, paper, 'A drawing of 100 mm by 100 mm takes more than 60 sheets, or margin, heading and shared strip leave no room on one.'",
        "9000, 9000, 10, 30, 10, paper, 'A drawing of 9000 mm by 9000 mm takes more than 60 sheets, or margin, heading and shared strip leave no room on one.'",
        "100, 100, 10, 30, -1, shared, The strip that two sheets share of -1 mm is not 0 or more and at most 10 m.",
    })
    void whatCannotBeLaidOutIsNamed(
            double width, double height, double margin, double heading, double shared, String input, String words) {
        assertThat(Tiling.of(width, height, Paper.A4, new Tiling.Frame(margin, heading, shared)))
                .isEqualTo(Answer.none(input, words));
    }
}
