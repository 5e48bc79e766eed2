package org.trammel.shop.cuts;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.assertj.core.api.InstanceOfAssertFactories;
import org.junit.jupiter.api.Test;
import org.trammel.shop.ShopTest;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.inspection.Readings;
import org.trammel.shop.materials.WaitingForTheSaw;
import org.trammel.shop.nonconformance.Decision;
import org.trammel.shop.people.Role;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.travellers.CharacteristicState;

/** Cuts where something does not fit the plain case: tubes without a place, settings that changed, a list in part. */
@ShopTest(properties = "trammel.test.database=cuts")
class CutLooseTest extends AtTheSaw {

    @Test
    void aTubeWithoutAPlaceThatIsScrappedIsMeasuredAnewBeforeTheGateOpens() {
        sawn.saw("54");
        WholeShop.Frame frame = frame();
        WaitingForTheSaw.scanned(beans, shop, frame);
        long operation = cutting(frame);
        Map<BigDecimal, String> drawer = sawn.drawer(cuts.of(operation).pieces());
        cuts.record(shop.act(worker), operation, sawn.entry(piece(cuts.of(operation), "TOP_TUBE"), drawer, "0.10"));
        shop.clock().pass(Duration.ofMinutes(5));
        WaitingForTheSaw.scrapped(beans, shop, frame);
        shop.clock().pass(Duration.ofMinutes(5));
        WaitingForTheSaw.scanned(beans, shop, frame);
        rest(operation, drawer, "TOP_TUBE");
        assertThat(shop.at(frame).line().code())
                .as("the top tube was measured before")
                .isEqualTo("030");
        assertThat(shop.sheet(frame).inTheWay())
                .anySatisfy(refused -> assertThat(refused.why()).contains("A tube was scrapped after the cuts"));
        cuts.record(shop.act(worker), operation, sawn.entry(piece(cuts.of(operation), "TOP_TUBE"), drawer, "0.10"));
        assertThat(shop.at(frame).line().code()).isEqualTo("999");
        sawn.retireAll();
    }

    @Test
    void aTubeWithoutAPlaceThatIsScrappedLaterIsMeasuredThere() {
        sawn.saw("54");
        WholeShop.Frame frame = WaitingForTheSaw.frame(
                shop,
                jdbc,
                SmallRoute.of(
                        SmallRoute.op("030")
                                .step("cut")
                                .characteristic(asked("030-6", "Fit-up gap, mate held", "mm", null, "0.15"))
                                .sheet(),
                        SmallRoute.op("040").step("form").sheet(),
                        SmallRoute.op("999").step("on").sheet()));
        WaitingForTheSaw.scanned(beans, shop, frame);
        long sawing = cutting(frame);
        Map<BigDecimal, String> drawer = sawn.drawer(cuts.of(sawing).pieces());
        rest(sawing, drawer);
        assertThat(shop.at(frame).line().code()).isEqualTo("040");
        shop.clock().pass(Duration.ofMinutes(5));
        WaitingForTheSaw.scrapped(beans, shop, frame);
        WaitingForTheSaw.scanned(beans, shop, frame);
        long forming = cutting(frame);
        assertThat(shop.at(frame).line().code()).isEqualTo("040");
        cuts.record(shop.act(worker), forming, sawn.entry(piece(cuts.of(forming), "DOWN_TUBE"), drawer, "0.10"));
        assertThat(shop.at(frame).line().code()).isEqualTo("999");
        sawn.retireAll();
    }

    /** Two mitred ends: 1 mm more of trim at each would make the blank 2 mm longer than the nominal that was frozen. */
    @Test
    void aTrimThatChangedAfterTheReleaseMovesNoCutOfADrawingThatWasReleased() {
        sawn.saw("54");
        WholeShop.Frame frame = frame();
        long operation = shop.at(frame).line().operationId();
        BigDecimal released = piece(cuts.of(operation), "TOP_TUBE").blank_mm();
        Settings settings = beans.getBean(Settings.class);
        long owner = shop.hire(Role.OWNER, Role.QA_LEAD);
        String before = settings.text("saw.trim");
        shop.clock().pass(Duration.ofMinutes(5));
        settings.change(shop.act(owner), "saw.trim", "4", "own trial", "a rougher saw");
        assertThat(piece(cuts.of(operation), "TOP_TUBE").blank_mm()).isEqualByComparingTo(released);
        WholeShop.Frame later = frame();
        assertThat(piece(cuts.of(shop.at(later).line().operationId()), "TOP_TUBE")
                        .blank_mm())
                .as("drawn by the new trim")
                .isEqualByComparingTo(released.add(BigDecimal.valueOf(2)));
        settings.change(shop.act(owner), "saw.trim", before, "own trial", "back to the finer saw");
        sawn.retireAll();
    }

