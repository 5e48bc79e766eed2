package org.trammel.shop.gauges;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.context.event.ApplicationEvents;
import org.springframework.test.context.event.RecordApplicationEvents;
import org.springframework.test.web.servlet.MockMvc;
import org.trammel.shop.ShopTest;
import org.trammel.shop.TestCrew;
import org.trammel.shop.people.Asking;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.Signed;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;

/**
 * Errors as found decide whether a gauge was right. Simple acceptance: the amount of the error against the permissible
 * one, equal is within (JCGM 106:2012, 8.2, from memory).
 */
@ShopTest
@RecordApplicationEvents
class AsFoundTest {

    private static final AtomicInteger NUMBER = new AtomicInteger();
    private static final LocalDate LAST_GOOD = LocalDate.of(2025, 9, 17);
    private static final LocalDate FOUND = LocalDate.of(2026, 3, 17);
    private static final LocalDate NEXT_DUE = LocalDate.of(2027, 3, 17);

    @Autowired
    private Gauges gauges;

    @Autowired
    private GaugeRegister register;

    @Autowired
    private TestCrew hands;

    @Autowired
    private Crew crew;

    @Autowired
    private MockMvc mvc;

    @Autowired
    private ApplicationEvents events;

    private long qa;
    private Asking asQa;

    @BeforeEach
    void hire() {
        qa = hands.hire(Role.QA_LEAD);
        asQa = new Asking(mvc, Signed.on(crew.byId(qa)));
    }

    @ParameterizedTest
    @CsvSource({
        "0.03,   WITHIN, IN_USE",
        "-0.03,  WITHIN, IN_USE",
        "0,      WITHIN, IN_USE",
        "0.0301, OVER,   FAILED",
        "-0.0301,OVER,   FAILED",
    })
    void anErrorOnThePermissibleOneIsWithinAndOneBeyondItFailsTheGauge(String error, AsFound found, GaugeState after) {
        String code = height();
        Gauge gauge = register.calibrated(
                act(), code, entry(found == AsFound.OVER ? null : NEXT_DUE, false, "300;" + error + ";0.03"));
        assertThat(gauge.state()).isEqualTo(after);
        assertThat(register.calibrationsOf(gauge.id()).get(0)).satisfies(kept -> {
            assertThat(kept.found()).isEqualTo(found);
            assertThat(kept.stands()).isEqualTo(found == AsFound.WITHIN);
        });
        assertThat(gauge.calibratedOn()).isEqualTo(found == AsFound.WITHIN ? FOUND : LAST_GOOD);
    }

    @Test
    void theFailureIsRecordedInTheSameActWithTheWorstErrorAndItsPlace() {
        String code = height();
        Gauge gauge = register.calibrated(
                act(), code, entry(null, false, "500;-0.04;0.03", "100;0.01;0.03", "300;0.18;0.03"));
        assertThat(register.failuresOf(gauge.id())).singleElement().satisfies(failure -> {
            assertThat(failure.foundOn()).isEqualTo(FOUND);
            assertThat(failure.error()).isEqualByComparingTo("0.18");
            assertThat(failure.errorAt()).isEqualByComparingTo("300");
            assertThat(failure.unit()).isEqualTo("mm");
            assertThat(failure.note()).contains("C-9", "0,18 mm at 300", "0,03");
        });
        assertThat(events.stream(GaugeFailed.class).filter(event -> event.code().equals(code)))
                .singleElement()
                .satisfies(event -> {
                    assertThat(event.lastGoodOn()).isEqualTo(LAST_GOOD);
                    assertThat(event.least()).isEqualByComparingTo("-0.04");
                    assertThat(event.greatest()).isEqualByComparingTo("0.18");
                });
        assertThat(register.calibrationsOf(gauge.id()).get(0).points())
                .extracting(point -> point.at().intValue())
                .containsExactly(100, 300, 500);
        assertThatThrownBy(() -> gauges.require(code, "HEIGHT", "mm", List.of(), FOUND))
                .isInstanceOf(Refusal.class);
    }

    @Test
    void aGaugeFoundWrongAndPutRightWaitsForTheQaLeadWithItsNewDates() {
        String code = height();
        Gauge gauge = register.calibrated(act(), code, entry(NEXT_DUE, true, "300;0.18;0.03"));
        assertThat(gauge.state()).isEqualTo(GaugeState.BLOCKED);
        assertThat(gauge.calibratedOn()).isEqualTo(FOUND);
        assertThat(gauge.dueOn()).isEqualTo(NEXT_DUE);
        assertThat(events.stream(GaugeFailed.class).filter(event -> event.code().equals(code)))
                .singleElement()
                .satisfies(event -> assertThat(event.lastGoodOn()).isEqualTo(LAST_GOOD));
    }

