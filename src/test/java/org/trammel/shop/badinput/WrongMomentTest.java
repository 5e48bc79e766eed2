package org.trammel.shop.badinput;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.trammel.shop.ShopTest;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.materials.LotKind;
import org.trammel.shop.materials.LotRegister;
import org.trammel.shop.materials.NewLot;
import org.trammel.shop.nonconformance.Deciding;
import org.trammel.shop.nonconformance.Decision;
import org.trammel.shop.nonconformance.Opening;
import org.trammel.shop.nonconformance.Proposal;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.travellers.Bench;
import org.trammel.shop.travellers.Carry;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.Revising;
import org.trammel.shop.travellers.Shipping;
import org.trammel.shop.travellers.TravellerState;
import org.trammel.shop.travellers.Travellers;

/** Right things done to the wrong frame, or at a moment they are not for. */
@ShopTest
class WrongMomentTest {

    @Autowired
    private ApplicationContext beans;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private Revising revising;

    @Autowired
    private Shipping shipping;

    @Autowired
    private Travellers travellers;

    @Autowired
    private Bench bench;

    @Autowired
    private Opening opening;

    @Autowired
    private Deciding deciding;

    private WholeShop shop;
    private long worker;
    private long qa;

    @BeforeEach
    void open() {
        shop = new WholeShop(beans);
        worker = shop.hire(Role.STATION_WORKER);
        qa = shop.hire(Role.QA_LEAD);
    }

    @Test
    void aNewerRevisionWaitsForTheFrameThatIsInTheOven() {
        long route = shop.route(SmallRoute.of(
                        SmallRoute.op("100").step("lay down").sheet(),
                        SmallRoute.op("110")
                                .irreversible()
                                .step("load")
                                .step("unload")
                                .sheet(),
                        SmallRoute.op("200").step("pack").sheet())
                .sheet());
        WholeShop.Frame frame = shop.frame(route);
        shop.tickAll(frame, worker);
        bench.tick(shop.act(worker), List.of(shop.at(frame).steps().get(0).stepId()), null, null);
        long drawing = shop.drawing(frame.designId(), 2, Map.of());
        Map<Long, Revising.Said> said = new HashMap<>();
        revising.finished(frame.orderId())
                .forEach(f ->
                        said.put(f.operationId(), new Revising.Said(Carry.STILL_VALID, "the change is elsewhere")));
        Refusal refused = refusal(() -> revising.supersede(shop.act(qa), frame.orderId(), drawing, route, said, null));
        assertThat(refused.why()).contains("in work at operation 110");
        assertThat(shop.sheet(frame).head().state()).isEqualTo(TravellerState.IN_WORK);
        FrameSheet.StepLine unload = shop.at(frame).steps().get(1);
        bench.tick(shop.act(worker), List.of(unload.stepId()), null, null);
        revising.finished(frame.orderId())
                .forEach(f ->
                        said.put(f.operationId(), new Revising.Said(Carry.STILL_VALID, "the change is elsewhere")));
        revising.supersede(shop.act(qa), frame.orderId(), drawing, route, said, null);
        assertThat(shop.sheet(frame).head().state()).isEqualTo(TravellerState.WITHDRAWN);
    }

    @Test
    void aPartIsNotShippedAsIfItWereItsFrame() {
        WholeShop.Frame frame = shop.frame(SmallRoute.of(
                        SmallRoute.op("170").joins().step("join").sheet())
                .child("FT", SmallRoute.of(SmallRoute.op("070").step("weld").sheet()))
                .sheet());
        long part = travellers.inForce(frame.serial(), "FT").travellerId();
        assertThat(refusal(() -> shipping.ship(shop.act(worker), part, frame.serial()))
                        .why())
                .contains("a part of a frame");
    }

    @Test
    void aFrameThatWasShippedIsNotScrappedAndAScrappedOneNotShipped() {
        WholeShop.Frame left = packed();
        long packing = travellers
                .strips(List.of(left.travellerId()))
                .get(left.travellerId())
                .get(0)
                .operationId();
        shipping.ship(shop.act(worker), left.travellerId(), left.serial());
        assertThat(refusal(() -> opening.byHand(shop.act(worker), left.travellerId(), packing, null, null, "dent"))
                        .why())
                .contains("shipped");
        WholeShop.Frame dented = packed();
        long at = travellers
                .strips(List.of(dented.travellerId()))
                .get(dented.travellerId())
                .get(0)
                .operationId();
        opening.byHand(shop.act(worker), dented.travellerId(), at, null, null, "dent");
        deciding.propose(
                shop.act(qa),
                deciding.of(dented.serial()).get(0).id(),
                new Proposal(Decision.SCRAP, "bent", null, null, null, false, null, false, null, null, Set.of()));
        assertThat(refusal(() -> shipping.ship(shop.act(worker), dented.travellerId(), dented.serial()))
                        .why())
                .contains("scrapped");
    }

    private WholeShop.Frame packed() {
        WholeShop.Frame frame = shop.frame(
                SmallRoute.of(SmallRoute.op("200").step("pack").sheet()).sheet());
        shop.tickAll(frame, worker);
        return frame;
    }

    @Test
    void aLotOfNoLengthIsNotReceived() {
        for (String quantity : List.of("0", "-1", "0.0001")) {
            String code = "ZL-" + UUID.randomUUID().toString().substring(0, 8).toUpperCase(java.util.Locale.ROOT);
            Refusal refused = refusal(() -> beans.getBean(LotRegister.class)
                    .receive(
                            shop.act(qa),
                            new NewLot(
                                    code,
                                    LotKind.TUBE,
                                    "a lot",
                                    "AL6061",
                                    null,
                                    "",
                                    "5K2217",
                                    null,
                                    "a supplier",
                                    LocalDate.of(2025, 12, 2),
                                    null,
                                    new BigDecimal(quantity),
                                    "mm")));
            assertThat(refused.field()).isEqualTo("quantity");
            assertThat(jdbc.sql("select count(*) from lot where code = ?")
                            .param(code)
                            .query(Long.class)
                            .single())
                    .isZero();
        }
    }

    private static Refusal refusal(ThrowingCallable deed) {
        Refusal refused = catchThrowableOfType(Refusal.class, deed);
        assertThat(refused).isNotNull();
        return refused;
    }
}
