package org.trammel.shop.travellers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.trammel.shop.floor.SmallRoute.op;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.trammel.shop.ShopTest;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.inspection.Readings;
import org.trammel.shop.orders.OrderState;
import org.trammel.shop.orders.Orders;
import org.trammel.shop.people.Role;
import org.trammel.shop.routes.Signer;

/** What happens to a frame, its parts and its order once every operation is done. */
@ShopTest
class FinishedFramesTest {

    @Autowired
    private ApplicationContext beans;

    @Autowired
    private Bench bench;

    @Autowired
    private Shipping shipping;

    @Autowired
    private Travellers travellers;

    @Autowired
    private Orders orders;

    @Autowired
    private Signing signing;

    @Autowired
    private Readings readings;

    @Autowired
    private JdbcClient jdbc;

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
    void aFrameOpenedAgainAfterItsLastOperationIsFinishedOnceMoreAndShipped() {
        var frame = shop.frame(SmallRoute.of(
                        op("180").step("torque").sheet(), op("200").step("pack").sheet())
                .sheet());
        shop.tickAll(frame, worker);
        shop.tickAll(frame, worker);
        assertThat(orders.byId(frame.orderId()).state()).isEqualTo(OrderState.READY_TO_SHIP);
        shop.clock().pass(Duration.ofHours(1));
        long packed = step(frame.travellerId(), "200");
        bench.untick(shop.act(qa), packed, "the box stays open for the manual");
        assertThat(travellers.head(frame.travellerId()).state()).isEqualTo(TravellerState.IN_WORK);
        assertThat(orders.byId(frame.orderId()).state()).isEqualTo(OrderState.IN_WORK);
        bench.tick(shop.act(worker), List.of(packed), null, null);
        assertThat(orders.byId(frame.orderId()).state()).isEqualTo(OrderState.READY_TO_SHIP);
        shipping.ship(shop.act(worker), frame.travellerId(), frame.serial());
        assertThat(orders.byId(frame.orderId()).state()).isEqualTo(OrderState.SHIPPED);
    }

    /** Nothing the service does leaves such a point behind; what is at stake is looked for all the same. */
    @Test
    void aPointThatOneOfTwoHasSignedKeepsTheFrameInTheShop() {
        var frame = shop.frame(SmallRoute.of(
                        op("080").step("weld").hold(Signer.SECOND, Signer.QA).sheet(),
                        op("200").step("pack").sheet())
                .sheet());
        long second = shop.hire(Role.STATION_WORKER);
        shop.tickAll(frame, worker);
        long welded = shop.at(frame).line().operationId();
        signing.sign(shop.act(second), welded, second, Signer.SECOND);
        signing.sign(shop.act(qa), welded, qa, Signer.QA);
        shop.tickAll(frame, worker);
        jdbc.sql("update operation set void_signature_id = (select min(id) from signature where operation_id = ?)"
                        + " where id = ?")
                .params(welded, welded)
                .update();
        AtTheBench.refused(
                () -> shipping.ship(shop.act(worker), frame.travellerId(), frame.serial()), "080", "is not signed");
    }

    @Test
    void theFrameThatLeavesTakesItsPartsWithIt() {
        var frame = shop.frame(SmallRoute.of(op("170").joins().step("join").sheet())
                .child("FT", SmallRoute.of(op("150").step("coat").sheet()))
                .child("SA", SmallRoute.of(op("150").step("coat").sheet()))
                .sheet());
        for (String part : List.of("FT", "SA")) {
            long part150 = travellers.inForce(frame.serial(), part).travellerId();
            bench.tick(shop.act(worker), List.of(step(part150, "150")), null, null);
        }
        shop.tickAll(frame, worker);
        long front = travellers.inForce(frame.serial(), "FT").travellerId();
        shipping.ship(shop.act(worker), frame.travellerId(), frame.serial());
        assertThat(travellers.heads(frame.serial()))
                .extracting(FrameSheet.Head::state)
                .containsOnly(TravellerState.SHIPPED);
        assertThat(travellers.inShop()).extracting(FrameSheet.Head::serial).doesNotContain(frame.serial());
        AtTheBench.refused(() -> bench.untick(shop.act(qa), step(front, "150"), "thin at the head tube"), "is shipped");
    }

    @Test
    void aJoinedFrameGoesOnOnlyWhileEveryPartOfItIsFinished() {
        var frame = shop.frame(SmallRoute.of(
                        op("170").joins().step("join").sheet(),
                        op("180")
                                .step("assemble")
                                .step("torque")
                                .hold(Signer.SECOND)
                                .sheet(),
                        op("190").step("pack").sheet())
                .child(
                        "FT",
                        SmallRoute.of(
                                op("160").plain("160-1", "0.3").step("wipe").sheet()))
                .sheet());
        long part = travellers.inForce(frame.serial(), "FT").travellerId();
        String gauge = shop.gauge("CALLIPER", "mm", null, LocalDate.of(2027, 1, 1));
        long reading = shop.read(
                        worker,
                        travellers.sheet(part).at().characteristics().get(0).characteristicId(),
                        gauge,
                        "0.1")
                .readingId();
        long wiped = step(part, "160");
        bench.tick(shop.act(worker), List.of(wiped), null, null);
        shop.tickAll(frame, worker);
        AtTheBench.refused(() -> bench.untick(shop.act(worker), wiped, "wiped the wrong one"), "later operation");
        AtTheBench.refused(() -> correct(worker, reading, gauge), "later operation");
        long assembled = shop.at(frame).line().operationId();
        List<FrameSheet.StepLine> steps = shop.at(frame).steps();
        bench.tick(shop.act(worker), List.of(steps.get(0).stepId()), null, null);
        bench.untick(shop.act(qa), wiped, "wiped the wrong one");
        List<Long> torque = List.of(steps.get(1).stepId());
        AtTheBench.refused(() -> bench.tick(shop.act(worker), torque, null, null), "FT", "160");
        assertThat(shop.sheet(frame).inTheWay())
                .anySatisfy(r -> assertThat(r.why()).contains("FT"));
        bench.tick(shop.act(worker), List.of(wiped), null, null);
        bench.tick(shop.act(worker), torque, null, null);
        correct(qa, reading, gauge);
        AtTheBench.refused(() -> signing.sign(shop.act(qa), assembled, qa, Signer.SECOND), "FT", "160");
        assertThat(shop.sheet(frame).inTheWay())
                .anySatisfy(r -> assertThat(r.why()).contains("FT"));
    }

    private void correct(long by, long reading, String gauge) {
        readings.correct(
                shop.act(by),
                reading,
                new Readings.Input(List.of(new BigDecimal("0.5")), gauge, null, true),
                "read the wrong line");
    }

    private long step(long travellerId, String code) {
        return travellers.strips(List.of(travellerId)).get(travellerId).stream()
                .filter(o -> o.code().equals(code))
                .map(o -> travellers.operation(o.operationId()).steps().get(0).stepId())
                .findFirst()
                .orElseThrow();
    }
}
