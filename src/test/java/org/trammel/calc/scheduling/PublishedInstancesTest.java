package org.trammel.calc.scheduling;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.trammel.calc.units.Answer;

/** Instances whose least number of bars is published. */
class PublishedInstancesTest {

    private static final TubeKind KIND = new TubeKind("any", "any");

    private static CutPlan.Share share(double bar, double... lengths) {
        List<Blank> blanks = new ArrayList<>();
        for (double length : lengths) {
            blanks.add(new Blank("piece", "P-" + blanks.size(), KIND, length, 0));
        }
        Answer<CutPlan> answer =
                Nesting.of(blanks, List.of(new TubeStock(KIND, "L", bar, blanks.size(), false)), new Saw(0, bar));
        return ((Answer.Determined<CutPlan>) answer).value().shares().get(0);
    }

    /**
     * The rolls of paper by which an encyclopedia explains the problem (Wikipedia, Cutting stock problem): 219 rolls of
     * thirteen widths from rolls of 5600; the least is 73.
     */
    @Test
    void thePaperRollsComeFromSeventyThree() {
        int[][] widths = {
            {1380, 22},
            {1520, 25},
            {1560, 12},
            {1710, 14},
            {1820, 18},
            {1880, 18},
            {1930, 20},
            {2000, 10},
            {2050, 12},
            {2100, 14},
            {2140, 16},
            {2150, 18},
            {2200, 20}
        };
        List<Double> lengths = new ArrayList<>();
        for (int[] width : widths) {
            for (int i = 0; i < width[1]; i++) {
                lengths.add((double) width[0]);
            }
        }
        CutPlan.Share share =
                share(5600, lengths.stream().mapToDouble(each -> each).toArray());
        assertThat(share.leastNewStock_mm()).isEqualTo(73 * 5600);
        assertThat(share.newStock_mm()).isEqualTo(73 * 5600);
        assertThat(share.proven()).isTrue();
    }

    /**
     * Instance u120_00 of E. Falkenauer, A hybrid grouping genetic algorithm for bin packing, J. Heuristics 2 (1996) 5,
     * as the OR-Library of J. E. Beasley has it (binpack1): 120 pieces, bins of 150; the least is 48, first fit
     * decreasing takes 49.
     */
    @Test
    void theHundredAndTwentyPiecesComeFromFortyEight() {
        CutPlan.Share share = share(
                150, 42, 69, 67, 57, 93, 90, 38, 36, 45, 42, 33, 79, 27, 57, 44, 84, 86, 92, 46, 38, 85, 33, 82, 73, 49,
                70, 59, 23, 57, 72, 74, 69, 33, 42, 28, 46, 30, 64, 29, 74, 41, 49, 55, 98, 80, 32, 25, 38, 82, 30, 35,
                39, 57, 84, 62, 50, 55, 27, 30, 36, 20, 78, 47, 26, 45, 41, 58, 98, 91, 96, 73, 84, 37, 93, 91, 43, 73,
                85, 81, 79, 71, 80, 76, 83, 41, 78, 70, 23, 42, 87, 43, 84, 60, 55, 49, 78, 73, 62, 36, 44, 94, 69, 32,
                96, 70, 84, 58, 78, 25, 80, 58, 66, 83, 24, 98, 60, 42, 43, 43, 39);
        assertThat(share.leastNewStock_mm()).isEqualTo(48 * 150);
        assertThat(share.newStock_mm()).isEqualTo(48 * 150);
        assertThat(share.proven()).isTrue();
    }
}
