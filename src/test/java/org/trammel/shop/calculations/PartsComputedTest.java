package org.trammel.shop.calculations;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.trammel.shop.calculations.Sent.figure;

import com.jayway.jsonpath.DocumentContext;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.trammel.calc.geometry.DemoFrames;
import org.trammel.shop.ShopTest;
import org.trammel.shop.TestCrew;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import tools.jackson.databind.json.JsonMapper;

/** Mitre, suspension, mass and nesting through the door: a script apart from this project, and figures worked by hand. */
@ShopTest
class PartsComputedTest {

    private static final Offset<Double> ALL_DIGITS = within(1e-9);

    @Autowired
    private MockMvc mvc;

    @Autowired
    private TestCrew hands;

    @Autowired
    private Crew crew;

    private Sent auditor;

    @BeforeEach
    void hire() {
        auditor = new Sent(mvc, crew.byId(hands.hire(Role.AUDITOR)));
    }

    private static String json(Object value) {
        return JsonMapper.shared().writeValueAsString(value);
    }

    private static String camel(String name) {
        String[] words = name.split("_");
        return words[0]
                + Arrays.stream(words)
                        .skip(1)
                        .map(word -> Character.toUpperCase(word.charAt(0)) + word.substring(1))
                        .collect(Collectors.joining());
    }

    private static void assertPoint(DocumentContext answer, String path, DemoFrames.Row row, String column) {
        assertThat(figure(answer, path + ".xMm")).as(path).isCloseTo(row.number(column + "_x"), ALL_DIGITS);
        assertThat(figure(answer, path + ".yMm")).as(path).isCloseTo(row.number(column + "_y"), ALL_DIGITS);
    }

    private static DemoFrames.Row o101() {
        return DemoFrames.all().findFirst().orElseThrow();
    }

    /** Worked by hand for a top tube and a down tube on a head tube of 54. */
    @ParameterizedTest
    @CsvSource({
        "34.9, 91.38, 26.59 25.19 22.17 20.61 22.59 25.92 27.43, 109.64",
        "42, 114.69, 20.06 19.02 17.14 18.68 26.79 35.74 39.37, 131.95"
    })
    void aMitreHasTheWorkedOrdinates(double outside, double angle, String setbacks, double perimeter) throws Exception {
        DocumentContext answer = auditor.computed(
                "mitre",
                json(Map.of(
                        "tubeOutsideMm",
                        outside,
                        "wallMm",
                        1.4,
                        "mateOutsideMm",
                        54,
                        "includedAngleDeg",
                        angle,
                        "stations",
                        12,
                        "holeSawsMm",
                        List.of(35, 54.1, 54))));
        String[] wanted = setbacks.split(" ");
        for (int i = 0; i < wanted.length; i++) {
            String station = "$.outside.stations[" + i + "].";
            assertThat(figure(answer, station + "angleDeg")).isCloseTo(30 * i, ALL_DIGITS);
            assertThat(figure(answer, station + "setbackMm")).isCloseTo(Double.parseDouble(wanted[i]), within(0.005));
            assertThat(figure(answer, station + "developedMm")).isCloseTo(perimeter / 12 * i, within(0.005));
        }
        assertThat(figure(answer, "$.outside.perimeterMm")).isCloseTo(perimeter, within(0.005));
        assertThat(figure(answer, "$.fixture.swingDeg")).isCloseTo(angle - 90, ALL_DIGITS);
        assertThat(figure(answer, "$.fixture.holeSawMm")).isEqualTo(54);
        assertThat(answer.<List<Object>>read("$.cautions")).isEmpty();
    }

    /** √(21² − 17.5²) = 11.62 and 21: Pythagoras across the oval's axes; the bore is 1.4 further in. */
    @Test
    void aFormedEndIsCutByItsTwoAxes() throws Exception {
        DocumentContext answer = auditor.computed(
                "mitre",
                "{\"inPlaneMm\": 48.46, \"acrossPlaneMm\": 35, \"wallMm\": 1.4, \"mateOutsideMm\": 42, \"includedAngleDeg\": 90}");
        assertThat(figure(answer, "$.outside.leastMm")).isCloseTo(Math.sqrt(21 * 21 - 17.5 * 17.5), ALL_DIGITS);
        assertThat(figure(answer, "$.outside.mostMm")).isCloseTo(21, ALL_DIGITS);
        assertThat(figure(answer, "$.bore.leastMm")).isCloseTo(Math.sqrt(21 * 21 - 16.1 * 16.1), ALL_DIGITS);
        assertThat(answer.<List<Object>>read("$.outside.stations")).hasSize(73);
        assertThat(answer.<List<Object>>read("$.cautions"))
                .as("no saw was asked about")
                .isEmpty();
    }

    static Stream<DemoFrames.Row> rearEnds() {
        return DemoFrames.read("/geometry/suspension.csv").stream();
    }

