package org.trammel.shop.nonconformance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.trammel.shop.ShopTest;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.travellers.Bench;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.Travellers;

/** Frames that were found not conforming, and those who decide. */
@ShopTest
abstract class AtTheDesk {

    @Autowired
    ApplicationContext beans;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    Opening opening;

    @Autowired
    Deciding deciding;

    @Autowired
    Bench bench;

    @Autowired
    Travellers travellers;

    WholeShop shop;
    long worker;
    long qa;
    long owner;
    String gauge;

    @BeforeEach
    void open() {
        shop = new WholeShop(beans);
        worker = shop.hire(Role.STATION_WORKER);
        qa = shop.hire(Role.QA_LEAD);
        owner = shop.hire(Role.OWNER);
        gauge = shop.gauge("CALLIPER", "mm", null, LocalDate.of(2027, 1, 1));
    }

    /** A frame whose 080-1 was read not conforming by the worker, who ticked nothing else. */
    WholeShop.Frame found(SmallRoute route) {
        WholeShop.Frame frame = shop.frame(route.sheet());
        while (shop.at(frame).characteristics().isEmpty()) {
            shop.tickAll(frame, worker);
        }
        shop.read(worker, shop.at(frame).characteristics().get(0).characteristicId(), gauge, "0.5");
        return frame;
    }

    WholeShop.Frame found() {
        return found(SmallRoute.of(
                SmallRoute.op("070").step("weld").sheet(),
                SmallRoute.op("080").plain("080-1", "0.3").sheet(),
                SmallRoute.op("200").step("pack").sheet()));
    }

    /** Id of the only nonconformance of a frame. */
    long of(WholeShop.Frame frame) {
        List<NonconformanceLine> all = deciding.of(frame.serial());
        assertThat(all).hasSize(1);
        return all.get(0).id();
    }

    /** Agrees to whatever is put forward now. */
    boolean agree(long person, long id) {
        return deciding.agree(shop.act(person), id, deciding.byId(id).decisionNumber());
    }

    NonconformanceState state(long id) {
        return deciding.byId(id).state();
    }

    List<FrameSheet.OperationLine> strip(WholeShop.Frame frame) {
        return travellers.strips(List.of(frame.travellerId())).get(frame.travellerId());
    }

    /** An operation with its loop, as people say it. */
    static String called(FrameSheet.OperationLine o) {
        return o.loop() == 0 ? o.code() : o.code() + " loop " + o.loop();
    }

    /** A decision with everything its kind asks for. */
    static Proposal complete(Decision decision, @Nullable String hours) {
        boolean loops = decision.loops();
        boolean concession = decision == Decision.CONCESSION;
        return new Proposal(
                decision,
                "looked at it",
                loops ? "080" : null,
                concession ? "this frame, this reading" : null,
                concession ? LocalDate.of(2026, 12, 31) : null,
                false,
                null,
                false,
                hours == null ? null : new BigDecimal(hours),
                null,
                Set.of());
    }

    static Refusal refusal(ThrowingCallable deed) {
        Refusal refused = catchThrowableOfType(Refusal.class, deed);
        assertThat(refused).isNotNull();
        assertThat(refused.what()).isNotBlank();
        assertThat(refused.why()).isNotBlank();
        assertThat(refused.instead()).isNotBlank();
        return refused;
    }
}
