package org.trammel.shop.inspection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.LocalDate;
import java.util.Objects;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.transaction.support.TransactionTemplate;
import org.trammel.calc.units.Answer;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.gauges.Failure;
import org.trammel.shop.gauges.GaugeState;
import org.trammel.shop.people.Asking;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.Signed;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.travellers.HoldReason;

/**
 * What was read with a gauge that was found wrong. Limits are 0 ± 1.00 with u 0.060, so g = 1.65 × 0.060 = 0.099 and a
 * value conforms up to 0.901 (worked by hand; the guard band as in VerdictsTest).
 */
class RejudgementTest extends AfterAFailure {

    @Autowired
    private MockMvc mvc;

    @Autowired
    private Crew crew;

    @Autowired
    private RejudgementRepository kept;

    @Autowired
    private Rejudging rejudging;

    @Autowired
    private KnownHeights heights;

    @Autowired
    private TransactionTemplate transaction;

    /** Reads up to 0.18 too high: truly up to 0.18 less. */
    @ParameterizedTest(name = "{0} is {3}")
    @CsvSource({
        "0.75,  0.57,   0.75,  CLEARED",
        "-0.80, -0.98,  -0.80, MEASURE_AGAIN",
        // Exactly on the edge of what conforms, and one stored step beyond it.
        "-0.721, -0.901, -0.721, CLEARED",
        "-0.722, -0.902, -0.722, MEASURE_AGAIN",
        "0.901, 0.721,  0.901, CLEARED",
        // Not conforming, and so it stays; or it may have conformed.
        "1.30,  1.12,   1.30,  CLEARED",
        "1.20,  1.02,   1.20,  MEASURE_AGAIN",
        // Undecided over the whole span, or not.
        "-0.95, -1.13,  -0.95, MEASURE_AGAIN",
    })
    void aReadingIsClearedWhereItsVerdictIsTheSameOverTheWholeSpan(
            String read, BigDecimal least, BigDecimal greatest, ReadingOutcome outcome) {
        String gauge = offsetGauge();
        WholeShop.Frame frame = frame(offset());
        readConfirmed(frame, gauge, read);
        RejudgedLine line = only(failed(gauge, "0.18"));
        assertThat(line.least()).isEqualByComparingTo(least);
        assertThat(line.greatest()).isEqualByComparingTo(greatest);
        assertThat(line.outcome()).isEqualTo(outcome);
    }

    @Test
    void aFrameIsAsBadAsItsWorstReadingAndOnlyThatOneIsHeld() {
        String gauge = offsetGauge();
        WholeShop.Frame fine = frame(offset());
        readConfirmed(fine, gauge, "0.75");
        WholeShop.Frame doubtful = frame(offset());
        readConfirmed(doubtful, gauge, "-0.80");
        RejudgementLine done = failed(gauge, "0.18");
        assertThat(done.state()).isEqualTo(RejudgementState.OPEN);
        assertThat(done.readings()).isEqualTo(2);
        assertThat(done.judged()).isEqualTo(2);
        assertThat(done.waiting()).isEqualTo(1);
        assertThat(rejudgements.frames(done.id(), 0, 9))
                .extracting(RejudgedFrameLine::serial, RejudgedFrameLine::outcome)
                .containsExactly(
                        tuple(doubtful.serial(), FrameOutcome.MEASURE_AGAIN),
                        tuple(fine.serial(), FrameOutcome.CLEARED));
        assertThat(holdsOf(fine, done)).isEmpty();
        assertThat(holdsOf(doubtful, done)).singleElement().satisfies(hold -> {
            assertThat(hold.reason()).isEqualTo(HoldReason.GAUGE_TRACE);
            assertThat(hold.words()).contains(gauge, "080-1");
            assertThat(hold.placedBy()).isEqualTo(Act.SERVICE);
        });
        assertThat(rejudgements.readings(done.id(), 0, 9))
                .extracting(RejudgedLine::outcome)
                .containsExactly(ReadingOutcome.MEASURE_AGAIN, ReadingOutcome.CLEARED);
    }

