package org.trammel.shop.travellers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.trammel.shop.floor.SmallRoute.op;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.transaction.support.TransactionTemplate;
import org.trammel.shop.ShopTest;
import org.trammel.shop.TestClock;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Refusal;

/** A clean joint is clean for some hours: welded anew days later it is cleaned anew, whatever the first weld met. */
@ShopTest
class WindowJudgedAgainTest {

    @Autowired
    private ApplicationContext beans;

    @Autowired
    private TestClock clock;

    @Autowired
    private Rework rework;

    private WholeShop shop;
    private long worker;
    private long qa;
    private long route;
    private WholeShop.Frame frame;
    private long welded;

    @BeforeEach
    void cleanAndWeldInTime() {
        shop = new WholeShop(beans);
        worker = shop.hire(Role.STATION_WORKER);
        qa = shop.hire(Role.QA_LEAD);
        route = shop.route(SmallRoute.of(
                        op("050").step("clean").sheet(),
                        op("070").step("weld").sheet(),
                        op("200").step("pack").sheet())
                .window("CLEAN", 480, "050", "070")
                .sheet());
        frame = shop.frame(route);
        shop.tickAll(frame, worker);
        welded = shop.at(frame).line().operationId();
        shop.tickAll(frame, worker);
    }

    @Test
    void insideTheFirstWindowTheLoopBegins() {
        clock.pass(Duration.ofHours(7));
        repeatFrom("070");
        shop.tickAll(frame, worker);
        assertThat(shop.at(frame).line().code()).isEqualTo("200");
    }

    @Test
    void afterItTheLoopWaitsUntilItsStarterIsDoneAgain() {
        clock.pass(Duration.ofDays(2));
        repeatFrom("070");
        assertThat(refused().why()).contains("CLEAN closed");
        rework.redoForClock(shop.act(worker), shop.at(frame).line().operationId(), "CLEAN");
        assertThat(shop.at(frame).line().code()).isEqualTo("050");
        shop.tickAll(frame, worker);
        assertThatCode(() -> shop.tickAll(frame, worker)).doesNotThrowAnyException();
        assertThat(shop.at(frame).line().code()).isEqualTo("200");
    }

    @Test
    void whatALoopDoesFromTheStarterOnHasAWindowOfItsOwn() {
        clock.pass(Duration.ofDays(2));
        repeatFrom("050");
        shop.tickAll(frame, worker);
        shop.tickAll(frame, worker);
        assertThat(shop.at(frame).line().code()).isEqualTo("200");
    }

    @Test
    void aNewerRevisionThatKeepsTheStarterJudgesItAgainToo() {
        clock.pass(Duration.ofDays(2));
        Revising revising = beans.getBean(Revising.class);
        List<Revising.Finished> done = revising.finished(frame.orderId());
        Map<Long, Revising.Said> said = done.stream()
                .collect(Collectors.toMap(
                        Revising.Finished::operationId,
                        f -> new Revising.Said(f.code().equals("050") ? Carry.STILL_VALID : Carry.REPEAT, "why")));
        long drawing = shop.drawing(frame.designId(), 2, Map.of());
        revising.supersede(shop.act(qa), frame.orderId(), drawing, route, said, null);
        long now = beans.getBean(Travellers.class).inForce(frame.serial(), "").travellerId();
        frame = new WholeShop.Frame(frame.orderId(), drawing, frame.number(), now, frame.serial());
        assertThat(refused().why()).contains("CLEAN closed");
    }

    private void repeatFrom(String code) {
        beans.getBean(TransactionTemplate.class).executeWithoutResult(t -> {
            var act = shop.act(qa);
            beans.getBean(ActLog.class).opens(act, "rework of a test", "operation:" + welded, "shop");
            rework.repeat(act, new Rework.Loop(code, welded, "test", false, Set.of()));
        });
    }

    private Refusal refused() {
        return catchThrowableOfType(Refusal.class, () -> shop.tickAll(frame, worker));
    }
}
