package org.trammel.calc.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import org.assertj.core.data.Percentage;
import org.hipparchus.stat.inference.OneWayAnova;
import org.hipparchus.stat.regression.OLSMultipleLinearRegression;
import org.junit.jupiter.api.Test;
import org.trammel.calc.statistics.Attribution.Difference;
import org.trammel.calc.statistics.Attribution.Effect;
import org.trammel.calc.statistics.Attribution.Reading;
import org.trammel.calc.units.Answer;

class AttributionTest {

    private static final List<String> FACTORS = List.of("jig", "welder", "tube set");

    private static Reading reading(double value, String jig, String welder, String tubeSet) {
        return new Reading(value, Map.of("jig", jig, "welder", welder, "tube set", tubeSet));
    }

    private static Attribution attribution(List<String> factors, List<Reading> readings) {
        return Published.value(Attribution.of(factors, readings));
    }

    private static Effect effect(Attribution attribution, int factor) {
        return Published.value(attribution.effects().get(factor));
    }

    private static List<Reading> balanced() {
        return List.of(
                reading(0.2, "J1", "W1", "A"),
                reading(0.3, "J1", "W1", "B"),
                reading(0.1, "J1", "W2", "A"),
                reading(0.2, "J1", "W2", "B"),
                reading(0.9, "J2", "W1", "A"),
                reading(0.8, "J2", "W1", "B"),
                reading(0.7, "J2", "W2", "A"),
                reading(0.8, "J2", "W2", "B"));
    }

    /** Worked by hand: s = √(0.015/4), standard error of each 0.043, t 13.9, 2.3, 1.2; 4 degrees of freedom need 2.776. */
    @Test
    void aBalancedPlanBlamesTheJigAndNothingElse() {
        Attribution found = attribution(FACTORS, balanced());
        assertThat(found.mean()).isCloseTo(0.5, within(1e-12));
        assertThat(found.residualDeviation()).isCloseTo(Math.sqrt(0.015 / 4), within(1e-12));
        assertThat(found.degreesOfFreedom()).isEqualTo(4);
        assertDifference(effect(found, 0), "J2", "J1", 0.60, 13.9);
        assertDifference(effect(found, 1), "W1", "W2", 0.10, 2.3);
        assertDifference(effect(found, 2), "B", "A", 0.05, 1.2);
        assertThat(effect(found, 0).differences().get(0).proven()).isTrue();
        assertThat(effect(found, 1).differences().get(0).proven()).isFalse();
        assertThat(found.sentences())
                .containsExactly(
                        "By jig: J2 lies 0.600 above J1 (t 13.9, 2.8 would do).",
                        "No difference by welder is proven.",
                        "No difference by tube set is proven.");
    }

    private static void assertDifference(Effect effect, String higher, String lower, double difference, double t) {
        assertThat(effect.differences()).singleElement().satisfies(each -> {
            assertThat(each.higher()).isEqualTo(higher);
            assertThat(each.lower()).isEqualTo(lower);
            assertThat(each.difference()).isCloseTo(difference, within(1e-12));
            assertThat(each.standardError()).isCloseTo(0.0433, within(5e-5));
            assertThat(each.t()).isCloseTo(t, within(0.05));
            assertThat(each.needed()).isCloseTo(2.776, within(5e-4));
            assertThat(effect.f()).isCloseTo(each.t() * each.t(), Percentage.withPercentage(1e-6));
        });
    }

    /** NIST Statistical Reference Datasets, analysis of variance, SiRstv: F 1.18046237440255, deviation 0.104076068334656. */
    @Test
    void oneFactorHasItsCertifiedRatio() {
        List<Double> y = Published.column("resistance.csv", "resistance");
        List<Double> instrument = Published.column("resistance.csv", "instrument");
        List<Reading> readings = IntStream.range(0, 25)
                .mapToObj(i -> new Reading(y.get(i), Map.of("instrument", "No. " + instrument.get(i))))
                .toList();
        Attribution found = attribution(List.of("instrument"), readings);
        assertThat(effect(found, 0).f()).isCloseTo(1.18046237440255, within(1e-9));
        assertThat(found.residualDeviation()).isCloseTo(0.104076068334656, within(1e-12));
        assertThat(found.degreesOfFreedom()).isEqualTo(20);
        assertThat(effect(found, 0).differences()).hasSize(10);
        double[][] groups = new double[5][];
        for (int g = 0; g < 5; g++) {
            groups[g] = Published.numbers(y.subList(5 * g, 5 * g + 5));
        }
        assertThat(effect(found, 0).probability())
                .isCloseTo(new OneWayAnova().anovaPValue(List.of(groups)), within(1e-9));
    }

