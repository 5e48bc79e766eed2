package org.trammel.shop.ovens;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.calc.thermal.ThermocoupleRole;
import org.trammel.shop.ShopTest;
import org.trammel.shop.TestClock;
import org.trammel.shop.TestCrew;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;

@ShopTest
class OvenRegisterTest {

    private static final Instant YESTERDAY = TestClock.START.minus(Duration.ofDays(1));
    private static final LocalDate LATER = LocalDate.parse("2026-12-31");

    @Autowired
    private OvenRegister register;

    @Autowired
    private Ovens ovens;

    @Autowired
    private TestCrew crew;

    @Autowired
    private TestClock clock;

    private OvenFloor floor;
    private long qa;
    private long worker;

    @BeforeEach
    void hire() {
        floor = new OvenFloor(register, crew);
        qa = crew.hire(Role.QA_LEAD);
        worker = crew.hire(Role.STATION_WORKER);
    }

    @Test
    void anOvenIsLockedUntilItIsSurveyedAndEachThermocoupleIsTested() {
        String code = floor.bare();
        assertThat(ovens.byCode(code).locks())
                .containsExactly(
                        "No thermocouple for the load is fitted.",
                        "No thermocouple for the control is fitted.",
                        "It was never surveyed.");
        String load = floor.fit(code, ThermocoupleRole.LOAD);
        String control = floor.fit(code, ThermocoupleRole.CONTROL);
        floor.survey(code, "-2.1", "2.8", YESTERDAY, LATER);
        floor.accuracy(code, load, "0", YESTERDAY, LATER);
        assertThat(ovens.byCode(code).locks()).containsExactly(control + ", control, has no accuracy test.");
        floor.accuracy(code, control, "-0.4", YESTERDAY, LATER);
        assertThat(ovens.byCode(code).open()).isTrue();
    }

    @Test
    void aTestThatFailsLocksAtOnceAndOneThatIsGoodOpensAgain() {
        OvenFloor.Ready ready = floor.ready();
        floor.accuracy(ready.oven(), ready.load(), "7", TestClock.START, null);
        assertThat(ovens.byCode(ready.oven()).locks())
                .containsExactly(
                        "The accuracy test of " + ready.load() + " failed and was not repeated with a good result.");
        register.remove(crew.act(qa), ready.oven(), ready.load(), "reads 7 K high");
        String fresh = floor.fit(ready.oven(), ThermocoupleRole.LOAD);
        assertThat(ovens.byCode(ready.oven()).locks()).containsExactly(fresh + ", load, has no accuracy test.");
        floor.accuracy(ready.oven(), fresh, "0.2", TestClock.START, LATER);
        assertThat(ovens.byCode(ready.oven()).open()).isTrue();
    }

    @Test
    void aTestStandsThroughTheDayItIsDue() {
        OvenFloor.Ready ready = floor.ready();
        LocalDate today = LocalDate.parse("2026-03-18");
        floor.accuracy(ready.oven(), ready.load(), "0.1", TestClock.START, today);
        assertThat(ovens.byCode(ready.oven()).open()).isTrue();
        clock.pass(Duration.ofDays(1));
        assertThat(ovens.byCode(ready.oven()).locks())
                .containsExactly("The accuracy test of " + ready.load() + " was due on 2026-03-18.");
    }

    @Test
    void anOlderResultThatIsRecordedLateDoesNotOpenTheOven() {
        OvenFloor.Ready ready = floor.ready();
        floor.accuracy(ready.oven(), ready.load(), "7", TestClock.START, null);
        floor.accuracy(ready.oven(), ready.load(), "0", YESTERDAY.minusSeconds(60), LATER);
        assertThat(ovens.byCode(ready.oven()).open()).isFalse();
    }

    @Test
    void aSurveyIsGoodWithinTheUniformityAndAPlaceJustBeyondItLocks() {
        OvenFloor.Ready ready = floor.ready();
        floor.survey(ready.oven(), "-6", "6", TestClock.START, LATER);
        assertThat(ovens.byCode(ready.oven()).open()).isTrue();
        clock.pass(Duration.ofMinutes(1));
        floor.survey(ready.oven(), "-6.001", "2", TestClock.START.plusSeconds(30), null);
        assertThat(ovens.byCode(ready.oven()).open()).isFalse();
    }

    @Test
    void aThermocoupleIsInOneOvenAtATime() {
        OvenFloor.Ready one = floor.ready();
        String other = floor.bare();
        refused(
                () -> register.fit(crew.act(qa), other, one.load(), ThermocoupleRole.LOAD),
                one.load() + " is fitted in " + one.oven());
        refused(
                () -> register.tested(
                        crew.act(qa),
                        other,
                        NewTest.accuracy(
                                one.load(), YESTERDAY, LATER, BigDecimal.ZERO, BigDecimal.ONE, BigDecimal.TEN, "R")),
                "was never in " + other);
    }

    @Test
    void whoKeepsTheRegisterIsAskedAndAnybodyAtWorkBlocks() {
        OvenFloor.Ready ready = floor.ready();
        refused(() -> register.fit(crew.act(worker), ready.oven(), "TC-X", ThermocoupleRole.LOAD), "QA lead");
        register.block(crew.act(worker), ready.oven(), "door sticks");
        assertThat(ovens.byCode(ready.oven()).locks()).containsExactly("It is blocked: door sticks");
        refused(() -> register.unblock(crew.act(worker), ready.oven(), "looked at"), "QA lead");
        register.unblock(crew.act(qa), ready.oven(), "hinge oiled");
        assertThat(ovens.byCode(ready.oven()).open()).isTrue();
    }

    @Test
    void whatCannotBeIsRefusedWithTheFieldThatIsWrong() {
        OvenFloor.Ready ready = floor.ready();
        refused(() -> floor.survey(ready.oven(), "2", "1", YESTERDAY, LATER), "coldest place lies 2 K");
        refused(
                () -> floor.accuracy(ready.oven(), ready.load(), "0", TestClock.START.plusSeconds(60), LATER),
                "not come yet");
        refused(() -> floor.accuracy(ready.oven(), ready.load(), "0", YESTERDAY, null), "next one is due is missing");
        refused(() -> floor.accuracy(ready.oven(), ready.load(), "900", YESTERDAY, LATER), "further off");
    }

    @Test
    void theSameActSentTwiceFitsOnce() {
        String code = floor.bare();
        Act act = crew.act(qa);
        register.fit(act, code, "TC-TWICE" + code, ThermocoupleRole.LOAD);
        register.fit(act, code, "TC-TWICE" + code, ThermocoupleRole.LOAD);
        assertThat(ovens.byCode(code).fitted()).hasSize(1);
    }

    private static void refused(org.assertj.core.api.ThrowableAssert.ThrowingCallable deed, String says) {
        assertThatThrownBy(deed).isInstanceOf(Refusal.class).hasMessageContaining(says);
    }
}
