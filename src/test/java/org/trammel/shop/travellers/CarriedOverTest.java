package org.trammel.shop.travellers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.trammel.shop.floor.SmallRoute.op;

import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.trammel.shop.ShopTest;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.routes.Signer;

/** A hold point signed under an older revision and carried over: signed it is, until it is opened again. */
@ShopTest
class CarriedOverTest {

    @Autowired
    private ApplicationContext beans;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private Bench bench;

    @Autowired
    private Signing signing;

    @Autowired
    private Travellers travellers;

    @Autowired
    private Shipping shipping;

    private WholeShop shop;
    private long worker;
    private long second;
    private long qa;
    private long route;
    private WholeShop.Frame old;
    private WholeShop.Frame frame;

    @BeforeEach
    void lookOverAndSign() {
        shop = new WholeShop(beans);
        worker = shop.hire(Role.STATION_WORKER);
        second = shop.hire(Role.STATION_WORKER);
        qa = shop.hire(Role.QA_LEAD);
        route = shop.route(SmallRoute.of(
                        op("080").step("look over").hold(Signer.SECOND).sheet(),
                        op("200").step("pack").sheet())
                .sheet());
        old = shop.frame(route);
        shop.tickAll(old, worker);
        signing.sign(shop.act(second), shop.at(old).line().operationId(), second, Signer.SECOND);
    }

    @Test
    void itIsNotSignedTwice() {
        supersede();
        shop.tickAll(frame, worker);
        shipping.ship(shop.act(worker), frame.travellerId(), frame.serial());
    }

    @Test
    void aFrameThatIsReadyToShipIsSupersededTooAndStaysReadyIfAllIsStillValid() {
        shop.tickAll(old, worker);
        supersede();
        assertThat(shop.sheet(old).head().state()).isEqualTo(TravellerState.WITHDRAWN);
        shipping.ship(shop.act(worker), frame.travellerId(), frame.serial());
        assertThat(shop.sheet(frame).head().state()).isEqualTo(TravellerState.SHIPPED);
    }

    @Test
    void whoTickedItDoesNotTakeItBackBehindTheSignature() {
        supersede();
        assertThat(catchThrowableOfType(Refusal.class, () -> bench.untick(shop.act(worker), step(), "not looked over"))
                        .kind())
                .isEqualTo(Refusal.Kind.PERSON);
    }

    @Test
    void openedAgainByTheLeadItIsSignedAnewBeforeTheFrameLeaves() {
        supersede();
        bench.untick(shop.act(qa), step(), "not looked over");
        shop.tickAll(frame, worker);
        assertThat(shop.at(frame).line().state()).isEqualTo(OperationState.AT_POINT);
        assertThat(catchThrowableOfType(
                        Refusal.class, () -> shipping.ship(shop.act(worker), frame.travellerId(), frame.serial())))
                .isNotNull();
    }

    private long step() {
        return jdbc.sql(
                        "select s.id from step s join operation o on o.id = s.operation_id where o.traveller_id = ? and o.code = '080'")
                .param(frame.travellerId())
                .query(Long.class)
                .single();
    }

    /** A newer drawing takes the place of the old one; whatever is done is still valid. */
    private void supersede() {
        Revising revising = beans.getBean(Revising.class);
        Map<Long, Revising.Said> said = revising.finished(old.orderId()).stream()
                .collect(Collectors.toMap(
                        Revising.Finished::operationId,
                        done -> new Revising.Said(Carry.STILL_VALID, "the drawing changed elsewhere")));
        long drawing = shop.drawing(old.designId(), 2, Map.of());
        revising.supersede(shop.act(qa), old.orderId(), drawing, route, said, null);
        long now = travellers.inForce(old.serial(), "").travellerId();
        frame = new WholeShop.Frame(old.orderId(), drawing, old.number(), now, old.serial());
    }
}
