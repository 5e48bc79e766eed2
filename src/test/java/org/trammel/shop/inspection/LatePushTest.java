package org.trammel.shop.inspection;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.routes.CharacteristicSheet;
import org.trammel.shop.routes.Reduction;
import org.trammel.shop.routes.Rule;
import org.trammel.shop.routes.StepSheet;
import org.trammel.shop.travellers.Travellers;

/** Whether a push that arrives after its window has closed was made inside it. */
class LatePushTest extends AtTheTable {

    private static final long TABLET = 880_001;

    @Autowired
    private ColdSets coldSets;

    @Autowired
    private Travellers travellers;

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

    /** The tablet runs three minutes slow: pushed a minute before the end its clock shows four. */
    @Test
    void aPushMadeInTheWindowByTheTabletsClockMayArriveAMomentLateAndIsMarked() {
        WholeShop.Frame frame = welded();
        Instant closes = shop.clock().instant().plus(Duration.ofHours(24));
        readSlow(frame, closes.minus(Duration.ofHours(2)));
        shop.clock().setTo(closes.plus(Duration.ofMinutes(1)));
        shop.lookAtClocks();
        coldSets.push(
                slow(TABLET, closes.minus(Duration.ofMinutes(4))), characteristic(frame), new BigDecimal("0.5"), null);
        assertThat(jdbc.sql("select late from cold_set where traveller_id = ?")
                        .param(frame.travellerId())
                        .query(Boolean.class)
                        .single())
                .isTrue();
        assertThat(travellers.openCalls())
                .anySatisfy(call -> assertThat(call.travellerId()).isEqualTo(frame.travellerId()));
    }

    /** Its clock shows a minute before the end where it is two minutes after; of another tablet nothing is known at all. */
    @Test
    void aTabletThatRunsSlowKeepsNoWindowOpen() {
        WholeShop.Frame frame = welded();
        Instant closes = shop.clock().instant().plus(Duration.ofHours(24));
        readSlow(frame, closes.minus(Duration.ofHours(2)));
        shop.clock().setTo(closes.plus(Duration.ofMinutes(2)));
        for (Act act : List.of(
                slow(TABLET, closes.minus(Duration.ofMinutes(1))),
                slow(TABLET + 1, closes.minus(Duration.ofMinutes(2))))) {
            assertThat(refusal(() -> coldSets.push(act, characteristic(frame), new BigDecimal("0.2"), null))
                            .why())
                    .contains("closed at");
        }
        assertThat(pushes(frame)).isZero();
    }

    private Act slow(long tablet, Instant shown) {
        return new Act(
                java.util.UUID.randomUUID(), aligner, tablet, shop.clock().instant(), shown);
    }

    private void readSlow(WholeShop.Frame frame, Instant at) {
        shop.clock().setTo(at);
        readings.read(
                slow(TABLET, at.minus(Duration.ofMinutes(3))), characteristic(frame), input(gauge, false, "0.80"));
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

    private long pushes(WholeShop.Frame frame) {
        return jdbc.sql("select count(*) from cold_set where traveller_id = ?")
                .param(frame.travellerId())
                .query(Long.class)
                .single();
    }
}
