package org.trammel.calc.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Definitions: L. S. Nelson, Journal of Quality Technology 16 (1984) 237; Western Electric handbook (1956). */
class RunsTest {

    private static final Baseline STANDARD = new Baseline(0, 1, 0, 1, Baseline.Origin.GIVEN);

    private static List<Integer> alarms(List<Double> z, RunRule rule) {
        return Published.value(ControlChart.individuals(z, STANDARD, Set.of(rule))).alarms().stream()
                .filter(alarm -> alarm.plotted() == ControlChart.Plotted.READING)
                .map(ControlChart.Alarm::index)
                .toList();
    }

    private static List<Double> turns(double size, int count) {
        return IntStream.range(0, count)
                .mapToObj(i -> i % 2 == 0 ? size : -size)
                .toList();
    }

    private static List<Double> list(String z) {
        return Arrays.stream(z.split(" ")).map(Double::valueOf).toList();
    }

    private static void assertCompletes(List<Double> z, RunRule rule) {
        assertThat(alarms(z, rule)).containsExactly(z.size() - 1);
        assertThat(alarms(z.stream().map(each -> -each).toList(), rule)).containsExactly(z.size() - 1);
    }

    private static void assertQuiet(List<Double> z, RunRule rule) {
        assertThat(alarms(z, rule)).isEmpty();
        assertThat(alarms(z.stream().map(each -> -each).toList(), rule)).isEmpty();
    }

    /** Shortest rows that show each pattern, and rows just short of it. */
    @Test
    void theShortestRowOfEachPatternIsFoundAndOneJustShortIsNot() {
        assertCompletes(list("3.01"), RunRule.BEYOND_LIMITS);
        assertQuiet(list("2.99 3 -3"), RunRule.BEYOND_LIMITS);
        assertCompletes(Collections.nCopies(9, 0.1), RunRule.NINE_ON_ONE_SIDE);
        assertQuiet(Collections.nCopies(8, 0.1), RunRule.NINE_ON_ONE_SIDE);
        assertQuiet(list("0.1 0.1 0.1 0.1 0 0.1 0.1 0.1 0.1 0.1"), RunRule.NINE_ON_ONE_SIDE);
        assertCompletes(list("0 0.1 0.2 0.3 0.4 0.5"), RunRule.SIX_RISING_OR_FALLING);
        assertQuiet(list("0 0.1 0.2 0.3 0.4"), RunRule.SIX_RISING_OR_FALLING);
        assertQuiet(list("0 0.1 0.2 0.2 0.3 0.4 0.5"), RunRule.SIX_RISING_OR_FALLING);
        assertCompletes(turns(0.5, 14), RunRule.FOURTEEN_ALTERNATING);
        assertQuiet(turns(0.5, 13), RunRule.FOURTEEN_ALTERNATING);
        assertQuiet(Collections.nCopies(20, 0.1), RunRule.FOURTEEN_ALTERNATING);
        assertQuiet(Collections.nCopies(20, 0.1), RunRule.SIX_RISING_OR_FALLING);
        assertCompletes(list("2.1 0 2.1"), RunRule.TWO_OF_THREE_BEYOND_TWO);
        assertQuiet(list("2.1 0 -2.1"), RunRule.TWO_OF_THREE_BEYOND_TWO);
        assertQuiet(list("2.1 0 0 2.1 2 2"), RunRule.TWO_OF_THREE_BEYOND_TWO);
        assertCompletes(list("1.1 1.1 0 1.1 1.1"), RunRule.FOUR_OF_FIVE_BEYOND_ONE);
        assertQuiet(list("1.1 1.1 0 1.1 0 1.1 1"), RunRule.FOUR_OF_FIVE_BEYOND_ONE);
        assertQuiet(list("1.1 1.1 -1.1 1.1"), RunRule.FOUR_OF_FIVE_BEYOND_ONE);
        assertCompletes(turns(0.5, 15), RunRule.FIFTEEN_WITHIN_ONE);
        assertQuiet(turns(0.5, 14), RunRule.FIFTEEN_WITHIN_ONE);
        assertQuiet(turns(1, 30), RunRule.FIFTEEN_WITHIN_ONE);
        assertCompletes(turns(1.5, 8), RunRule.EIGHT_OUTSIDE_ONE);
        assertQuiet(turns(1.5, 7), RunRule.EIGHT_OUTSIDE_ONE);
        assertQuiet(Collections.nCopies(12, 1.5), RunRule.EIGHT_OUTSIDE_ONE);
        assertCompletes(Collections.nCopies(8, 0.1), RunRule.EIGHT_ON_ONE_SIDE);
        assertQuiet(Collections.nCopies(7, 0.1), RunRule.EIGHT_ON_ONE_SIDE);
    }

    /** Written for this: each definition read off the last points anew, without memory. */
    private static boolean completes(RunRule rule, List<Double> z) {
        return switch (rule) {
            case BEYOND_LIMITS -> Math.abs(z.get(z.size() - 1)) > 3;
            case NINE_ON_ONE_SIDE -> oneSide(z, 9);
            case EIGHT_ON_ONE_SIDE -> oneSide(z, 8);
            case SIX_RISING_OR_FALLING ->
                steps(z, 6)
                        .map(s -> s.stream().allMatch(d -> d > 0) || s.stream().allMatch(d -> d < 0))
                        .orElse(false);
            case FOURTEEN_ALTERNATING ->
                steps(z, 14)
                        .map(s -> IntStream.range(1, 13).allMatch(i -> s.get(i) * s.get(i - 1) < 0))
                        .orElse(false);
            case TWO_OF_THREE_BEYOND_TWO -> some(z, 3, 2, 2);
            case FOUR_OF_FIVE_BEYOND_ONE -> some(z, 5, 4, 1);
            case FIFTEEN_WITHIN_ONE -> z.size() >= 15 && last(z, 15).stream().allMatch(each -> Math.abs(each) < 1);
            case EIGHT_OUTSIDE_ONE ->
                z.size() >= 8
                        && last(z, 8).stream().allMatch(each -> Math.abs(each) > 1)
                        && last(z, 8).stream().anyMatch(each -> each > 0)
                        && last(z, 8).stream().anyMatch(each -> each < 0);
        };
    }

