package org.trammel.shop.gauges;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.context.event.ApplicationEvents;
import org.springframework.test.context.event.RecordApplicationEvents;
import org.trammel.shop.ShopTest;
import org.trammel.shop.TestCrew;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;

@ShopTest
@RecordApplicationEvents
class GaugeRegisterTest {

    private static final AtomicInteger NUMBER = new AtomicInteger();
    private static final LocalDate TODAY = LocalDate.of(2026, 3, 18);

    @Autowired
    private Gauges gauges;

    @Autowired
    private GaugeRegister register;

    @Autowired
    private TestCrew crew;

    @Autowired
    private ApplicationEvents events;

    private long qa;

    @BeforeEach
    void hire() {
        qa = crew.hire(Role.QA_LEAD);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/gauges/states.csv", delimiter = ';')
    void aVerbIsRefusedInEveryStateItHasNoBusinessIn(GaugeState found, String verb, String after) {
        String code = in(found);
        Gauge before = gauges.byCode(code).orElseThrow();
        if (after.equals("refused")) {
            Refusal refusal = catchThrowableOfType(Refusal.class, () -> does(verb, code, qa));
            assertThat(refusal.kind()).isEqualTo(Refusal.Kind.STATE);
            assertThat(refusal.why()).contains(found.word());
            assertThat(refusal.instead()).isNotBlank();
            assertThat(gauges.byCode(code)).contains(before);
        } else {
            does(verb, code, qa);
            assertThat(gauges.byCode(code).orElseThrow().state()).isEqualTo(GaugeState.valueOf(after));
        }
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/gauges/rights.csv", delimiter = ';')
    void aVerbIsForThoseWhoMay(String verb, String may, String mayNot) {
        roles(mayNot).forEach(role -> {
            String code = in(verb.equals("unblock") ? GaugeState.BLOCKED : GaugeState.IN_USE);
            long person = crew.hire(role);
            assertThatThrownBy(() -> does(verb, code, person))
                    .isInstanceOfSatisfying(
                            Refusal.class, refusal -> assertThat(refusal.kind()).isEqualTo(Refusal.Kind.PERSON));
        });
        roles(may).forEach(role -> {
            String code = in(verb.equals("unblock") ? GaugeState.BLOCKED : GaugeState.IN_USE);
            does(verb, code, crew.hire(role));
        });
    }

    private static Stream<Role> roles(String names) {
        return Arrays.stream(names.split(",")).map(Role::valueOf);
    }

    @Test
    void aNumberIsNeverGivenTwiceEvenWhenItsGaugeIsRetired() {
        String code = in(GaugeState.RETIRED);
        assertThatThrownBy(() -> register.register(act(), code.toLowerCase(), height(null)))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.field()).isEqualTo("code"));
    }

    @Test
    void aGaugeFoundWrongAfterItWasRetiredFailsForWhatItReadBefore() {
        String code = next();
        register.register(act(), code, height(null));
        register.calibrated(act(), code, TODAY.minusMonths(6), TODAY.plusMonths(6), "C-1", null, "");
        register.retire(act(), code, "worn");
        register.fail(act(), code, failure("0.18", "mm", null));
        assertThat(events.stream(GaugeFailed.class).filter(event -> event.code().equals(code)))
                .singleElement()
                .satisfies(event -> {
                    assertThat(event.lastGoodOn()).isEqualTo(TODAY.minusMonths(6));
                    assertThat(event.greatest()).isEqualByComparingTo("0.18");
                });
        Gauge after = gauges.byCode(code).orElseThrow();
        assertThat(after.state()).isEqualTo(GaugeState.RETIRED);
        assertThat(after.stateReason()).isEqualTo("worn");
        assertThat(register.failuresOf(after.id())).hasSize(1);
        // The same once more, or less than is known, is no news; more is.
        for (String less : List.of("0.18", "0.05")) {
            Refusal refusal =
                    catchThrowableOfType(Refusal.class, () -> register.fail(act(), code, failure(less, "mm", null)));
            assertThat(refusal.kind()).isEqualTo(Refusal.Kind.STATE);
            assertThat(refusal.why()).contains("on record", "0,18 mm");
        }
        register.fail(act(), code, failure("-0.02", "mm", null));
        assertThat(register.failuresOf(after.id())).hasSize(2);
        assertThat(catchThrowableOfType(Refusal.class, () -> does("calibrated", code, qa))
                        .instead())
                .contains("record that");
    }

