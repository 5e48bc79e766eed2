package org.trammel.shop.drift;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.transaction.support.TransactionTemplate;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.people.Role;
import org.trammel.shop.travellers.Travellers;

/** A reading that reaches its chart late, or while the chart is only begun, counts and calls like any other. */
class LateReadingsTest extends WatchedJigs {

    @Autowired
    private ApplicationContext beans;

    @Autowired
    private JigUses uses;

    @Autowired
    private Travellers travellers;

    @Autowired
    private TransactionTemplate transactions;

    private WholeShop shop;
    private long worker;
    private String gauge;

    @BeforeEach
    void atWork() {
        shop = new WholeShop(beans);
        worker = shop.hire(Role.WELDER, Role.STATION_WORKER);
        gauge = shop.gauge("CALLIPER", "mm", null, LocalDate.of(2027, 1, 1));
    }

    private WholeShop.Frame welded() {
        WholeShop.Frame frame = shop.frame(SmallRoute.of(
                        SmallRoute.op("060").step("weld").sheet(),
                        SmallRoute.op("080")
                                .plain(code, "2")
                                .plain("089-1", "2")
                                .sheet())
                .sheet());
        shop.tickAll(frame, worker);
        return frame;
    }

    private WholeShop.Frame welded(String jig) {
        WholeShop.Frame frame = welded();
        uses.setUp(shop.act(worker), frame.serial(), "", jig, null);
        return frame;
    }

    private void read(WholeShop.Frame frame, String value) {
        shop.clock().pass(Duration.ofMinutes(1));
        shop.read(worker, shop.at(frame).characteristics().get(0).characteristicId(), gauge, value);
    }

    /**
     * A reading of 1.5 mm where 0.35 mm is the standard deviation is beyond three of them (W. A. Shewhart, 1931). Its jig was
     * noted only after the next frame was read, which is within, as is its range of 1.0 mm (limit 3.267 · 1.128 · 0.35 = 1.29 mm, ISO 7870-2): 0.5 mm, and the cumulative sum and the weighted mean of the
     * readings before are made to forget by a wide decision and width.
     */
    @Test
    void aReadingWhoseJigIsNotedLateCallsThoughTheNewestIsWithin() {
        Series series = watch(one);
        book.base(hands.act(qa), series.id(), readingsAlone());
        WholeShop.Frame late = welded();
        read(late, "1.5");
        WholeShop.Frame next = welded(one);
        read(next, "0.5");
        assertThat(calls(one)).isEmpty();
        uses.setUp(shop.act(worker), late.serial(), "", one, null);
        assertThat(charts.of(series.id()).values()).containsExactly(1.5, 0.5);
        assertThat(charts.of(series.id()).driftsSince()).isNegative();
        assertThat(calls(one)).hasSize(1);
        assertThat(stations.jig(one).orElseThrow().stopped()).isTrue();
        stations.freeJig(hands.act(qa), one);
        WholeShop.Frame third = welded(one);
        read(third, "-0.1");
        assertThat(calls(one)).as("nobody is called twice for it").hasSize(1);
    }

    private static NewBase readingsAlone() {
        return new NewBase(
                Base.Kind.GIVEN,
                null,
                null,
                null,
                BigDecimal.ZERO,
                new BigDecimal("0.35"),
                new BigDecimal("0.2"),
                new BigDecimal("99"),
                new BigDecimal("0.5"),
                new BigDecimal("99"),
                true,
                "trial",
                "begin",
                null);
    }

    private List<String> calls(String jig) {
        return travellers.openCalls().stream()
                .map(Travellers.CallLine::words)
                .filter(words -> words.contains("jig " + jig + " "))
                .toList();
    }

    /** On H2, where one transaction at a time writes, the second waits for the first; on PostgreSQL they cross. */
    @Test
    void aReadingOnItsWayWhileItsAxisBeginsToBeWatchedStandsOnTheChartAfterTheNextLook() throws Exception {
        WholeShop.Frame crossing = welded(one);
        WholeShop.Frame next = welded(one);
        Series[] begun = new Series[1];
        Thread watcher = new Thread(() -> begun[0] = watch(one));
        transactions.executeWithoutResult(open -> {
            read(crossing, "0.3");
            watcher.start();
            waitFor(watcher, 3000);
        });
        waitFor(watcher, 30000);
        read(next, "0.1");
        assertThat(charts.of(begun[0].id()).values()).containsExactly(0.3, 0.1);
        assertThat(charts.standing(begun[0].id()).kept().stale()).isFalse();
    }

    private static void waitFor(Thread other, long millis) {
        try {
            other.join(millis);
        } catch (InterruptedException interrupted) {
            throw new IllegalStateException(interrupted);
        }
    }
}