    @Test
    void aFrameThatLeftIsForItsOwnerUnlessItIsCleared() throws Exception {
        String gauge = offsetGauge();
        WholeShop.Frame gone = shipped(gauge, "-0.80");
        WholeShop.Frame clear = shipped(gauge, "0.10");
        RejudgementLine done = failed(gauge, "0.18");
        assertThat(outcome(done, gone)).isEqualTo(FrameOutcome.CONTACT_OWNER);
        assertThat(outcome(done, clear)).isEqualTo(FrameOutcome.CLEARED);
        assertThat(holdsOf(gone, done)).isEmpty();
        assertThat(refusal(() -> settle(qa, done, gone, FrameResult.MEASURED_AGAIN, "0.1"))
                        .field())
                .isEqualTo("result");
        assertThat(refusal(() -> settle(worker, done, gone, FrameResult.OWNER_CONTACTED, "rang"))
                        .kind())
                .isEqualTo(Refusal.Kind.PERSON);
        settle(qa, done, gone, FrameResult.OWNER_CONTACTED, "stops riding");
        String page = "/rejudgements/" + done.id();
        assertThat(new Asking(mvc, Signed.on(crew.byId(qa))).page(page)).contains("stops riding");
        assertThat(new Asking(mvc, Signed.on(crew.byId(shop.hire(Role.AUDITOR)))).page(page))
                .contains("owner contacted: its words are kept from you")
                .doesNotContain("stops riding");
        assertThat(rejudgements.close(shop.act(qa), done.id(), null).state()).isEqualTo(RejudgementState.CLOSED);
    }

    @Test
    void onlyWhatWasReadWithItSinceItWasRightIsJudgedAgain() {
        String gauge = offsetGauge();
        WholeShop.Frame before = frame(offset());
        readConfirmed(before, gauge, "-0.80");
        WholeShop.Frame other = frame(offset());
        readConfirmed(other, offsetGauge(), "-0.80");
        shop.clock().pass(Duration.ofDays(2));
        register.calibrated(shop.act(qa), gauge, LocalDate.of(2026, 3, 19), NEXT_YEAR, "C-2", null, "as it should be");
        WholeShop.Frame after = frame(offset());
        readConfirmed(after, gauge, "-0.80");
        RejudgementLine done = failed(gauge, LocalDate.of(2026, 3, 20), "0.18", "°");
        assertThat(done.lastGoodOn()).isEqualTo(LocalDate.of(2026, 3, 19));
        assertThat(rejudgements.frames(done.id(), 0, 9))
                .extracting(RejudgedFrameLine::serial)
                .containsExactly(after.serial());
    }

    @Test
    void whatASetUpReducedIsClearedOnlyByWhoKnowsItsHeights() {
        String part = offsetGauge();
        String setup = setUpWith(part);
        WholeShop.Frame unknown = frame(offset());
        readConfirmed(unknown, setup, "0.10");
        WholeShop.Frame cancels = frame(offset());
        ReadingLine known = readConfirmed(cancels, setup, "0.10");
        heights.know(known.readingId(), Answer.of(new TrueSpan(new BigDecimal("0.066"), new BigDecimal("0.134"))));
        WholeShop.Frame broken = frame(offset());
        ReadingLine without = readConfirmed(broken, setup, "0.10");
        heights.know(without.readingId(), Answer.none("heights", "Two heights are missing."));
        RejudgementLine done = failed(part, "0.18");
        assertThat(outcome(done, unknown)).isEqualTo(FrameOutcome.MEASURE_AGAIN);
        assertThat(outcome(done, cancels)).isEqualTo(FrameOutcome.CLEARED);
        assertThat(outcome(done, broken)).isEqualTo(FrameOutcome.MEASURE_AGAIN);
        assertThat(rejudgements.readings(done.id(), 0, 9).stream()
                        .filter(line -> line.readingId() == known.readingId()))
                .singleElement()
                .satisfies(line -> assertThat(line.least()).isEqualByComparingTo("0.066"));
    }

    /** Within 20 mm one error, which cancels; 200 mm apart each its own, 0.18 either way. */
    @ParameterizedTest
    @CsvSource({"300, 310, 10, 10, 10, CLEARED", "100, 300, 200, 199.82, 200.18, MEASURE_AGAIN"})
    void anErrorThatTwoHeightsShareFallsOutOfTheirDifference(
            String low,
            String high,
            BigDecimal nominal,
            BigDecimal least,
            BigDecimal greatest,
            ReadingOutcome outcome) {
        String gauge = shop.gauge("TWIST", "mm", "0.010", NEXT_YEAR);
        WholeShop.Frame frame = frame(difference(nominal));
        readings.read(shop.act(worker), characteristic(frame), input(gauge, true, low, high));
        RejudgedLine line = only(failed(gauge, FOUND, "0.18", "mm"));
        assertThat(line.least()).isEqualByComparingTo(least);
        assertThat(line.greatest()).isEqualByComparingTo(greatest);
        assertThat(line.outcome()).isEqualTo(outcome);
    }

