package org.trammel.calc.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.hipparchus.stat.Frequency;
import org.hipparchus.stat.LongFrequency;
import org.junit.jupiter.api.Test;

class HistogramTest {

    /** Number of classes: H. A. Sturges (1926), 1 + log₂ n, of the NIST dataset of deflections; its width rounded up. */
    @Test
    void widthFollowsSturgesUpToARoundFigure() {
        List<Double> lew = Published.column("lew.csv", "y");
        Histogram of = Published.value(Histogram.of(lew));
        // 879 over 1 + log2 200 = 8.644 is 101.7, and the next round figure is 200.
        assertThat(of.width()).isCloseTo(200, within(1e-9));
        assertThat(of.classes().get(0).from()).isCloseTo(-600, within(1e-9));
        assertThat(of.classes()).hasSize(5);
        LongFrequency counts = new LongFrequency();
        lew.forEach(each -> counts.addValue(Math.floorDiv(each.longValue(), 200L)));
        for (Histogram.Bin bin : of.classes()) {
            assertThat((long) bin.count())
                    .as("counted by a library of frequencies")
                    .isEqualTo(counts.getCount(Math.round(bin.from() / 200)));
        }
    }

    @Test
    void everyReadingStandsInTheClassThatHoldsIt() {
        Random random = new Random(7);
        for (int k = 0; k < 200; k++) {
            List<Double> readings = new ArrayList<>();
            for (int i = 0; i <= random.nextInt(80); i++) {
                readings.add(Math.round(random.nextGaussian() * 1000) / 100.0);
            }
            Histogram of = Published.value(Histogram.of(readings));
            Frequency<Double> counts = new Frequency<>();
            readings.forEach(counts::addValue);
            double slip = of.width() * 1e-6;
            for (Histogram.Bin bin : of.classes()) {
                long within = readings.stream()
                        .filter(each -> each >= bin.from() - slip && each < bin.to() - slip)
                        .count();
                assertThat((long) bin.count()).isEqualTo(within);
                assertThat(bin.to() - bin.from()).isCloseTo(of.width(), within(slip));
            }
            assertThat(of.classes().stream().mapToInt(Histogram.Bin::count).sum())
                    .isEqualTo((int) counts.getSumFreq());
        }
    }

    /** 0.3 over 0.1 is less than 3 in binary, and stands on the bound nevertheless. */
    @Test
    void aDecimalOnABoundStandsAboveIt() {
        Histogram of = Published.value(Histogram.of(List.of(0.0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7)));
        assertThat(of.width()).isCloseTo(0.2, within(1e-12));
        assertThat(of.classes().stream().map(Histogram.Bin::count)).containsExactly(2, 2, 2, 2);
    }

    @Test
    void oneReadingAndManyAlikeHaveOneClassAndNoneHasNone() {
        assertThat(Published.value(Histogram.of(List.of(5.0))).classes()).hasSize(1);
        assertThat(Published.value(Histogram.of(List.of(0.0, 0.0)))
                        .classes()
                        .get(0)
                        .count())
                .isEqualTo(2);
        assertThat(Published.value(Histogram.of(List.of(-3.2, -3.2, -3.2)))
                        .classes()
                        .get(0)
                        .count())
                .isEqualTo(3);
        assertThat(Published.words(Histogram.of(List.of()))).containsExactly("There is no reading.");
        assertThat(Published.words(Histogram.of(List.of(1.0, Double.NaN)))).isNotEmpty();
    }
}
