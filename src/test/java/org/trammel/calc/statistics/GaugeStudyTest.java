package org.trammel.calc.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.trammel.calc.statistics.GaugeStudy.Reading;
import org.trammel.calc.statistics.GaugeStudy.Source;

/** AIAG, Measurement Systems Analysis, 4th edition (2010): data sheet of ten parts, three appraisers, three trials. */
class GaugeStudyTest {

    private static List<Reading> published() {
        return Published.rows("gauge-study.csv").stream()
                .skip(1)
                .map(row -> new Reading(
                        row[0],
                        "ABC".substring(Integer.parseInt(row[1]) - 1).substring(0, 1),
                        Double.parseDouble(row[3])))
                .toList();
    }

    private static void assertDeviations(GaugeStudy of, double... deviations) {
        for (Source source : Source.values()) {
            assertThat(of.of(source).deviation())
                    .as(source.name())
                    .isCloseTo(deviations[source.ordinal()], within(1.5e-4));
        }
    }

    private static void assertPercent(GaugeStudy of, double... percent) {
        for (Source source : Source.values()) {
            assertThat(100 * of.of(source).ofSpread())
                    .as(source.name())
                    .isCloseTo(percent[source.ordinal()], within(0.02));
        }
    }

    /** Printed: EV 0.20188, AV 0.22963, GRR 0.30575, PV 1.10456, TV 1.14610 with three digits in between; 17.62 20.04 26.68 96.38 %. */
    @Test
    void rangesGiveThePrintedFigures() {
        GaugeStudy of = Published.value(GaugeStudy.byRanges(published(), null));
        assertDeviations(of, 0.20186, 0.22967, 0.30577, 1.10460, 1.14613);
        assertPercent(of, 17.61, 20.04, 26.68, 96.38, 100);
        assertThat(of.categories()).isEqualTo(5);
        assertThat(of.rawCategories()).isCloseTo(5.09, within(0.005));
        GaugeStudy.Ranges ranges = Objects.requireNonNull(of.ranges());
        assertThat(ranges.mean()).isCloseTo(0.341667, within(5e-7));
        assertThat(ranges.limit()).isCloseTo(0.8795, within(2e-4));
        assertThat(ranges.beyond()).singleElement().asString().startsWith("Part 4 by B repeats within 1.02");
        assertThat(of.fitness()).isEqualTo(GaugeStudy.Fitness.DEPENDS);
        assertThat(of.parts()).isEqualTo(10);
        assertThat(of.appraisers()).isEqualTo(3);
        assertThat(of.trials()).isEqualTo(3);
    }

    /** Sums of squares, ratios, pooled components: as published software prints them for the same data; tolerance 8. */
    @Test
    void varianceAnalysisGivesThePrintedFigures() {
        GaugeStudy of = Published.value(GaugeStudy.byVariances(published(), 8.0));
        GaugeStudy.Variances table = Objects.requireNonNull(of.variances());
        assertLine(table.parts(), 88.3619, 9, 9.81799, 492.291);
        assertLine(table.appraisers(), 3.1673, 2, 1.58363, 79.406);
        assertLine(table.interaction(), 0.3590, 18, 0.01994, 0.434);
        assertThat(table.interaction().probability()).isCloseTo(0.974, within(5e-4));
        assertThat(table.repeatability().sumOfSquares()).isCloseTo(2.7589, within(5e-5));
        assertThat(table.repeatability().degreesOfFreedom()).isEqualTo(60);
        assertThat(table.repeatability().meanSquare()).isCloseTo(0.04598, within(5e-6));
        assertThat(table.pooled()).isTrue();
        assertDeviations(of, 0.19993, 0.22684, 0.30237, 1.04233, 1.08530);
        assertPercent(of, 18.42, 20.90, 27.86, 96.04, 100);
        assertThat(100 * of.of(Source.GAUGE).ofVariance()).isCloseTo(7.76, within(0.005));
        assertThat(100 * of.of(Source.REPEATABILITY).ofVariance()).isCloseTo(3.39, within(0.005));
        assertThat(100 * of.of(Source.REPRODUCIBILITY).ofVariance()).isCloseTo(4.37, within(0.005));
        assertThat(100 * of.of(Source.PARTS).ofVariance()).isCloseTo(92.24, within(0.005));
        assertThat(100 * Objects.requireNonNull(of.of(Source.GAUGE).ofTolerance()))
                .isCloseTo(22.68, within(0.005));
        assertThat(of.rawCategories()).isCloseTo(4.86, within(0.005));
        assertThat(of.categories()).isEqualTo(4);
        assertThat(of.words())
                .isEqualTo(
                        "The gauge takes 27.9 % of the spread and tells 4 categories of parts apart: by the rule of thumb of"
                                + " 10 and 30 % fit or not by what it is to judge. Fewer than 5 categories cannot steer a process.");
    }