    /** What was computed from heights is not plain, whatever gauge stands beside it. */
    @Test
    void aReadingReducedFromHeightsIsNotTakenForAPlainOne() {
        String gauge = offsetGauge();
        WholeShop.Frame frame = frame(offset());
        ReadingLine read = readConfirmed(frame, gauge, "0.10");
        heights.know(read.readingId(), Answer.none("heights", "Two heights are missing."));
        assertThat(only(failed(gauge, "0.18")).least()).isNull();
    }

    @Test
    void anErrorNobodyKnowsOrInAnotherUnitClearsNothing() {
        String gauge = offsetGauge();
        WholeShop.Frame frame = frame(offset());
        readConfirmed(frame, gauge, "0.00");
        assertThat(outcome(failed(gauge, null), frame)).isEqualTo(FrameOutcome.MEASURE_AGAIN);
        String other = offsetGauge();
        WholeShop.Frame second = frame(offset());
        readConfirmed(second, other, "0.00");
        assertThat(outcome(failed(other, FOUND, "0.0001", "mm"), second)).isEqualTo(FrameOutcome.MEASURE_AGAIN);
    }

    @Test
    void aReadingThatAnotherTookThePlaceOfHoldsNothing() {
        String gauge = offsetGauge();
        WholeShop.Frame frame = frame(offset());
        ReadingLine old = readConfirmed(frame, gauge, "-0.80");
        correct(worker, old, offsetGauge(), "-0.70");
        RejudgementLine done = failed(gauge, "0.18");
        assertThat(outcome(done, frame)).isEqualTo(FrameOutcome.CLEARED);
        assertThat(only(done)).satisfies(line -> {
            assertThat(line.outcome()).isEqualTo(ReadingOutcome.MEASURE_AGAIN);
            assertThat(line.inDoubt()).isFalse();
        });
    }

    @Test
    void ofTwoPeoplesReadingsTheFirstCountsAsMuchAsTheSecond() {
        String gauge = offsetGauge();
        WholeShop.Frame frame = frame(offset(true));
        read(worker, frame, gauge, "-0.80");
        read(second, frame, offsetGauge(), "-0.79");
        RejudgementLine done = failed(gauge, "0.18");
        assertThat(outcome(done, frame)).isEqualTo(FrameOutcome.MEASURE_AGAIN);
        assertThat(refusal(() -> settle(qa, done, frame)).why()).contains("Nothing was read yet in the place of 080-1");
    }

    /** A portion that a kill cut off leaves nothing behind; done again, and once more, it is done once. */
    @Test
    void aPortionThatWasCutOffIsDoneOnceWhenItIsGoneOnWith() {
        String gauge = offsetGauge();
        WholeShop.Frame frame = frame(offset());
        readConfirmed(frame, gauge, "-0.80");
        long id = Objects.requireNonNull(transaction.execute(t -> {
            register.fail(shop.act(qa), gauge, new Failure(FOUND, new BigDecimal("0.18"), "°", null, "high"));
            return kept.open().get(kept.open().size() - 1).id();
        }));
        transaction.executeWithoutResult(t -> {
            rejudging.goOn(id);
            t.setRollbackOnly();
        });
        rejudgements.judgeToTheEnd();
        rejudging.goOn(id);
        assertThat(rejudgements.one(id).judged()).isEqualTo(1);
        assertThat(rejudgements.readings(id, 0, 9)).hasSize(1);
        assertThat(holdsOf(frame, rejudgements.one(id))).hasSize(1);
    }

    @Test
    void whatARetiredGaugeReadWhileItWasInUseIsJudgedAgain() {
        String gauge = offsetGauge();
        WholeShop.Frame frame = frame(offset());
        readConfirmed(frame, gauge, "-0.80");
        register.retire(shop.act(qa), gauge, "worn");
        RejudgementLine done = failed(gauge, "0.18");
        assertThat(outcome(done, frame)).isEqualTo(FrameOutcome.MEASURE_AGAIN);
        assertThat(holdsOf(frame, done)).hasSize(1);
    }