    private static List<Double> last(List<Double> z, int count) {
        return z.subList(Math.max(0, z.size() - count), z.size());
    }

    private static boolean oneSide(List<Double> z, int count) {
        return z.size() >= count
                && (last(z, count).stream().allMatch(each -> each > 0)
                        || last(z, count).stream().allMatch(each -> each < 0));
    }

    private static java.util.Optional<List<Double>> steps(List<Double> z, int count) {
        if (z.size() < count) {
            return java.util.Optional.empty();
        }
        List<Double> points = last(z, count);
        return java.util.Optional.of(IntStream.range(1, count)
                .mapToObj(i -> points.get(i) - points.get(i - 1))
                .toList());
    }

    private static boolean some(List<Double> z, int of, int least, double beyond) {
        double newest = z.get(z.size() - 1);
        return Math.abs(newest) > beyond
                && last(z, of).stream()
                                .filter(each -> each * Math.signum(newest) > beyond)
                                .count()
                        >= least;
    }

    @ParameterizedTest
    @EnumSource
    void everyPatternIsFoundWhereItsDefinitionHolds(RunRule rule) {
        Random random = new Random(16_237);
        int found = 0;
        for (int round = 0; round < 60; round++) {
            // Rounded, so that ties and points on a line occur; drawn together or apart, so that rare patterns do.
            double spread = new double[] {0.4, 1, 1.8, 3}[round % 4];
            double turn = round % 3 == 0 ? -0.7 : round % 3 == 1 ? 0 : 0.8;
            List<Double> z = new ArrayList<>();
            List<Integer> expected = new ArrayList<>();
            for (int i = 0; i < 300; i++) {
                double before = i == 0 ? 0 : z.get(i - 1);
                z.add(Math.round(4 * (turn * before + spread * random.nextGaussian())) / 4.0);
                if (completes(rule, z)) {
                    expected.add(i);
                }
            }
            assertThat(alarms(z, rule)).isEqualTo(expected);
            found += expected.size();
        }
        assertThat(found).isGreaterThan(20);
    }

    /**
     * How often each pattern shows among normal readings, computed from its definition: 2(1 − Φ(3)); 2/2⁹; 2/6!; 2 ·
     * 199360981/14! (alternating permutations, the Euler number of 14); 0.6827¹⁵; 0.3173⁸ less those on one side.
     */
    @ParameterizedTest
    @CsvSource({
        "BEYOND_LIMITS, 0.0026998",
        "NINE_ON_ONE_SIDE, 0.00390625",
        "SIX_RISING_OR_FALLING, 0.0027778",
        "FOURTEEN_ALTERNATING, 0.0045736",
        "FIFTEEN_WITHIN_ONE, 0.0032610",
        "EIGHT_ON_ONE_SIDE, 0.0078125",
        "EIGHT_OUTSIDE_ONE, 0.0001020",
    })
    void patternsShowAsOftenAsTheirDefinitionSays(RunRule rule, double probability) {
        Random random = new Random(1984);
        int count = 300_000;
        List<Double> z =
                IntStream.range(0, count).mapToObj(i -> random.nextGaussian()).toList();
        // Alarms come in runs of at most a few, so their count scatters some times the root of it.
        double scatter = Math.sqrt(probability * count);
        assertThat((double) alarms(z, rule).size()).isCloseTo(probability * count, within(6 * scatter));
    }

    /** Champ and Woodall, Technometrics 29 (1987) 393, as NIST/SEMATECH, 6.3.2, quotes it: 91.75 (from memory). */
    @Test
    void theFourRulesOfTheHandbookRaiseAFalseAlarmInAboutNinetyTwoPoints() {
        Random random = new Random(1956);
        int rounds = 10_000;
        long points = 0;
        for (int round = 0; round < rounds; round++) {
            Runs runs = new Runs();
            boolean alarm = false;
            while (!alarm) {
                double z = random.nextGaussian();
                runs.take(z);
                points++;
                alarm = Math.abs(z) > 3;
                for (RunRule rule : RunRule.WESTERN_ELECTRIC) {
                    alarm |= runs.completes(rule);
                }
            }
        }
        assertThat((double) points / rounds).isCloseTo(91.75, within(4 * 91.75 / Math.sqrt(rounds)));
    }

    @Test
    void everyRuleHasItsDefinitionInWordsAndSetsHoldWhatTheyAreNamedFor() {
        assertThat(RunRule.values())
                .allSatisfy(rule -> assertThat(rule.definition()).matches("\\p{Lu}.*\\."));
        assertThat(RunRule.NELSON).hasSize(8).doesNotContain(RunRule.EIGHT_ON_ONE_SIDE);
        assertThat(RunRule.WESTERN_ELECTRIC).hasSize(4).contains(RunRule.EIGHT_ON_ONE_SIDE);
    }
}
