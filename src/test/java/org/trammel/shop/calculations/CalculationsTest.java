package org.trammel.shop.calculations;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.trammel.shop.calculations.Sent.figure;

import com.jayway.jsonpath.DocumentContext;
import com.jayway.jsonpath.JsonPath;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.trammel.calc.geometry.DemoFrames;
import org.trammel.calc.geometry.Dimension;
import org.trammel.shop.ShopTest;
import org.trammel.shop.Statements;
import org.trammel.shop.TestCrew;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.Signed;
import tools.jackson.databind.json.JsonMapper;

/** Through the door: the invented workshop's frames, computed by a script apart from this project, and worked figures. */
@ShopTest
class CalculationsTest {

    private static final Offset<Double> ALL_DIGITS = within(1e-9);

    @Autowired
    private MockMvc mvc;

    @Autowired
    private TestCrew hands;

    @Autowired
    private Crew crew;

    @Autowired
    private Statements statements;

    private Sent auditor;

    @BeforeEach
    void hire() {
        auditor = new Sent(mvc, crew.byId(hands.hire(Role.AUDITOR)));
    }

    private static String json(Object value) {
        return JsonMapper.shared().writeValueAsString(value);
    }

    private static Map<String, Object> layout(DemoFrames.Row row) {
        Map<String, Object> given = new LinkedHashMap<>();
        for (String name : List.of(
                "head_angle_deg",
                "seat_angle_deg",
                "reach_mm",
                "head_tube_mm",
                "lower_stack_mm",
                "fork_length_mm",
                "fork_offset_mm",
                "shell_drop_mm",
                "chainstay_mm",
                "seat_tube_mm",
                "front_wheel_radius_mm")) {
            given.put(camel(name), row.number(name));
        }
        given.put("seatTubeOffsetMm", row.number("seat_tube_offset_mm", 0));
        given.put("rearWheelRadiusMm", row.number("rear_wheel_radius_mm", row.number("front_wheel_radius_mm")));
        return given;
    }

    private static String camel(String name) {
        String[] words = name.split("_");
        return words[0]
                + Arrays.stream(words)
                        .skip(1)
                        .map(word -> Character.toUpperCase(word.charAt(0)) + word.substring(1))
                        .collect(Collectors.joining());
    }

    @ParameterizedTest
    @MethodSource("org.trammel.calc.geometry.DemoFrames#all")
    void everyFrameClosesToTheDigitsOfTheScript(DemoFrames.Row row) throws Exception {
        Map<String, Object> joints = new LinkedHashMap<>();
        for (String name :
                List.of("top_tube_at_head_mm", "down_tube_at_head_mm", "top_tube_at_seat_mm", "top_tube_outside_mm")) {
            joints.put(camel(name), row.number(name));
        }
        DocumentContext answer = auditor.computed("geometry", json(Map.of("given", layout(row), "joints", joints)));
        assertThat(answer.read("$.outcome", String.class)).isEqualTo("CLOSED");
        Map<String, String> columns = Map.of(
                "stackMm", "stack",
                "wheelbaseMm", "wheelbase",
                "frontCentreMm", "front_centre",
                "trailMm", "trail",
                "flopMm", "flop",
                "shellHeightMm", "bb_height",
                "effectiveTopTubeMm", "TT_eff");
        columns.forEach((name, column) -> assertThat(figure(answer, "$.frame.dimensions." + name))
                .as(name)
                .isCloseTo(row.number(column), ALL_DIGITS));
        Map<String, String> nodes = Map.of(
                "headTubeTop", "HTtop",
                "headTubeBottom", "HTbot",
                "frontAxle", "Faxle",
                "rearAxle", "Raxle",
                "seatTubeTop", "STtop");
        nodes.forEach((name, column) -> assertPoint(answer, "$.frame.nodes." + name, row, column));
        assertPoint(answer, "$.tubes.topTubeAtHead", row, "TT_HT");
        assertPoint(answer, "$.tubes.downTubeAtHead", row, "DT_HT");
        assertPoint(answer, "$.tubes.topTubeAtSeat", row, "TT_ST");
        Map<String, String> tubes = Map.of(
                "topTubeMm", "TT_len",
                "downTubeMm", "DT_len",
                "betweenHeadNodesMm", "HT_node_gap",
                "topTubeSlopeDeg", "tt_slope",
                "downTubeSlopeDeg", "dt_slope",
                "topTubeToHeadTubeDeg", "ang_TT_HT",
                "downTubeToHeadTubeDeg", "ang_DT_HT",
                "topTubeToSeatTubeDeg", "ang_TT_ST",
                "downTubeToSeatTubeDeg", "ang_DT_ST",
                "standoverMm", "standover");
        tubes.forEach((name, column) ->
                assertThat(figure(answer, "$.tubes." + name)).as(name).isCloseTo(row.number(column), ALL_DIGITS));
    }