    private static void assertLine(GaugeStudy.Line of, double squares, int dof, double meanSquare, double f) {
        assertThat(of.sumOfSquares()).isCloseTo(squares, within(5.1e-5));
        assertThat(of.degreesOfFreedom()).isEqualTo(dof);
        assertThat(of.meanSquare()).isCloseTo(meanSquare, within(5.1e-6));
        assertThat(of.f()).isCloseTo(f, within(5.1e-4));
    }

    private static List<Reading> drawn(
            Random random, double parts, double appraisers, double interaction, double repeats) {
        List<Reading> readings = new ArrayList<>();
        double[] part =
                random.doubles(10).map(each -> parts * random.nextGaussian()).toArray();
        double[] appraiser = random.doubles(4)
                .map(each -> appraisers * random.nextGaussian())
                .toArray();
        for (int p = 0; p < 10; p++) {
            for (int a = 0; a < 4; a++) {
                double together = interaction * random.nextGaussian();
                for (int t = 0; t < 3; t++) {
                    readings.add(new Reading(
                            "P" + p,
                            "A" + a,
                            50 + part[p] + appraiser[a] + together + repeats * random.nextGaussian()));
                }
            }
        }
        return readings;
    }

    /** Drawn studies with known sources: on average both methods find them, and an interaction is not pooled. */
    @ParameterizedTest
    @CsvSource({"1, 0.4, 0, 0.3", "2, 0.5, 0.6, 0.2"})
    void knownSourcesAreFoundOnAverage(double parts, double appraisers, double interaction, double repeats) {
        Random random = new Random(10_33);
        int rounds = 600;
        double[] sums = new double[4];
        double byRange = 0;
        for (int round = 0; round < rounds; round++) {
            List<Reading> readings = drawn(random, parts, appraisers, interaction, repeats);
            GaugeStudy of = Published.value(GaugeStudy.byVariances(readings, null));
            sums[0] += square(of.of(Source.REPEATABILITY).deviation());
            sums[1] += square(of.of(Source.REPRODUCIBILITY).deviation());
            sums[2] += square(of.of(Source.PARTS).deviation());
            sums[3] += Objects.requireNonNull(of.variances()).pooled() ? 1 : 0;
            byRange += Published.value(GaugeStudy.byRanges(readings, null))
                    .of(Source.REPEATABILITY)
                    .deviation();
        }
        assertThat(sums[0] / rounds).isCloseTo(square(repeats), within(0.04 * square(repeats)));
        double reproduced = square(appraisers) + square(interaction);
        assertThat(sums[1] / rounds).isCloseTo(reproduced, within(0.12 * reproduced));
        assertThat(sums[2] / rounds).isCloseTo(square(parts), within(0.08 * square(parts)));
        assertThat(byRange / rounds).isCloseTo(repeats, within(0.02 * repeats));
        if (interaction > 0) {
            assertThat(sums[3]).isZero();
        } else {
            // Pooled above 0.25, so in three of four studies.
            assertThat(sums[3] / rounds).isCloseTo(0.75, within(0.08));
        }
    }

