package org.trammel.shop.gauges;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.shop.ShopTest;
import org.trammel.shop.Statements;
import org.trammel.shop.TestClock;
import org.trammel.shop.TestCrew;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.settings.Settings;

@ShopTest
class GaugesTest {

    private static final AtomicInteger NUMBER = new AtomicInteger();
    private static final LocalDate CALIBRATED = LocalDate.of(2026, 3, 10);
    private static final LocalDate DUE = LocalDate.of(2026, 3, 18);

    @Autowired
    private Gauges gauges;

    @Autowired
    private GaugeRegister register;

    @Autowired
    private TestCrew crew;

    @Autowired
    private TestClock clock;

    @Autowired
    private Settings settings;

    @Autowired
    private Statements statements;

    private long qa;

    @BeforeEach
    void hire() {
        qa = crew.hire(Role.QA_LEAD);
    }

    @Test
    void aGaugeIsGoodThroughItsDueDateAndNotADayLonger() {
        String code = calibrated(height());
        assertThat(gauges.require(code, "HEIGHT", "mm", List.of(), DUE).dueOn()).isEqualTo(DUE);
        Refusal refusal = refused(code, "HEIGHT", "mm", DUE.plusDays(1));
        assertThat(refusal.kind()).isEqualTo(Refusal.Kind.STATE);
        assertThat(refusal.why()).contains("2026-03-18");
    }

    /** Stockholm is UTC+1 until the last Sunday of March (tz database): its midnight is 23:00 UTC. */
    @Test
    void theDueDateEndsAtMidnightOfTheShopNotOfTheServer() {
        String code = calibrated(height());
        clock.setTo(Instant.parse("2026-03-18T22:59:59Z"));
        gauges.require(code, "HEIGHT", "mm", List.of(), settings.today());
        clock.setTo(Instant.parse("2026-03-18T23:00:00Z"));
        refused(code, "HEIGHT", "mm", settings.today());
    }

    @Test
    void aGaugeIsNotUsedBeforeItsFirstCalibration() {
        String never = registered(height());
        assertThat(refused(never, "HEIGHT", "mm", DUE).why()).contains("never calibrated");
        String later = calibrated(height());
        assertThat(refused(later, "HEIGHT", "mm", CALIBRATED.minusDays(1)).why())
                .contains("first calibration");
    }

    @Test
    void aDayBeforeTheNewestCalibrationIsCoveredByTheOneThatStoodThen() {
        String code = registered(height());
        register.calibrated(act(), code, LocalDate.of(2025, 1, 1), LocalDate.of(2025, 12, 31), "C-1", null, "");
        register.calibrated(act(), code, LocalDate.of(2026, 2, 1), LocalDate.of(2027, 2, 1), "C-2", null, "");
        assertThat(gauges.require(code, "HEIGHT", "mm", List.of(), LocalDate.of(2025, 6, 1))
                        .dueOn())
                .isEqualTo(LocalDate.of(2025, 12, 31));
        assertThat(refused(code, "HEIGHT", "mm", LocalDate.of(2026, 1, 15)).why())
                .contains("2025-12-31");
        gauges.require(code, "HEIGHT", "mm", List.of(), LocalDate.of(2026, 2, 1));
    }

    @Test
    void aGaugeThatIsBlockedFailedOrRetiredIsRefusedWithItsReason() {
        String blocked = calibrated(height());
        register.block(act(), blocked, "dropped on the floor");
        assertThat(refused(blocked, "HEIGHT", "mm", DUE).why()).contains("blocked", "dropped on the floor");
        String failed = calibrated(height());
        register.fail(act(), failed, new Failure(DUE, new BigDecimal("0.18"), "mm", null, "reads high at 300"));
        assertThat(refused(failed, "HEIGHT", "mm", DUE).why()).contains("failed", "reads high at 300");
        String retired = calibrated(height());
        register.retire(act(), retired, "worn out");
        assertThat(refused(retired, "HEIGHT", "mm", DUE).why()).contains("retired");
    }

    @Test
    void aRefusalNamesWhatServesInstead() {
        // A unit that no other test reads in, so that the two are alone and the advice can be read word by word.
        GaugeRange gloss = range("GLOSS", "%", "0", "100", "1", "0.5", null);
        String blocked = calibrated(gloss);
        register.block(act(), blocked, "dropped");
        assertThat(refused(blocked, "GLOSS", "%", DUE).instead()).contains("No other gauge");
        String other = calibrated(gloss);
        assertThat(refused(blocked, "GLOSS", "%", DUE).instead()).contains("Use " + other);
    }