    @ParameterizedTest
    @MethodSource("rearEnds")
    void everyRearEndIsTheScripts(DemoFrames.Row row) throws Exception {
        DemoFrames.Row drawn = DemoFrames.all()
                .filter(frame -> frame.name().equals(row.name()))
                .findAny()
                .orElseThrow();
        Map<String, Object> request = new LinkedHashMap<>();
        request.put("pivot", point(row.number("pivot_x"), row.number("pivot_y")));
        request.put("axle", point(drawn.number("Raxle_x"), drawn.number("Raxle_y")));
        for (String name :
                List.of("travel_mm", "shock_length_mm", "shock_stroke_mm", "shock_arm_mm", "shock_arm_angle_deg")) {
            request.put(camel(name), row.number(name));
        }
        double angle = Math.toRadians(drawn.number("seat_angle_deg"));
        double top = drawn.number("seat_tube_mm");
        request.put(
                "tube",
                Map.of(
                        "from",
                                point(
                                        drawn.number("STtop_x") + top * Math.cos(angle),
                                        drawn.number("STtop_y") - top * Math.sin(angle)),
                        "to", point(drawn.number("STtop_x"), drawn.number("STtop_y")),
                        "outsideMm", drawn.number("seat_tube_outside_mm")));
        request.put("tyreRadiusMm", drawn.number("rear_wheel_radius_mm", drawn.number("front_wheel_radius_mm")));
        DocumentContext answer = auditor.computed("suspension", json(request));
        Map<String, String> columns = new LinkedHashMap<>(Map.of(
                "swingMm", "swing",
                "rotationDeg", "rotation_deg",
                "ratioStart", "ratio_start",
                "ratioAtSag", "ratio_30",
                "ratioEnd", "ratio_end",
                "ratioMean", "ratio_mean",
                "extendedMm", "extended",
                "bottomedMm", "bottomed",
                "lengthAtSagMm", "sag_length"));
        columns.put("tyre.atEndMm", "clearance_end");
        columns.forEach((name, column) ->
                assertThat(figure(answer, "$." + name)).as(name).isCloseTo(row.number(column), ALL_DIGITS));
        assertThat(figure(answer, "$.changePercent")).isCloseTo(row.number("change_percent"), within(1e-8));
        assertThat(figure(answer, "$.tyre.clearanceMm")).isLessThanOrEqualTo(row.number("clearance_end") + 1e-9);
        assertPoint(answer, "$.armEye", row, "arm_eye");
        assertPoint(answer, "$.frameEye", row, "frame_eye");
        assertPoint(answer, "$.curve[20].axle", row, "axle_end");
        request.put("armEye", point(row.number("arm_eye_x"), row.number("arm_eye_y")));
        request.put("frameEye", point(row.number("frame_eye_x"), row.number("frame_eye_y")));
        request.remove("shockArmMm");
        request.remove("shockArmAngleDeg");
        request.put("steps", 1);
        DocumentContext byEyes = auditor.computed("suspension", json(request));
        assertThat(figure(byEyes, "$.ratioAtSag")).isCloseTo(row.number("ratio_30"), ALL_DIGITS);
        assertThat(byEyes.<List<Object>>read("$.curve")).hasSize(2);
    }

    private static Map<String, Object> point(double x, double y) {
        return Map.of("xMm", x, "yMm", y);
    }

    /** Worked by hand: 1678 g with 15.6 g for the first frame; weighed at 1774 it is 6.2 u off, as a down tube of 1.8 would be. */
    @Test
    void theFirstFrameWeighsWhatIsWorkedAndItsHeavyOneIsExplained() throws Exception {
        List<Map<String, Object>> parts = new ArrayList<>();
        DemoFrames.Row row = o101();
        parts.add(bored("HT", 54, 44, 110));
        parts.add(tube("DT", 42, 1.4, row.number("DT_blank"), 1));
        parts.add(tube("TT", 34.9, 1.15, row.number("TT_blank"), 1));
        parts.add(tube("ST", 34.9, 1.35, row.number("ST_blank"), 1));
        parts.add(bored("BB", 42, 33.5, 73));
        parts.add(tube("CS", 22, 1.6, row.number("CS_len3d"), 2));
        parts.add(tube("SS", 18, 1.4, row.number("SS_len3d"), 2));
        parts.add(Map.of("kind", "PIECES", "name", "dropouts", "massKg", 0.15, "uKg", 0.005, "count", 2));
        parts.add(Map.of("kind", "PIECES", "name", "bridge_etc", "massKg", 0.045, "count", 3));
        parts.add(Map.of("kind", "WELD", "name", "weld", "massKg", 0.045, "uKg", 0.01));
        DocumentContext answer = auditor.computed(
                "mass",
                json(Map.of(
                        "parts",
                        parts,
                        "weighed",
                        Map.of("weighedKg", 1.774, "scaleUKg", 0, "wallsMm", List.of(1.0, 1.2, 1.4, 1.6, 1.8, 2.0)))));
        for (int i = 0; i < parts.size(); i++) {
            assertThat(figure(answer, "$.lines[" + i + "].massKg"))
                    .isCloseTo(row.number("mass_" + parts.get(i).get("name")), within(1e-12));
        }
        assertThat(figure(answer, "$.massKg")).isCloseTo(row.number("mass_total"), within(1e-12));
        assertThat(1000 * figure(answer, "$.uKg")).isCloseTo(15.6, within(0.05));
        assertThat(figure(answer, "$.comparison.differenceInU")).isCloseTo(96 / 15.6, within(0.05));
        assertThat(answer.read("$.comparison.flagged", Boolean.class)).isTrue();
        assertThat(answer.read("$.comparison.causes[0].part", String.class)).isEqualTo("DT");
        assertThat(figure(answer, "$.comparison.causes[0].wallMm")).isEqualTo(1.8);
        assertThat(1000 * figure(answer, "$.comparison.causes[0].changeKg")).isCloseTo(97.6, within(0.05));
    }

