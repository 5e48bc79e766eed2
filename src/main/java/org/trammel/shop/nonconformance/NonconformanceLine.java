package org.trammel.shop.nonconformance;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.people.Role;

/** A nonconformance as the screens and the programs read it. */
public record NonconformanceLine(
        long id,
        String number,
        String serial,
        String part,
        long travellerId,
        long operationId,
        String operationCode,
        String faultCode,
        @Nullable Long characteristicId,
        @Nullable String characteristicCode,
        @Nullable Long readingId,
        String words,
        NonconformanceState state,
        long openedBy,
        Instant openedAt,
        @Nullable Decision decision,
        int decisionNumber,
        @Nullable String decisionWords,
        @Nullable String fromCode,
        @Nullable String limits,
        @Nullable LocalDate expiresOn,
        boolean changesWhatWasOrdered,
        @Nullable String customerAgreement,
        @Nullable BigDecimal hours,
        @Nullable BigDecimal materialCost,
        Set<Long> stillValid,
        @Nullable Instant decidedAt,
        @Nullable Instant closedAt,
        @Nullable String closeWords,
        List<Agreed> agreed) {

    /** Somebody's agreement to the decision as it stands. */
    public record Agreed(String name, Role as, Instant at) {}

    static NonconformanceLine of(Nonconformance n, List<Agreed> agreed, Map<Wording.About, String> said) {
        return new NonconformanceLine(
                n.id(),
                n.number(),
                n.serial(),
                n.part(),
                n.travellerId(),
                n.operationId(),
                n.operationCode(),
                n.faultCode(),
                n.characteristicId(),
                n.characteristicCode(),
                n.readingId(),
                said.getOrDefault(Wording.About.FOUND, ""),
                n.state(),
                n.openedBy(),
                n.openedAt(),
                n.decision(),
                n.decisionNumber(),
                said.get(Wording.About.DECISION),
                n.decision() != null && n.decision().loops() ? n.fromCode() : null,
                said.get(Wording.About.LIMITS),
                n.expiresOn(),
                n.changesWhatWasOrdered(),
                said.get(Wording.About.CUSTOMER),
                n.hours(),
                n.materialCost(),
                n.stillValid(),
                n.decidedAt(),
                n.closedAt(),
                said.get(Wording.About.CLOSING),
                agreed);
    }
}