    @Test
    void whatIsNotPutRightIsNotUsedByItEvenAfterItIsUnblocked() {
        String code = height();
        register.calibrated(act(), code, entry(null, false, "300;0.18;0.03"));
        assertThatThrownBy(() -> register.unblock(act(), code, "looks right")).isInstanceOf(Refusal.class);
        register.calibrated(
                act(),
                code,
                new NewCalibration(FOUND.plusDays(1), NEXT_DUE, "C-10", null, "", "", List.of(), false, ""));
        register.unblock(act(), code, "repaired");
        assertThatThrownBy(() -> gauges.require(code, "HEIGHT", "mm", List.of(), FOUND.minusDays(200)))
                .isInstanceOf(Refusal.class);
        assertThat(gauges.require(code, "HEIGHT", "mm", List.of(), FOUND.plusDays(1))
                        .dueOn())
                .isEqualTo(NEXT_DUE);
        assertThat(gauges.require(code, "HEIGHT", "mm", List.of(), FOUND).dueOn())
                .as("the day it was found wrong on stands on the calibration before")
                .isEqualTo(LocalDate.of(2026, 9, 17));
    }

    @Test
    void aCertificateThatSaysNoMoreThanTheFailureOnRecordIsNoSecondFailure() {
        String code = height();
        register.fail(act(), code, new Failure(FOUND, new BigDecimal("0.18"), "mm", new BigDecimal("300"), "high"));
        long id = gauges.byCode(code).orElseThrow().id();
        register.calibrated(act(), code, entry(null, false, "300;0.18;0.03"));
        assertThat(register.failuresOf(id)).hasSize(1);
        String worse = height();
        register.fail(act(), worse, new Failure(FOUND, new BigDecimal("0.18"), "mm", new BigDecimal("300"), "high"));
        register.calibrated(act(), worse, entry(null, false, "300;0.18;0.03", "400;-0.05;0.03"));
        assertThat(register.failuresOf(gauges.byCode(worse).orElseThrow().id())).hasSize(2);
    }

