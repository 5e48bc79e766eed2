package org.trammel.shop.inspection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.trammel.shop.floor.SmallRoute.op;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.shop.floor.Floor;
import org.trammel.shop.floor.FloorTest;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.routes.Signer;
import org.trammel.shop.travellers.Bench;
import org.trammel.shop.travellers.CharacteristicState;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.HoldReason;
import org.trammel.shop.travellers.OperationState;
import org.trammel.shop.travellers.Signing;
import org.trammel.shop.travellers.Travellers;

/** A mistyped reading is put right by a record of its own, and the gate it opened is looked at again. */
@FloorTest
class CorrectedReadingTest {

    @Autowired
    private Floor floor;

    @Autowired
    private Readings readings;

    @Autowired
    private Travellers travellers;

    @Autowired
    private Bench bench;

    @Autowired
    private Signing signing;

    private long worker;
    private long qa;
    private String gauge;

    @BeforeEach
    void aCrew() {
        floor.open();
        worker = floor.hire(Role.STATION_WORKER);
        qa = floor.hire(Role.QA_LEAD);
        gauge = floor.gauge("CALLIPER", "mm", null);
    }

    @Test
    void whoReadItCorrectsItAfterItsOperationIsDoneAndTheFirstStaysOnRecord() {
        Floor.Frame frame = read("0.12");
        ReadingLine first = only(frame);
        ReadingLine second = correct(worker, first, "0.21");
        assertThat(second.verdict()).isEqualTo(Verdict.CONFORMING);
        assertThat(operation(first).line().state()).isEqualTo(OperationState.DONE);
        List<ReadingLine> all = readings.of(List.of(first.characteristicId()));
        assertThat(all).extracting(ReadingLine::replaced).containsExactly(true, false);
        assertThat(all.get(0).value()).isEqualByComparingTo("0.12");
        assertThat(all.get(1).reason()).isEqualTo("Digits swapped.");
    }

    @Test
    void aCorrectionThatDoesNotConformOpensTheGateAgainAndHoldsTheFrame() {
        Floor.Frame frame = read("0.12");
        ReadingLine corrected = correct(worker, only(frame), "1.2");
        assertThat(corrected.verdict()).isEqualTo(Verdict.NOT_CONFORMING);
        FrameSheet sheet = floor.sheet(frame);
        assertThat(sheet.at().line().code()).isEqualTo("010");
        assertThat(sheet.at().line().state()).isEqualTo(OperationState.IN_WORK);
        assertThat(sheet.holds()).extracting(FrameSheet.HoldLine::reason).containsExactly(HoldReason.NONCONFORMANCE);
    }

    @Test
    void somebodyElseDoesNotCorrectWhatIsDone() {
        ReadingLine first = only(read("0.12"));
        long other = floor.hire(Role.STATION_WORKER);
        assertThatThrownBy(() -> correct(other, first, "0.2"))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("is not open to");
        assertThat(correct(qa, first, "0.2").verdict()).isEqualTo(Verdict.CONFORMING);
    }

    @Test
    void onceALaterOperationHasBegunOnlyTheQaLeadCorrectsAndTheLaterOneWaits() {
        Floor.Frame frame = read("0.12");
        ReadingLine first = only(frame);
        List<FrameSheet.StepLine> steps = floor.at(frame).steps();
        bench.tick(floor.act(worker), List.of(steps.get(0).stepId()), null, null);
        assertThatThrownBy(() -> correct(worker, first, "1.2"))
                .isInstanceOf(Refusal.class)
                .satisfies(r -> assertThat(((Refusal) r).why()).contains("a later operation has begun"));
        correct(qa, first, "1.2");
        assertThat(floor.at(frame).line().code()).isEqualTo("010");
        assertThatThrownBy(
                        () -> bench.tick(floor.act(worker), List.of(steps.get(1).stepId()), null, null))
                .isInstanceOf(Refusal.class);
    }

    @Test
    void onceItsGateIsSignedOnlyTheQaLeadCorrects() {
        Floor.Frame frame = floor.frame(SmallRoute.of(
                        op("010")
                                .step("a")
                                .plain("010-1", "0.5")
                                .hold(Signer.SECOND, Signer.QA)
                                .sheet(),
                        op("020").step("b").sheet())
                .sheet());
        floor.tickAll(frame, worker);
        ReadingLine first = floor.read(worker, characteristic(frame), gauge, "0.12");
        long second = floor.hire(Role.STATION_WORKER);
        signing.sign(floor.act(second), floor.at(frame).line().operationId(), second, Signer.SECOND);
        assertThat(floor.at(frame).line().state()).isEqualTo(OperationState.AT_POINT);
        assertThatThrownBy(() -> correct(worker, first, "0.2"))
                .isInstanceOf(Refusal.class)
                .satisfies(r -> assertThat(((Refusal) r).why()).contains("is signed"));
        assertThat(correct(qa, first, "0.2").verdict()).isEqualTo(Verdict.CONFORMING);
    }

    @Test
    void aReadingThatWasTakenAnewSinceIsNotCorrected() {
        Floor.Frame frame = floor.frame(
                SmallRoute.of(op("010").step("a").plain("010-1", "0.5").sheet()).sheet());
        long characteristic = characteristic(frame);
        ReadingLine first = floor.read(worker, characteristic, gauge, "1.2");
        floor.read(worker, characteristic, gauge, "1.3");
        assertThatThrownBy(() -> correct(worker, first, "0.2"))
                .isInstanceOf(Refusal.class)
                .satisfies(r -> assertThat(((Refusal) r).why()).contains("read again after it"));
        assertThat(floor.at(frame).characteristics().get(0).state()).isEqualTo(CharacteristicState.NOT_CONFORMING);
    }

    @Test
    void withoutAReasonNothingIsCorrected() {
        ReadingLine first = only(read("0.12"));
        assertThatThrownBy(() -> readings.correct(floor.act(worker), first.readingId(), input("0.2"), " "))
                .isInstanceOf(Refusal.class)
                .satisfies(r -> assertThat(((Refusal) r).field()).isEqualTo("reason"));
        assertThat(readings.of(List.of(first.characteristicId()))).hasSize(1);
    }

    /** A frame whose first operation is done, with one reading, and whose second waits. */
    private Floor.Frame read(String value) {
        Floor.Frame frame = floor.frame(SmallRoute.of(
                        op("010").step("a").plain("010-1", "0.5").sheet(),
                        op("020").step("b").step("c").sheet())
                .sheet());
        floor.tickAll(frame, worker);
        floor.read(worker, characteristic(frame), gauge, value);
        assertThat(floor.at(frame).line().code()).isEqualTo("020");
        return frame;
    }

    private long characteristic(Floor.Frame frame) {
        return floor.at(frame).characteristics().get(0).characteristicId();
    }

    private ReadingLine only(Floor.Frame frame) {
        return readings.ofTravellers(List.of(frame.travellerId())).get(0);
    }

    private FrameSheet.OperationSheetOfFrame operation(ReadingLine reading) {
        return travellers.operation(reading.operationId());
    }

    private ReadingLine correct(long by, ReadingLine reading, String value) {
        return readings.correct(floor.act(by), reading.readingId(), input(value), "Digits swapped.");
    }

    private Readings.Input input(String value) {
        return new Readings.Input(List.of(new BigDecimal(value)), gauge, null, true);
    }
}
