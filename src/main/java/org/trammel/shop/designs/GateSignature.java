package org.trammel.shop.designs;

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
import org.trammel.shop.people.Role;

/** One of the two signatures of a design gate. */
@Entity
@Table(name = "design_signature")
class GateSignature {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    private long revisionId;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    private Role capacity;

    private long personId;
    private Instant signedAt;

    protected GateSignature() {}

    GateSignature(long revisionId, Role capacity, long personId, Instant signedAt) {
        this.revisionId = revisionId;
        this.capacity = capacity;
        this.personId = personId;
        this.signedAt = signedAt;
    }

    Role capacity() {
        return capacity;
    }

    long personId() {
        return personId;
    }

    Instant signedAt() {
        return signedAt;
    }
}
