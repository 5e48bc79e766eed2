package org.trammel.shop.calculations;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.trammel.shop.calculations.Sent.figure;

import com.jayway.jsonpath.DocumentContext;
import com.jayway.jsonpath.JsonPath;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.trammel.calc.statistics.Published;
import org.trammel.shop.ShopTest;
import org.trammel.shop.TestCrew;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import tools.jackson.databind.json.JsonMapper;

/** Through the door: published data of a public handbook, and worked figures. */
@ShopTest
class StatisticsComputedTest {

    /** Rear axle offsets of a jig that drifts, mm. */
    private static final List<Double> DRIFT = List.of(0.3, -0.1, 0.2, 0.4, 0.1, 0.6, 0.5, 0.8, 0.7, 0.9, 0.8, 1.0);

    /** The same on a jig that holds. */
    private static final List<Double> OFFSETS = List.of(
            0.3, -0.1, 0.2, 0.4, 0.1, 0.6, 0.5, -0.3, 0.0, 0.2, -0.2, 0.4, 0.3, 0.1, -0.1, 0.5, 0.2, 0.0, 0.3, -0.2,
            0.1, 0.4, 0.2, 0.3, 0.0);

    /** Gaps, mm: skew, and never below 0. */
    private static final List<Double> GAPS = List.of(
            0.12, 0.05, 0.31, 0.22, 0.08, 0.17, 0.41, 0.26, 0.09, 0.14, 0.33, 0.19, 0.06, 0.28, 0.11, 0.23, 0.52, 0.15,
            0.20, 0.37, 0.10, 0.18, 0.07, 0.29, 0.13);

    @Autowired
    private MockMvc mvc;

    @Autowired
    private TestCrew hands;

    @Autowired
    private Crew crew;

    private Sent worker;

    @BeforeEach
    void hire() {
        worker = new Sent(mvc, crew.byId(hands.hire(Role.STATION_WORKER)));
    }

    private static String json(Object body) {
        return JsonMapper.shared().writeValueAsString(body);
    }

    private DocumentContext charted(String kind, Map<String, ?> base, String what, List<?> charted, Map<String, ?> more)
            throws Exception {
        Map<String, Object> body = new HashMap<>(Map.of("kind", kind, "base", base, what, charted));
        body.putAll(more);
        return worker.computed("control-chart", json(body));
    }

    private static List<Double> values(DocumentContext answer, int trace) {
        List<Number> values = answer.read("$.traces[" + trace + "].points[*].value");
        return values.stream().map(Number::doubleValue).toList();
    }

    private static List<Integer> alarms(DocumentContext answer) {
        List<Integer> numbers = answer.read("$.alarms[*].number");
        return numbers.stream().distinct().toList();
    }

    private static void assertValues(List<Double> values, List<Double> expected, double apart) {
        assertThat(values).hasSameSizeAs(expected);
        IntStream.range(0, values.size())
                .forEach(i -> assertThat(values.get(i)).isCloseTo(expected.get(i), within(apart)));
    }

    /** Worked by hand, σ 0.35 about 0: z₈ 0.380 against 0.311; the sum passes 4.77 σ = 1.669 at the ninth; no single reading is out. */
    @Test
    void aDriftOfAJigIsFoundAtItsEighthFrame() throws Exception {
        Map<String, Object> base = Map.of("centre", 0, "sigma", 0.35);
        DocumentContext weighted = charted("WEIGHTED_MEAN", base, "readings", DRIFT, Map.of());
        assertValues(
                values(weighted, 0).subList(0, 8),
                List.of(0.06, 0.028, 0.062, 0.130, 0.124, 0.219, 0.275, 0.380),
                5.01e-4);
        assertThat(figure(weighted, "$.traces[0].points[7].upper")).isCloseTo(0.311, within(5e-4));
        assertThat(alarms(weighted)).containsExactly(8, 9, 10, 11, 12);
        assertThat(weighted.read("$.alarms[0].words", String.class))
                .isEqualTo("Reading 8: the weighted mean, 0.380, is above its upper limit 0.311.");
        assertThat(weighted.read("$.alarms[0].rule", String.class)).isEqualTo("BEYOND_LIMITS");
        assertThat(weighted.<List<String>>read("$.doubts")).isEmpty();
        DocumentContext sum = charted("CUMULATIVE_SUM", base, "readings", DRIFT, Map.of());
        assertThat(figure(sum, "$.traces[0].points[0].upper")).isCloseTo(1.669, within(6e-4));
        assertThat(alarms(sum)).containsExactly(9, 10, 11, 12);
        assertThat(alarms(charted("INDIVIDUALS", base, "readings", DRIFT, Map.of())))
                .isEmpty();
        DocumentContext patterns =
                charted("INDIVIDUALS", base, "readings", DRIFT, Map.of("rules", List.of("NINE_ON_ONE_SIDE")));
        assertThat(alarms(patterns)).containsExactly(11, 12);
    }