    private static void assertPoint(DocumentContext answer, String path, DemoFrames.Row row, String column) {
        assertThat(figure(answer, path + ".xMm")).as(path).isCloseTo(row.number(column + "_x"), ALL_DIGITS);
        assertThat(figure(answer, path + ".yMm")).as(path).isCloseTo(row.number(column + "_y"), ALL_DIGITS);
    }

    /** What comes out can be sent in again: all twenty-five figures at once, far beyond need, agree. */
    @ParameterizedTest
    @MethodSource("org.trammel.calc.geometry.DemoFrames#all")
    void whatComesOutClosesAgain(DemoFrames.Row row) throws Exception {
        DocumentContext first = auditor.computed("geometry", json(Map.of("given", layout(row))));
        Map<String, Object> dimensions = first.read("$.frame.dimensions");
        assertThat(dimensions).hasSize(Dimension.values().length).doesNotContainValue(null);
        DocumentContext again = auditor.computed("geometry", json(Map.of("given", dimensions)));
        assertThat(again.read("$.outcome", String.class)).isEqualTo("CLOSED");
        List<Number> residuals = again.read("$.surplus[*].residual");
        assertThat(residuals)
                .hasSize(12)
                .allSatisfy(residual -> assertThat(residual.doubleValue()).isCloseTo(0, ALL_DIGITS));
    }

    /** Worked by hand: 58 + 663 sin 65.5° − 44 cos 65.5° = 643.06, so that 640 is 3.06 off and the head tube 3.06/0.91 less. */
    @Test
    void aContradictionIsToldWithItsOffersAndTooLittleWithWhatIsMissing() throws Exception {
        Map<String, Object> given = layout(o101());
        given.put("stackMm", 640);
        DocumentContext over = auditor.computed("geometry", json(Map.of("given", given)));
        assertThat(over.read("$.outcome", String.class)).isEqualTo("OVER_DETERMINED");
        assertThat(figure(over, "$.surplus[0].residual")).isCloseTo(-3.06, within(0.005));
        List<Number> headTube = over.read("$.offers[?(@.figure == 'headTubeMm')].becomes");
        assertThat(headTube)
                .singleElement()
                .satisfies(becomes -> assertThat(becomes.doubleValue()).isCloseTo(106.6, within(0.05)));
        List<Number> headAngle = over.read("$.offers[?(@.figure == 'headAngleDeg')].becomes");
        assertThat(headAngle)
                .singleElement()
                .satisfies(becomes -> assertThat(becomes.doubleValue()).isBetween(64.5, 65.5));
        assertThat(over.read("$.words", String.class)).startsWith("The stack is given as 640 mm;");
        assertThat(figure(
                        auditor.computed(
                                "geometry",
                                json(Map.of("given", given, "agreement", Map.of("lengthMm", 4, "angleDeg", 0.1)))),
                        "$.surplus[0].computed"))
                .isCloseTo(643.06, within(0.005));
        given.remove("stackMm");
        given.remove("seatTubeMm");
        DocumentContext under = auditor.computed("geometry", json(Map.of("given", given)));
        assertThat(under.read("$.outcome", String.class)).isEqualTo("UNDER_DETERMINED");
        assertThat(under.<List<Object>>read("$.missing[0].among")).isEqualTo(List.of("seatTubeMm"));
        assertThat(under.read("$.words", String.class)).isEqualTo("Still missing: seat tube.");
    }

