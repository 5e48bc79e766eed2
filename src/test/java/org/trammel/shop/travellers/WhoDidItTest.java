package org.trammel.shop.travellers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.trammel.shop.floor.SmallRoute.op;

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

    private WholeShop shop;
    private long first;
    private long second;
    private long qa;

    @BeforeEach
    void open() {
        shop = new WholeShop(beans);
        first = shop.hire(Role.STATION_WORKER);
        second = shop.hire(Role.STATION_WORKER);
        qa = shop.hire(Role.QA_LEAD);
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

    private static String refused(org.assertj.core.api.ThrowableAssert.ThrowingCallable deed) {
        Refusal refused = catchThrowableOfType(Refusal.class, deed);
        assertThat(refused).isNotNull();
        return refused.why();
    }
}
