package org.trammel.shop.cuts;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.trammel.shop.ShopTest;
import org.trammel.shop.designs.CutTubes;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.inspection.Readings;
import org.trammel.shop.materials.WaitingForTheSaw;
import org.trammel.shop.nonconformance.Decision;
import org.trammel.shop.nonconformance.NonconformanceLine;
import org.trammel.shop.people.Role;
import org.trammel.shop.routes.Signer;
import org.trammel.shop.travellers.CharacteristicState;
import org.trammel.shop.travellers.Evidence;

/** What keeps the gate of the saw shut although it once looked open. */
@ShopTest(properties = "trammel.test.database=cuts")
class CutHeldTest extends AtTheSaw {

    @Test
    void aConcessionReachesNoOtherTube() {
        sawn.saw("54");
        WholeShop.Frame frame = frame();
        long operation = cutting(frame);
        Cuts.Sheet sheet = cuts.of(operation);
        Map<BigDecimal, String> drawer = sawn.drawer(sheet.pieces());
        cuts.record(shop.act(worker), operation, sawn.entry(piece(sheet, "TOP_TUBE"), drawer, "0.25"));
        conceded(frame);
        assertThat(state(frame, "030-6")).isEqualTo(CharacteristicState.CONCESSION);
        cuts.record(shop.act(worker), operation, sawn.entry(piece(sheet, "SEAT_TUBE"), drawer, "0.10"));
        assertThat(state(frame, "030-6"))
                .as("a tube that conforms needs none")
                .isEqualTo(CharacteristicState.CONCESSION);
        cuts.record(shop.act(worker), operation, sawn.entry(piece(sheet, "DOWN_TUBE"), drawer, "0.90"));
        assertThat(state(frame, "030-6")).isEqualTo(CharacteristicState.NOT_CONFORMING);
        rest(operation, drawer, "TOP_TUBE", "SEAT_TUBE", "DOWN_TUBE");
        assertThat(shop.at(frame).line().code()).isEqualTo("030");
        assertThat(deciding.of(frame.serial()))
                .filteredOn(one -> one.decision() == null)
                .hasSize(1);
        conceded(frame);
        assertThat(shop.at(frame).line().code()).isEqualTo("999");
        sawn.retireAll();
    }

    @Test
    void aConcessionReachesNoWorseFigureAndNoTubeThatTookThePlace() {
        sawn.saw("54");
        WholeShop.Frame frame = frame();
        WaitingForTheSaw.issued(beans, shop, frame, "TOP_TUBE");
        long operation = cutting(frame);
        Cuts.Sheet sheet = cuts.of(operation);
        Map<BigDecimal, String> drawer = sawn.drawer(sheet.pieces());
        cuts.record(shop.act(worker), operation, sawn.entry(piece(sheet, "TOP_TUBE"), drawer, "0.25"));
        conceded(frame);
        cuts.record(shop.act(worker), operation, sawn.entry(piece(sheet, "TOP_TUBE"), drawer, "0.20"));
        assertThat(state(frame, "030-6")).as("no worse").isEqualTo(CharacteristicState.CONCESSION);
        cuts.record(shop.act(worker), operation, sawn.entry(piece(sheet, "TOP_TUBE"), drawer, "0.30"));
        assertThat(state(frame, "030-6")).as("worse").isEqualTo(CharacteristicState.NOT_CONFORMING);
        conceded(frame);
        shop.clock().pass(Duration.ofMinutes(5));
        WaitingForTheSaw.issued(beans, shop, frame, "TOP_TUBE");
        cuts.record(shop.act(worker), operation, sawn.entry(piece(sheet, "TOP_TUBE"), drawer, "0.20"));
        assertThat(state(frame, "030-6")).as("another tube").isEqualTo(CharacteristicState.NOT_CONFORMING);
        cuts.record(shop.act(worker), operation, sawn.entry(piece(sheet, "TOP_TUBE"), drawer, "0.10"));
        rest(operation, drawer, "TOP_TUBE");
        assertThat(state(frame, "030-6")).isEqualTo(CharacteristicState.CONFORMING);
        assertThat(shop.at(frame).line().code())
                .as("what was found of it is not decided")
                .isEqualTo("030");
        sawn.retireAll();
    }