    @Test
    void sentTwiceItIsOneCalibrationAndOneFailure() {
        String code = height();
        Act act = act();
        for (int i = 0; i < 2; i++) {
            register.calibrated(act, code, entry(null, false, "300;0.18;0.03"));
        }
        long id = gauges.byCode(code).orElseThrow().id();
        assertThat(register.failuresOf(id)).hasSize(1);
        assertThat(register.calibrationsOf(id)).hasSize(2);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "300",
                "300;0.02",
                "300;0.02;0.03;4",
                "300;0.02;0",
                "300;0.02;-0.03",
                "3OO;0.02;0.03",
                "300;NaN;0.03",
                "300;1e308;0.03",
                "700;0.02;0.03",
                "300;0.0000001;0.03",
                "300;0.02;0.03\n300;0.01;0.03",
                "value;error;permissible"
            })
    void aLineThatIsNoPointIsRefusedWithASentence(String typed) {
        String code = height();
        Refusal refused = catchThrowableOfType(
                Refusal.class,
                () -> register.calibrated(
                        act(),
                        code,
                        new NewCalibration(
                                FOUND,
                                NEXT_DUE,
                                "C-9",
                                null,
                                "",
                                "mm",
                                CalibrationEntry.points(typed, null),
                                false,
                                "")));
        assertThat(refused.field()).isEqualTo("points");
        assertThat(refused.why()).isNotBlank();
        assertThat(refused.instead()).isNotBlank();
        assertThat(register.calibrationsOf(gauges.byCode(code).orElseThrow().id()))
                .hasSize(1);
    }

    @Test
    void pointsAreReadWithAnySeparatorAndThePermissibleErrorInPerCentOrOnceForAll() {
        assertThat(CalibrationEntry.points("2\u00a0\u22120,1\t4 %\n\n10; 0.3 ;4%", null))
                .containsExactly(point("2", "-0.1", "0.08"), point("10", "0.3", "0.4"));
        assertThat(CalibrationEntry.points("300 0,02\r\n100 0,01 0,02", new BigDecimal("0.03")))
                .containsExactly(point("300", "0.02", "0.03"), point("100", "0.01", "0.02"));
    }

    @Test
    void whatIsMissingOrOutOfOrderIsRefused() {
        String code = height();
        assertThat(refused(code, entry(null, false, "300;0.01;0.03")).field()).isEqualTo("dueOn");
        assertThat(refused(
                                code,
                                new NewCalibration(
                                        FOUND, NEXT_DUE, "C-9", null, "", "mm", points("300;0.18;0.03"), true, ""))
                        .field())
                .isEqualTo("asLeft");
        assertThat(refused(
                                code,
                                new NewCalibration(
                                        FOUND, NEXT_DUE, "C-9", null, "", "°", points("300;0.01;0.03"), false, ""))
                        .field())
                .isEqualTo("pointUnit");
        assertThat(refused(
                                code,
                                new NewCalibration(
                                        LAST_GOOD.minusDays(9),
                                        null,
                                        "C-0",
                                        null,
                                        "",
                                        "mm",
                                        points("300;0.18;0.03"),
                                        false,
                                        ""))
                        .field())
                .isEqualTo("calibratedOn");
    }

    @Test
    void thePageDrawsTheErrorsAndTheTableBesideSaysTheSame() throws Exception {
        String code = height();
        mvc.perform(asQa.form("/shop/gauges/" + code + "/calibration")
                        .param("calibratedOn", "2026-03-17")
                        .param("dueOn", "")
                        .param("certificate", "C-9")
                        .param("points", "100 0,01\n300 0,18\n500 -0,02")
                        .param("permissible", "0,03")
                        .param("pointUnit", "mm"))
                .andExpect(redirectedUrl("/shop/gauges/" + code));
        assertThat(asQa.page("/shop/gauges/" + code))
                .contains("class=\"errors\"", "simple acceptance", "not to be used by it")
                .contains(
                        "Errors of " + code + " at 3 values: over; the worst is 0,18\u00a0mm at 300, permissible 0,03.")
                .containsPattern("\\+0,18</td>\\s*<td class=\"num\">0,03</td>")
                .containsPattern("\u22120,02</td>");
    }

    @Test
    void theApiTakesPointsAndGivesThemBack() throws Exception {
        String code = height();
        mvc.perform(asQa.api("/api/v1/gauges/" + code + "/calibrations", """
                                {"calibratedOn": "2026-03-17", "certificate": "C-9", "unit": "mm",
                                 "points": [{"at": 300, "error": 0.18, "permissible": 0.03}]}"""))
                .andExpect(status().isOk())
                .andExpect(jsonPath("$.state").value("FAILED"));
        mvc.perform(get("/api/v1/gauges/" + code + "/calibrations").with(asQa.who()))
                .andExpect(jsonPath("$[0].found").value("OVER"))
                .andExpect(jsonPath("$[0].stands").value(false))
                .andExpect(jsonPath("$[0].points[0].error").value(0.18));
        mvc.perform(get("/api/v1/gauges/" + code + "/failures").with(asQa.who()))
                .andExpect(jsonPath("$[0].errorAt").value(300));
    }

    private Refusal refused(String code, NewCalibration entry) {
        return catchThrowableOfType(Refusal.class, () -> register.calibrated(act(), code, entry));
    }

    private static CalibrationPoint point(String at, String error, String permissible) {
        return new CalibrationPoint(new BigDecimal(at), new BigDecimal(error), new BigDecimal(permissible));
    }

    private static NewCalibration entry(@Nullable LocalDate due, boolean putRight, String... points) {
        return new NewCalibration(
                FOUND, due, "C-9", null, "", "mm", points(points), putRight, putRight ? "column straightened" : "");
    }

    private static List<CalibrationPoint> points(String... points) {
        return Arrays.stream(points)
                .map(point -> point.split(";"))
                .map(cells -> point(cells[0], cells[1], cells[2]))
                .toList();
    }

    /** A height gauge of 600 mm that was last found right in September. */
    private String height() {
        String code = "AF-" + NUMBER.incrementAndGet();
        GaugeRange range = new GaugeRange(
                "HEIGHT",
                "mm",
                BigDecimal.ZERO,
                new BigDecimal("600"),
                new BigDecimal("0.01"),
                new BigDecimal("0.012"),
                null,
                "certificate");
        register.register(act(), code, new NewGauge("height gauge", null, "", false, List.of(range)));
        register.calibrated(act(), code, LAST_GOOD, LocalDate.of(2026, 9, 17), "C-1", null, "");
        return code;
    }

    private Act act() {
        return hands.act(qa);
    }
}
