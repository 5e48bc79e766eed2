package org.trammel.shop.cuts;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.trammel.shop.ShopTest;
import org.trammel.shop.designs.CutTubes;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.materials.WaitingForTheSaw;
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
}