    /** NIST/SEMATECH 6.3.2.2, a base of ten readings: mean 50.81, limits 55.8041 and 45.8159 with the divisor 1.128, steps 1.8778. */
    @Test
    void flowRatesHaveTheLimitsOfTheHandbook() throws Exception {
        List<Double> flow = Published.column("flow-rate.csv", "x");
        DocumentContext chart = charted("INDIVIDUALS", Map.of("readings", flow), "readings", flow, Map.of());
        assertThat(figure(chart, "$.base.centre")).isCloseTo(50.81, within(1e-12));
        assertThat(figure(chart, "$.base.count")).isEqualTo(10);
        assertThat(figure(chart, "$.traces[0].points[0].upper")).isCloseTo(55.8041, within(0.0018));
        assertThat(figure(chart, "$.traces[0].points[0].lower")).isCloseTo(45.8159, within(0.0018));
        assertThat(figure(chart, "$.traces[1].centre")).isCloseTo(1.8778, within(5e-5));
        assertThat(figure(chart, "$.traces[1].points[0].number")).isEqualTo(2);
        assertThat(alarms(chart)).isEmpty();
        assertThat(chart.<List<String>>read("$.doubts"))
                .contains("The base has 10 readings: limits from fewer than 20 may be far off.");
        Map<String, Object> frozen =
                Map.of("centre", figure(chart, "$.base.centre"), "sigma", figure(chart, "$.base.sigma"));
        DocumentContext later = charted("INDIVIDUALS", frozen, "readings", List.of(55.9, 50), Map.of());
        assertThat(figure(later, "$.traces[0].points[0].upper"))
                .isEqualTo(figure(chart, "$.traces[0].points[0].upper"));
        assertThat(alarms(later)).contains(1);
    }

    /** NIST/SEMATECH 6.3.2.4: λ 0.3, σ 2.0539, settled limits 52.5884 and 47.4115; 6.3.2.3: target 325, k 0.3175, h 4.1959. */
    @Test
    void weightedMeansAndSumsAreThoseOfTheHandbook() throws Exception {
        DocumentContext weighted = charted(
                "WEIGHTED_MEAN",
                Map.of("centre", 50, "sigma", 2.0539),
                "readings",
                Published.column("weighted-mean.csv", "x"),
                Map.of("weightedMean", Map.of("weight", 0.3, "width", 3, "settled", true)));
        assertValues(values(weighted, 0), Published.column("weighted-mean.csv", "mean"), 0.00501);
        assertThat(figure(weighted, "$.traces[0].points[0].upper")).isCloseTo(52.5884, within(1e-4));
        assertThat(figure(weighted, "$.traces[0].points[0].lower")).isCloseTo(47.4115, within(1e-4));
        DocumentContext sum = charted(
                "CUMULATIVE_SUM",
                Map.of("centre", 325, "sigma", 0.635),
                "readings",
                Published.column("cumulative-sum.csv", "x"),
                Map.of("cumulativeSum", Map.of("slack", 0.5, "decision", 6.60771653543307)));
        assertValues(values(sum, 0), Published.column("cumulative-sum.csv", "above"), 1e-9);
        assertThat(alarms(sum)).isEqualTo(IntStream.rangeClosed(14, 20).boxed().toList());
    }

