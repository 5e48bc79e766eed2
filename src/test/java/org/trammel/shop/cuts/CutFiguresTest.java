package org.trammel.shop.cuts;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.trammel.shop.ShopTest;
import org.trammel.shop.designs.CutTubes;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.inspection.GivenReadings;
import org.trammel.shop.inspection.ReadingLine;
import org.trammel.shop.materials.WaitingForTheSaw;
import org.trammel.shop.people.Role;
import org.trammel.shop.routes.Reduction;
import org.trammel.shop.routes.Rule;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.travellers.CharacteristicState;

/** Figures of a cut are judged as they are kept, and each is asked for once. */
@ShopTest(properties = "trammel.test.database=cuts")
class CutFiguresTest extends AtTheSaw {

    /** Margins to −0.1 and 0.3: of 0.25 it is 0.05, of −0.09 it is 0.01. */
    @Test
    void theOneWithTheLeastMarginStandsForAllWhereOneIsAskedFor() {
        sawn.saw("54");
        WholeShop.Frame frame = WaitingForTheSaw.frame(
                shop,
                jdbc,
                SmallRoute.of(
                        SmallRoute.op("030")
                                .step("cut")
                                .characteristic(asked(
                                        "030-5",
                                        "Phase between ends",
                                        "°",
                                        "-0.1",
                                        "0.3",
                                        Reduction.SINGLE,
                                        Rule.PLAIN))
                                .sheet(),
                        SmallRoute.op("999").step("on").sheet()));
        long operation = cutting(frame);
        long phase = shop.at(frame).characteristics().get(0).characteristicId();
        Map<BigDecimal, String> drawer = sawn.drawer(cuts.of(operation).pieces());
        phase(operation, drawer, "DOWN_TUBE", "0.25");
        phase(operation, drawer, "TOP_TUBE", "-0.09");
        rest(operation, drawer, "TOP_TUBE", "DOWN_TUBE");
        assertThat(readings.of(List.of(phase)))
                .extracting(ReadingLine::value)
                .singleElement()
                .satisfies(value -> assertThat(value).isEqualByComparingTo("-0.09"));
        sawn.retireAll();
    }

    private void phase(long operation, Map<BigDecimal, String> drawer, String code, String phase) {
        Cuts.Entry entry = sawn.entry(piece(cuts.of(operation), code), drawer, "0.10");
        cuts.record(
                shop.act(worker),
                operation,
                new Cuts.Entry(code, entry.blank_mm(), new BigDecimal(phase), entry.ends(), entry.gauges()));
    }

    @Test
    void moreDigitsThanAreKeptAreRefused() {
        String saw = sawn.saw("54");
        WholeShop.Frame frame = frame();
        long operation = cutting(frame);
        CutTubes.Piece top = piece(cuts.of(operation), "TOP_TUBE");
        Map<BigDecimal, String> drawer = sawn.drawer(List.of(top));
        Cuts.Entry whole = sawn.entry(top, drawer, "0.10");
        refused(
                () -> cuts.record(
                        shop.act(worker),
                        operation,
                        new Cuts.Entry(
                                top.code(),
                                top.blank_mm().add(new BigDecimal("0.504")),
                                BigDecimal.ZERO,
                                whole.ends(),
                                whole.gauges())),
                "Its length has more digits than are kept: 2 after the sign");
        refused(
                () -> cuts.record(shop.act(worker), operation, sawn.entry(top, drawer, "0.1504")),
                "The gap at place 4 of the head tube has more digits than are kept: 3 after the sign");
        refused(() -> sawn.measured(saw, "53.9504"), "What it measures has more digits than are kept");
        refused(() -> sawn.saw("54.0004"), "Its diameter has more digits than are kept");
        sawn.retireAll();
    }

    @Test
    void gapsBeyondEightAnEndSaidTwiceAndAnEmptyEndAreRefused() {
        sawn.saw("54");
        WholeShop.Frame frame = frame();
        long operation = cutting(frame);
        CutTubes.Piece top = piece(cuts.of(operation), "TOP_TUBE");
        CutApi api = beans.getBean(CutApi.class);
        String saw = sawn.drawer(List.of(top)).get(new BigDecimal("54"));
        CutApi.EndCut nine = new CutApi.EndCut(
                1,
                saw,
                top.ends().get(0).angle_deg(),
                top.ends().get(0).wall_mm(),
                Collections.nCopies(9, BigDecimal.ZERO));
        refused(() -> api.record(shop.act(worker), operation, cut(top, List.of(nine))), "9 gaps came");
        CutApi.EndCut none = new CutApi.EndCut(1, saw, nine.angleDeg(), nine.wallMm(), Collections.nCopies(8, null));
        refused(
                () -> api.record(shop.act(worker), operation, cut(top, List.of(none))),
                "The gap at place 1 of the head tube is missing");
        refused(
                () -> api.record(shop.act(worker), operation, cut(top, List.of(none, nine))),
                "Two of its ends are at place 1");
        List<CutApi.EndCut> empty = new ArrayList<>();
        empty.add(null);
        refused(() -> api.record(shop.act(worker), operation, cut(top, empty)), "One of its ends is empty");
        sawn.retireAll();
    }