    /** The older of two cannot be gone on with: the younger is judged, and the older once it can be. */
    @Test
    void oneThatCannotBeJudgedKeepsNoOtherWaiting() {
        String broken = offsetGauge();
        long reading = readConfirmed(frame(offset()), broken, "0.10").readingId();
        String sound = offsetGauge();
        readConfirmed(frame(offset()), sound, "0.10");
        heights.breakAt(reading);
        try {
            register.fail(shop.act(qa), broken, new Failure(FOUND, new BigDecimal("0.18"), "°", null, "high"));
            register.fail(shop.act(qa), sound, new Failure(FOUND, new BigDecimal("0.18"), "°", null, "high"));
            assertThatThrownBy(rejudgements::judgeToTheEnd).isInstanceOf(IllegalStateException.class);
            assertThat(of(sound).state()).isEqualTo(RejudgementState.OPEN);
            assertThat(of(broken).state()).isEqualTo(RejudgementState.JUDGING);
        } finally {
            heights.mend(reading);
        }
        rejudgements.judgeToTheEnd();
        assertThat(of(broken).state()).isEqualTo(RejudgementState.OPEN);
    }

    /** Two figures are on record where one is reduced; that nobody can say what it was holds the frame, and nothing else. */
    @Test
    void aReadingWhoseFiguresCannotBeReducedIsToBeMeasuredAgain() {
        String gauge = shop.gauge("TWIST", "mm", "0.010", NEXT_YEAR);
        WholeShop.Frame frame = frame(difference(new BigDecimal("10")));
        long measured = characteristic(frame);
        readings.read(shop.act(worker), measured, input(gauge, true, "300", "310"));
        jdbc.sql("update characteristic set reduction = 'SINGLE' where id = ?")
                .param(measured)
                .update();
        RejudgedLine line = only(failed(gauge, FOUND, "0.18", "mm"));
        assertThat(line.least()).isNull();
        assertThat(line.outcome()).isEqualTo(ReadingOutcome.MEASURE_AGAIN);
    }

    private RejudgementLine of(String gauge) {
        return rejudgements.page(Long.MAX_VALUE, 200).stream()
                .filter(line -> line.gauge().equals(gauge))
                .findFirst()
                .orElseThrow();
    }

    /** An id that follows from numbers everybody sees can be used up before the portion is kept. */
    @Test
    void nobodyCanUseUpTheActIdOfAPortionBeforehand() {
        String gauge = offsetGauge();
        WholeShop.Frame frame = frame(offset());
        readConfirmed(frame, gauge, "-0.80");
        long newest = jdbc.sql("select coalesce(max(id), 0) from rejudgement")
                .query(Long.class)
                .single();
        for (long id = newest + 1; id < newest + 4; id++) {
            UUID guessed = UUID.nameUUIDFromBytes(("rejudgement " + id + " after 0").getBytes(StandardCharsets.UTF_8));
            String code = offsetGauge();
            Act taken = new Act(guessed, worker, null, shop.clock().instant(), null);
            assertThat(register.block(taken, code, "used up").state()).isEqualTo(GaugeState.BLOCKED);
        }
        RejudgementLine done = failed(gauge, "0.18");
        assertThat(done.id()).isBetween(newest + 1, newest + 3);
        assertThat(done.state()).isEqualTo(RejudgementState.OPEN);
        assertThat(outcome(done, frame)).isEqualTo(FrameOutcome.MEASURE_AGAIN);
        assertThat(jdbc.sql("select act_id from log_entry where kind = 'judge readings again' and subject like ?")
                        .param("rejudgement:" + done.id() + " %")
                        .query(UUID.class)
                        .list())
                .isNotEmpty()
                .allSatisfy(id -> assertThat(id.version()).as("drawn at random").isEqualTo(4));
    }

    @Test
    void aGaugeNothingWasReadWithLeavesNothingToDo() {
        RejudgementLine done = failed(offsetGauge(), "0.18");
        assertThat(done.readings()).isZero();
        assertThat(done.state()).isEqualTo(RejudgementState.CLOSED);
        assertThat(done.closedWords()).contains("Nothing was read with it");
        assertThat(rejudgements.open()).extracting(RejudgementLine::id).doesNotContain(done.id());
        assertThat(refusal(() -> rejudgements.close(shop.act(qa), done.id(), null))
                        .why())
                .contains("closed");
        assertThat(refusal(() -> rejudgements.one(Long.MAX_VALUE)).kind()).isEqualTo(Refusal.Kind.MISSING);
    }
}
