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
import java.util.UUID;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.people.Person;
import org.trammel.shop.records.Act;
import org.trammel.shop.routes.Signer;

/** Who signed a hold or witness point, as what, and what it meant. Only added to. */
@Entity
@Table(name = "signature")
class Signature {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "operation_id")
    private long operationId;

    @Column(name = "person_id")
    private long personId;

    @Column(name = "person_name")
    private String personName;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    private Signer signer;

    private String meaning;

    private Instant at;

    @Column(name = "device_id")
    private @Nullable Long deviceId;

    @Column(name = "act_id")
    private UUID actId;

    protected Signature() {}

    Signature(Operation operation, Person person, Signer signer, String meaning, Act act) {
        this.operationId = operation.id();
        this.personId = person.id();
        this.personName = person.name();
        this.signer = signer;
        this.meaning = meaning;
        this.at = act.at();
        this.deviceId = act.device();
        this.actId = act.id();
    }

    long id() {
        return id;
    }

    long operationId() {
        return operationId;
    }

    long personId() {
        return personId;
    }

    String personName() {
        return personName;
    }

    Signer signer() {
        return signer;
    }

    String meaning() {
        return meaning;
    }

    Instant at() {
        return at;
    }

    @Nullable
    Long deviceId() {
        return deviceId;
    }

    UUID actId() {
        return actId;
    }
}
