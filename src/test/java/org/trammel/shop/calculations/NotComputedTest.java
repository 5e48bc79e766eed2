package org.trammel.shop.calculations;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

import com.jayway.jsonpath.DocumentContext;
import com.jayway.jsonpath.JsonPath;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.MediaType;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors;
import org.springframework.test.web.servlet.MockMvc;
import org.trammel.shop.ShopTest;
import org.trammel.shop.TestCrew;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;

/** Figures that cannot be: each is answered with a sentence about it and its name. */
@ShopTest
class NotComputedTest {

    private static final String GEOMETRY = """
            {"given": {"headAngleDeg": 65.5, "seatAngleDeg": 74.5, "reachMm": 458, "headTubeMm": 110, "lowerStackMm": 12,
              "forkLengthMm": 541, "forkOffsetMm": 44, "shellDropMm": 58, "chainstayMm": 432, "seatTubeMm": 430,
              "frontWheelRadiusMm": 370, "rearWheelRadiusMm": 370},
             "joints": {"topTubeAtHeadMm": 30, "downTubeAtHeadMm": 29, "topTubeAtSeatMm": 45, "topTubeOutsideMm": 34.9},
             "changes": [{"of": "headAngleDeg", "by": 0.5}], "substitute": {"forkLengthMm": 561}}""";

    private static final String MITRE = """
            {"tubeOutsideMm": 28.6, "wallMm": 1.5, "mateOutsideMm": 31.8, "includedAngleDeg": 90, "offsetMm": 0, "stations": 12,
             "holeSawsMm": [35], "oversizeMm": 0.2, "shallowestDeg": 25, "thinWallMm": 3}""";

    private static final String MASS = """
            {"parts": [{"kind": "WELD", "name": "weld", "massKg": 0.045},
              {"kind": "TUBE", "name": "down tube", "outsideMm": 42, "wallMm": 1.4, "lengthMm": 741, "densityKgPerM3": 2700, "count": 1},
              {"kind": "BORED", "name": "shell", "outsideMm": 43, "boreMm": 33.5, "lengthMm": 73, "densityKgPerM3": 2700},
              {"kind": "TUBE", "name": "top tube", "outsideMm": 34.9, "densityKgPerM3": 2700, "sections":
                [{"wallFromMm": 1.2, "wallToMm": 1.2, "lengthMm": 600}]}],
             "wallHalfWidthMm": 0.05,
             "weighed": {"weighedKg": 1.1, "scaleUKg": 0.002, "limit": 3, "wallsMm": [1.8], "weldShares": [2]}}""";

    private static final String WELD = "{\"kind\": \"WELD\", \"name\": \"weld\", \"massKg\": 0.045}";

    private static final String SUSPENSION = """
            {"pivot": {"xMm": 22, "yMm": 72}, "axle": {"xMm": -435, "yMm": 32}, "travelMm": 140, "shockLengthMm": 210,
             "shockStrokeMm": 55, "shockArmMm": 182, "shockArmAngleDeg": 98, "sagShare": 0.3, "steps": 20,
             "tube": {"from": {"xMm": 21, "yMm": -5}, "to": {"xMm": -78, "yMm": 418}, "outsideMm": 38}, "tyreRadiusMm": 370,
             "shockOutsideMm": 60}""";

    private static final String NESTING = """
            {"kerfMm": 2, "keepFromMm": 300,
             "blanks": [{"name": "seat tube", "frame": "1", "section": "34.9 x 1.35", "alloy": "6061", "lengthMm": 571}],
             "stock": [{"section": "34.9 x 1.35", "alloy": "6061", "lot": "T-1", "lengthMm": 1500, "count": 9}]}""";

    private static final String CONTROL_CHART = """
            {"kind": "INDIVIDUALS", "rules": ["BEYOND_LIMITS"], "base": {"centre": 0, "sigma": 0.35}, "readings": [0.3, -0.1, 0.2]}""";

