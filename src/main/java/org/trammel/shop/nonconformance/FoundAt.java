package org.trammel.shop.nonconformance;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** At which operations nonconformances were found, for whoever counts them. */
@Service
@Transactional(readOnly = true)
public class FoundAt {

    private final NonconformanceRepository all;

    FoundAt(NonconformanceRepository all) {
        this.all = all;
    }

    /**
     * A nonconformance that was one: those cleared since are left out.
     *
     * @param hours of work its decision was put at; null if none were written down, or nothing is decided
     */
    public record Line(long operationId, @Nullable BigDecimal hours) {}

    /** Those opened since a moment; one statement. */
    public List<Line> since(Instant moment) {
        return all.foundSince(moment).stream()
                .filter(each -> each.decision() != Decision.CLEARED)
                .map(each -> new Line(each.operationId(), each.decidedAt() == null ? null : each.hours()))
                .toList();
    }
}
