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

/** A fastener loosened, to be torqued again. */
@Entity
@Immutable
@Table(name = "torque_again")
class AgainRow {

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
    private String words;

    @Column(name = "by_person", nullable = false)
    private long by;

    @Column(nullable = false)
    private Instant at;

    @Column(name = "act_id", nullable = false)
    private UUID actId;

    protected AgainRow() {}

    AgainRow(long operationId, TorqueRow.Key key, String words, Act act) {
        this.operationId = operationId;
        this.partId = key.partId();
        this.fastenerId = key.fastenerId();
        this.words = words;
        this.by = act.by();
        this.at = act.at();
        this.actId = act.id();
    }

    TorqueRow.Key key() {
        return new TorqueRow.Key(partId, fastenerId);
    }
}
