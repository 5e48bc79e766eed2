package org.trammel.shop.cuts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.shop.ShopTest;
import org.trammel.shop.designs.CutTubes;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.inspection.Readings;
import org.trammel.shop.materials.WaitingForTheSaw;
import org.trammel.shop.travellers.CharacteristicState;

/** Every tube of a frame is measured against its own cut list, and a bad gap of any of them shuts the gate. */
@ShopTest(properties = "trammel.test.database=cuts")
class CutTest extends AtTheSaw {

    @Autowired
    private CutHistory history;

    /** Blanks and angles of the first frame of the table, computed by hand there: 608.8 mm, 91.4° and 97.6°. */
    @Test
    void eachTubeHasTheNominalsOfItsOwnDrawing() {
        sawn.saw("54");
        WholeShop.Frame frame = frame();
        CutTubes.Piece top = piece(cuts.of(shop.at(frame).line().operationId()), "TOP_TUBE");
        assertThat(top.blank_mm()).isCloseTo(new BigDecimal("608.8"), within(new BigDecimal("0.1")));
        assertThat(top.ends()).extracting(CutTubes.End::mate).containsExactly("head tube", "seat tube");
        assertThat(top.ends().get(0).angle_deg()).isCloseTo(new BigDecimal("91.4"), within(new BigDecimal("0.05")));
        assertThat(top.ends().get(1).angle_deg()).isCloseTo(new BigDecimal("97.6"), within(new BigDecimal("0.05")));
        assertThat(top.phased()).isTrue();
        sawn.retireAll();
    }

    @Test
    void theGateOpensWhenEveryPieceIsMeasuredAndTheWorstOfAllIsJudged() {
        sawn.saw("54");
        WholeShop.Frame frame = frame();
        long operation = cutting(frame);
        Cuts.Sheet sheet = cuts.of(operation);
        Map<BigDecimal, String> drawer = sawn.drawer(sheet.pieces());
        assertThat(sheet.pieces()).hasSizeGreaterThanOrEqualTo(3);
        for (CutTubes.Piece piece : sheet.pieces()) {
            assertThat(shop.at(frame).line().code())
                    .as("before " + piece.called())
                    .isEqualTo("030");
            assertThat(state(frame, "030-6")).isEqualTo(CharacteristicState.OPEN);
            cuts.record(shop.act(worker), operation, sawn.entry(piece, drawer, "0.10"));
        }
        assertThat(shop.at(frame).line().code()).isEqualTo("999");
        assertThat(cuts.of(operation).recorded()).hasSameSizeAs(sheet.pieces());
        assertThat(history.of(List.of(operation)))
                .extracting(CutHistory.Told::what)
                .anyMatch(what -> what.startsWith("top tube cut to 608,8 mm of 608,8; at the head tube 91,4° with S"));
        sawn.retireAll();
    }

    @Test
    void aTubeThatWasIssuedAfterItsCutIsMeasuredAnew() {
        sawn.saw("54");
        WholeShop.Frame frame = frame();
        WaitingForTheSaw.issued(beans, shop, frame, "TOP_TUBE");
        long operation = cutting(frame);
        List<CutTubes.Piece> pieces = cuts.of(operation).pieces();
        Map<BigDecimal, String> drawer = sawn.drawer(pieces);
        CutTubes.Piece top = piece(cuts.of(operation), "TOP_TUBE");
        cuts.record(shop.act(worker), operation, sawn.entry(top, drawer, "0.10"));
        shop.clock().pass(Duration.ofMinutes(5));
        WaitingForTheSaw.issued(beans, shop, frame, "TOP_TUBE");
        pieces.stream()
                .filter(piece -> !piece.code().equals(top.code()))
                .forEach(piece -> cuts.record(shop.act(worker), operation, sawn.entry(piece, drawer, "0.10")));
        assertThat(shop.at(frame).line().code()).isEqualTo("030");
        assertThat(cuts.of(operation).recorded()).doesNotContainKey("TOP_TUBE");
        assertThat(state(frame, "030-6"))
                .as("the tube that is gone judges nothing")
                .isEqualTo(CharacteristicState.OPEN);
        cuts.record(shop.act(worker), operation, sawn.entry(top, drawer, "0.10"));
        assertThat(shop.at(frame).line().code()).isEqualTo("999");
        sawn.retireAll();
    }

    @Test
    void aGapThatIsTooWideShutsTheGateAtTheFirstTube() {
        sawn.saw("54");
        WholeShop.Frame frame = frame();
        long operation = cutting(frame);
        Cuts.Sheet sheet = cuts.of(operation);
        Map<BigDecimal, String> drawer = sawn.drawer(sheet.pieces());
        cuts.record(shop.act(worker), operation, sawn.entry(piece(sheet, "TOP_TUBE"), drawer, "0.25"));
        assertThat(state(frame, "030-6")).isEqualTo(CharacteristicState.NOT_CONFORMING);
        assertThat(state(frame, "030-8"))
                .as("what lies within waits for the others")
                .isEqualTo(CharacteristicState.OPEN);
        assertThat(shop.sheet(frame).holds()).isNotEmpty();
        sheet.pieces().stream()
                .filter(piece -> !piece.code().equals("TOP_TUBE"))
                .forEach(piece -> cuts.record(shop.act(worker), operation, sawn.entry(piece, drawer, "0.10")));
        assertThat(shop.at(frame).line().code()).isEqualTo("030");
        sawn.retireAll();
    }