    @Test
    void aDrawingThatLacksAStayGivesNoCutsAndSaysWhatIsMissingSoThatAllIsKeyed() {
        sawn.saw("54");
        WholeShop.Frame frame = frame();
        jdbc.sql(
                        "delete from design_geometry where revision_id = (select design_revision_id from traveller where id = ?)"
                                + " and input in ('SEATSTAY_OUTSIDE', 'SEATSTAY_WALL', 'CHAINSTAY_OUTSIDE', 'CHAINSTAY_WALL',"
                                + " 'CHAINSTAY_AT_SHELL')")
                .param(frame.travellerId())
                .update();
        long operation = cutting(frame);
        refused(
                () -> cuts.of(operation),
                "There is no sheet of cuts.",
                "Chainstay from the middle plane at the shell is not given",
                "Seatstay outside is not given");
        String feeler = shop.gauge("FEELER", "mm", null, LocalDate.of(2027, 1, 1));
        String protractor = shop.gauge("PROTRACTOR", "°", "0.02", LocalDate.of(2027, 1, 1));
        shop.at(frame)
                .characteristics()
                .forEach(one -> readings.read(
                        shop.act(worker),
                        one.characteristicId(),
                        new Readings.Input(
                                List.of(BigDecimal.ZERO), one.unit().equals("°") ? protractor : feeler, null, false)));
        assertThat(shop.at(frame).line().code()).as("nothing else is asked").isEqualTo("999");
    }

    @Test
    void aHoleSawIsRetiredWithAReasonOnly() {
        String saw = sawn.saw("54");
        long owner = shop.hire(Role.OWNER, Role.QA_LEAD);
        refused(() -> saws.retire(shop.act(owner), saw, "  "), "The hole saw was not retired.", "Why");
        saws.retire(shop.act(owner), saw, "a tooth broke off");
        assertThat(saws.all())
                .filteredOn(one -> one.code().equals(saw))
                .extracting(HoleSaw::retiredBecause)
                .containsExactly("a tooth broke off");
    }

    /** Cut wrong, scrapped, cut again out of the same lot while another frame waits for it, measured, and on. */
    @Test
    void theWholeLoopOfATubeThatWasCutWrong() {
        sawn.saw("54");
        WholeShop.Frame frame = frame();
        WaitingForTheSaw.Counted counted = WaitingForTheSaw.counted(beans, shop, jdbc, frame, "TOP_TUBE", 2);
        counted.issue(frame);
        assertThat(counted.left()).isEqualByComparingTo("1");
        long operation = cutting(frame);
        Map<BigDecimal, String> drawer = sawn.drawer(cuts.of(operation).pieces());
        cuts.record(shop.act(worker), operation, sawn.entry(piece(cuts.of(operation), "TOP_TUBE"), drawer, "0.90"));
        assertThat(state(frame, "030-6")).isEqualTo(CharacteristicState.NOT_CONFORMING);
        rest(operation, drawer, "TOP_TUBE");
        assertThat(shop.at(frame).line().code()).isEqualTo("030");
        shop.clock().pass(Duration.ofMinutes(5));
        WaitingForTheSaw.scrapped(beans, shop, frame);
        assertThat(counted.calls())
                .as("one is left, and two need it")
                .singleElement(InstanceOfAssertFactories.STRING)
                .contains("1 left of its section", counted.waiting());
        decided(frame, Decision.REWORK, "030");
        long again = shop.at(frame).line().operationId();
        assertThat(again).isNotEqualTo(operation);
        cutting(frame);
        rest(again, drawer, "TOP_TUBE");
        assertThat(shop.at(frame).line().code()).isEqualTo("030");
        counted.issue(frame);
        assertThat(counted.left()).isEqualByComparingTo("0");
        assertThat(shop.at(frame).line().code())
                .as("it is there, and not measured")
                .isEqualTo("030");
        cuts.record(shop.act(worker), again, sawn.entry(piece(cuts.of(again), "TOP_TUBE"), drawer, "0.10"));
        assertThat(shop.at(frame).line().code()).isEqualTo("999");
        sawn.retireAll();
    }
}
