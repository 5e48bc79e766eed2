package org.trammel.shop.ovens;

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
import org.hibernate.annotations.Immutable;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.trammel.shop.records.Act;

@Entity
@Immutable
@Table(name = "oven_run_signature")
class RunSignatureRow {

    static final String LOAD = "LOAD";
    static final String RUN = "RUN";

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "run_id", nullable = false)
    private long runId;

    @Column(nullable = false)
    private String signs;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    @Column(nullable = false)
    private RunSigner signer;

    @Column(name = "person_id", nullable = false)
    private long personId;

    @Column(nullable = false)
    private Instant at;

    @Column(name = "act_id", nullable = false)
    private UUID actId;

    protected RunSignatureRow() {}

    RunSignatureRow(long runId, String signs, RunSigner signer, long personId, Act act) {
        this.runId = runId;
        this.signs = signs;
        this.signer = signer;
        this.personId = personId;
        this.at = act.at();
        this.actId = act.id();
    }

    long id() {
        return id;
    }

    Run.Signed signed(RunRow run) {
        boolean load = signs.equals(LOAD);
        return new Run.Signed(load, signer, personId, at, !load || run.counts(id));
    }
}
