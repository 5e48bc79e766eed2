package org.trammel.shop.inspection;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.routes.CharacteristicSheet;
import org.trammel.shop.routes.Reduction;
import org.trammel.shop.routes.Rule;
import org.trammel.shop.routes.StepSheet;
import org.trammel.shop.travellers.Bench;
import org.trammel.shop.travellers.CharacteristicState;
import org.trammel.shop.travellers.HoldReason;
import org.trammel.shop.travellers.HoldScope;
import org.trammel.shop.travellers.Holds;
import org.trammel.shop.travellers.Travellers;

/** The loop of setting a frame straight cold: who may, how often, how far, how long, and what it is when that ends. */
class ColdSetTest extends AtTheTable {

    @Autowired
    private ColdSets coldSets;

    @Autowired
    private Holds holds;

    @Autowired
    private Travellers travellers;

    @Autowired
    private Bench bench;

    private long welder;
    private long aligner;
    private String gauge;

    @BeforeEach
    void crew() {
        LocalDate until = LocalDate.of(2026, 12, 31);
        welder = shop.qualified("WELD:AL:141", until, Role.WELDER, Role.ALIGNER);
        aligner = shop.qualified("PENETRANT", until, Role.ALIGNER);
        gauge = gauge("0.020");
    }

    @Test
    void notConformingInsideTheWindowIsNoNonconformanceWhileALoopIsLeft() {
        WholeShop.Frame frame = welded();
        read(aligner, frame, gauge, "0.80");
        assertThat(state(frame)).isEqualTo(CharacteristicState.NOT_CONFORMING);
        assertThat(nonconformances(frame)).isZero();
        assertThat(shop.sheet(frame).holds()).isEmpty();
        assertThat(standsAt(frame)).isEqualTo("100");
        ColdSets.Room room = coldSets.room(characteristic(frame), shop.clock().instant());
        assertThat(room.open()).isTrue();
        assertThat(room.attempts() - room.attemptsUsed()).isEqualTo(2);
    }

    @Test
    void oneMoreTryWithTheSameGaugeAndNothingDoneDoesNotPutTheFrameStraight() {
        WholeShop.Frame frame = welded();
        read(aligner, frame, gauge, "0.80");
        assertThat(refusal(() -> read(aligner, frame, gauge, "0.10")).kind()).isEqualTo(Refusal.Kind.PERSON);
        assertThat(read(aligner, frame, gauge, "0.78").verdict()).isEqualTo(Verdict.NOT_CONFORMING);
        assertThat(read(aligner, frame, gauge("0.010"), "0.10").verdict()).isEqualTo(Verdict.CONFORMING);
    }

    @Test
    void aCoarseGaugeDoesNotMakeItUndecidedNorTheSameOneFinerAfterIt() {
        WholeShop.Frame frame = welded();
        read(aligner, frame, gauge, "0.34");
        assertThat(state(frame)).isEqualTo(CharacteristicState.NOT_CONFORMING);
        String coarse = gauge("0.060");
        assertThat(refusal(() -> read(aligner, frame, coarse, "0.33")).kind()).isEqualTo(Refusal.Kind.PERSON);
        assertThat(read(aligner, frame, coarse, "0.42").verdict()).isEqualTo(Verdict.NOT_CONFORMING);
        assertThat(refusal(() -> read(aligner, frame, gauge, "0.20")).kind()).isEqualTo(Refusal.Kind.PERSON);
        coldSets.push(shop.act(aligner), characteristic(frame), new BigDecimal("0.3"), null);
        assertThat(read(aligner, frame, coarse, "0.10").verdict()).isEqualTo(Verdict.CONFORMING);
    }

    @Test
    void afterAPushEverythingIsReadAgainAndThePenetrantTestIsDoneAgain() {
        WholeShop.Frame frame = welded();
        shop.tickAll(frame, aligner);
        long other = shop.at(frame).characteristics().get(1).characteristicId();
        readings.read(shop.act(aligner), other, input(gauge, false, "0.1"));
        read(aligner, frame, gauge, "0.80");
        bench.untick(shop.act(aligner), shop.at(frame).steps().get(0).stepId(), null);
        assertThat(refusal(() -> shop.tickAll(frame, aligner)).why()).contains("100-1", "cold-set window is open");
        coldSets.push(shop.act(aligner), characteristic(frame), new BigDecimal("0.8"), null);
        assertThat(shop.at(frame).characteristics())
                .allSatisfy(c -> assertThat(c.state()).isEqualTo(CharacteristicState.OPEN));
        assertThat(shop.at(frame).steps())
                .singleElement()
                .satisfies(s -> assertThat(s.ticked()).isFalse());
        read(aligner, frame, gauge, "0.05");
        readings.read(shop.act(aligner), other, input(gauge, false, "0.12"));
        assertThat(standsAt(frame)).as("the penetrant test is outstanding").isEqualTo("100");
        shop.tickAll(frame, aligner);
        assertThat(standsAt(frame)).isEqualTo("110");
    }

