package org.trammel.shop.calculations;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.trammel.shop.calculations.Sent.figure;

import com.jayway.jsonpath.DocumentContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.trammel.calc.thermal.OvenRuns;
import org.trammel.calc.thermal.Samples;
import org.trammel.shop.ShopTest;
import org.trammel.shop.TestCrew;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import tools.jackson.databind.json.JsonMapper;

/** Through the door: the invented workshop's oven records against the script beside them, and worked figures. */
@ShopTest
class OvensComputedTest {

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

    private static Map<String, Object> record(Samples samples, double readsHigh) {
        List<Double> minutes = new ArrayList<>();
        List<Double> first = new ArrayList<>();
        List<Double> second = new ArrayList<>();
        for (int row = 0; row < samples.rows(); row++) {
            minutes.add((samples.time_ms(row) - samples.time_ms(0)) / 60_000.0);
            first.add(samples.degC(samples.channel("TC-07"), row));
            second.add(samples.degC(samples.channel("TC-08"), row));
        }
        return Map.of(
                "minutes",
                minutes,
                "thermocouples",
                List.of(
                        Map.of("name", "TC-07", "degC", first, "readsHighByK", readsHigh),
                        Map.of("name", "TC-08", "role", "LOAD", "degC", second)));
    }

    private static String json(Map<String, Object> body) {
        return JsonMapper.shared().writeValueAsString(body);
    }

    @ParameterizedTest
    @MethodSource("org.trammel.calc.thermal.OvenRuns#all")
    void theRecordsComeToWhatTheScriptSays(OvenRuns.Row row) throws Exception {
        Samples samples = row.samples();
        double reference = row.value("reference_degC");
        Map<String, Object> energy =
                Map.of("usualKJPerMol", 115, "lowKJPerMol", 80, "highKJPerMol", 130, "source", "shop");
        DocumentContext time = worker.computed(
                "equivalent-time",
                json(Map.of("record", record(samples, 0), "referenceDegC", reference, "activation", energy)));
        assertThat(figure(time, "$.coldest.usualH")).isCloseTo(row.value("zero_h"), within(2e-3));
        assertThat(figure(time, "$.coldest.lowEnergyH")).isCloseTo(row.value("zero_80_h"), within(2e-3));
        assertThat(figure(time, "$.coldest.highEnergyH")).isCloseTo(row.value("zero_130_h"), within(2e-3));
        DocumentContext drifted = worker.computed(
                "equivalent-time",
                json(Map.of("record", record(samples, 7), "referenceDegC", reference, "activation", energy)));
        assertThat(figure(drifted, "$.coldest.usualH")).isCloseTo(row.value("worst_h"), within(2e-3));
        DocumentContext soak = worker.computed(
                "soak",
                json(Map.of(
                        "record",
                        record(samples, 0),
                        "steps",
                        List.of(Map.of("setDegC", reference, "belowK", 5, "aboveK", 5, "soakH", 8)))));
        assertThat(figure(soak, "$.steps[0].soakH")).isCloseTo(row.value("in_band_h"), within(1e-5));
        assertThat(soak.read("$.judged", String.class)).isEqualTo("CONFORMING");
    }

    /** Worked by hand: 20 min at 200 °C are 11.4 h at 149. */
    @Test
    void aPlannedBakeIsWorthWhatIsWorkedByHand() throws Exception {
        DocumentContext time = worker.computed("equivalent-time", """
                {"referenceDegC": 149, "activation": {"usualKJPerMol": 115, "source": "shop"},
                 "soaks": [{"degC": 200, "hours": 0.33333}]}""");
        assertThat(figure(time, "$.hottest.usualH")).isCloseTo(11.4, within(0.05));
    }

    /** Minutes that powder sheets ask for, on both sides of their window. */
    @ParameterizedTest
    @CsvSource({"200, 10, CONFORMING", "180, 20, CONFORMING", "180, 19, NOT_CONFORMING", "200, 16, NOT_CONFORMING"})
    void aCureIsJudgedOnBothSides(double degC, double minutes, String judged) throws Exception {
        DocumentContext cure = worker.computed(
                "cure",
                json(Map.of(
                        "pairs",
                        List.of(Map.of("metalDegC", 200, "minutes", 10), Map.of("metalDegC", 180, "minutes", 20)),
                        "metalDegC",
                        degC,
                        "minutes",
                        minutes)));
        assertThat(cure.read("$.judged", String.class)).isEqualTo(judged);
        assertThat(figure(cure, "$.energyKJPerMol")).isCloseTo(61.78, within(0.01));
    }

    /** Worked by hand: 14.87 °C, metal of 17.2 °C too cold and of 18.5 °C warm enough; 5 °C and 50 %: −4.58 and −4.04. */
    @Test
    void theMarginOfTheMetalIsTold() throws Exception {
        String air = "{\"airDegC\": 21, \"humidityPercent\": 68, \"surfaceDegC\": %s}";
        DocumentContext cold = worker.computed("dew-point", air.formatted("17.2"));
        assertThat(figure(cold, "$.dewPointDegC")).isCloseTo(14.87, within(0.005));
        assertThat(cold.read("$.enough", Boolean.class)).isFalse();
        assertThat(figure(cold, "$.leastSurfaceDegC")).isEqualTo(17.9);
        assertThat(worker.computed("dew-point", air.formatted("18.5")).read("$.enough", Boolean.class))
                .isTrue();
        DocumentContext frost = worker.computed("dew-point", "{\"airDegC\": 5, \"humidityPercent\": 50}");
        assertThat(figure(frost, "$.dewPointDegC")).isCloseTo(-4.58, within(0.005));
        assertThat(figure(frost, "$.frostPointDegC")).isCloseTo(-4.04, within(0.005));
        assertThat(frost.read("$.over", String.class)).isEqualTo("ICE");
    }

    /** Worked by hand: mean 71.8, one of ten below 60; a set made for SSPC-PA 2: area 72, level 1 not kept. */
    @Test
    void aFilmIsJudgedByTheRuleThatIsAsked() throws Exception {
        DocumentContext ten = worker.computed("film", """
                {"rule": "EIGHTY_TWENTY", "leastUm": 60, "mostUm": 120,
                 "areas": [{"name": "frame", "spotsUm": [[72, 68, 81, 77, 64, 59, 88, 73, 70, 66]]}]}""");
        assertThat(ten.read("$.conforming", Boolean.class)).isTrue();
        assertThat(figure(ten, "$.meanUm")).isEqualTo(71.8);
        assertThat(figure(ten, "$.below")).isEqualTo(1);
        String spots = """
                {"rule": "SPOTS_AND_AREAS", "leastUm": 60, "mostUm": 90, "level": "%s", "areas": [{"name": "down tube",
                 "spotsUm": [[58, 62, 60], [50, 47, 47], [75, 80, 73], [104, 108, 109], [66, 70, 71]]}]}""";
        DocumentContext three = worker.computed("film", spots.formatted("THREE"));
        assertThat(three.read("$.conforming", Boolean.class)).isTrue();
        assertThat(figure(three, "$.areas[0].meanUm")).isEqualTo(72);
        assertThat(worker.computed("film", spots.formatted("ONE")).read("$.conforming", Boolean.class))
                .isFalse();
    }
}