    /** Second opinion: a general library on marks typed out by hand, each factor's first level left out. */
    @Test
    void randomPlansComeOutAsALibraryHasThem() {
        Random random = new Random(7);
        for (int round = 0; round < 30; round++) {
            List<Reading> readings = new ArrayList<>();
            double[][] marks = new double[60][4];
            double[] y = new double[60];
            for (int i = 0; i < 60; i++) {
                int jig = i == 0 ? 0 : random.nextInt(3);
                int welder = i == 0 ? 0 : random.nextInt(2);
                int tubes = i == 0 ? 0 : random.nextInt(2);
                y[i] = 0.3 * jig - 0.2 * welder + 0.1 * random.nextGaussian();
                marks[i][0] = jig == 1 ? 1 : 0;
                marks[i][1] = jig == 2 ? 1 : 0;
                marks[i][2] = welder;
                marks[i][3] = tubes;
                readings.add(reading(y[i], "J" + jig, "W" + welder, "T" + tubes));
            }
            OLSMultipleLinearRegression library = new OLSMultipleLinearRegression();
            library.newSampleData(y, marks);
            double[] expected = library.estimateRegressionParameters();
            double[] errors = library.estimateRegressionParametersStandardErrors();
            Attribution found = attribution(FACTORS, readings);
            assertThat(found.residualDeviation())
                    .isCloseTo(library.estimateRegressionStandardError(), Percentage.withPercentage(1e-8));
            assertLies(effect(found, 0), "J1", "J0", expected[1], errors[1]);
            assertLies(effect(found, 0), "J2", "J0", expected[2], errors[2]);
            assertLies(effect(found, 1), "W1", "W0", expected[3], errors[3]);
            assertLies(effect(found, 2), "T1", "T0", expected[4], errors[4]);
        }
    }

    private static void assertLies(Effect effect, String one, String other, double by, double error) {
        Difference found = effect.differences().stream()
                .filter(each -> List.of(each.higher(), each.lower()).containsAll(List.of(one, other)))
                .findFirst()
                .orElseThrow();
        double signed = found.higher().equals(one) ? found.difference() : -found.difference();
        assertThat(signed).isCloseTo(by, within(1e-10));
        assertThat(found.standardError()).isCloseTo(error, Percentage.withPercentage(1e-7));
    }

    /** With nothing to find and three jigs, all pairs together are wrongly called in at most five of a hundred plans. */
    @Test
    void chanceIsSeldomCalledACause() {
        Random random = new Random(3);
        int rounds = 2000;
        int called = 0;
        for (int round = 0; round < rounds; round++) {
            List<Reading> readings = IntStream.range(0, 15)
                    .mapToObj(i -> new Reading(random.nextGaussian(), Map.of("jig", "J" + i % 3)))
                    .toList();
            called += effect(attribution(List.of("jig"), readings), 0).differences().stream()
                            .anyMatch(Difference::proven)
                    ? 1
                    : 0;
        }
        assertThat(called).isBetween((int) (0.02 * rounds), (int) (0.06 * rounds));
    }

    private static List<Reading> eachWelderHisJig() {
        return List.of(
                reading(0.2, "J1", "W1", "A"),
                reading(0.3, "J1", "W1", "B"),
                reading(0.1, "J1", "W1", "A"),
                reading(0.9, "J2", "W2", "A"),
                reading(0.8, "J2", "W2", "B"),
                reading(0.7, "J2", "W2", "B"));
    }

    @Test
    void jigAndWelderAlwaysTogetherAreNotSeparated() {
        Attribution found = attribution(FACTORS, eachWelderHisJig());
        assertThat(Published.words(found.effects().get(0)))
                .containsExactly("What jig J1 and jig J2 add cannot be told from the welder: J1 went with welder W1, J2"
                        + " with welder W2. One frame made like that of reading 4, with welder W2, but with jig J1, would"
                        + " separate them.");
        assertThat(Published.words(found.effects().get(1))).hasSize(1);
        assertThat(effect(found, 2).differences()).hasSize(1);
        assertThat(found.sentences()).hasSize(3);
        List<Reading> more = new ArrayList<>(eachWelderHisJig());
        more.add(reading(0.25, "J1", "W2", "A"));
        assertThat(effect(attribution(FACTORS, more), 0).differences()).hasSize(1);
        assertThat(effect(attribution(FACTORS, more), 1).differences()).hasSize(1);
    }

