package org.trammel.shop.travellers;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** A part sent to somebody outside, and its way back with a certificate. */
@Entity
@Table(name = "consignment")
class Consignment {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "operation_id")
    private long operationId;

    private String recipient;

    @Column(name = "sent_by")
    private long sentBy;

    @Column(name = "sent_at")
    private Instant sentAt;

    @Column(name = "back_by")
    private @Nullable Long backBy;

    @Column(name = "back_at")
    private @Nullable Instant backAt;

    private @Nullable String certificate;

    @Version
    private long version;

    protected Consignment() {}

    Consignment(long operationId, String recipient, long sentBy, Instant sentAt) {
        this.operationId = operationId;
        this.recipient = recipient;
        this.sentBy = sentBy;
        this.sentAt = sentAt;
    }

    void comeBack(long by, Instant at, String certificate) {
        backBy = by;
        backAt = at;
        this.certificate = certificate;
    }

    long id() {
        return id;
    }

    long operationId() {
        return operationId;
    }

    String recipient() {
        return recipient;
    }

    long sentBy() {
        return sentBy;
    }

    Instant sentAt() {
        return sentAt;
    }

    @Nullable
    Long backBy() {
        return backBy;
    }

    @Nullable
    Instant backAt() {
        return backAt;
    }

    @Nullable
    String certificate() {
        return certificate;
    }
}
