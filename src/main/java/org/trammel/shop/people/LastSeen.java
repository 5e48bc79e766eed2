package org.trammel.shop.people;

import jakarta.annotation.PreDestroy;
import java.time.Instant;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.springframework.scheduling.annotation.Scheduled;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * When a device was last used. Kept in memory and written every few seconds, so that a request costs no write for it;
 * after a crash a tablet locks those few seconds earlier.
 */
@Component
class LastSeen {

    private final SignOnRepository signOns;
    private final TransactionTemplate transaction;
    private final Map<Long, Instant> used = new ConcurrentHashMap<>();
    private final Map<Long, Instant> unwritten = new ConcurrentHashMap<>();

    LastSeen(SignOnRepository signOns, TransactionTemplate transaction) {
        this.signOns = signOns;
        this.transaction = transaction;
    }

    void touch(long deviceId, Instant at) {
        used.put(deviceId, at);
        unwritten.put(deviceId, at);
    }

    Instant of(long deviceId, Instant written) {
        Instant here = used.get(deviceId);
        return here == null || here.isBefore(written) ? written : here;
    }

    void forget(long deviceId) {
        used.remove(deviceId);
        unwritten.remove(deviceId);
    }

    @Scheduled(fixedDelay = 15_000)
    @PreDestroy
    void write() {
        unwritten.forEach((deviceId, at) -> {
            transaction.executeWithoutResult(status -> signOns.seen(deviceId, at));
            unwritten.remove(deviceId, at);
        });
    }
}
