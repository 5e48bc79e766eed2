package org.trammel.shop.inspection;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.gauges.Failure;
import org.trammel.shop.gauges.GaugeRange;
import org.trammel.shop.gauges.GaugeRegister;
import org.trammel.shop.gauges.NewGauge;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.routes.Reduction;
import org.trammel.shop.routes.Rule;
import org.trammel.shop.travellers.CharacteristicState;

/** What is asked before a reading is taken, who may take and correct it, and with which gauge. */
class TakingTest extends AtTheTable {

    @Autowired
    private GaugeRegister register;

    @Test
    void aValueMoreThanFiveTolerancesOffIsAskedAboutBeforeItIsTaken() {
        WholeShop.Frame frame = frame(wanted(Rule.PLAIN, Reduction.SINGLE, "once"));
        String gauge = gauge(null);
        Refusal asked = refusal(() -> read(worker, frame, gauge, "1.51"));
        assertThat(asked.kind()).isEqualTo(Refusal.Kind.ASK);
        assertThat(asked.field()).isEqualTo("value");
        assertThat(readingsOf(frame)).isZero();
        assertThat(state(frame)).isEqualTo(CharacteristicState.OPEN);
        // Five tolerances of 0.30 exactly are no slip of a unit yet.
        read(worker, frame, gauge, "1.50");
        ReadingLine said = readings.read(shop.act(worker), characteristic(frame), input(gauge, true, "1.51"));
        assertThat(said.verdict()).isEqualTo(Verdict.NOT_CONFORMING);
    }

    @Test
    void aQuestionAboutABlindReadingDoesNotTellWhatTheDrawingSays() {
        WholeShop.Frame frame = frame(wanted("080-1", Rule.PLAIN, Reduction.SINGLE, true, "once"));
        Refusal asked = refusal(() -> read(worker, frame, gauge(null), "17.5"));
        assertThat(asked.what() + asked.why() + asked.instead())
                .contains("17,5")
                .doesNotContain("0,3")
                .doesNotContain("0.3");
    }

    @Test
    void theSameValueThreeTimesRunningIsAskedAboutAndMarkedWhenItIsSaidAgain() {
        WholeShop.Frame points = frame(wanted(Rule.PLAIN, Reduction.MEAN, "low", "middle", "high"));
        String gauge = gauge(null);
        assertThat(refusal(() -> read(worker, points, gauge, "0.1", "0.1", "0.1"))
                        .why())
                .contains("three times");
        assertThat(readings.read(shop.act(worker), characteristic(points), input(gauge, true, "0.1", "0.1", "0.1"))
                        .alike())
                .isTrue();
        WholeShop.Frame one = frame(wanted("080-1", Rule.GUARDED, Reduction.SINGLE, false, "once"));
        read(worker, one, gauge("0.020"), "0.290");
        read(worker, one, gauge("0.019"), "0.290");
        String third = gauge("0.018");
        assertThat(refusal(() -> read(worker, one, third, "0.290")).kind()).isEqualTo(Refusal.Kind.ASK);
    }

    @Test
    void aCharacteristicReadByTwoPeopleIsConformingOnlyByTheSecond() {
        WholeShop.Frame frame = frame(wanted("080-1", Rule.PLAIN, Reduction.SINGLE, true, "once"));
        String gauge = gauge(null);
        read(worker, frame, gauge, "0.1");
        assertThat(state(frame)).isEqualTo(CharacteristicState.FIRST_READ);
        assertThat(refusal(() -> read(worker, frame, gauge, "0.1")).why()).contains("you read it first");
        assertThat(standsAt(frame)).isEqualTo("080");
        read(second, frame, gauge, "0.12");
        assertThat(standsAt(frame)).isEqualTo("200");
    }

    @Test
    void oneOfAPairThatDoesNotConformIsNotConforming() {
        WholeShop.Frame frame = frame(wanted("080-1", Rule.PLAIN, Reduction.SINGLE, true, "once"));
        String gauge = gauge(null);
        ReadingLine first = read(worker, frame, gauge, "0.1");
        read(second, frame, gauge, "0.4");
        assertThat(state(frame)).isEqualTo(CharacteristicState.NOT_CONFORMING);
        assertThat(refusal(() -> correct(worker, first, gauge, "0.2")).why()).contains("read again after it");
        assertThat(state(frame)).isEqualTo(CharacteristicState.NOT_CONFORMING);
    }

    @Test
    void aCorrectionJudgesOnlyInThePlaceOfTheNewestReading() {
        WholeShop.Frame frame = frame(wanted(Rule.GUARDED, Reduction.SINGLE, "once"));
        String coarse = gauge("0.020");
        ReadingLine old = read(worker, frame, coarse, "0.290");
        ReadingLine newest = read(second, frame, gauge("0.019"), "0.310");
        Refusal refused = refusal(() -> correct(worker, old, coarse, "0.1"));
        assertThat(refused.instead()).contains("newest");
        assertThat(state(frame)).isEqualTo(CharacteristicState.UNDECIDED);
        ReadingLine corrected = correct(second, newest, coarse, "0.31");
        assertThat(corrected.replacesId()).isEqualTo(newest.readingId());
        assertThat(readings.of(List.of(characteristic(frame))))
                .extracting(ReadingLine::replaced)
                .containsExactly(false, true, false);
        assertThat(refusal(() -> correct(second, newest, coarse, "0.1")).what()).contains("not corrected again");
    }