    @Test
    void whoWeldedItDoesNotSetItNorDoesWhoIsNoAligner() {
        WholeShop.Frame frame = welded();
        read(aligner, frame, gauge, "0.80");
        assertThat(refused(frame, welder, "0.5").why()).contains("welded");
        assertThat(refused(frame, worker, "0.5").kind()).isEqualTo(Refusal.Kind.PERSON);
        assertThat(pushes(frame)).isZero();
    }

    @Test
    void whoIsNotQualifiedForTheOperationDoesNotSetTheFrame() {
        WholeShop.Frame frame = shop.frame(SmallRoute.of(
                        SmallRoute.op("070").step("weld out").sheet(),
                        SmallRoute.op("100")
                                .qualified("ALIGN")
                                .characteristic(settable("100-1"))
                                .sheet(),
                        SmallRoute.op("110").irreversible().step("age").sheet())
                .window("SET", 24 * 60, "070")
                .sheet());
        shop.tickAll(frame, worker);
        read(worker, frame, gauge, "0.80");
        assertThat(refused(frame, aligner, "0.5").why()).contains("ALIGN");
        assertThat(pushes(frame)).isZero();
        long able = shop.qualified("ALIGN", LocalDate.of(2026, 12, 31), Role.ALIGNER);
        coldSets.push(shop.act(able), characteristic(frame), new BigDecimal("0.5"), null);
        assertThat(pushes(frame)).isEqualTo(1);
    }

    @Test
    void aFrameIsSetOnlyAfterAReadingThatAsksForItAndNotUnderAHold() {
        WholeShop.Frame frame = welded();
        assertThat(refused(frame, aligner, "0.5").why()).contains("to be read");
        read(aligner, frame, gauge, "0.80");
        long hold = holds.place(
                shop.act(qa),
                new Holds.Request(
                        frame.travellerId(),
                        HoldScope.FRAME,
                        null,
                        HoldReason.LOT_TRACE,
                        "rod in doubt",
                        "by hand",
                        Set.of()));
        assertThat(refused(frame, aligner, "0.5").why()).contains("on hold");
        holds.free(shop.act(qa), hold, shop.at(frame).line().operationId(), "the window will not wait");
        coldSets.push(shop.act(aligner), characteristic(frame), new BigDecimal("0.5"), null);
        assertThat(pushes(frame)).isEqualTo(1);
    }

    @Test
    void theAttemptAfterTheLastIsRefusedAndWhatIsStillNotConformingIsANonconformance() {
        WholeShop.Frame frame = welded();
        for (String value : List.of("0.90", "0.70")) {
            read(aligner, frame, gauge, value);
            assertThat(nonconformances(frame)).isZero();
            coldSets.push(shop.act(aligner), characteristic(frame), new BigDecimal("0.2"), null);
        }
        read(aligner, frame, gauge, "0.50");
        assertThat(nonconformances(frame)).isEqualTo(1);
        assertThat(shop.sheet(frame).holds())
                .singleElement()
                .satisfies(hold -> assertThat(hold.reason()).isEqualTo(HoldReason.NONCONFORMANCE));
        assertThat(refused(frame, aligner, "0.2").why()).contains("on hold");
    }

    @Test
    void theAmountOfSetIsLimitedOverAllAttempts() {
        WholeShop.Frame frame = welded();
        read(aligner, frame, gauge, "0.90");
        assertThat(refused(frame, aligner, "0").field()).isEqualTo("amount");
        assertThat(refused(frame, aligner, "1.001").why()).contains("1");
        coldSets.push(shop.act(aligner), characteristic(frame), new BigDecimal("0.7"), null);
        read(aligner, frame, gauge, "0.60");
        assertThat(refused(frame, aligner, "0.31").why()).contains("0.7");
        coldSets.push(shop.act(aligner), characteristic(frame), new BigDecimal("0.3"), null);
        read(aligner, frame, gauge, "0.40");
        assertThat(nonconformances(frame)).isEqualTo(1);
    }

