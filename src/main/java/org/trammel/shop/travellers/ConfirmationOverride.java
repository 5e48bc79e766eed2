package org.trammel.shop.travellers;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.people.Person;
import org.trammel.shop.people.Standing;
import org.trammel.shop.records.Act;

/** One welder let do one operation although the six-month confirmation has run out. Only added to. */
@Entity
@Table(name = "confirmation_override")
class ConfirmationOverride {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private @Nullable Long id;

    @Column(name = "operation_id")
    private long operationId;

    @Column(name = "person_id")
    private long personId;

    private String qualification;

    @Column(name = "lapsed_on")
    private LocalDate lapsedOn;

    @Column(name = "given_by")
    private long givenBy;

    @Column(name = "given_name")
    private String givenName;

    private String reason;

    private Instant at;

    @Column(name = "device_id")
    private @Nullable Long deviceId;

    @Column(name = "act_id")
    private UUID actId;

    protected ConfirmationOverride() {}

    ConfirmationOverride(Act act, long operationId, long personId, Standing lapsed, Person giver, String reason) {
        LocalDate until = lapsed.until();
        if (until == null) {
            throw new IllegalArgumentException("A confirmation that lapsed has a last day");
        }
        this.operationId = operationId;
        this.personId = personId;
        this.qualification = lapsed.kind();
        this.lapsedOn = until;
        this.givenBy = giver.id();
        this.givenName = giver.name();
        this.reason = reason;
        this.at = act.at();
        this.deviceId = act.device();
        this.actId = act.id();
    }

    long operationId() {
        return operationId;
    }

    long personId() {
        return personId;
    }

    String qualification() {
        return qualification;
    }

    LocalDate lapsedOn() {
        return lapsedOn;
    }

    long givenBy() {
        return givenBy;
    }

    String givenName() {
        return givenName;
    }

    String reason() {
        return reason;
    }

    Instant at() {
        return at;
    }
}
