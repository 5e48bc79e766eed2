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
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.thermal.ThermocoupleRole;
import org.trammel.shop.records.Act;

@Entity
@Table(name = "oven_thermocouple")
class FittedRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "oven_id", nullable = false)
    private long ovenId;

    @Column(nullable = false)
    private String code;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    @Column(nullable = false)
    private ThermocoupleRole role;

    @Column(name = "fitted_by", nullable = false)
    private long fittedBy;

    @Column(name = "fitted_at", nullable = false)
    private Instant fittedAt;

    @Column(name = "removed_by")
    private @Nullable Long removedBy;

    @Column(name = "removed_at")
    private @Nullable Instant removedAt;

    @Column(name = "removed_why", nullable = false)
    private String removedWhy;

    @Column(name = "act_id", nullable = false)
    private UUID actId;

    protected FittedRow() {}

    FittedRow(long ovenId, String code, ThermocoupleRole role, Act act) {
        this.ovenId = ovenId;
        this.code = code;
        this.role = role;
        this.fittedBy = act.by();
        this.fittedAt = act.at();
        this.removedWhy = "";
        this.actId = act.id();
    }

    void remove(String why, Act act) {
        removedBy = act.by();
        removedAt = act.at();
        removedWhy = why;
    }

    long id() {
        return id;
    }

    long ovenId() {
        return ovenId;
    }

    String code() {
        return code;
    }

    ThermocoupleRole role() {
        return role;
    }

    boolean there() {
        return removedAt == null;
    }

    Fitted fitted() {
        return new Fitted(id, code, role, fittedAt, removedAt, removedWhy);
    }
}