    @Test
    void anotherKindOrUnitIsRefused() {
        String code = calibrated(height());
        Refusal kind = refused(code, "TORQUE", "N·m", DUE);
        assertThat(kind.field()).isEqualTo("gauge");
        assertThat(kind.why()).contains("torque tool", "height gauge");
        assertThat(refused(code, "HEIGHT", "µm", DUE).why()).contains("mm", "µm");
    }

    @Test
    void bothWaysToWriteMicroAreOneUnit() {
        String code = calibrated(range("FILM-EDDY", "\u03bcm", "0", "500", "1", "1.2", null));
        assertThat(gauges.require(code, "FILM-EDDY", "\u00b5m", List.of(), DUE).u())
                .isEqualByComparingTo("1.2");
    }

    @Test
    void aValueTheGaugeCannotShowIsRefused() {
        String code = calibrated(height());
        Means means = gauges.require(code, "HEIGHT", "mm", values("0", "600"), DUE);
        assertThat(means.u()).isEqualByComparingTo("0.012");
        Refusal refusal = catchThrowableOfType(
                Refusal.class, () -> gauges.require(code, "HEIGHT", "mm", values("150", "600.01"), DUE));
        assertThat(refusal.field()).isEqualTo("value1");
        assertThat(refusal.why()).contains("600");
    }

    @Test
    void anUnknownNumberIsRefusedAndANumberIsReadHoweverItWasTyped() {
        assertThat(refused("XX-404", "HEIGHT", "mm", DUE).why()).contains("XX-404");
        assertThat(refused("", "HEIGHT", "mm", DUE).field()).isEqualTo("gauge");
        String code = calibrated(height());
        assertThat(gauges.require(" " + code.toLowerCase() + " ", "HEIGHT", "mm", List.of(), DUE)
                        .code())
                .isEqualTo(code);
    }

    /** Four per cent of 12 is 0,48; six per cent of 8 is 0,48 and of 9 is 0,54: worked by hand. */
    @Test
    void aRelativeUncertaintyIsTakenAtTheGreatestDoubtOverTheValues() {
        String code = calibrated(
                range("TORQUE", "N·m", "2", "10", "0.1", null, "6"),
                range("TORQUE", "N·m", "10", "14", "0.1", null, "4"));
        assertThat(gauges.require(code, "TORQUE", "N·m", values("12", "8"), DUE).u())
                .isEqualByComparingTo("0.48");
        assertThat(gauges.require(code, "TORQUE", "N·m", values("12", "9"), DUE).u())
                .isEqualByComparingTo("0.54");
        assertThat(gauges.require(code, "TORQUE", "N·m", values("10"), DUE).u()).isEqualByComparingTo("0.4");
    }

    @Test
    void anAidHasNoUncertaintyAndServesThePlainRuleOnly() {
        String code = registered(true, range("FEELER", "mm", "0.05", "1", "0.05", null, null));
        register.calibrated(act(), code, CALIBRATED, DUE, "own check", null, "");
        Means means = gauges.require(code, "FEELER", "mm", values("0.15"), DUE);
        assertThat(means.aid()).isTrue();
        assertThat(means.u()).isNull();
    }

    @Test
    void aSetUpIsUsableOnlyWhileEachPartIs() {
        String gauge = calibrated(height());
        String mandrel = calibrated(range("MANDREL", "mm", "0", "300", null, "0.005", null));
        String setup = register.setUp(
                        act(),
                        next(),
                        new NewGauge(
                                "height gauge on the mandrel",
                                null,
                                "",
                                false,
                                List.of(range("TWIST", "°", "-10", "10", "0.001", "0.020", null))),
                        List.of(gauge, mandrel))
                .code();
        Means means = gauges.require(setup, "TWIST", "°", values("-0.331"), DUE);
        assertThat(means.u()).isEqualByComparingTo("0.020");
        assertThat(means.dueOn()).isEqualTo(DUE);
        assertThat(gauges.usableFor("TWIST", "°", DUE)).extracting(Means::code).contains(setup);
        register.block(act(), mandrel, "bent");
        assertThat(refused(setup, "TWIST", "°", DUE).why()).contains(mandrel, "bent");
        assertThat(gauges.usableFor("TWIST", "°", DUE)).extracting(Means::code).doesNotContain(setup);
    }

