package org.trammel.shop.travellers;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.LocalDate;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Act;

/** What a newer revision said of an operation done under the old one. Only added to. */
@Entity
@Table(name = "carry_over")
class CarryOver {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "old_operation_id")
    private long oldOperationId;

    /** Null where the newer route does not have the operation any more. */
    @Column(name = "new_operation_id")
    private @Nullable Long newOperationId;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    private Carry verdict;

    private String reason;

    @Column(name = "person_id")
    private long personId;

    private Instant at;

    @Column(name = "owner_id")
    private @Nullable Long ownerId;

    /** Only of rows that are older than {@link #customerWordsId}. */
    @Column(name = "customer_agreement")
    private @Nullable String customerAgreement;

    @Column(name = "customer_words_id")
    private @Nullable Long customerWordsId;

    private @Nullable String limits;

    /** Last day on which what is kept by concession lets a gate be passed. */
    @Column(name = "expires_on")
    private @Nullable LocalDate expiresOn;

    protected CarryOver() {}

    /**
     * @param agreed who agreed to what; null unless it is kept by concession
     * @param customerWordsId who of the customer agreed, when and how; null unless it is kept by concession
     */
    CarryOver(
            Operation old,
            @Nullable Operation fresh,
            Revising.Said said,
            Act act,
            Revising.@Nullable Agreed agreed,
            @Nullable Long customerWordsId) {
        this.oldOperationId = old.id();
        this.newOperationId = fresh == null ? null : fresh.id();
        this.verdict = said.verdict();
        this.reason = said.reason();
        this.personId = act.by();
        this.at = act.at();
        this.ownerId = agreed == null ? null : agreed.ownerId();
        this.limits = agreed == null ? null : agreed.limits();
        this.expiresOn = agreed == null ? null : agreed.expiresOn();
        this.customerWordsId = customerWordsId;
    }

    @Nullable
    String limits() {
        return limits;
    }

    @Nullable
    LocalDate expiresOn() {
        return expiresOn;
    }

    long id() {
        return id;
    }

    long oldOperationId() {
        return oldOperationId;
    }

    @Nullable
    Long newOperationId() {
        return newOperationId;
    }

    Carry verdict() {
        return verdict;
    }

    String reason() {
        return reason;
    }

    long personId() {
        return personId;
    }

    Instant at() {
        return at;
    }

    @Nullable
    Long ownerId() {
        return ownerId;
    }

    @Nullable
    Long customerWordsId() {
        return customerWordsId;
    }

    @Nullable
    String customerAgreement() {
        return customerAgreement;
    }
}