    @Test
    void aTubeThatTookAPlaceLaterIsMeasuredThereBeforeAnyGateOpens() {
        sawn.saw("54");
        WholeShop.Frame frame = later();
        WaitingForTheSaw.issued(beans, shop, frame, "DOWN_TUBE");
        long sawing = cutting(frame);
        Map<BigDecimal, String> drawer = sawn.drawer(cuts.of(sawing).pieces());
        rest(sawing, drawer);
        shop.clock().pass(Duration.ofMinutes(5));
        assertThat(shop.at(frame).line().code()).isEqualTo("040");
        refused(() -> cuts.of(shop.at(frame).line().operationId()), "There is no sheet of cuts.");
        WaitingForTheSaw.issued(beans, shop, frame, "DOWN_TUBE");
        long forming = cutting(frame);
        assertThat(shop.at(frame).line().code()).isEqualTo("040");
        assertThat(cuts.of(forming).pieces()).extracting(CutTubes.Piece::code).containsExactly("DOWN_TUBE");
        rest(forming, drawer);
        assertThat(shop.at(frame).line().code()).isEqualTo("999");
        assertThat(cuts.of(forming).recorded()).containsOnlyKeys("DOWN_TUBE");
        sawn.retireAll();
    }

    @Test
    void aTubeThatIsIssuedForALoopIsMeasuredAtTheSawAndNotBefore() {
        sawn.saw("54");
        WholeShop.Frame frame = WaitingForTheSaw.frame(
                shop,
                jdbc,
                SmallRoute.of(
                        SmallRoute.op("020").step("issue").sheet(),
                        SmallRoute.op("030")
                                .step("cut")
                                .characteristic(asked("030-6", "Fit-up gap, mate held", "mm", null, "0.15"))
                                .sheet(),
                        SmallRoute.op("999").step("on").sheet()));
        WaitingForTheSaw.issued(beans, shop, frame, "TOP_TUBE");
        cutting(frame);
        long sawing = cutting(frame);
        Map<BigDecimal, String> drawer = sawn.drawer(cuts.of(sawing).pieces());
        cuts.record(shop.act(worker), sawing, sawn.entry(piece(cuts.of(sawing), "TOP_TUBE"), drawer, "0.25"));
        decided(frame, Decision.REWORK, "020");
        shop.clock().pass(Duration.ofMinutes(5));
        assertThat(shop.at(frame).line().code()).isEqualTo("020");
        WaitingForTheSaw.issued(beans, shop, frame, "TOP_TUBE");
        cutting(frame);
        assertThat(shop.at(frame).line().code()).isEqualTo("030");
        rest(cutting(frame), drawer);
        assertThat(shop.at(frame).line().code()).isEqualTo("999");
        sawn.retireAll();
    }

    @Test
    void retiringTheLastSawOpensNoGateOfAFrameThatWasBegun() {
        sawn.saw("54");
        WholeShop.Frame frame = frame();
        long operation = cutting(frame);
        Map<BigDecimal, String> drawer = sawn.drawer(cuts.of(operation).pieces());
        cuts.record(shop.act(worker), operation, sawn.entry(piece(cuts.of(operation), "TOP_TUBE"), drawer, "0.10"));
        sawn.retireAll();
        String feeler = shop.gauge("FEELER", "mm", null, LocalDate.of(2027, 1, 1));
        refused(
                () -> readings.read(
                        shop.act(worker),
                        shop.at(frame).characteristics().get(0).characteristicId(),
                        new Readings.Input(List.of(BigDecimal.ZERO), feeler, null, false)),
                "030-6 is not keyed.");
        rest(operation, sawn.drawer(cuts.of(operation).pieces()), "TOP_TUBE");
        assertThat(shop.at(frame).line().code()).isEqualTo("999");
        sawn.retireAll();
    }

