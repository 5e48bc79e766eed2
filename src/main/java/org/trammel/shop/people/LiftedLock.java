package org.trammel.shop.people;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** A lock that somebody lifted for another, and why. Only added to. */
@Entity
@Table(name = "lifted_lock")
class LiftedLock {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private @Nullable Long id;

    @Column(name = "person_id", nullable = false)
    private long personId;

    @Column(name = "lifted_by", nullable = false)
    private long liftedBy;

    @Column(nullable = false)
    private Instant at;

    @Column(name = "reason_id", nullable = false)
    private long reasonId;

    protected LiftedLock() {}

    LiftedLock(long personId, long liftedBy, Instant at, long reasonId) {
        this.personId = personId;
        this.liftedBy = liftedBy;
        this.at = at;
        this.reasonId = reasonId;
    }

    long id() {
        if (id == null) {
            throw new IllegalStateException("The lifted lock is not stored yet");
        }
        return id;
    }

    long liftedBy() {
        return liftedBy;
    }

    Instant at() {
        return at;
    }

    long reasonId() {
        return reasonId;
    }
}