    /** Of 0 to 600 mm. */
    @ParameterizedTest(name = "{0} {1} at {2}: {3}")
    @CsvSource({
        "0,         mm, '',     error,   error of 0 is none",
        "0.000,     mm, '',     error,   error of 0 is none",
        "700,       mm, '',     error,   more than it measures",
        "-600.1,    mm, '',     error,   more than it measures",
        "1e12,      in, '',     error,   within",
        "0.0000001, mm, '',     error,   six decimals",
        "0.18,      mm, 900,    errorAt, does not reach",
        "0.18,      mm, 1e300,  errorAt, within",
        "0.18,      '', 300,    unit,    no unit",
        "0.18,      millimetres of mercury, '', unit, characters",
    })
    void whatCannotBeFoundWrongIsRefused(String error, String unit, String at, String field, String why) {
        String code = fresh();
        Refusal refusal = catchThrowableOfType(
                Refusal.class,
                () -> register.fail(act(), code, failure(error, unit, at.isEmpty() ? null : new BigDecimal(at))));
        assertThat(refusal.field()).isEqualTo(field);
        assertThat(refusal.why()).contains(why);
        assertThat(refusal.instead()).isNotBlank();
        assertThat(gauges.byCode(code).orElseThrow().state()).isEqualTo(GaugeState.IN_USE);
    }

    @Test
    void aFailureOfTomorrowIsRefused() {
        String code = fresh();
        Failure ahead = new Failure(TODAY.plusDays(1), null, "", null, "will bend");
        assertThat(catchThrowableOfType(Refusal.class, () -> register.fail(act(), code, ahead))
                        .field())
                .isEqualTo("foundOn");
    }

    private static Failure failure(String error, String unit, @Nullable BigDecimal at) {
        return new Failure(TODAY, new BigDecimal(error), unit, at, "reads high");
    }

    @Test
    void theSameActTwiceIsOneCalibration() {
        String code = fresh();
        Act act = act();
        for (int i = 0; i < 2; i++) {
            register.calibrated(act, code, TODAY, TODAY.plusYears(1), "C-1", null, "");
        }
        long id = gauges.byCode(code).orElseThrow().id();
        assertThat(register.calibrationsOf(id)).hasSize(1);
    }

