package org.trammel.shop.materials;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.trammel.shop.ShopTest;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.people.Role;
import org.trammel.shop.travellers.Bench;
import org.trammel.shop.travellers.Travellers;

/** A tube that was cut wrong is scrapped, and the frame waits until another went into it. */
@ShopTest(properties = "trammel.test.database=recut")
class RecutTest {

    @Autowired
    private ApplicationContext beans;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private LotRegister register;

    @Autowired
    private TubeRack rack;

    @Autowired
    private Lots lots;

    @Autowired
    private Bench bench;

    @Autowired
    private Travellers travellers;

    private WholeShop shop;
    private long lead;
    private long worker;

    @BeforeEach
    void open() {
        shop = new WholeShop(beans);
        lead = shop.hire(Role.QA_LEAD);
        worker = shop.hire(Role.STATION_WORKER);
        jdbc.sql("delete from tube_bar").update();
        jdbc.sql("update traveller set state = 'SCRAPPED' where state not in ('SHIPPED', 'SCRAPPED')")
                .update();
    }

    private void tick(WholeShop.Frame frame, String lot) {
        bench.tick(
                shop.act(worker),
                List.of(shop.at(frame).steps().stream()
                        .filter(step -> !step.ticked())
                        .findFirst()
                        .orElseThrow()
                        .stepId()),
                lot,
                null);
    }

    @Test
    void theFrameDoesNotGoOnWithoutATubeInThePlaceOfTheScrappedOne() {
        String first = WaitingForTheSaw.lot(register, shop, lead, "AL6061", true);
        String second = WaitingForTheSaw.lot(register, shop, lead, "AL6061", true);
        WholeShop.Frame frame = shop.frame(shop.route(SmallRoute.of(
                        SmallRoute.op("020").lot("scan", "TUBE").sheet(),
                        SmallRoute.op("030").step("cut").sheet(),
                        SmallRoute.op("040").step("form").sheet())
                .sheet()));
        tick(frame, first);
        long use = lots.madeOf(frame.serial()).get(0).useId();
        lots.scrap(shop.act(worker), use, "mitres out of phase; cut another");
        tick(frame, null);
        assertThat(shop.at(frame).line().code()).isEqualTo("030");
        assertThat(shop.sheet(frame).inTheWay()).singleElement().satisfies(refused -> {
            assertThat(refused.why()).contains("A tube of " + first + " was scrapped");
            assertThat(refused.instead()).contains("Scan the lot");
        });

        lots.issue(shop.act(worker), second, frame.serial(), "down tube, cut again", "030", null, null);
        assertThat(shop.at(frame).line().code()).isEqualTo("040");
        assertThat(lots.madeOf(frame.serial()))
                .as("the list of lots keeps the scrapped piece")
                .extracting(MadeOf::lot, MadeOf::scrapped)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple(first, true),
                        org.assertj.core.groups.Tuple.tuple(second, false));
        assertThat(lots.wentInto(first))
                .extracting(WentInto::scrappedReason)
                .containsExactly("mitres out of phase; cut another");
    }

    /** Several labels may be scanned at once; those pieces were there before, and each scrapped one needs its own. */
    @Test
    void oneTubeDoesNotStandForTwoNorForOneThatWasThereBefore() {
        List<String> first = List.of(
                WaitingForTheSaw.lot(register, shop, lead, "AL6061", true),
                WaitingForTheSaw.lot(register, shop, lead, "AL6061", true),
                WaitingForTheSaw.lot(register, shop, lead, "AL6061", true));
        WholeShop.Frame frame = shop.frame(shop.route(SmallRoute.of(
                        SmallRoute.op("020").lot("scan", "TUBE").sheet(),
                        SmallRoute.op("030").step("cut").sheet(),
                        SmallRoute.op("040").step("form").sheet())
                .sheet()));
        tick(frame, String.join(" ", first));
        shop.clock().pass(java.time.Duration.ofMinutes(5));
        lots.scrap(shop.act(worker), lots.madeOf(frame.serial()).get(0).useId(), "dented");
        lots.scrap(shop.act(worker), lots.madeOf(frame.serial()).get(1).useId(), "dented too");
        tick(frame, null);
        assertThat(shop.at(frame).line().code()).isEqualTo("030");
        String next = WaitingForTheSaw.lot(register, shop, lead, "AL6061", true);
        lots.issue(shop.act(worker), next, frame.serial(), "down tube, cut again", "030", null, null);
        assertThat(shop.at(frame).line().code()).as("one is not two").isEqualTo("030");
        lots.issue(shop.act(worker), next, frame.serial(), "top tube, cut again", "030", null, null);
        assertThat(shop.at(frame).line().code()).isEqualTo("040");
    }

    @Test
    void whoWaitsForTheSameRackIsToldWhenItRunsShort() {
        String lot = WaitingForTheSaw.lot(register, shop, lead, "AL6061", true);
        WaitingForTheSaw.frame(shop, jdbc, "030");
        rack.lay(
                shop.act(lead),
                lot,
                new NewBars(new BigDecimal("42"), new BigDecimal("1.4"), new BigDecimal("300"), 1, false));
        WholeShop.Frame frame = shop.frame(shop.route(SmallRoute.of(
                        SmallRoute.op("020").lot("scan", "TUBE").sheet(),
                        SmallRoute.op("040").step("form").sheet())
                .sheet()));
        tick(frame, lot);
        int before = travellers.openCalls().size();
        lots.scrap(shop.act(worker), lots.madeOf(frame.serial()).get(0).useId(), "dented");
        assertThat(travellers.openCalls()).hasSize(before + 1);
        assertThat(travellers.openCalls().stream()
                        .map(Travellers.CallLine::words)
                        .filter(words -> words.contains(lot))
                        .findFirst()
                        .orElseThrow())
                .contains("the rack does not reach for all frames that wait")
                .contains("42 × 1.4");
    }
}