    @Test
    void eitherOfAPairIsCorrectedAndTheOtherStillStands() {
        WholeShop.Frame frame = frame(
                wanted("080-1", Rule.PLAIN, Reduction.SINGLE, true, "once"),
                wanted("080-2", Rule.PLAIN, Reduction.SINGLE, false, "once"));
        String gauge = gauge(null);
        ReadingLine first = read(worker, frame, gauge, "0.1");
        read(second, frame, gauge, "0.12");
        correct(worker, first, gauge, "0.11");
        assertThat(state(frame)).isEqualTo(CharacteristicState.CONFORMING);
        // Corrected by the other one of the pair, both readings are of one person.
        ReadingLine newest = readings.of(List.of(characteristic(frame))).get(2);
        correct(second, newest, gauge, "0.11");
        assertThat(state(frame)).isEqualTo(CharacteristicState.FIRST_READ);
    }

    @Test
    void anAuditorAndWhoLeftReadNothingAndTheRouteSaysWhoElseMay() {
        WholeShop.Frame frame = frame(wanted(Rule.PLAIN, Reduction.SINGLE, "once"));
        String gauge = gauge(null);
        long auditor = shop.hire(Role.AUDITOR);
        assertThat(refusal(() -> read(auditor, frame, gauge, "0.1")).kind()).isEqualTo(Refusal.Kind.PERSON);
        long gone = shop.hire(Role.STATION_WORKER);
        jdbc.sql("update person set left_on = date '2026-03-01' where id = ?")
                .param(gone)
                .update();
        assertThat(refusal(() -> read(gone, frame, gauge, "0.1")).kind()).isEqualTo(Refusal.Kind.PERSON);
        assertThat(readingsOf(frame)).isZero();
    }

    @Test
    void aGaugeThatMayNotBeUsedIsRefusedWithWhatToDo() {
        WholeShop.Frame frame = frame(wanted(Rule.GUARDED, Reduction.SINGLE, "once"));
        String due = shop.gauge("TWIST", "°", "0.020", LocalDate.of(2026, 3, 17));
        assertThat(refusal(() -> read(worker, frame, due, "0.1")).why()).contains("2026-03-17");
        String failed = gauge("0.020");
        register.fail(
                shop.act(qa),
                failed,
                new Failure(LocalDate.of(2026, 3, 18), new BigDecimal("0.1"), "°", null, "dropped"));
        assertThat(refusal(() -> read(worker, frame, failed, "0.1")).why()).contains("failed");
        String blocked = gauge("0.020");
        register.block(shop.act(qa), blocked, "lent out");
        assertThat(refusal(() -> read(worker, frame, blocked, "0.1")).why()).contains("blocked");
        String calliper = shop.gauge("CALLIPER", "mm", "0.010", NEXT_YEAR);
        assertThat(refusal(() -> read(worker, frame, calliper, "0.1")).why()).contains("calliper");
        assertThat(refusal(() -> read(worker, frame, "NO-SUCH", "0.1")).why()).contains("NO-SUCH");
        assertThat(refusal(() -> readings.read(shop.act(worker), characteristic(frame), input(narrow(), true, "0.1")))
                        .why())
                .contains("measures");
        assertThat(refusal(() -> read(worker, frame, uncalibrated(), "0.1")).why())
                .contains("never calibrated");
        assertThat(readingsOf(frame)).isZero();
        assertThat(state(frame)).isEqualTo(CharacteristicState.OPEN);
    }

    /** The shop's day ends at midnight in the shop's zone, 23:00 UTC in its winter. */
    @Test
    void aGaugeIsGoodThroughTheDayItIsDueAndNotAfterMidnight() {
        WholeShop.Frame frame = frame(wanted(Rule.GUARDED, Reduction.SINGLE, "once"));
        String due = shop.gauge("TWIST", "°", "0.020", LocalDate.of(2026, 3, 18));
        shop.clock().setTo(Instant.parse("2026-03-18T22:59:59Z"));
        read(worker, frame, due, "0.290");
        shop.clock().setTo(Instant.parse("2026-03-18T23:00:00Z"));
        assertThat(refusal(() -> read(worker, frame, due, "0.291")).why()).contains("due on 2026-03-18");
    }

    /** Reads from 1 to 2 degrees only. */
    private String narrow() {
        String code = registered("N", "1", "2");
        register.calibrated(shop.act(qa), code, LocalDate.of(2026, 1, 1), NEXT_YEAR, "C-1", null, "as it should be");
        return code;
    }

    private String uncalibrated() {
        return registered("U", "-2", "2");
    }

    private String registered(String beginning, String lowest, String highest) {
        String code = beginning
                + java.util.UUID.randomUUID().toString().substring(0, 8).toUpperCase();
        register.register(
                shop.act(qa),
                code,
                new NewGauge(
                        "gauge of a test",
                        null,
                        "bench",
                        false,
                        List.of(new GaugeRange(
                                "TWIST",
                                "°",
                                new BigDecimal(lowest),
                                new BigDecimal(highest),
                                new BigDecimal("0.001"),
                                new BigDecimal("0.020"),
                                null,
                                "from memory"))));
        return code;
    }
}
