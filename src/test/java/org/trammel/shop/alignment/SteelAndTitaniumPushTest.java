package org.trammel.shop.alignment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.inspection.ColdSets;
import org.trammel.shop.people.Role;
import org.trammel.shop.routes.RouteSheet;
import org.trammel.shop.travellers.CharacteristicState;

/** A frame of steel or of titanium off the middle: read, pushed while its window is open, and read again. */
class SteelAndTitaniumPushTest extends OnThePlate {

    @Autowired
    private PushAdvices advices;

    @Autowired
    private ColdSets coldSets;

    @Autowired
    private JdbcClient jdbc;

    private long setter;

    @BeforeEach
    void setter() {
        setter = shop.qualified("ALIGN", NEXT_YEAR, Role.ALIGNER);
    }

    /** On a route of each metal: read, pushed, read again; what it did tells of that metal only. */
    @ParameterizedTest
    @CsvSource({"STEEL, TI, 1.71", "TI, STEEL, 1.72"})
    void aFrameOfSteelOrTitaniumIsSetStraightByAPush(String metal, String other, String wall) {
        WholeShop.Frame frame = frameOf(metal);
        wall(frame, wall);
        axle(frame, "1.5");
        assertThat(state(frame, "100-3")).isEqualTo(CharacteristicState.NOT_CONFORMING);
        assertThat(advised(frame).why()).contains("The shop has no pushes", metal.equals("TI") ? "titanium" : "steel");
        coldSets.push(
                shop.act(setter),
                line(frame, "100-3").characteristicId(),
                new BigDecimal("1.2"),
                new BigDecimal("14.0"));
        assertThat(state(frame, "100-3")).isEqualTo(CharacteristicState.OPEN);
        axle(frame, "0.3");
        assertThat(shop.at(frame).line().code())
                .as("it conforms, and waits to be faced")
                .isEqualTo("130");
        WholeShop.Frame next = frameOf(metal);
        wall(next, wall);
        axle(next, "1.5");
        assertThat(advised(next).history()).singleElement().satisfies(told -> {
            assertThat(told.push_mm()).isEqualTo(14.0);
            assertThat(told.set_mm()).isCloseTo(1.2, within(1e-9));
        });
        WholeShop.Frame elsewhere = frameOf(other);
        wall(elsewhere, wall);
        axle(elsewhere, "1.5");
        assertThat(advised(elsewhere).history()).isEmpty();
    }

    /** Welded, and on the table while the window is open that facing or stress relief ends. */
    private WholeShop.Frame frameOf(String metal) {
        RouteSheet drawn = SmallRoute.of(
                        SmallRoute.op("070").step("weld out").sheet(),
                        SmallRoute.op("100")
                                .at("4")
                                .characteristic(
                                        characteristic("100-3", "Rear axle centre offset", "mm", "1.0", "dummy axle"))
                                .sheet(),
                        SmallRoute.op("130").irreversible().step("face").sheet())
                .window("COLD-SET", 336 * 60, "070")
                .sheet();
        WholeShop.Frame frame = shop.frame(drawn);
        jdbc.sql("update traveller set metal = ? where id = ?")
                .params(metal, frame.travellerId())
                .update();
        shop.tickAll(frame, shop.hire(Role.STATION_WORKER));
        return drawn(frame);
    }

    private void axle(WholeShop.Frame frame, String offset_mm) {
        // Midway between the dropouts, 148 mm apart, the middle of the shell at 150.
        BigDecimal middle = new BigDecimal("150").add(new BigDecimal(offset_mm));
        read(frame, Spot.AXLE_DRIVE, middle.add(new BigDecimal("74")).toPlainString());
        read(frame, Spot.AXLE_OTHER, middle.subtract(new BigDecimal("74")).toPlainString());
        reduce(frame);
    }

    private void wall(WholeShop.Frame frame, String wall) {
        jdbc.sql("update design_geometry set amount = ? where input = 'CHAINSTAY_WALL' and revision_id ="
                        + " (select design_revision_id from traveller where id = ?)")
                .params(new BigDecimal(wall), frame.travellerId())
                .update();
    }

    private Optional<PushAdvice> advice(WholeShop.Frame frame) {
        return advices.of(shop.sheet(frame).head(), line(frame, "100-3"));
    }

    private PushAdvice advised(WholeShop.Frame frame) {
        return advice(frame).orElseThrow();
    }
}