    private static Map<String, Object> bored(String name, double outside, double bore, double length) {
        return Map.of(
                "kind",
                "BORED",
                "name",
                name,
                "outsideMm",
                outside,
                "boreMm",
                bore,
                "lengthMm",
                length,
                "densityKgPerM3",
                2700);
    }

    private static Map<String, Object> tube(String name, double outside, double wall, double length, int count) {
        return Map.of(
                "kind",
                "TUBE",
                "name",
                name,
                "outsideMm",
                outside,
                "wallMm",
                wall,
                "lengthMm",
                length,
                "densityKgPerM3",
                2700,
                "count",
                count);
    }

    /** A taper weighs as its mean wall less t²/12 of the difference: the integral of π(D − t)t over its length. */
    @Test
    void aButtedTubeIsGivenByItsSections() throws Exception {
        DocumentContext answer = auditor.computed("mass", """
                {"parts": [{"kind": "TUBE", "name": "down tube", "outsideMm": 40, "densityKgPerM3": 1000, "sections": [
                  {"wallFromMm": 2, "wallToMm": 2, "lengthMm": 100}, {"wallFromMm": 2, "wallToMm": 1, "lengthMm": 50}]}]}""");
        double even = Math.PI * 38 * 2 * 100;
        double taper = Math.PI * 50 * (40 * 1.5 - 7 / 3.0);
        assertThat(figure(answer, "$.massKg")).isCloseTo((even + taper) * 1e-6, within(1e-12));
    }

    /** Worked by hand: two bars of 1500 where first fit takes three; the remnant of 1647.8 keeps its lot. */
    @Test
    void nestingOpensTwoBarsWhereFirstFitTakesThree() throws Exception {
        DocumentContext answer = auditor.computed(
                "nesting",
                json(Map.of(
                        "kerfMm",
                        2,
                        "keepFromMm",
                        300,
                        "blanks",
                        blanks(571.3, 531.3, 449.1, 421.3, 421.3, 401.3),
                        "stock",
                        List.of(stock(1500, 9)))));
        assertThat(answer.<List<Object>>read("$.bars")).hasSize(2);
        assertThat(figure(answer, "$.shares[0].newStockMm")).isEqualTo(3000);
        assertThat(answer.read("$.shares[0].proven", Boolean.class)).isTrue();
        assertThat(figure(answer, "$.wastePercent")).isCloseTo((3000 - 2795.6) / 30, ALL_DIGITS);
        DocumentContext two = auditor.computed(
                "nesting",
                json(Map.of(
                        "kerfMm",
                        2,
                        "keepFromMm",
                        300,
                        "blanks",
                        blanks(737.9, 610.3),
                        "stock",
                        List.of(stock(3000, 1)))));
        assertThat(figure(two, "$.remnants[0].lengthMm")).isCloseTo(1647.8, ALL_DIGITS);
        assertThat(two.read("$.remnants[0].lot", String.class)).isEqualTo("L-1");
        assertThat(two.read("$.bars[0].kept", Boolean.class)).isTrue();
    }

    private static List<Map<String, Object>> blanks(double... lengths) {
        return Arrays.stream(lengths)
                .mapToObj(length -> Map.<String, Object>of(
                        "name",
                        "seat tube",
                        "frame",
                        "F",
                        "section",
                        "34.9 x 1.35",
                        "alloy",
                        "6061",
                        "lengthMm",
                        length))
                .toList();
    }

    private static Map<String, Object> stock(double length, int count) {
        return Map.of("section", "34.9 x 1.35", "alloy", "6061", "lot", "L-1", "lengthMm", length, "count", count);
    }
}
