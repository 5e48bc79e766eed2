package org.trammel.shop.assembly;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.Immutable;
import org.trammel.shop.records.Act;

/** A second person looked at a fastener. */
@Entity
@Immutable
@Table(name = "torque_witness")
class WitnessRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "operation_id", nullable = false)
    private long operationId;

    @Column(name = "component_id", nullable = false)
    private long partId;

    @Column(name = "fastener_id", nullable = false)
    private long fastenerId;

    @Column(nullable = false)
    private int round;

    @Column(name = "person_id", nullable = false)
    private long personId;

    @Column(nullable = false)
    private Instant at;

    @Column(name = "act_id", nullable = false)
    private UUID actId;

    protected WitnessRow() {}

    WitnessRow(long operationId, TorqueRow.Key key, int round, long personId, Act act) {
        this.operationId = operationId;
        this.partId = key.partId();
        this.fastenerId = key.fastenerId();
        this.round = round;
        this.personId = personId;
        this.at = act.at();
        this.actId = act.id();
    }

    TorqueRow.Key key() {
        return new TorqueRow.Key(partId, fastenerId);
    }

    long operationId() {
        return operationId;
    }

    int round() {
        return round;
    }

    long personId() {
        return personId;
    }

    Instant at() {
        return at;
    }
}