    /** By the factors of the printed tables for groups of two: A₂ 1.880, D₄ 3.267, A₃ 2.659, B₄ 3.267. */
    @Test
    void groupsHaveTheLimitsOfTheTables() throws Exception {
        List<List<Integer>> groups = List.of(List.of(1, 3), List.of(4, 2));
        List<List<Integer>> shifted = List.of(List.of(6, 8));
        DocumentContext ranges = charted("MEANS_AND_RANGES", Map.of("groups", groups), "groups", shifted, Map.of());
        assertThat(figure(ranges, "$.base.groupSize")).isEqualTo(2);
        assertThat(figure(ranges, "$.traces[0].points[0].upper")).isCloseTo(2.5 + 1.880 * 2, within(2e-3));
        assertThat(figure(ranges, "$.traces[1].points[0].upper")).isCloseTo(3.267 * 2, within(2e-3));
        assertThat(ranges.read("$.alarms[0].words", String.class))
                .isEqualTo("Group 1: the mean of the group, 7.00, is above its upper limit 6.26.");
        DocumentContext deviations =
                charted("MEANS_AND_DEVIATIONS", Map.of("groups", groups), "groups", shifted, Map.of());
        assertThat(deviations.read("$.base.origin", String.class)).isEqualTo("DEVIATIONS");
        assertThat(figure(deviations, "$.traces[0].points[0].upper"))
                .isCloseTo(2.5 + 2.659 * Math.sqrt(2), within(2e-3));
        assertThat(figure(deviations, "$.traces[1].points[0].upper")).isCloseTo(3.267 * Math.sqrt(2), within(2e-3));
    }

    private DocumentContext reckoned(List<Double> readings, Map<String, ?> tolerance, String shape) throws Exception {
        return worker.computed(
                "capability", json(Map.of("readings", readings, "tolerance", tolerance, "shape", shape)));
    }

    /** Worked by hand: mean 0.168, s 0.239, Ppk 1.16, Pp 1.39, 0.81 to 1.51. */
    @Test
    void offsetsOfAJigThatHoldsHaveTheirIndices() throws Exception {
        DocumentContext both = reckoned(OFFSETS, Map.of("lower", -1.0, "upper", 1.0), "NORMAL");
        assertThat(figure(both, "$.mean")).isCloseTo(0.168, within(5e-4));
        assertThat(figure(both, "$.standardDeviation")).isCloseTo(0.239, within(5e-4));
        assertThat(figure(both, "$.pp.value")).isCloseTo(1.39, within(0.005));
        assertThat(figure(both, "$.ppk.value")).isCloseTo(1.16, within(0.005));
        assertThat(figure(both, "$.ppk.low")).isCloseTo(0.81, within(0.005));
        assertThat(figure(both, "$.ppk.high")).isCloseTo(1.51, within(0.005));
        assertThat(both.read("$.words", String.class))
                .isEqualTo("Ppk 1.16, at 95 % between 0.81 and 1.51: not proven to be 1.33 or more; moving the mean by"
                        + " \u22120.17 to the middle alone would raise it to 1.39.");
        assertThat(both.read("$.normality.words", String.class))
                .isEqualTo("Nothing speaks against a normal distribution.");
        DocumentContext one = reckoned(OFFSETS, Map.of("upper", 1.0), "NORMAL");
        assertThat(one.<Object>read("$.pp")).isNull();
        assertThat(figure(one, "$.ppk.value")).isCloseTo((1 - 0.168) / 3 / 0.239, within(0.01));
    }

    /** Percentiles, and A² before its correction for n, of a general library (SciPy 1.17.1). */
    @Test
    void shapesAndTheTestOfNormalityAreThoseOfALibrary() throws Exception {
        DocumentContext gaps = reckoned(GAPS, Map.of("upper", 0.8), "WEIBULL");
        assertThat(figure(gaps, "$.percentiles.low")).isCloseTo(0.00620013, within(5.1e-9));
        assertThat(figure(gaps, "$.percentiles.median")).isCloseTo(0.18740723, within(5.1e-9));
        assertThat(figure(gaps, "$.percentiles.high")).isCloseTo(0.64218562, within(5.1e-9));
        List<Double> deflections = Published.column("lew.csv", "y");
        double n = deflections.size();
        DocumentContext lew = reckoned(deflections, Map.of("lower", -1000, "upper", 1000), "NORMAL");
        assertThat(figure(lew, "$.normality.statistic"))
                .isCloseTo(6.000646915775917 * (1 + 0.75 / n + 2.25 / n / n), within(1e-8));
        assertThat(lew.read("$.normality.words", String.class))
                .startsWith("The readings are not spread as a normal distribution is");
    }

