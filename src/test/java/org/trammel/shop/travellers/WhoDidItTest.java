package org.trammel.shop.travellers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.trammel.shop.floor.SmallRoute.op;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.trammel.shop.ShopTest;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.routes.Signer;

/** Who counts as having done the work of an operation, and so does not sign its point. */
@ShopTest
class WhoDidItTest {

    @Autowired
    private ApplicationContext beans;

    @Autowired
    private Bench bench;

    @Autowired
    private Signing signing;

    @Autowired
    private Evidence evidence;

    @Autowired
    private Revising revising;

    @Autowired
    private Travellers travellers;

    private WholeShop shop;
    private long first;
    private long second;
    private long third;
    private long fourth;
    private long qa;
    private String calliper;

    @BeforeEach
    void open() {
        shop = new WholeShop(beans);
        first = shop.hire(Role.STATION_WORKER);
        second = shop.hire(Role.STATION_WORKER);
        third = shop.hire(Role.STATION_WORKER);
        fourth = shop.hire(Role.STATION_WORKER);
        qa = shop.hire(Role.QA_LEAD);
        calliper = shop.gauge("CALLIPER", "mm", null, LocalDate.of(2027, 1, 1));
    }

    @Test
    void theLeadWhoTookATickBackBehindTheGateSignsItAnew() {
        WholeShop.Frame frame = shop.frame(SmallRoute.of(
                        op("120").step("wipe").hold(Signer.QA).sheet(),
                        op("200").step("pack").sheet())
                .sheet());
        FrameSheet.OperationSheetOfFrame point = shop.at(frame);
        long operation = point.line().operationId();
        shop.tickAll(frame, first);
        signing.sign(shop.act(qa), operation, qa, Signer.QA);
        bench.untick(shop.act(qa), point.steps().get(0).stepId(), "not wiped");
        assertThat(evidence.barredFrom(operation, Signer.QA)).containsExactly(first);
        shop.tickAll(frame, second);
        signing.sign(shop.act(qa), operation, qa, Signer.QA);
        assertThat(shop.at(frame).line().code()).isEqualTo("200");
    }

    @Test
    void whoTickedStaysADoerAlthoughTheTickWasTakenBack() {
        WholeShop.Frame frame = shop.frame(
                SmallRoute.of(op("120").step("wipe").hold(Signer.SECOND).sheet())
                        .sheet());
        FrameSheet.OperationSheetOfFrame point = shop.at(frame);
        shop.tickAll(frame, first);
        bench.untick(shop.act(first), point.steps().get(0).stepId(), null);
        shop.tickAll(frame, second);
        assertThat(refused(() -> signing.sign(shop.act(first), point.line().operationId(), first, Signer.SECOND)))
                .contains("ticked or measured");
    }

    @Test
    void whoDidWhatWasCarriedOverDoesNotSignItsPointUnderTheNewerRevision() {
        long route = shop.route(SmallRoute.of(
                        op("080")
                                .step("look over")
                                .step("wipe")
                                .plain("080-1", "0.3")
                                .hold(Signer.SECOND)
                                .sheet(),
                        op("200").step("pack").sheet())
                .sheet());
        WholeShop.Frame old = shop.frame(route);
        FrameSheet.OperationSheetOfFrame done = shop.at(old);
        bench.tick(shop.act(first), List.of(done.steps().get(0).stepId()), null, null);
        bench.tick(shop.act(second), List.of(done.steps().get(1).stepId()), null, null);
        shop.read(third, done.characteristics().get(0).characteristicId(), calliper, "0.1");
        signing.sign(shop.act(fourth), done.line().operationId(), fourth, Signer.SECOND);
        WholeShop.Frame newer = superseded(superseded(old, route, 2), route, 3);
        long point = operation(newer, "080");
        long wiped = travellers.operation(point).steps().get(1).stepId();
        bench.untick(shop.act(qa), wiped, "not wiped");
        assertThat(evidence.tookPart(point)).contains(first, second, third);
        bench.tick(shop.act(second), List.of(wiped), null, null);
        for (long doer : List.of(first, second, third)) {
            assertThat(refused(() -> signing.sign(shop.act(doer), point, doer, Signer.SECOND)))
                    .contains("ticked or measured");
        }
        signing.sign(shop.act(fourth), point, fourth, Signer.SECOND);
    }