    private static final String CAPABILITY = """
            {"readings": [0.3, -0.1, 0.2, 0.4, 0.1, 0.6, 0.5, -0.3, 0.0, 0.2, -0.2, 0.4, 0.3, 0.1, -0.1, 0.5, 0.2, 0.7, 0.3, 0.8],
             "tolerance": {"lower": -1, "upper": 1.5}, "shape": "NORMAL", "wanted": 1.33}""";

    private static final String EFFECTS = """
            {"factors": ["jig"], "readings": [{"value": 0.2, "levels": {"jig": "J1"}}, {"value": 0.3, "levels": {"jig": "J1"}}, \
            {"value": 0.9, "levels": {"jig": "J2"}}]}""";

    private static final String RECORD = """
            "record": {"minutes": [0, 60, 540], "longestGapMin": 600, "thermocouples": [{"name": "TC-07", "degC": [20, 177, 177],
              "readsHighByK": 0}]}""";

    private static final String SOAK = "{" + RECORD + """
            , "steps": [{"setDegC": 177, "belowK": 5, "aboveK": 5, "soakH": 8, "longestSoakH": 9, "steepestRiseKPerH": 200}],
             "neverDegC": 200, "coldestPlaceK": 0, "hottestPlaceK": 0}""";

    private static final String EQUIVALENT_TIME = "{" + RECORD + """
            , "referenceDegC": 177, "activation": {"usualKJPerMol": 115, "lowKJPerMol": 80, "highKJPerMol": 130, "source": "shop"}}""";

    private static final String CURE = """
            {"pairs": [{"metalDegC": 200, "minutes": 10}, {"metalDegC": 180, "minutes": 20}], "least": 1, "most": 1.5,
             "metalDegC": 190, "minutes": 15}""";

    private static final String HEAT_INPUT =
            "{\"efficiency\": 0.6, \"volts\": 14, \"amps\": 95, \"lengthMm\": 150, \"seconds\": 60}";

    private static final String PURGE = "{\"oxygenPpm\": 50, \"roomL\": 1.78, \"flowLPerMin\": 8}";

    private static final String DEW_POINT =
            "{\"airDegC\": 21, \"humidityPercent\": 68, \"surfaceDegC\": 18, \"marginK\": 3}";

    private static final String FILM = """
            {"rule": "SPOTS_AND_AREAS", "leastUm": 60, "mostUm": 90, "level": "THREE",
             "areas": [{"name": "down tube", "spotsUm": [[61, 62, 63], [64, 65, 66]]}]}""";

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