    private static Map<String, Object> made(double value, String jig, String welder, String tubes) {
        return Map.of("value", value, "levels", Map.of("jig", jig, "welder", welder, "tube set", tubes));
    }

    private DocumentContext attributed(List<Map<String, Object>> readings) throws Exception {
        return worker.computed(
                "effects", json(Map.of("factors", List.of("jig", "welder", "tube set"), "readings", readings)));
    }

    /** Worked by hand: s = √(0.015/4), standard error of each 0.043, t 13.9, 2.3, 1.2; 4 degrees of freedom need 2.776. */
    @Test
    void aBalancedPlanBlamesTheJigAndNothingElse() throws Exception {
        DocumentContext found = attributed(List.of(
                made(0.2, "J1", "W1", "A"),
                made(0.3, "J1", "W1", "B"),
                made(0.1, "J1", "W2", "A"),
                made(0.2, "J1", "W2", "B"),
                made(0.9, "J2", "W1", "A"),
                made(0.8, "J2", "W1", "B"),
                made(0.7, "J2", "W2", "A"),
                made(0.8, "J2", "W2", "B")));
        assertThat(figure(found, "$.residualStandardDeviation")).isCloseTo(Math.sqrt(0.015 / 4), within(1e-12));
        assertThat(figure(found, "$.degreesOfFreedom")).isEqualTo(4);
        assertThat(found.<List<String>>read("$.effects[*].differences[*].higher"))
                .isEqualTo(List.of("J2", "W1", "B"));
        assertThat(figure(found, "$.effects[0].differences[0].difference")).isCloseTo(0.6, within(1e-12));
        assertThat(figure(found, "$.effects[0].differences[0].standardError")).isCloseTo(0.0433, within(5e-5));
        assertThat(figure(found, "$.effects[0].differences[0].t")).isCloseTo(13.9, within(0.05));
        assertThat(figure(found, "$.effects[0].differences[0].neededT")).isCloseTo(2.776, within(5e-4));
        assertThat(found.<List<Boolean>>read("$.effects[*].differences[*].proven"))
                .isEqualTo(List.of(true, false, false));
        assertThat(found.<List<String>>read("$.sentences"))
                .isEqualTo(List.of(
                        "By jig: J2 lies 0.600 above J1 (t 13.9, 2.8 would do).",
                        "No difference by welder is proven.",
                        "No difference by tube set is proven."));
    }

    /** NIST Statistical Reference Datasets, analysis of variance, SiRstv: F 1.18046237440255, deviation 0.104076068334656. */
    @Test
    void oneFactorHasItsCertifiedRatio() throws Exception {
        List<Double> resistance = Published.column("resistance.csv", "resistance");
        List<Double> instrument = Published.column("resistance.csv", "instrument");
        List<Map<String, Object>> readings = new ArrayList<>();
        for (int i = 0; i < resistance.size(); i++) {
            readings.add(
                    Map.of("value", resistance.get(i), "levels", Map.of("instrument", "No. " + instrument.get(i))));
        }
        DocumentContext found =
                worker.computed("effects", json(Map.of("factors", List.of("instrument"), "readings", readings)));
        assertThat(figure(found, "$.effects[0].f")).isCloseTo(1.18046237440255, within(1e-9));
        assertThat(figure(found, "$.residualStandardDeviation")).isCloseTo(0.104076068334656, within(1e-12));
    }

