package org.trammel.shop.travellers;

import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.data.domain.Limit;
import org.springframework.scheduling.annotation.Scheduled;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionTemplate;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;

/**
 * Acts on windows that close while nobody looks: the clock is marked, a call is raised, whoever waits for the window is
 * told, once nothing done inside it can arrive any more. The gate itself does not depend on this: it reads the time.
 */
@Component
class ClockWatch {

    private static final Logger LOG = LoggerFactory.getLogger(ClockWatch.class);
    private static final Limit AT_ONCE = Limit.of(100);

    private final FrameClockRepository clocks;
    private final Locator locator;
    private final TravellerRepository travellers;
    private final ShopCallRepository calls;
    private final ActLog log;
    private final Clock clock;
    private final TransactionTemplate transaction;
    private final ApplicationEventPublisher events;

    ClockWatch(
            FrameClockRepository clocks,
            Locator locator,
            TravellerRepository travellers,
            ShopCallRepository calls,
            ActLog log,
            Clock clock,
            TransactionTemplate transaction,
            ApplicationEventPublisher events) {
        this.clocks = clocks;
        this.locator = locator;
        this.travellers = travellers;
        this.calls = calls;
        this.log = log;
        this.clock = clock;
        this.transaction = transaction;
        this.events = events;
    }

    /** Marks every window that is past; one transaction each, so that one bad frame does not stop the others. */
    @Scheduled(fixedDelayString = "${trammel.clock-watch:20s}")
    void look() {
        Instant now = clock.instant().truncatedTo(ChronoUnit.MICROS);
        for (FrameClock closed : clocks.closedBefore(now.minus(ClockRanOut.MAY_ARRIVE_LATE), AT_ONCE)) {
            try {
                transaction.executeWithoutResult(t -> notice(closed.id(), closed.travellerId(), now));
            } catch (RuntimeException e) {
                LOG.warn("Clock {} could not be marked as run out: {}", closed.id(), e.getMessage());
            }
        }
    }

    private void notice(long clockId, long travellerId, Instant now) {
        Act act = new Act(UUID.randomUUID(), Act.SERVICE, null, now, null);
        List<Locator.Place> places = locator.ofTraveller(travellerId);
        log.opens(act, "clock ran out", "clock:" + clockId, Bench.chains(places));
        Traveller traveller = travellers.findById(travellerId).orElseThrow();
        FrameClock found = clocks.findById(clockId).orElseThrow();
        if (!found.closedAt(now) || found.state() != ClockState.RUNNING) {
            return;
        }
        found.runOut();
        if (traveller.state().open()) {
            calls.save(new ShopCall(
                    traveller.id(),
                    traveller.currentOperationId(),
                    "The window " + found.name() + " of " + traveller.mark() + " has closed.",
                    Act.SERVICE,
                    now));
            events.publishEvent(new ClockRanOut(
                    act, traveller.id(), traveller.serial(), traveller.part(), found.code(), found.name()));
        }
        log.event(traveller.chain(), "clock ran out", Map.of("clock", found.code(), "part", traveller.part()));
    }
}
