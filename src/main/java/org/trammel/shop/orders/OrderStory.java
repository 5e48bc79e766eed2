package org.trammel.shop.orders;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.designs.DesignState;
import org.trammel.shop.designs.RevisionSummary;

/**
 * Everything the sheet of an order shows.
 *
 * @param customer null where the reader may not see what the customer told
 * @param revisions of its design, first one first
 */
record OrderStory(
        OrderSheet sheet,
        OrderDetails details,
        long version,
        Money money,
        @Nullable CustomerLine customer,
        List<RevisionSummary> revisions,
        List<PromiseLine> promises,
        List<PriceLine> prices,
        List<CostLine> costs,
        List<PartLine> parts,
        List<ChangeLine> changes,
        String orderedBy,
        @Nullable Instant beganAt,
        @Nullable Instant finishedAt,
        @Nullable String cancelled) {

    /** @param spent amounts and hours at the rate of their day, together */
    record Money(@Nullable BigDecimal price, String currency, BigDecimal hours, BigDecimal spent) {}

    record CustomerLine(
            long id,
            @Nullable String name,
            @Nullable String contact,
            String country,
            @Nullable LocalDate consentOn,
            @Nullable Instant erasedAt) {}

    record PromiseLine(LocalDate on, BigDecimal percentile, String reason, String by, Instant at) {}

    record PriceLine(BigDecimal amount, String currency, String reason, String by, Instant at) {}

    record CostLine(
            CostKind kind,
            @Nullable BigDecimal hours,
            @Nullable BigDecimal amount,
            String reason,
            String by,
            Instant at) {

        public String word() {
            return switch (kind) {
                case WORK -> "work";
                case REWORK -> "rework";
                case MATERIAL -> "material";
                case OUTSIDE -> "done outside";
            };
        }
    }

    record PartLine(
            long id,
            String what,
            String description,
            @Nullable LocalDate dueOn,
            String state,
            String word,
            @Nullable Instant arrivedAt,
            @Nullable String measured,
            @Nullable String ended,
            @Nullable String agreed) {}

    record ChangeLine(
            long id,
            String state,
            String asked,
            String by,
            Instant at,
            @Nullable String answer) {}

    /** The same for a reader who may not see prices and costs. */
    OrderStory withoutMoney() {
        Money nothing = new Money(null, money.currency(), BigDecimal.ZERO, BigDecimal.ZERO);
        return new OrderStory(
                sheet,
                details,
                version,
                nothing,
                customer,
                revisions,
                promises,
                List.of(),
                List.of(),
                parts,
                changes,
                orderedBy,
                beganAt,
                finishedAt,
                cancelled);
    }

    /** The revision that waits for its release; null if none does. */
    public @Nullable RevisionSummary checked() {
        return in(DesignState.CHECKED);
    }

    /** The revision drawn last that was not withdrawn; null if there is none. */
    public @Nullable RevisionSummary latest() {
        RevisionSummary latest = null;
        for (RevisionSummary revision : revisions) {
            if (revision.state() != DesignState.WITHDRAWN) {
                latest = revision;
            }
        }
        return latest;
    }

    private @Nullable RevisionSummary in(DesignState state) {
        return revisions.stream()
                .filter(revision -> revision.state() == state)
                .findFirst()
                .orElse(null);
    }
}