    @Test
    void whatMayBeUsedIsListedTheLeastUncertainFirst() {
        String coarse = calibrated(range("BORE", "mm", "0", "60", "0.01", "0.010", null));
        String fine = calibrated(range("BORE", "mm", "35", "60", "0.001", "0.002", null));
        registered(range("BORE", "mm", "35", "60", "0.001", "0.001", null));
        assertThat(gauges.usableFor("BORE", "mm", DUE))
                .extracting(Means::code)
                .filteredOn(code -> code.equals(coarse) || code.equals(fine))
                .containsExactly(fine, coarse);
        assertThat(gauges.usableFor("BORE", "mm", DUE.plusDays(1)))
                .extracting(Means::code)
                .doesNotContain(fine, coarse);
    }

    /** A tenth of a tolerance of 0,20 is 0,02; a quarter of half of it is 0,025 for U = 2u: worked by hand. */
    @Test
    void aGaugeThatIsCoarseForTheToleranceIsWarnedAbout() {
        Means coarse = means(range("HEIGHT", "mm", "0", "600", "0.05", "0.02", null));
        assertThat(gauges.doubts(coarse, new BigDecimal("41.9"), new BigDecimal("42.1")))
                .hasSize(2)
                .anySatisfy(doubt -> assertThat(doubt).contains("steps of 0,05"))
                .anySatisfy(doubt -> assertThat(doubt).contains("U is 0,04"));
        Means fine = means(range("HEIGHT", "mm", "0", "600", "0.02", "0.0125", null));
        assertThat(gauges.doubts(fine, new BigDecimal("41.9"), new BigDecimal("42.1")))
                .isEmpty();
        assertThat(gauges.doubts(coarse, null, new BigDecimal("0.1"))).isEmpty();
    }

    @Test
    void asksOneStatementForAGaugeAndOneForTheWholeRegister() throws Exception {
        String code = calibrated(height());
        assertThat(statements.during(() -> gauges.require(code, "HEIGHT", "mm", values("10"), DUE)))
                .hasSize(1);
        assertThat(statements.during(() -> gauges.all())).hasSize(1);
        assertThat(statements.during(() -> gauges.usableFor("HEIGHT", "mm", DUE)))
                .hasSize(1);
    }

    private Means means(GaugeRange range) {
        return gauges.require(calibrated(range), range.kind(), range.unit(), List.of(), DUE);
    }

    private Refusal refused(String code, String kind, String unit, LocalDate on) {
        Refusal refusal = catchThrowableOfType(Refusal.class, () -> gauges.require(code, kind, unit, List.of(), on));
        assertThat(refusal.what()).isNotBlank();
        assertThat(refusal.why()).isNotBlank();
        assertThat(refusal.instead()).isNotBlank();
        return refusal;
    }

    private String calibrated(GaugeRange... ranges) {
        String code = registered(ranges);
        register.calibrated(act(), code, CALIBRATED, DUE, "C-7", null, "");
        return code;
    }

    private String registered(GaugeRange... ranges) {
        return registered(false, ranges);
    }

    private String registered(boolean aid, GaugeRange... ranges) {
        return register.register(act(), next(), new NewGauge("a gauge", null, "", aid, List.of(ranges)))
                .code();
    }

    private Act act() {
        return crew.act(qa);
    }

    private static String next() {
        return "GT-" + NUMBER.incrementAndGet();
    }

    private static GaugeRange height() {
        return range("HEIGHT", "mm", "0", "600", "0.01", "0.012", null);
    }

    private static List<BigDecimal> values(String... values) {
        return Arrays.stream(values).map(BigDecimal::new).toList();
    }

    private static GaugeRange range(
            String kind, String unit, String low, String high, String resolution, String u, String percent) {
        return new GaugeRange(
                kind,
                unit,
                new BigDecimal(low),
                new BigDecimal(high),
                resolution == null ? null : new BigDecimal(resolution),
                u == null ? null : new BigDecimal(u),
                percent == null ? null : new BigDecimal(percent),
                u == null && percent == null ? "" : "certificate");
    }
}
