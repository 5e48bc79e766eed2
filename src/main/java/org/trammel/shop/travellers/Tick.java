package org.trammel.shop.travellers;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Act;

/** A step ticked, or a tick taken back. Only added to. */
@Entity
@Table(name = "tick")
class Tick {

    /** What was scanned is kept in full with the pieces it issued; here it only reminds of it. */
    private static final int LONGEST_LOT = 40;

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "step_id")
    private long stepId;

    @Column(name = "operation_id")
    private long operationId;

    private boolean untick;

    @Column(name = "person_id")
    private long personId;

    @Column(name = "device_id")
    private @Nullable Long deviceId;

    private Instant at;

    @Column(name = "device_at")
    private @Nullable Instant deviceAt;

    @Column(name = "act_id")
    private UUID actId;

    private @Nullable String lot;

    private @Nullable String reason;

    protected Tick() {}

    Tick(Step step, boolean untick, Act act, @Nullable String lot, @Nullable String reason) {
        this.stepId = step.id();
        this.operationId = step.operationId();
        this.untick = untick;
        this.personId = act.by();
        this.deviceId = act.device();
        this.at = act.at();
        this.deviceAt = act.deviceAt();
        this.actId = act.id();
        this.lot = lot == null || lot.length() <= LONGEST_LOT ? lot : lot.substring(0, LONGEST_LOT - 1) + "…";
        this.reason = reason;
    }

    long id() {
        return id;
    }

    long stepId() {
        return stepId;
    }

    long operationId() {
        return operationId;
    }

    boolean untick() {
        return untick;
    }

    long personId() {
        return personId;
    }

    @Nullable
    Long deviceId() {
        return deviceId;
    }

    Instant at() {
        return at;
    }

    @Nullable
    Instant deviceAt() {
        return deviceAt;
    }

    UUID actId() {
        return actId;
    }

    @Nullable
    String lot() {
        return lot;
    }

    @Nullable
    String reason() {
        return reason;
    }
}