    @Test
    void whenTheWindowClosesWhatWaitsForAColdSetBecomesANonconformance() {
        WholeShop.Frame frame = welded();
        read(aligner, frame, gauge, "0.80");
        shop.clock().pass(Duration.ofHours(24));
        shop.lookAtClocks();
        assertThat(nonconformances(frame))
                .as("the end of the window is inside it")
                .isZero();
        shop.clock().pass(Duration.ofMinutes(5));
        assertThat(refused(frame, aligner, "0.5").why()).contains("closed at");
        shop.lookAtClocks();
        assertThat(nonconformances(frame))
                .as("a push made in time may still arrive")
                .isZero();
        shop.clock().pass(Duration.ofSeconds(1));
        shop.lookAtClocks();
        shop.lookAtClocks();
        assertThat(nonconformances(frame)).as("noticed once").isEqualTo(1);
        assertThat(shop.sheet(frame).holds()).hasSize(1);
        assertThat(travellers.openCalls())
                .anySatisfy(call -> assertThat(call.travellerId()).isEqualTo(frame.travellerId()));
    }

    @Test
    void theWindowClosesOnWhatWaitsAlsoWhileAnEarlierOperationIsOpenAgain() {
        WholeShop.Frame frame = shop.frame(SmallRoute.of(
                        SmallRoute.op("060").step("prepare").sheet(),
                        SmallRoute.op("070").step("weld out").sheet(),
                        SmallRoute.op("100").characteristic(settable("100-1")).sheet(),
                        SmallRoute.op("110").irreversible().step("age").sheet())
                .window("SET", 24 * 60, "070")
                .sheet());
        long prepared = shop.at(frame).steps().get(0).stepId();
        shop.tickAll(frame, worker);
        shop.tickAll(frame, worker);
        read(aligner, frame, gauge, "0.80");
        bench.untick(shop.act(qa), prepared, "not prepared");
        assertThat(standsAt(frame)).isEqualTo("060");
        shop.clock().pass(Duration.ofHours(25));
        shop.lookAtClocks();
        assertThat(nonconformances(frame)).isEqualTo(1);
    }

    @Test
    void notConformingAfterTheWindowIsANonconformanceAtOnce() {
        WholeShop.Frame frame = welded();
        shop.clock().pass(Duration.ofHours(25));
        read(aligner, frame, gauge, "0.80");
        assertThat(nonconformances(frame)).isEqualTo(1);
    }

    /** Aimed at 0.1°, the push moved it by 1.5°: of 1.0° none is left. */
    @Test
    void aPushTakesOfTheAmountWhatItDidAndNotOnlyWhatWasMeant() {
        WholeShop.Frame frame = welded();
        read(aligner, frame, gauge, "0.90");
        coldSets.push(shop.act(aligner), characteristic(frame), new BigDecimal("0.1"), null);
        read(aligner, frame, gauge, "-0.60");
        ColdSets.Room room = coldSets.room(characteristic(frame), shop.clock().instant());
        assertThat(room.amountUsed()).isEqualByComparingTo("1.5");
        assertThat(room.open()).isFalse();
        assertThat(nonconformances(frame)).isEqualTo(1);
    }

    @Test
    void aSlipThatIsCorrectedInsideTheWindowLeadsToTheColdSetAndNotToANonconformance() {
        WholeShop.Frame frame = welded();
        shop.tickAll(frame, aligner);
        ReadingLine slip = read(aligner, frame, gauge, "0.08");
        readings.read(
                shop.act(aligner),
                shop.at(frame).characteristics().get(1).characteristicId(),
                input(gauge, false, "0.1"));
        assertThat(standsAt(frame)).isEqualTo("110");
        shop.clock().pass(Duration.ofMinutes(10));
        correct(qa, slip, gauge, "0.80");
        assertThat(standsAt(frame)).isEqualTo("100");
        assertThat(nonconformances(frame)).isZero();
        coldSets.push(shop.act(aligner), characteristic(frame), new BigDecimal("0.8"), null);
        assertThat(pushes(frame)).isEqualTo(1);
    }

    @Test
    void aPushThatArrivesMoreThanAMomentLateIsRefusedWhateverTheTabletsClockSays() {
        WholeShop.Frame frame = welded();
        Instant closes = shop.clock().instant().plus(Duration.ofHours(24));
        read(aligner, frame, gauge, "0.80");
        shop.clock().setTo(closes.plus(Duration.ofMinutes(5)));
        Act late = new Act(
                java.util.UUID.randomUUID(),
                aligner,
                null,
                shop.clock().instant(),
                closes.minus(Duration.ofSeconds(1)));
        assertThat(refusal(() -> coldSets.push(late, characteristic(frame), new BigDecimal("0.2"), null))
                        .why())
                .contains("closed at");
    }