    @Test
    void aCalibrationOfTomorrowIsRefused() {
        String code = fresh();
        assertThatThrownBy(
                        () -> register.calibrated(act(), code, TODAY.plusDays(1), TODAY.plusYears(1), "C-1", null, ""))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.field()).isEqualTo("calibratedOn"));
    }

    @Test
    void aCertificateOfAnotherGaugeShowsThatTwoWereSwapped() {
        String code = next();
        register.register(act(), code, height("SN " + code));
        Refusal refusal = catchThrowableOfType(
                Refusal.class, () -> register.calibrated(act(), code, TODAY, TODAY.plusYears(1), "C-1", "SN 999", ""));
        assertThat(refusal.field()).isEqualTo("makerNumber");
        assertThat(refusal.why()).contains("SN 999").contains("SN " + code);
        assertThatThrownBy(() -> register.calibrated(act(), code, TODAY, TODAY.plusYears(1), "C-1", null, ""))
                .isInstanceOf(Refusal.class);
        register.calibrated(act(), code, TODAY, TODAY.plusYears(1), "C-1", "sn " + code, "");
    }

    @Test
    void oneMakersNumberIsOneGauge() {
        String first = next();
        register.register(act(), first, height("SN " + first));
        assertThatThrownBy(() -> register.register(act(), next(), height("SN " + first)))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.why()).contains(first));
    }

    @Test
    void anOldCertificateFoundLaterDoesNotMakeAFailedGaugeFitToBeUsed() {
        String code = in(GaugeState.FAILED);
        LocalDate before = TODAY.minusDays(1);
        assertThat(register.calibrated(act(), code, before, before.plusYears(1), "C-0", null, "")
                        .state())
                .isEqualTo(GaugeState.FAILED);
        assertThat(register.calibrated(act(), code, TODAY, TODAY.plusYears(1), "C-1", null, "")
                        .state())
                .isEqualTo(GaugeState.BLOCKED);
    }

    @Test
    void aFailureTellsWhatWasMeasuredWithItSinceItWasLastGood() {
        String code = fresh();
        register.calibrated(act(), code, LocalDate.of(2025, 9, 17), LocalDate.of(2026, 9, 17), "C-1", null, "");
        String other = fresh();
        Gauge setup = register.setUp(act(), next(), twist(), List.of(code, other));
        Failure failure = new Failure(
                LocalDate.of(2026, 3, 17), new BigDecimal("0.18"), "mm", new BigDecimal("300"), "reads high");
        Gauge failed = register.fail(act(), code, failure);
        assertThat(events.stream(GaugeFailed.class).filter(event -> event.code().equals(code)))
                .singleElement()
                .satisfies(event -> {
                    assertThat(event.means()).containsExactlyInAnyOrder(failed.id(), setup.id());
                    assertThat(event.lastGoodOn()).isEqualTo(LocalDate.of(2025, 9, 17));
                    assertThat(event.error()).isEqualByComparingTo("0.18");
                    assertThat(event.errorAt()).isEqualByComparingTo("300");
                });
        assertThat(register.failuresOf(failed.id()))
                .singleElement()
                .satisfies(kept -> assertThat(kept.error()).isEqualByComparingTo("0.18"));
    }

    @Test
    void aSetUpIsDueWithItsFirstPart() {
        String early = fresh();
        String late = fresh();
        register.calibrated(act(), late, TODAY, LocalDate.of(2027, 1, 1), "C-1", null, "");
        String setup =
                register.setUp(act(), next(), twist(), List.of(early, late)).code();
        assertThat(gauges.byCode(setup).orElseThrow().dueOn()).isNull();
        register.calibrated(act(), early, TODAY, LocalDate.of(2026, 5, 5), "C-1", null, "");
        assertThat(gauges.byCode(setup).orElseThrow().dueOn()).isEqualTo(LocalDate.of(2026, 5, 5));
        assertThatThrownBy(() -> register.calibrated(act(), setup, TODAY, TODAY.plusYears(1), "C-1", null, ""))
                .isInstanceOf(Refusal.class);
    }

    @Test
    void anEditOfAGaugeSomebodyElseEditedMeanwhileIsStale() {
        String code = fresh();
        long seen = gauges.byCode(code).orElseThrow().version();
        register.edit(act(), code, seen, twist());
        assertThatThrownBy(() -> register.edit(act(), code, seen, height(null)))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.kind()).isEqualTo(Refusal.Kind.STALE));
        assertThat(gauges.byCode(code).orElseThrow().ranges().get(0).kind()).isEqualTo("TWIST");
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "-0.01", "1e10", "0.00000001"})
    void anUncertaintyThatIsNoneIsRefused(String u) {
        assertThatThrownBy(() ->
                        register.register(act(), next(), entry(false, range("HEIGHT", "mm", new BigDecimal(u), null))))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.field()).isEqualTo("u"));
    }

    @Test
    void aGaugeWithoutUncertaintyIsRefusedAndAnAidWithOneToo() {
        assertThatThrownBy(() -> register.register(act(), next(), entry(false, range("HEIGHT", "mm", null, null))))
                .isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> register.register(
                        act(), next(), entry(true, range("FEELER", "mm", new BigDecimal("0.01"), null))))
                .isInstanceOf(Refusal.class);
        register.register(act(), next(), entry(true, range("FEELER", "mm", null, null)));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<script>alert(1)</script>",
                "=1+1",
                "Robert'); drop table gauge;--",
                "מחוגה \u0645\u0642\u064a\u0627\u0633",
                "😀 calliper"
            })
    void aNameIsKeptAsItWasTyped(String name) {
        String code = next();
        GaugeRange range = range("HEIGHT", "mm", new BigDecimal("0.012"), null);
        register.register(act(), code, new NewGauge(name, null, name, false, List.of(range)));
        assertThat(gauges.byCode(code).orElseThrow().what()).isEqualTo(name);
    }

    private String in(GaugeState state) {
        String code = fresh();
        switch (state) {
            case IN_USE -> {}
            case BLOCKED -> does("block", code, qa);
            case FAILED -> does("fail", code, qa);
            case RETIRED -> does("retire", code, qa);
        }
        return code;
    }

    private void does(String verb, String code, long person) {
        Act act = crew.act(person);
        switch (verb) {
            case "register" -> register.register(act, next(), height(null));
            case "edit" ->
                register.edit(act, code, gauges.byCode(code).orElseThrow().version(), twist());
            case "calibrated" -> register.calibrated(act, code, TODAY, TODAY.plusYears(1), "C-1", null, "");
            case "block" -> register.block(act, code, "dropped");
            case "unblock" -> register.unblock(act, code, "checked against the block");
            case "fail" -> register.fail(act, code, new Failure(TODAY, null, "", null, "jaw bent"));
            case "retire" -> register.retire(act, code, "worn");
            default -> throw new IllegalArgumentException(verb);
        }
    }

    private Act act() {
        return crew.act(qa);
    }

    private String fresh() {
        return register.register(act(), next(), height(null)).code();
    }

    private static String next() {
        return "RT-" + NUMBER.incrementAndGet();
    }

    private static NewGauge height(@Nullable String makerNumber) {
        return new NewGauge(
                "height gauge",
                makerNumber,
                "table",
                false,
                List.of(range("HEIGHT", "mm", new BigDecimal("0.012"), null)));
    }

    private static NewGauge twist() {
        return entry(false, range("TWIST", "°", new BigDecimal("0.020"), null));
    }

    private static NewGauge entry(boolean aid, GaugeRange range) {
        return new NewGauge("gauge", null, "", aid, List.of(range));
    }

    private static GaugeRange range(String kind, String unit, @Nullable BigDecimal u, @Nullable BigDecimal percent) {
        return new GaugeRange(
                kind, unit, BigDecimal.ZERO, new BigDecimal("600"), new BigDecimal("0.01"), u, percent, "certificate");
    }
}
