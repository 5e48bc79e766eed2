package org.trammel.shop.cuts;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;
import org.hibernate.annotations.Immutable;
import org.trammel.shop.records.Act;

/** A hole saw as it was measured. */
@Entity
@Immutable
@Table(name = "hole_saw_check")
class SawCheckRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(nullable = false)
    private String saw;

    @Column(name = "measured_mm", nullable = false)
    private BigDecimal measured_mm;

    @Column(name = "worn_mm", nullable = false)
    private BigDecimal worn_mm;

    @Column(name = "most_worn_mm", nullable = false)
    private BigDecimal mostWorn_mm;

    @Column(name = "due_on", nullable = false)
    private LocalDate dueOn;

    @Column(nullable = false)
    private String gauge;

    @Column(name = "by_person", nullable = false)
    private long by;

    @Column(nullable = false)
    private Instant at;

    @Column(name = "act_id", nullable = false)
    private UUID actId;

    protected SawCheckRow() {}

    SawCheckRow(String saw, HoleSaw.Check check, Act act) {
        this.saw = saw;
        this.measured_mm = check.measured_mm();
        this.worn_mm = check.worn_mm();
        this.mostWorn_mm = check.mostWorn_mm();
        this.dueOn = check.dueOn();
        this.gauge = check.gauge();
        this.by = act.by();
        this.at = act.at();
        this.actId = act.id();
    }

    String saw() {
        return saw;
    }

    HoleSaw.Check check() {
        return new HoleSaw.Check(measured_mm, worn_mm, mostWorn_mm, dueOn, gauge, by, at);
    }
}