    @Test
    void whatTheSheetGivesIsNotKeyed() {
        sawn.saw("54");
        WholeShop.Frame frame = frame();
        cutting(frame);
        long gap = shop.at(frame).characteristics().get(0).characteristicId();
        String feeler = shop.gauge("FEELER", "mm", null, java.time.LocalDate.of(2027, 1, 1));
        refused(
                () -> readings.read(
                        shop.act(worker), gap, new Readings.Input(List.of(BigDecimal.ZERO), feeler, null, false)),
                "030-6 is not keyed.",
                "sheet of cuts");
        sawn.retireAll();
        readings.read(shop.act(worker), gap, new Readings.Input(List.of(BigDecimal.ZERO), feeler, null, false));
        assertThat(state(frame, "030-6"))
                .as("without saws it goes by the route")
                .isEqualTo(CharacteristicState.CONFORMING);
    }

    @Test
    void aSawThatIsOverdueWornTooSmallOrNeverMeasuredCutsNothing() {
        String never = sawn.saw("54");
        WholeShop.Frame frame = frame();
        long operation = cutting(frame);
        CutTubes.Piece top = piece(cuts.of(operation), "TOP_TUBE");
        String seat = sawn.measured(sawn.saw("34.9"), "34.9");
        refused(() -> record(operation, top, never, seat), never + " was never measured", "Measure it over its teeth");
        String worn = sawn.measured(sawn.saw("54"), "53.7");
        refused(() -> record(operation, top, worn, seat), worn + " is worn by 0,3 mm; at most 0,2 mm are allowed");
        String small = sawn.measured(sawn.saw("53"), "53");
        refused(() -> record(operation, top, small, seat), small + " has 53 mm; the head tube has 54 mm");
        String large = sawn.measured(sawn.saw("54"), "54.5");
        refused(() -> record(operation, top, large, seat), large + " measures 54,5 mm over its teeth");
        String good = sawn.measured(sawn.saw("54"), "53.95");
        refused(() -> record(operation, top, "NO-SUCH", seat), "no hole saw NO-SUCH");
        refused(() -> record(operation, top, " ", seat), "not said with which hole saw");
        shop.clock().pass(Duration.ofDays(8));
        refused(
                () -> record(operation, top, good, seat),
                good + " was to be measured again by",
                "Measure it over its teeth");
        sawn.measured(good, "53.95");
        sawn.measured(seat, "34.9");
        record(operation, top, good, seat);
        assertThat(cuts.of(operation).recorded()).containsOnlyKeys("TOP_TUBE");
        refused(() -> sawn.measured(good, "34.9"), "34.9 mm is far from its mark");
        sawn.retireAll();
        refused(() -> sawn.measured("NO-SUCH", "1"), "no hole saw NO-SUCH");
    }

    private void record(long operation, CutTubes.Piece top, String atHead, String atSeat) {
        cuts.record(
                shop.act(worker),
                operation,
                sawn.entry(top, Map.of(new BigDecimal("54"), atHead, new BigDecimal("34.9"), atSeat), "0.10"));
    }

    @Test
    void whatIsMissingOrOfAnotherFrameIsRefusedByItsField() {
        sawn.saw("54");
        WholeShop.Frame frame = frame();
        long operation = cutting(frame);
        CutTubes.Piece top = piece(cuts.of(operation), "TOP_TUBE");
        Map<BigDecimal, String> drawer = sawn.drawer(List.of(top));
        Cuts.Entry whole = sawn.entry(top, drawer, "0.10");
        refused(
                () -> cuts.record(
                        shop.act(worker),
                        operation,
                        new Cuts.Entry("LEFT_ARM", whole.blank_mm(), null, whole.ends(), whole.gauges())),
                "The cut list of this frame has no such tube");
        refused(
                () -> cuts.record(
                        shop.act(worker),
                        operation,
                        new Cuts.Entry(top.code(), null, BigDecimal.ZERO, whole.ends(), whole.gauges())),
                "Its length is missing");
        refused(
                () -> cuts.record(
                        shop.act(worker),
                        operation,
                        new Cuts.Entry(top.code(), whole.blank_mm(), BigDecimal.ZERO, Map.of(), whole.gauges())),
                "The end at the head tube is missing");
        refused(
                () -> cuts.record(shop.act(worker), operation, sawn.entry(top, drawer, "-0.1")),
                "does not lie within 0 and 10 mm");
        refused(
                () -> cuts.record(
                        shop.act(worker),
                        operation,
                        new Cuts.Entry(top.code(), whole.blank_mm(), BigDecimal.ZERO, whole.ends(), Map.of())),
                "not said what it was read with");
        sawn.retireAll();
    }
}