    private static CutApi.TubeCut cut(CutTubes.Piece piece, List<CutApi.EndCut> ends) {
        return new CutApi.TubeCut(piece.code(), piece.blank_mm(), BigDecimal.ZERO, ends, "", "", "", "", "");
    }

    @Test
    void aSawThatMeasuresTooFarBelowTheMateCutsNothing() {
        String saw = sawn.measured(sawn.saw("54"), "53.85");
        WholeShop.Frame frame = frame();
        long operation = cutting(frame);
        CutTubes.Piece top = piece(cuts.of(operation), "TOP_TUBE");
        String seat = sawn.measured(sawn.saw("34.9"), "34.9");
        Settings settings = beans.getBean(Settings.class);
        long owner = shop.hire(Role.OWNER, Role.QA_LEAD);
        settings.change(shop.act(owner), "cut.saw.worn", "0.1", "own trial", "a tighter fit");
        refused(
                () -> cuts.record(
                        shop.act(worker),
                        operation,
                        sawn.entry(top, Map.of(new BigDecimal("54"), saw, new BigDecimal("34.9"), seat), "0.10")),
                saw
                        + " measures 53,85 mm over its teeth; the head tube has 54 mm, and a saw of at least 53,9 mm cuts it");
        settings.change(shop.act(owner), "cut.saw.worn", "0.2", "own trial", "a tighter fit");
        sawn.retireAll();
    }

    /** The protractor of the test has a doubt of 0.02°: 0.19° of 0.2° lies within its guard band. */
    @Test
    void aTubeIsKeptAlthoughTheAngleOfAnotherIsUndecided() {
        sawn.saw("54");
        WholeShop.Frame frame = WaitingForTheSaw.frame(
                shop,
                jdbc,
                SmallRoute.of(
                        SmallRoute.op("030")
                                .step("cut")
                                .characteristic(guarded("030-8", "Mitre angles off the cut list", "0.2"))
                                .sheet(),
                        SmallRoute.op("999").step("on").sheet()));
        long operation = cutting(frame);
        Map<BigDecimal, String> drawer = sawn.drawer(cuts.of(operation).pieces());
        angle(operation, drawer, "0.19");
        rest(operation, drawer, "TOP_TUBE");
        assertThat(state(frame, "030-8")).isEqualTo(CharacteristicState.UNDECIDED);
        rest(operation, drawer, "TOP_TUBE");
        angle(operation, drawer, "0");
        assertThat(state(frame, "030-8"))
                .as("one more try by the same means settles nothing")
                .isEqualTo(CharacteristicState.UNDECIDED);
        assertThat(cuts.of(operation).recorded().get("TOP_TUBE").ends().get(0).angle_deg())
                .isEqualByComparingTo(
                        piece(cuts.of(operation), "TOP_TUBE").ends().get(0).angle_deg());
        angle(operation, drawer, "0.5");
        assertThat(state(frame, "030-8")).isEqualTo(CharacteristicState.NOT_CONFORMING);
        sawn.retireAll();
    }

    private void angle(long operation, Map<BigDecimal, String> drawer, String off) {
        Cuts.Entry entry = sawn.entry(piece(cuts.of(operation), "TOP_TUBE"), drawer, "0.10");
        Map<Integer, Cuts.EndEntry> ends = new HashMap<>(entry.ends());
        ends.computeIfPresent(
                1,
                (place, end) -> new Cuts.EndEntry(
                        end.saw(), end.angle_deg().add(new BigDecimal(off)), end.wall_mm(), end.gaps_mm()));
        cuts.record(
                shop.act(worker),
                operation,
                new Cuts.Entry(entry.piece(), entry.blank_mm(), entry.phase_deg(), ends, entry.gauges()));
    }

    @Test
    void whatTheDrawingDoesNotComputeStaysKeyedAndIsNamed() {
        sawn.saw("54");
        WholeShop.Frame frame = frame();
        assertThat(beans.getBean(GivenReadings.class).at(shop.at(frame).line().operationId(), "030"))
                .containsOnlyKeys("030-6", "030-7", "030-8");
        jdbc.sql(
                        "delete from design_geometry where revision_id = (select design_revision_id from traveller where id = ?)"
                                + " and input = 'SEATSTAY_OUTSIDE'")
                .param(frame.travellerId())
                .update();
        long operation = cutting(frame);
        refused(() -> cuts.of(operation), "There is no sheet of cuts.", "Seatstay outside is not given.");
        assertThat(beans.getBean(GivenReadings.class).at(operation, "030")).isEmpty();
        CutTubes.Drawn drawn =
                beans.getBean(CutTurn.class).drawn(shop.sheet(frame).head(), operation, "030");
        assertThat(drawn.missing()).contains("drive-side seatstay", "non-drive-side seatstay");
        assertThat(beans.getBean(CutGives.class).keyed(operation, drawn)).contains("030-7 Blanks off the cut list");
        assertThat(shop.at(frame).line().code()).as("what is keyed is missing").isEqualTo("030");
        sawn.retireAll();
    }
}