    /** Six ranges of two: d₂* 1.181 (Duncan, table D3; from memory). Appraisers who agree add nothing. */
    @Test
    void fewRangesAreWeighedByTheirTableAndAppraisersWhoAgreeAddNothing() {
        List<Reading> readings = new ArrayList<>();
        for (String appraiser : List.of("A", "B")) {
            for (int part = 1; part <= 3; part++) {
                readings.add(new Reading("P" + part, appraiser, part));
                readings.add(new Reading("P" + part, appraiser, part + 0.2));
            }
        }
        GaugeStudy of = Published.value(GaugeStudy.byRanges(readings, null));
        assertThat(of.of(Source.REPEATABILITY).deviation()).isCloseTo(0.2 / 1.181, within(5e-5));
        assertThat(of.of(Source.REPRODUCIBILITY).deviation()).isZero();
        assertThat(of.of(Source.PARTS).deviation()).isCloseTo(2 / 1.91155, within(1e-5));
        assertThat(Published.value(GaugeStudy.byVariances(readings, null))
                        .of(Source.REPRODUCIBILITY)
                        .deviation())
                .isZero();
    }

    private static double square(double x) {
        return x * x;
    }

    @Test
    void thumbRulesTakeTheirBounds() {
        Random random = new Random(5);
        GaugeStudy good = Published.value(GaugeStudy.byVariances(drawn(random, 10, 0, 0, 0.1), null));
        assertThat(good.fitness()).isEqualTo(GaugeStudy.Fitness.GOOD);
        assertThat(good.words()).endsWith("good.");
        GaugeStudy bad = Published.value(GaugeStudy.byVariances(drawn(random, 0.1, 1, 0, 1), null));
        assertThat(bad.fitness()).isEqualTo(GaugeStudy.Fitness.NOT_FIT);
        assertThat(bad.categories()).isEqualTo(1);
        assertThat(bad.words()).contains("1 category of parts").contains("not fit to follow these parts");
    }

    @Test
    void studiesThatAreNotWholeAreSentences() {
        List<Reading> all = new ArrayList<>(published());
        assertThat(Published.words(GaugeStudy.byVariances(all.subList(0, 89), null)))
                .containsExactly(
                        "Part 10 was measured by C 2 times and not 3 as the first: each must measure each as often.");
        assertThat(Published.words(GaugeStudy.byRanges(
                        all.stream()
                                .filter(each -> !each.part().equals("3")
                                        || !each.appraiser().equals("B"))
                                .toList(),
                        null)))
                .singleElement()
                .asString()
                .startsWith("Part 3 was measured by B 0 times");
        assertThat(Published.words(GaugeStudy.byRanges(
                        all.stream()
                                .filter(each -> each.appraiser().equals("A"))
                                .toList(),
                        null)))
                .containsExactly("A study needs two appraisers or more, there are 1.");
        assertThat(Published.words(GaugeStudy.byRanges(
                        all.stream().filter(each -> each.part().equals("1")).toList(), null)))
                .containsExactly("A study needs two parts or more, there are 1.");
        assertThat(Published.words(GaugeStudy.byVariances(List.of(), null))).hasSize(3);
        List<Reading> once = List.of(
                new Reading("1", "A", 1), new Reading("1", "B", 2), new Reading("2", "A", 3), new Reading("2", "B", 4));
        assertThat(Published.words(GaugeStudy.byVariances(once, null)))
                .containsExactly("Each must measure each part twice or more, else nothing repeats itself.");
        List<Reading> coarse = new ArrayList<>(once);
        coarse.addAll(once);
        assertThat(Published.words(GaugeStudy.byVariances(coarse, null)))
                .containsExactly(
                        "Every appraiser reads the same every time: the gauge is too coarse to show how well it repeats.");
        assertThat(Published.words(GaugeStudy.byRanges(coarse, null))).hasSize(1);
        assertThat(Published.words(GaugeStudy.byRanges(published(), 0.0)))
                .containsExactly("The width of the tolerance, 0, is not above 0.");
        all.set(7, new Reading("3", "A", Double.NaN));
        assertThat(Published.words(GaugeStudy.byVariances(all, null))).contains("Reading 8 is no number.");
    }
}