    @Test
    void thePairThatReadItBeforeItWasBentDoesNotSpeakForItAfter() {
        CharacteristicSheet pair = wanted("100-1", Rule.GUARDED, Reduction.SINGLE, true, "once");
        WholeShop.Frame frame = welded(pair, settable("100-2"));
        read(second, frame, gauge, "0.1");
        read(worker, frame, gauge, "0.11");
        assertThat(state(frame)).isEqualTo(CharacteristicState.CONFORMING);
        long twist = shop.at(frame).characteristics().get(1).characteristicId();
        readings.read(shop.act(aligner), twist, input(gauge, false, "0.80"));
        coldSets.push(shop.act(aligner), twist, new BigDecimal("0.5"), null);
        ReadingLine alone = read(worker, frame, gauge, "0.12");
        correct(worker, alone, gauge, "0.13");
        assertThat(state(frame)).as("one person since it was bent").isEqualTo(CharacteristicState.FIRST_READ);
    }

    @Test
    void aPushIsADistanceAndHasNoSign() {
        WholeShop.Frame frame = welded();
        read(worker, frame, gauge, "0.80");
        long measured = characteristic(frame);
        BigDecimal back = new BigDecimal("-5");
        Refusal refused = refusal(() -> coldSets.push(shop.act(aligner), measured, new BigDecimal("0.2"), back));
        assertThat(refused.field()).isEqualTo("push");
    }

    @Test
    void onceALaterOperationThatCannotBeUndoneIsBegunNothingIsSet() {
        WholeShop.Frame frame = welded();
        shop.tickAll(frame, aligner);
        ReadingLine slip = read(aligner, frame, gauge, "0.08");
        long measured = characteristic(frame);
        readings.read(
                shop.act(aligner),
                shop.at(frame).characteristics().get(1).characteristicId(),
                input(gauge, false, "0.1"));
        assertThat(standsAt(frame)).isEqualTo("110");
        shop.tickAll(frame, worker);
        correct(qa, slip, gauge, "0.80");
        ColdSets.Room room = coldSets.room(measured, shop.clock().instant());
        assertThat(room.open()).as("inside the window of 24 hours").isFalse();
        assertThat(room.why()).contains("110", "comes before it");
        assertThat(nonconformances(frame)).as("no loop is left to wait for").isEqualTo(1);
    }

    private Refusal refused(WholeShop.Frame frame, long by, String amount) {
        return refusal(() -> coldSets.push(shop.act(by), characteristic(frame), new BigDecimal(amount), null));
    }

    /** Welded and at the table: 100-1 may be set twice, by 1.0° in all, within 24 hours of the weld. */
    private WholeShop.Frame welded() {
        return welded(settable("100-1"), wanted("100-2", Rule.GUARDED, Reduction.SINGLE, false, "once"));
    }

    private WholeShop.Frame welded(CharacteristicSheet... read) {
        SmallRoute.Op align = SmallRoute.op("100")
                .step(new StepSheet("penetrant on touched nodes", "", false, false, null, null, "PENETRANT"));
        List.of(read).forEach(align::characteristic);
        WholeShop.Frame frame = shop.frame(SmallRoute.of(
                        SmallRoute.op("070")
                                .qualified("WELD:AL:141")
                                .step("weld out")
                                .sheet(),
                        align.sheet(),
                        SmallRoute.op("110").irreversible().step("age").sheet())
                .window("SET", 24 * 60, "070")
                .sheet());
        shop.tickAll(frame, welder);
        return frame;
    }

    private long nonconformances(WholeShop.Frame frame) {
        return jdbc.sql("select count(*) from nonconformance where serial = ?")
                .param(frame.serial())
                .query(Long.class)
                .single();
    }

    private long pushes(WholeShop.Frame frame) {
        return jdbc.sql("select count(*) from cold_set where traveller_id = ?")
                .param(frame.travellerId())
                .query(Long.class)
                .single();
    }

    @Test
    void aConcessionDoesNotSpeakForAFrameThatWasBentSince() {
        WholeShop.Frame frame = welded();
        shop.tickAll(frame, aligner);
        long conceded = shop.at(frame).characteristics().get(1).characteristicId();
        readings.read(shop.act(aligner), conceded, input(gauge, true, "0.29"));
        jdbc.sql("update characteristic set state = 'CONCESSION', nonconformance = 'NC-0001' where id = ?")
                .param(conceded)
                .update();
        read(aligner, frame, gauge, "0.80");
        coldSets.push(shop.act(aligner), characteristic(frame), new BigDecimal("0.8"), null);
        assertThat(shop.at(frame).characteristics().get(1).state()).isEqualTo(CharacteristicState.OPEN);
    }
}