    /** Worked by hand: +0.5° 2.73, fork +10 mm 9.10, head tube +1 mm 0.91; asin(20 sin 65.5° / 1201) = 0.87°, shell up 6.5. */
    @Test
    void changesAndOtherPartsDoWhatIsWorkedByHand() throws Exception {
        DocumentContext answer = auditor.computed(
                "geometry",
                json(Map.of(
                        "given",
                        layout(o101()),
                        "changes",
                        List.of(
                                Map.of("of", "headAngleDeg", "by", 0.5),
                                Map.of("of", "forkLengthMm", "by", 10),
                                Map.of("of", "headTubeMm", "by", 1)),
                        "substitute",
                        Map.of("forkLengthMm", 561))));
        List<Number> stacks = answer.read("$.changes[*].stackMm");
        assertThat(stacks.stream().map(Number::doubleValue).map(stack -> Math.round(100 * stack) / 100.0))
                .containsExactly(2.73, 9.10, 0.91);
        assertThat(figure(answer, "$.changes[0].by")).isCloseTo(0.5, ALL_DIGITS);
        assertThat(figure(answer, "$.substituted.pitchDeg")).isCloseTo(0.87, within(0.01));
        assertThat(figure(answer, "$.substituted.shellRiseMm")).isCloseTo(6.5, within(0.1));
        assertThat(figure(answer, "$.substituted.frame.dimensions.headAngleDeg"))
                .isCloseTo(64.63, within(0.01));
    }

    private static DemoFrames.Row o101() {
        return DemoFrames.all().findFirst().orElseThrow();
    }

    @Test
    void everyComputationIsDescribedWithExamplesThatCompute() throws Exception {
        String description = mvc.perform(get("/api/docs/openapi").with(Signed.on(auditor.person())))
                .andReturn()
                .getResponse()
                .getContentAsString();
        Map<String, Object> paths = JsonPath.read(description, "$.paths");
        List<String> names = paths.keySet().stream()
                .filter(path -> path.startsWith("/api/v1/calculations/"))
                .map(path -> path.substring("/api/v1/calculations/".length()))
                .toList();
        assertThat(names)
                .containsExactlyInAnyOrder(
                        "geometry",
                        "mitre",
                        "mass",
                        "suspension",
                        "nesting",
                        "alignment",
                        "decision",
                        "control-chart",
                        "capability",
                        "effects",
                        "soak",
                        "equivalent-time",
                        "cure",
                        "dew-point",
                        "film",
                        "heat-input",
                        "purge");
        for (String name : names) {
            Map<String, Map<String, Object>> examples = JsonPath.read(
                    description,
                    "$.paths['/api/v1/calculations/" + name
                            + "'].post.requestBody.content['application/json'].examples");
            assertThat(examples).as(name).isNotEmpty();
            for (Map<String, Object> example : examples.values()) {
                Object value = example.get("value");
                auditor.computed(name, value instanceof String text ? text : json(value));
            }
        }
        assertThat(description)
                .contains("top of the head tube ahead of the shell")
                .contains("what each cut takes");
    }

    @Test
    void nothingOfTheShopIsReadOrWritten() throws Exception {
        String body = json(Map.of("given", layout(o101())));
        auditor.computed("geometry", body);
        assertThat(statements.during(() -> auditor.computed("geometry", body))).isEmpty();
    }
}