    @Test
    void whoeverMeasuredATubeIsNoSecond() {
        sawn.saw("54");
        WholeShop.Frame frame = frame();
        long operation = cutting(frame);
        long other = shop.hire(Role.STATION_WORKER);
        CutTubes.Piece top = piece(cuts.of(operation), "TOP_TUBE");
        cuts.record(shop.act(other), operation, sawn.entry(top, sawn.drawer(List.of(top)), "0.10"));
        assertThat(beans.getBean(Evidence.class).barredFrom(operation, Signer.SECOND))
                .contains(other);
        sawn.retireAll();
    }

    @Test
    void whatNobodyJudgesShutsTheGateBeyondWhatIsAllowed() {
        sawn.saw("54");
        WholeShop.Frame frame = later();
        long operation = cutting(frame);
        Cuts.Sheet sheet = cuts.of(operation);
        Map<BigDecimal, String> drawer = sawn.drawer(sheet.pieces());
        CutTubes.Piece top = piece(sheet, "TOP_TUBE");
        rest(operation, drawer, "TOP_TUBE");
        Cuts.Entry whole = sawn.entry(top, drawer, "0.10");
        BigDecimal asDrawn = top.blank_mm();
        cuts.record(shop.act(worker), operation, blank(whole, asDrawn.subtract(new BigDecimal("40"))));
        assertThat(shop.at(frame).line().code()).isEqualTo("030");
        assertThat(cuts.of(operation).beyond()).containsOnlyKeys("TOP_TUBE");
        assertThat(deciding.of(frame.serial()))
                .filteredOn(one -> one.decision() == null)
                .extracting(NonconformanceLine::words)
                .anyMatch(words -> words.contains("The top tube, measured") && words.contains("blank 568,8"));
        shop.clock().pass(Duration.ofMinutes(5));
        cuts.record(shop.act(worker), operation, blank(whole, asDrawn.subtract(new BigDecimal("41"))));
        conceded(frame);
        conceded(frame);
        assertThat(shop.at(frame).line().code()).as("both were decided").isEqualTo("040");
        sawn.retireAll();
    }

    @Test
    void aConcessionOfWhatNobodyJudgesSpeaksForThatRecordOnly() {
        sawn.saw("54");
        WholeShop.Frame frame = later();
        long operation = cutting(frame);
        Map<BigDecimal, String> drawer = sawn.drawer(cuts.of(operation).pieces());
        CutTubes.Piece top = piece(cuts.of(operation), "TOP_TUBE");
        Cuts.Entry whole = sawn.entry(top, drawer, "0.10");
        cuts.record(shop.act(worker), operation, blank(whole, top.blank_mm().subtract(BigDecimal.ONE)));
        conceded(frame);
        shop.clock().pass(Duration.ofMinutes(5));
        cuts.record(shop.act(worker), operation, blank(whole, top.blank_mm().subtract(BigDecimal.TEN)));
        rest(operation, drawer, "TOP_TUBE");
        assertThat(shop.at(frame).line().code()).isEqualTo("030");
        cuts.record(shop.act(worker), operation, blank(whole, top.blank_mm().add(new BigDecimal("0.4"))));
        assertThat(cuts.of(operation).beyond()).isEmpty();
        assertThat(cuts.of(operation).unjudged().get("TOP_TUBE")).contains("blank", "angle to the head tube", "phase");
        sawn.retireAll();
    }

    private static Cuts.Entry blank(Cuts.Entry of, BigDecimal blank) {
        return new Cuts.Entry(of.piece(), blank, of.phase_deg(), of.ends(), of.gauges());
    }

    private WholeShop.Frame later() {
        return WaitingForTheSaw.frame(
                shop,
                jdbc,
                SmallRoute.of(
                        SmallRoute.op("030").step("cut").sheet(),
                        SmallRoute.op("040").step("form").sheet(),
                        SmallRoute.op("999").step("on").sheet()));
    }
}