    private static String usual(String name) {
        return switch (name) {
            case "geometry" -> GEOMETRY;
            case "mitre" -> MITRE;
            case "mass" -> MASS;
            case "suspension" -> SUSPENSION;
            case "control-chart" -> CONTROL_CHART;
            case "capability" -> CAPABILITY;
            case "effects" -> EFFECTS;
            case "soak" -> SOAK;
            case "equivalent-time" -> EQUIVALENT_TIME;
            case "cure" -> CURE;
            case "dew-point" -> DEW_POINT;
            case "film" -> FILM;
            case "heat-input" -> HEAT_INPUT;
            case "purge" -> PURGE;
            default -> NESTING;
        };
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "geometry",
                "mitre",
                "mass",
                "suspension",
                "nesting",
                "control-chart",
                "capability",
                "effects",
                "soak",
                "equivalent-time",
                "cure",
                "dew-point",
                "film",
                "heat-input",
                "purge"
            })
    void theUsualFiguresCompute(String name) throws Exception {
        worker.computed(name, usual(name));
    }

    /** Each line changes one thing of usual figures; status, field and sentence are what must come of it. */
    @ParameterizedTest(name = "{0}: {2}")
    @CsvFileSource(
            resources = "/calculations/not-computed.csv",
            delimiter = '|',
            quoteCharacter = '`',
            numLinesToSkip = 1)
    void whatCannotBeIsSaidInASentenceThatNamesTheField(
            String name, String was, String is, int status, String field, String words) throws Exception {
        assertThat(usual(name)).contains(was);
        MockHttpServletResponse answer = worker.to(name, usual(name).replace(was, is.equals("-") ? "" : is))
                .andReturn()
                .getResponse();
        String text = answer.getContentAsString();
        assertThat(answer.getStatus()).as(text).isEqualTo(status);
        assertThat(answer.getContentType()).isEqualTo(MediaType.APPLICATION_PROBLEM_JSON_VALUE);
        DocumentContext problem = JsonPath.parse(text);
        assertThat(problem.read("$.field", String.class)).as(text).isEqualTo(field);
        assertThat(problem.read("$.detail", String.class)).contains(words);
    }

    @Test
    void listsHaveBounds() throws Exception {
        assertBounded("geometry", GEOMETRY, "{\"of\": \"headAngleDeg\", \"by\": 0.5}", 51, "changes");
        assertBounded("mitre", MITRE, "35", 101, "holeSawsMm");
        assertBounded("mass", "{\"parts\": [" + WELD + "]}", WELD, 201, "parts");
        assertBounded(
                "mass", MASS, "{\"wallFromMm\": 1.2, \"wallToMm\": 1.2, \"lengthMm\": 600}", 21, "parts[3].sections");
        assertBounded("mass", MASS, "[1.8]", 51, "weighed.wallsMm");
        assertBounded("mass", MASS, "[2]", 21, "weighed.weldShares");
        String blank = NESTING.substring(NESTING.indexOf("{\"name\""), NESTING.indexOf("],"));
        assertBounded("nesting", NESTING, blank, 201, "blanks");
        String stock = NESTING.substring(NESTING.indexOf("{\"section\""), NESTING.lastIndexOf("]"));
        assertBounded("nesting", NESTING, stock, 101, "stock");
    }

    private void assertBounded(String name, String usual, String one, int times, String field) throws Exception {
        boolean bare = one.startsWith("[");
        String each = bare ? one.substring(1, one.length() - 1) : one;
        String many = String.join(",", Collections.nCopies(times, each));
        String fewer = String.join(",", Collections.nCopies(times - 1, each));
        assertThat(usual).contains(one);
        DocumentContext problem = JsonPath.parse(worker.to(name, usual.replace(one, bare ? "[" + many + "]" : many))
                .andReturn()
                .getResponse()
                .getContentAsString());
        assertThat(problem.read("$.field", String.class)).isEqualTo(field);
        assertThat(problem.read("$.detail", String.class))
                .contains(times + " entries")
                .contains(times - 1 + " at most");
        worker.computed(
                name, usual.replace(one, bare ? "[" + fewer + "]" : fewer).replace("\"count\": 9}", "\"count\": 999}"));
    }

    /** All that is wrong is said at once, the first of it as the field. */
    @Test
    void everyBadFigureIsNamedAtOnce() throws Exception {
        DocumentContext problem = JsonPath.parse(worker.to(
                        "geometry",
                        GEOMETRY.replace("\"headAngleDeg\": 65.5", "\"headAngleDeg\": 655")
                                .replace("\"chainstayMm\": 432", "\"chainstayMm\": -1"))
                .andReturn()
                .getResponse()
                .getContentAsString());
        assertThat(problem.read("$.title", String.class)).isEqualTo("Nothing was computed.");
        assertThat(problem.read("$.field", String.class)).isEqualTo("given.headAngleDeg");
        assertThat(problem.read("$.detail", String.class))
                .isEqualTo("The head angle of 655° is not between 0° and 90°. The chainstay of -1 mm is not above 0.");
    }

    @Test
    void whoeverIsNotSignedOnComputesNothing() throws Exception {
        for (String name : List.of(
                "geometry",
                "mitre",
                "mass",
                "suspension",
                "nesting",
                "control-chart",
                "capability",
                "effects",
                "soak",
                "equivalent-time",
                "cure",
                "dew-point",
                "film",
                "heat-input",
                "purge")) {
            assertThat(mvc.perform(post("/api/v1/calculations/" + name)
                                    .contentType(MediaType.APPLICATION_JSON)
                                    .content(usual(name))
                                    .with(SecurityMockMvcRequestPostProcessors.csrf()))
                            .andReturn()
                            .getResponse()
                            .getStatus())
                    .isEqualTo(401);
        }
    }
}