    /** J1 and J2 share a welder, J3 has one of its own: the first pair is told, the rest is not. */
    @Test
    void whatCanBeSeparatedIsToldBesideWhatCannot() {
        List<Reading> readings = List.of(
                reading(0.2, "J1", "W1", "A"),
                reading(0.25, "J1", "W1", "A"),
                reading(0.5, "J2", "W1", "A"),
                reading(0.55, "J2", "W1", "A"),
                reading(0.9, "J3", "W2", "A"),
                reading(0.92, "J3", "W2", "A"));
        Attribution found = attribution(FACTORS, readings);
        assertThat(effect(found, 0).differences()).singleElement().satisfies(each -> {
            assertThat(each.higher()).isEqualTo("J2");
            assertThat(each.difference()).isCloseTo(0.3, within(1e-12));
        });
        assertThat(effect(found, 0).open()).singleElement().asString().startsWith("What jig J1 and jig J3 add cannot");
        assertThat(Published.words(found.effects().get(2)))
                .containsExactly("All readings come from tube set A: there is no other to compare.");
    }

    /** Random plans: what is refused for a pair is separated once the frame that was named is made. */
    @Test
    void theFrameThatIsNamedSeparates() {
        Random random = new Random(11);
        int seen = 0;
        for (int round = 0; round < 300; round++) {
            List<Reading> readings = new ArrayList<>();
            for (int i = 0; i < 9; i++) {
                int jig = random.nextInt(3);
                int welder = random.nextInt(4) == 0 ? random.nextInt(3) : jig;
                int tubes = random.nextInt(4) == 0 ? random.nextInt(2) : welder % 2;
                readings.add(reading(random.nextGaussian(), "J" + jig, "W" + welder, "T" + tubes));
            }
            if (!(Attribution.of(FACTORS, readings) instanceof Answer.Determined<Attribution> found)) {
                continue;
            }
            for (int f = 0; f < 3; f++) {
                for (String words : open(found.value().effects().get(f))) {
                    java.util.regex.Matcher named = java.util.regex.Pattern.compile(
                                    "^What .* (\\w+) and .* (\\w+) add .*of reading (\\d+),.* but with .* (\\w+), would")
                            .matcher(words);
                    assertThat(named.find()).as(words).isTrue();
                    Reading like = readings.get(Integer.parseInt(named.group(3)) - 1);
                    Map<String, String> levels = new HashMap<>(like.levels());
                    levels.put(FACTORS.get(f), named.group(4));
                    List<Reading> more = new ArrayList<>(readings);
                    more.add(new Reading(0.1, levels));
                    assertThat(effect(attribution(FACTORS, more), f).differences())
                            .anyMatch(each -> List.of(each.higher(), each.lower())
                                    .containsAll(List.of(named.group(1), named.group(2))));
                    seen++;
                }
            }
        }
        assertThat(seen).isGreaterThan(50);
    }

    private static List<String> open(Answer<Effect> answer) {
        return answer instanceof Answer.Determined<Effect> there
                ? there.value().open()
                : Published.words(answer).stream()
                        .filter(words -> words.startsWith("What"))
                        .toList();
    }

    @Test
    void tooLittleOrNoSpreadIsASentence() {
        assertThat(Published.words(Attribution.of(FACTORS, balanced().subList(0, 2))))
                .containsExactly("Fewer than three readings tell nothing apart.");
        assertThat(Published.words(Attribution.of(
                        FACTORS,
                        List.of(
                                balanced().get(0),
                                balanced().get(1),
                                balanced().get(2),
                                balanced().get(4)))))
                .singleElement()
                .asString()
                .startsWith("The 4 readings are no more than what they may hang on");
        List<Reading> same = IntStream.range(0, 6)
                .mapToObj(i -> reading(i % 2 == 0 ? 0.1 : 0.2, "J" + i % 2, "W1", "A"))
                .toList();
        assertThat(Published.words(Attribution.of(FACTORS, same)))
                .singleElement()
                .asString()
                .startsWith("Readings made alike agree to the last digit");
        assertThat(Published.words(Attribution.of(List.of(), balanced()))).hasSize(1);
        assertThat(Published.words(Attribution.of(List.of("jig", "day"), balanced())))
                .containsExactly("Reading 1 does not name its day.");
        List<Reading> broken = new ArrayList<>(balanced());
        broken.set(2, reading(Double.NaN, "J1", "W1", "A"));
        assertThat(Published.words(Attribution.of(FACTORS, broken))).containsExactly("Reading 3 is no number.");
    }
}
