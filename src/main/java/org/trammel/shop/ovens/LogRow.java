package org.trammel.shop.ovens;

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

@Entity
@Immutable
@Table(name = "oven_log")
class LogRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "run_id", nullable = false)
    private long runId;

    @Column(nullable = false)
    private String name;

    @Column(nullable = false)
    private String sha256;

    @Column(nullable = false)
    private byte[] samples;

    @Column(nullable = false)
    private String how;

    @Column(name = "by_person", nullable = false)
    private long by;

    @Column(nullable = false)
    private Instant at;

    @Column(name = "act_id", nullable = false)
    private UUID actId;

    protected LogRow() {}

    LogRow(long runId, KeptLog log, Act act) {
        this.runId = runId;
        this.name = log.name();
        this.sha256 = log.sha256();
        this.samples = log.samples();
        this.how = log.how();
        this.by = act.by();
        this.at = act.at();
        this.actId = act.id();
    }

    long id() {
        return id;
    }

    KeptLog kept() {
        return new KeptLog(runId, name, sha256, samples, how, by, at);
    }
}