    @Test
    void whatAlwaysWentTogetherIsNotToldApart() throws Exception {
        DocumentContext found = attributed(List.of(
                made(0.2, "J1", "W1", "A"),
                made(0.3, "J1", "W1", "B"),
                made(0.1, "J1", "W1", "A"),
                made(0.9, "J2", "W2", "A"),
                made(0.8, "J2", "W2", "B"),
                made(0.7, "J2", "W2", "B")));
        assertThat(found.<Object>read("$.effects[0].f")).isNull();
        assertThat(found.<List<Object>>read("$.effects[0].differences")).isEmpty();
        assertThat(found.<List<String>>read("$.effects[0].open"))
                .isEqualTo(
                        List.of("What jig J1 and jig J2 add cannot be told from the welder: J1 went with welder W1, J2"
                                + " with welder W2. One frame made like that of reading 4, with welder W2, but with jig"
                                + " J1, would separate them."));
        assertThat(found.<List<Object>>read("$.effects[2].differences")).hasSize(1);
    }

    private void assertRefused(String name, Map<String, ?> body, String field, String words) throws Exception {
        String text = worker.to(name, json(body)).andReturn().getResponse().getContentAsString();
        DocumentContext problem = JsonPath.parse(text);
        assertThat(problem.read("$.status", Integer.class)).as(text).isEqualTo(422);
        assertThat(problem.read("$.field", String.class)).as(text).isEqualTo(field);
        assertThat(problem.read("$.detail", String.class)).contains(words);
    }

    private static List<Double> drawn(int count) {
        return IntStream.range(0, count).mapToObj(i -> 1 + i * 7 % 13 / 10.0).toList();
    }

    private static Map<String, Object> effects(int readings, int levels) {
        return Map.of(
                "factors",
                List.of("jig"),
                "readings",
                IntStream.range(0, readings)
                        .mapToObj(i -> Map.of("value", i * 7 % 13, "levels", Map.of("jig", "J" + i % levels)))
                        .toList());
    }

    @Test
    void whatIsSentHasBoundsAndComputesUpToThem() throws Exception {
        Map<String, Object> base = Map.of("centre", 1, "sigma", 1);
        Map<String, Object> singles = new HashMap<>(Map.of("kind", "INDIVIDUALS", "base", base));
        singles.put("readings", drawn(2000));
        worker.computed("control-chart", json(singles));
        singles.put("readings", drawn(2001));
        assertRefused("control-chart", singles, "readings", "readings has 2001 entries, and takes 2000 at most.");
        singles.put("readings", drawn(3));
        singles.put("base", Map.of("readings", drawn(2001)));
        assertRefused("control-chart", singles, "base.readings", "takes 2000 at most.");
        Map<String, Object> grouped = new HashMap<>(Map.of("kind", "MEANS_AND_RANGES", "base", base));
        grouped.put("groups", Collections.nCopies(500, drawn(25)));
        worker.computed("control-chart", json(grouped));
        grouped.put("groups", Collections.nCopies(501, drawn(2)));
        assertRefused("control-chart", grouped, "groups", "takes 500 at most.");
        grouped.put("groups", List.of(drawn(26)));
        assertRefused("control-chart", grouped, "groups[0]", "takes 25 at most.");
        Map<String, Object> limits = Map.of("upper", 3);
        worker.computed("capability", json(Map.of("readings", drawn(1000), "tolerance", limits, "shape", "WEIBULL")));
        assertRefused(
                "capability", Map.of("readings", drawn(1001), "tolerance", limits), "readings", "takes 1000 at most.");
        assertRefused(
                "capability",
                Map.of("readings", Collections.nCopies(25, 0.5), "tolerance", limits),
                "readings",
                "All 25 readings are the same, 0.5: without spread there is no index.");
        worker.computed("effects", json(effects(500, 20)));
        assertRefused("effects", effects(501, 20), "readings", "takes 500 at most.");
        assertRefused("effects", effects(100, 21), "readings[20].levels[jig]", "takes 20 at most.");
        Map<String, Object> wide = new HashMap<>(effects(10, 2));
        wide.put("factors", List.of("a", "b", "c", "d", "e", "f", "g"));
        assertRefused("effects", wide, "factors", "takes 6 at most.");
    }
}
