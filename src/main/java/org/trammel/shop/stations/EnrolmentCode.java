package org.trammel.shop.stations;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Duration;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** A code that makes a tablet the named device. Typed once, within a quarter of an hour. */
@Entity
@Table(name = "enrolment_code")
class EnrolmentCode {

    static final Duration LIFE = Duration.ofMinutes(15);

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private @Nullable Long id;

    @Column(name = "device_id", nullable = false)
    private long deviceId;

    @Column(name = "code_hash", nullable = false)
    private String codeHash;

    @Column(name = "made_at", nullable = false)
    private Instant madeAt;

    @Column(name = "made_by", nullable = false)
    private long madeBy;

    @Column(name = "expires_at", nullable = false)
    private Instant expiresAt;

    @Column(name = "used_at")
    private @Nullable Instant usedAt;

    protected EnrolmentCode() {}

    EnrolmentCode(long deviceId, String codeHash, Instant at, long by) {
        this.deviceId = deviceId;
        this.codeHash = codeHash;
        this.madeAt = at;
        this.madeBy = by;
        this.expiresAt = at.plus(LIFE);
    }

    boolean open(Instant at) {
        return usedAt == null && at.isBefore(expiresAt);
    }

    void use(Instant at) {
        usedAt = at;
    }

    long deviceId() {
        return deviceId;
    }

    long madeBy() {
        return madeBy;
    }

    Instant expiresAt() {
        return expiresAt;
    }
}
