package org.trammel.shop.people;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;

/** One person signed on at one device, from a time to a time. */
@Entity
@Table(name = "sign_on")
class SignOnRow {

    enum End {
        SIGNED_OFF,
        CHANGED,
        SWAPPED,
        LOCKED,
        LEFT,
        WITHDRAWN
    }

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private @Nullable Long id;

    @Column(name = "device_id", nullable = false)
    private long deviceId;

    @Column(name = "person_id", nullable = false)
    private long personId;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    @Column(nullable = false)
    private Place place;

    @Column(nullable = false)
    private Instant since;

    @Column(name = "last_seen", nullable = false)
    private Instant lastSeen;

    @Column(name = "ended_at")
    private @Nullable Instant endedAt;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    @Column(name = "end_reason")
    private @Nullable End endReason;

    @Column(name = "open_key")
    private @Nullable String openKey;

    protected SignOnRow() {}

    SignOnRow(long deviceId, long personId, Place place, Instant since, Instant lastSeen) {
        this.deviceId = deviceId;
        this.personId = personId;
        this.place = place;
        this.since = since;
        this.lastSeen = lastSeen;
        this.openKey = deviceId + ":" + place;
    }

    void end(Instant at, End reason) {
        this.endedAt = at;
        this.endReason = reason;
        this.openKey = null;
    }

    long personId() {
        return personId;
    }

    Place place() {
        return place;
    }

    Instant since() {
        return since;
    }

    Instant lastSeen() {
        return lastSeen;
    }
}
