package org.trammel.shop.ovens;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.Immutable;
import org.trammel.shop.records.Act;

@Entity
@Immutable
@Table(name = "oven_run_quench")
class QuenchRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "run_id", nullable = false)
    private long runId;

    @Column(name = "delay_s", nullable = false)
    private BigDecimal delay_s;

    @Column(nullable = false)
    private String words;

    @Column(name = "by_person", nullable = false)
    private long by;

    @Column(nullable = false)
    private Instant at;

    @Column(name = "act_id", nullable = false)
    private UUID actId;

    protected QuenchRow() {}

    QuenchRow(long runId, BigDecimal delay_s, String words, Act act) {
        this.runId = runId;
        this.delay_s = delay_s;
        this.words = words;
        this.by = act.by();
        this.at = act.at();
        this.actId = act.id();
    }

    Quench quench() {
        return new Quench(ProgrammeStep.bare(delay_s), words, by, at);
    }
}
