package org.trammel.shop.calculations;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.trammel.shop.calculations.Sent.figure;

import com.jayway.jsonpath.DocumentContext;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.result.MockMvcResultMatchers;
import org.trammel.shop.ShopTest;
import org.trammel.shop.TestCrew;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;

/** Alignment and decision through the door, against figures worked by hand: lean = atan(Δh / l), root of summed squares. */
@ShopTest
class AlignmentComputedTest {

    private static final String CAUSES = """
            "causes": [{"kind": "GAUGE", "uMm": 0.012}, {"kind": "REPEATABILITY", "uMm": 0.030},
              {"kind": "PLATE", "uMm": 0.006}, {"kind": "CLAMP", "uMm": 0.030}, {"kind": "OVALITY", "uMm": 0.040}]""";

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

    /** Upright tubes: 90 and 300 mm apart. */
    private static String twoTubes(String headLow) {
        return "{" + CAUSES + ", \"plate\": {\"post\": {\"heightMm\": 150},"
                + "\"headTube\": [{\"xMm\": 500, \"yMm\": 500, \"heightMm\": " + headLow
                + "}, {\"xMm\": 500, \"yMm\": 590, \"heightMm\": 149.88}],"
                + "\"seatTube\": [{\"xMm\": 0, \"yMm\": 100, \"heightMm\": 150.12},"
                + " {\"xMm\": 0, \"yMm\": 400, \"heightMm\": 150.42}]}}";
    }

    @Test
    void twoTubesHaveTheTwistThatIsWorkedByHand() throws Exception {
        DocumentContext answer = auditor.computed("alignment", twoTubes("150.31"));
        double expected = Math.toDegrees(Math.atan(-0.43 / 90) - Math.atan(0.30 / 300));
        String twist = "$.deviations[?(@.what=='TWIST')]";
        assertThat(answer.<java.util.List<Number>>read(twist + ".value").get(0).doubleValue())
                .isCloseTo(expected, within(1e-8));
        // 0.060 of each height, from memory of the trade: gauge, repeatability, plate, clamping, ovality
        double each = Math.sqrt(0.012 * 0.012 + 2 * 0.030 * 0.030 + 0.006 * 0.006 + 0.040 * 0.040);
        double u = Math.toDegrees(Math.sqrt(2) * Math.hypot(each / 90, each / 300));
        assertThat(answer.<java.util.List<Number>>read(twist + ".u").get(0).doubleValue())
                .isCloseTo(u, within(1e-4));
        assertThat(answer.<java.util.List<String>>read("$.missing[*].what")).contains("REAR_AXLE_OFFSET", "STACK");
    }

    @ParameterizedTest
    @CsvSource({
        // ISO 14253-1: the guard band of 1.65 u counts against whoever claims
        "-0.331, 0.056, undecided",
        "-0.344, 0.020, not conforming",
        "0.25, 0.020, conforming"
    })
    void aValueIsJudgedWithItsGuardBand(String value, String u, String word) throws Exception {
        DocumentContext answer = auditor.computed(
                "decision", "{\"value\": " + value + ", \"lower\": -0.30, \"upper\": 0.30, \"u\": " + u + "}");
        assertThat(answer.<String>read("$.word")).isEqualTo(word);
        assertThat(figure(answer, "$.guardBand"))
                .isCloseTo(Math.ceil(1650 * Double.parseDouble(u) - 1e-9) / 1000, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "decision|{\"value\": 1}|lower",
                "decision|{\"value\": 1, \"lower\": 2, \"upper\": 1, \"u\": 0.1}|lower",
                "decision|{\"value\": 1, \"upper\": 2, \"u\": -0.1}|u",
                "decision|{\"value\": 1, \"upper\": 2, \"u\": 0.1, \"factor\": 0}|factor",
                "alignment|{}|plate",
                "alignment|{\"plate\": {}}|plate.post",
                "alignment|{\"plate\": {\"post\": {\"heightMm\": 150}}}|plate"
            })
    void whatCannotBeComputedNamesItsField(String name, String body, String field) throws Exception {
        auditor.to(name, body)
                .andExpect(MockMvcResultMatchers.status().is(422))
                .andExpect(MockMvcResultMatchers.jsonPath("$.field").value(org.hamcrest.Matchers.startsWith(field)));
    }

    @Test
    void aHeightInInchesIsNoLeanOfATube() throws Exception {
        auditor.to("alignment", twoTubes("5.9177"))
                .andExpect(MockMvcResultMatchers.status().is(422))
                .andExpect(MockMvcResultMatchers.jsonPath("$.field").value("plate.headTube"));
    }
}
