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

/** A guess that was wrong. Only added to. */
@Entity
@Table(name = "sign_on_failure")
class SignOnFailure {

    enum Secret {
        PIN,
        PASSWORD,
        ENROLMENT,
        FIRST_OWNER
    }

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private @Nullable Long id;

    @Column(nullable = false)
    private Instant at;

    @Column(name = "person_id")
    private @Nullable Long personId;

    @Column(name = "device_id")
    private @Nullable Long deviceId;

    @Column(name = "address")
    private @Nullable String address;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    @Column(nullable = false)
    private Secret secret;

    @Column(nullable = false)
    private boolean locked;

    protected SignOnFailure() {}

    SignOnFailure(
            Instant at,
            Secret secret,
            @Nullable Long personId,
            @Nullable Long deviceId,
            @Nullable String address,
            boolean locked) {
        this.at = at;
        this.secret = secret;
        this.personId = personId;
        this.deviceId = deviceId;
        this.address = address;
        this.locked = locked;
    }

    Instant at() {
        return at;
    }

    Secret secret() {
        return secret;
    }

    @Nullable
    Long deviceId() {
        return deviceId;
    }

    @Nullable
    String address() {
        return address;
    }

    boolean locked() {
        return locked;
    }
}
