package org.trammel.shop.ovens;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.util.List;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.trammel.calc.thermal.Thermocouple;
import org.trammel.calc.thermal.ThermocoupleRole;

@Entity
@Table(name = "oven_run_thermocouple")
class WiredRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "run_id", nullable = false)
    private long runId;

    @Column(nullable = false)
    private String code;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    @Column(nullable = false)
    private ThermocoupleRole role;

    @Column(name = "log_column", nullable = false)
    private String logColumn;

    @Column(nullable = false)
    private String place;

    @Column(name = "error_k", nullable = false)
    private BigDecimal error_K;

    protected WiredRow() {}

    WiredRow(long runId, String code, ThermocoupleRole role) {
        this.runId = runId;
        this.code = code;
        this.role = role;
        this.logColumn = code;
        this.place = "";
        this.error_K = BigDecimal.ZERO;
    }

    void put(String column, String at) {
        logColumn = column;
        place = at;
    }

    void readsHighBy(BigDecimal error) {
        error_K = error;
    }

    long runId() {
        return runId;
    }

    String code() {
        return code;
    }

    ThermocoupleRole role() {
        return role;
    }

    String logColumn() {
        return logColumn;
    }

    Run.Wired wired() {
        return new Run.Wired(code, role, logColumn, place, error_K);
    }

    /** As the computation takes it. */
    Thermocouple computed() {
        Thermocouple sound = Thermocouple.of(logColumn, role);
        return error_K.signum() == 0
                ? sound
                : new Thermocouple(logColumn, role, List.of(new Thermocouple.ErrorPoint(0, error_K.doubleValue())));
    }
}
