package org.trammel.shop.nonconformance;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.Set;
import java.util.stream.Collectors;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Refusal;

/** One nonconformance of one frame or part. */
@Entity
@Table(name = "nonconformance")
class Nonconformance {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    private String serial;
    private String part;

    @Column(name = "traveller_id")
    private long travellerId;

    @Column(name = "operation_id")
    private long operationId;

    @Column(name = "operation_code")
    private String operationCode;

    @Column(name = "fault_code")
    private String faultCode;

    @Column(name = "characteristic_id")
    private @Nullable Long characteristicId;

    @Column(name = "characteristic_code")
    private @Nullable String characteristicCode;

    @Column(name = "reading_id")
    private @Nullable Long readingId;

    /** Whether it is about what is recorded of the operation, such as its coat, and not about a characteristic alone. */
    @Column(name = "of_record")
    private boolean ofRecord;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    private NonconformanceState state;

    @Column(name = "opened_by")
    private long openedBy;

    @Column(name = "opened_at")
    private Instant openedAt;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    private @Nullable Decision decision;

    @Column(name = "decision_number")
    private int decisionNumber;

    @Column(name = "from_code")
    private @Nullable String fromCode;

    @Column(name = "expires_on")
    private @Nullable LocalDate expiresOn;

    @Column(name = "changes_what_was_ordered")
    private boolean changesWhatWasOrdered;

    @Column(name = "beyond_limit")
    private boolean beyondLimit;

    private @Nullable BigDecimal hours;

    @Column(name = "material_cost")
    private @Nullable BigDecimal materialCost;

    @Column(name = "still_valid")
    private @Nullable String stillValid;

    @Column(name = "decided_at")
    private @Nullable Instant decidedAt;

    @Column(name = "closed_by")
    private @Nullable Long closedBy;

    @Column(name = "closed_at")
    private @Nullable Instant closedAt;

    @Version
    private long version;

    protected Nonconformance() {}

    /** Where it was found. */
    record Found(
            String serial,
            String part,
            long travellerId,
            long operationId,
            String operationCode,
            @Nullable Long characteristicId,
            @Nullable String characteristicCode,
            @Nullable Long readingId) {}

    Nonconformance(Found found, String faultCode, long by, Instant at) {
        this.serial = found.serial();
        this.part = found.part();
        this.travellerId = found.travellerId();
        this.operationId = found.operationId();
        this.operationCode = found.operationCode();
        this.characteristicId = found.characteristicId();
        this.characteristicCode = found.characteristicCode();
        this.readingId = found.readingId();
        this.faultCode = faultCode;
        this.openedBy = by;
        this.openedAt = at;
        this.state = NonconformanceState.OPEN;
    }

    void isOfRecord() {
        ofRecord = true;
    }

    /** Whether a concession has something that it lets stay as it is. */
    boolean concedable() {
        return characteristicId != null || ofRecord;
    }

    /** The operation at fault, once it is known better than where it was found. */
    void blame(String faultCode) {
        require(EnumSet.of(NonconformanceState.OPEN, NonconformanceState.PROPOSED), "given another operation at fault");
        this.faultCode = faultCode;
        if (state == NonconformanceState.PROPOSED) {
            state = NonconformanceState.OPEN;
        }
    }

    void propose(Proposal proposal) {
        require(EnumSet.of(NonconformanceState.OPEN, NonconformanceState.PROPOSED), "decided");
        decision = proposal.decision();
        decisionNumber++;
        fromCode = proposal.fromCode();
        expiresOn = proposal.expiresOn();
        changesWhatWasOrdered = proposal.changesWhatWasOrdered();
        beyondLimit = proposal.beyondLimit();
        hours = proposal.hours();
        materialCost = proposal.materialCost();
        stillValid = proposal.decision().outdatesWhatFollowed()
                        && !proposal.stillValid().isEmpty()
                ? proposal.stillValid().stream().sorted().map(String::valueOf).collect(Collectors.joining(","))
                : null;
        state = NonconformanceState.PROPOSED;
    }

    void decided(Instant at) {
        require(EnumSet.of(NonconformanceState.PROPOSED), "decided");
        state = NonconformanceState.DECIDED;
        decidedAt = at;
    }

    void close(long by, Instant at) {
        require(EnumSet.of(NonconformanceState.DECIDED), "closed");
        state = NonconformanceState.CLOSED;
        closedBy = by;
        closedAt = at;
    }

    void requireUndecided(String deed) {
        require(EnumSet.of(NonconformanceState.OPEN, NonconformanceState.PROPOSED), deed);
    }

    private void require(Set<NonconformanceState> allowed, String deed) {
        if (!allowed.contains(state)) {
            throw Refusal.state(
                    number() + " cannot be " + deed + ".",
                    "It is " + state.word() + (decision == null ? "." : ": " + decision.word() + "."),
                    "Only one that is "
                            + allowed.stream().map(NonconformanceState::word).collect(Collectors.joining(" or "))
                            + " can be.");
        }
    }

    /** The number people call it by. */
    String number() {
        return numberOf(id);
    }

    static String numberOf(long id) {
        return String.format("NC-%04d", id);
    }

    long id() {
        return id;
    }

    String serial() {
        return serial;
    }

    String part() {
        return part;
    }

    long travellerId() {
        return travellerId;
    }

    long operationId() {
        return operationId;
    }

    String operationCode() {
        return operationCode;
    }

    String faultCode() {
        return faultCode;
    }

    @Nullable
    Long characteristicId() {
        return characteristicId;
    }

    @Nullable
    String characteristicCode() {
        return characteristicCode;
    }

    @Nullable
    Long readingId() {
        return readingId;
    }

    NonconformanceState state() {
        return state;
    }

    long openedBy() {
        return openedBy;
    }

    Instant openedAt() {
        return openedAt;
    }

    @Nullable
    Decision decision() {
        return decision;
    }

    int decisionNumber() {
        return decisionNumber;
    }

    @Nullable
    String fromCode() {
        return fromCode;
    }

    @Nullable
    LocalDate expiresOn() {
        return expiresOn;
    }

    boolean changesWhatWasOrdered() {
        return changesWhatWasOrdered;
    }

    boolean beyondLimit() {
        return beyondLimit;
    }

    @Nullable
    BigDecimal hours() {
        return hours;
    }

    @Nullable
    BigDecimal materialCost() {
        return materialCost;
    }

    /** Operations done since it was found that the decision leaves as they are. */
    Set<Long> stillValid() {
        return stillValid == null
                ? Set.of()
                : Arrays.stream(stillValid.split(",")).map(Long::valueOf).collect(Collectors.toSet());
    }

    @Nullable
    Instant decidedAt() {
        return decidedAt;
    }

    @Nullable
    Long closedBy() {
        return closedBy;
    }

    @Nullable
    Instant closedAt() {
        return closedAt;
    }
}
