package org.trammel.calc.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.assertj.core.data.Percentage;
import org.hipparchus.stat.descriptive.DescriptiveStatistics;
import org.junit.jupiter.api.Test;

/** Certified values: NIST Statistical Reference Datasets, univariate. */
class SummaryTest {

    private static Summary summary(List<Double> readings) {
        return Published.value(Summary.of(readings));
    }

    @Test
    void beamDeflectionsHaveTheirCertifiedFigures() {
        Summary lew = summary(Published.column("lew.csv", "y"));
        assertThat(lew.count()).isEqualTo(200);
        assertThat(lew.mean()).isCloseTo(-177.435, within(1e-12));
        assertThat(lew.deviation()).isCloseTo(277.332168044316, within(5e-13));
        assertThat(lew.neighbours()).isCloseTo(-0.307304800605679, within(5e-15));
        assertThat(lew.least()).isEqualTo(-579);
        assertThat(lew.most()).isEqualTo(300);
    }

    @Test
    void transmittancesHaveTheirCertifiedFigures() {
        Summary mavro = summary(Published.column("mavro.csv", "y"));
        assertThat(mavro.mean()).isCloseTo(2.001856, within(1e-15));
        assertThat(mavro.deviation()).isCloseTo(0.000429123454003053, within(1e-15));
        assertThat(mavro.neighbours()).isCloseTo(0.937989183438248, within(1e-11));
    }

    /** Large readings of small spread; what the decimal fractions lose when they become binary is 1e-10 of each. */
    @Test
    void aSmallSpreadOfLargeReadingsKeepsItsDigits() {
        Summary whole = summary(List.of(10000001.0, 10000003.0, 10000002.0));
        assertThat(whole.mean()).isEqualTo(10000002);
        assertThat(whole.deviation()).isEqualTo(1);
        assertThat(whole.neighbours()).isEqualTo(-0.5);
        Summary tenths = summary(Published.column("numacc3.csv", "y"));
        assertThat(tenths.count()).isEqualTo(1001);
        assertThat(tenths.mean()).isCloseTo(1000000.2, within(1e-9));
        assertThat(tenths.deviation()).isCloseTo(0.1, within(1e-10));
        assertThat(tenths.neighbours()).isCloseTo(-0.999, within(1e-9));
    }

    /** Second opinion: a general library of statistics. */
    @Test
    void randomReadingsAreSummedUpAsALibraryDoes() {
        Random random = new Random(20261130);
        for (int round = 0; round < 50; round++) {
            List<Double> readings = new ArrayList<>();
            DescriptiveStatistics library = new DescriptiveStatistics();
            double centre = 100 * random.nextGaussian();
            for (int i = 0; i < 2 + random.nextInt(200); i++) {
                readings.add(centre + random.nextGaussian());
                library.addValue(readings.get(i));
            }
            Summary summary = summary(readings);
            assertThat(summary.mean()).isCloseTo(library.getMean(), Percentage.withPercentage(1e-11));
            assertThat(summary.deviation()).isCloseTo(library.getStandardDeviation(), Percentage.withPercentage(1e-9));
        }
    }

    @Test
    void nothingOneAndWhatIsNoNumberAreSentences() {
        assertThat(Published.words(Summary.of(List.of()))).containsExactly("There is no reading.");
        assertThat(Published.words(Summary.of(List.of(0.3))))
                .containsExactly("There is one reading only: it has no spread that could be told.");
        assertThat(Published.words(Summary.of(List.of(0.1, Double.NaN, 0.2))))
                .containsExactly("Reading 2 is no number.");
        assertThat(Published.words(Summary.of(List.of(0.1, 0.2, Double.NEGATIVE_INFINITY))))
                .containsExactly("Reading 3 is too large to reckon with.");
        assertThat(Published.words(Summary.of(List.of(1e308, 0.2))))
                .containsExactly("Reading 1 is too large to reckon with.");
        assertThat(summary(List.of(0.3, 0.3, 0.3)).deviation()).isZero();
        assertThat(summary(List.of(0.3, 0.3, 0.3)).neighbours()).isZero();
    }
}
