package org.trammel.shop.drift;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import org.trammel.shop.records.Act;

/** A reading from before this program was struck out: it stays on record and counts no more. Only added to. */
@Entity
@Table(name = "drift_strike")
class StrikeRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "history_id")
    private long historyId;

    private String reason;

    @Column(name = "person_id")
    private long personId;

    private Instant at;

    @Column(name = "act_id")
    private UUID actId;

    protected StrikeRow() {}

    StrikeRow(Act act, long historyId, String reason) {
        this.historyId = historyId;
        this.reason = reason;
        this.personId = act.by();
        this.at = act.at();
        this.actId = act.id();
    }

    long historyId() {
        return historyId;
    }

    String reason() {
        return reason;
    }

    long personId() {
        return personId;
    }

    Instant at() {
        return at;
    }
}