    @Test
    void whoDidWhatIsToBeRepeatedMaySignWhatOthersDidAnew() {
        long route = shop.route(SmallRoute.of(
                        op("080").step("look over").hold(Signer.SECOND).sheet(),
                        op("200").step("pack").sheet())
                .sheet());
        WholeShop.Frame old = shop.frame(route);
        shop.tickAll(old, first);
        signing.sign(shop.act(second), shop.at(old).line().operationId(), second, Signer.SECOND);
        WholeShop.Frame newer = superseded(old, route, 2, Carry.REPEAT);
        shop.tickAll(newer, third);
        signing.sign(shop.act(first), operation(newer, "080"), first, Signer.SECOND);
        assertThat(shop.at(newer).line().code()).isEqualTo("200");
    }

    @Test
    void aNewReadingAtAPointAsksForTheSignaturesAnew() {
        WholeShop.Frame frame = measured();
        long point = shop.at(frame).line().operationId();
        signing.sign(shop.act(qa), point, qa, Signer.QA);
        shop.read(first, characteristic(frame), calliper, "0.29");
        assertThat(shop.at(frame).line().state()).isEqualTo(OperationState.AT_POINT);
        signing.sign(shop.act(second), point, second, Signer.SECOND);
        assertThat(shop.at(frame).line().code())
                .as("the QA lead signed for another value")
                .isEqualTo("120");
        signing.sign(shop.act(qa), point, qa, Signer.QA);
        assertThat(shop.at(frame).line().code()).isEqualTo("200");
    }

    @Test
    void whoSignedAndThenReadDoesNotStandForBoth() {
        WholeShop.Frame frame = measured();
        long point = shop.at(frame).line().operationId();
        signing.sign(shop.act(second), point, second, Signer.SECOND);
        shop.read(second, characteristic(frame), calliper, "0.2");
        signing.sign(shop.act(qa), point, qa, Signer.QA);
        assertThat(shop.at(frame).line().code()).isEqualTo("120");
        assertThat(refused(() -> signing.sign(shop.act(second), point, second, Signer.SECOND)))
                .contains("ticked or measured");
        signing.sign(shop.act(third), point, third, Signer.SECOND);
        assertThat(shop.at(frame).line().code()).isEqualTo("200");
    }

    /** Measured by the first and at its point, which a second and the QA lead sign. */
    private WholeShop.Frame measured() {
        WholeShop.Frame frame = shop.frame(SmallRoute.of(
                        op("120")
                                .plain("120-1", "0.3")
                                .hold(Signer.SECOND, Signer.QA)
                                .sheet(),
                        op("200").step("pack").sheet())
                .sheet());
        shop.read(first, characteristic(frame), calliper, "0.1");
        return frame;
    }

    private long characteristic(WholeShop.Frame frame) {
        return shop.at(frame).characteristics().get(0).characteristicId();
    }

    private WholeShop.Frame superseded(WholeShop.Frame old, long route, int position) {
        return superseded(old, route, position, Carry.STILL_VALID);
    }

    /** The same frame under a newer drawing; one verdict on everything done. */
    private WholeShop.Frame superseded(WholeShop.Frame old, long route, int position, Carry verdict) {
        Map<Long, Revising.Said> said = revising.finished(old.orderId()).stream()
                .collect(Collectors.toMap(
                        Revising.Finished::operationId,
                        done -> new Revising.Said(verdict, "the drawing changed elsewhere")));
        long drawing = shop.drawing(old.designId(), position, Map.of());
        revising.supersede(shop.act(qa), old.orderId(), drawing, route, said, null);
        long now = travellers.inForce(old.serial(), "").travellerId();
        return new WholeShop.Frame(old.orderId(), old.designId(), old.number(), now, old.serial());
    }

    private long operation(WholeShop.Frame frame, String code) {
        return travellers.strips(List.of(frame.travellerId())).get(frame.travellerId()).stream()
                .filter(o -> o.code().equals(code))
                .findFirst()
                .orElseThrow()
                .operationId();
    }

    private static String refused(org.assertj.core.api.ThrowableAssert.ThrowingCallable deed) {
        Refusal refused = catchThrowableOfType(Refusal.class, deed);
        assertThat(refused).isNotNull();
        return refused.why();
    }
}
