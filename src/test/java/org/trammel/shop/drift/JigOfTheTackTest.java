package org.trammel.shop.drift;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.people.Role;
import org.trammel.shop.routes.CharacteristicSheet;
import org.trammel.shop.routes.Reduction;
import org.trammel.shop.routes.Rule;
import org.trammel.shop.routes.Signer;

/** No frame passes the tack of which nobody said in which jig it was, or that was set up in a jig that is stopped. */
class JigOfTheTackTest extends WatchedJigs {

    @Autowired
    private ApplicationContext beans;

    @Autowired
    private JigUses uses;

    private WholeShop shop;
    private long worker;
    private WholeShop.Frame frame;

    @BeforeEach
    void tacked() {
        shop = new WholeShop(beans);
        worker = shop.hire(Role.STATION_WORKER);
        frame = shop.frame(SmallRoute.of(
                        SmallRoute.op("060")
                                .step("tack")
                                .characteristic(onScales())
                                .sheet(),
                        SmallRoute.op("080").step("on").sheet())
                .sheet());
    }

    private static CharacteristicSheet onScales() {
        return new CharacteristicSheet(
                "060-9",
                "Read on the scale",
                "mm",
                1,
                false,
                BigDecimal.ZERO,
                new BigDecimal("-0.3"),
                new BigDecimal("0.3"),
                "JIG-SCALE",
                List.of("along"),
                Reduction.SINGLE,
                Rule.PLAIN,
                List.of(Signer.WORKER),
                false,
                false,
                false,
                true,
                null,
                0,
                null,
                null,
                "shop default");
    }

    private void work() {
        String scale = shop.gauge("JIG-SCALE", "mm", null, LocalDate.of(2027, 1, 1));
        shop.tickAll(frame, worker);
        shop.read(worker, shop.at(frame).characteristics().get(0).characteristicId(), scale, "0.1");
    }

    private String standsAt() {
        return shop.at(frame).line().code();
    }

    private void note(String jig) {
        uses.setUp(shop.act(worker), frame.serial(), "", jig, null);
    }

    @Test
    void itGoesOnWhenItsJigIsNoted() {
        work();
        assertThat(standsAt()).isEqualTo("060");
        note(one);
        assertThat(standsAt()).isEqualTo("080");
    }

    @Test
    void notedBeforeItGoesOnByItsWork() {
        note(one);
        work();
        assertThat(standsAt()).isEqualTo("080");
    }

    @Test
    void aJigThatIsStoppedSinceKeepsItUntilItIsFreedOrAnotherIsUsed() {
        note(one);
        stations.stopJig(hands.act(qa), one);
        work();
        assertThat(standsAt()).isEqualTo("060");
        stations.freeJig(hands.act(qa), one);
        note(one);
        assertThat(standsAt()).isEqualTo("080");
    }

    @Test
    void anotherJigLetsItGoOn() {
        note(one);
        stations.stopJig(hands.act(qa), one);
        work();
        note(two);
        assertThat(standsAt()).isEqualTo("080");
        assertThat(uses.of(frame.travellerId())).contains(two);
    }
}
