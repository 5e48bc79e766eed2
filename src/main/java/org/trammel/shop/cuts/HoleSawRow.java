package org.trammel.shop.cuts;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Act;

/** A hole saw. */
@Entity
@Table(name = "hole_saw")
class HoleSawRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(nullable = false)
    private String code;

    @Column(nullable = false)
    private String what;

    @Column(name = "diameter_mm", nullable = false)
    private BigDecimal diameter_mm;

    @Column(name = "retired_on")
    private @Nullable LocalDate retiredOn;

    @Column(name = "retired_because")
    private @Nullable String retiredBecause;

    @Column(name = "by_person", nullable = false)
    private long by;

    @Column(nullable = false)
    private Instant at;

    @Column(name = "act_id", nullable = false)
    private UUID actId;

    @Version
    private long version;

    protected HoleSawRow() {}

    HoleSawRow(String code, String what, BigDecimal diameter_mm, Act act) {
        this.code = code;
        this.what = what;
        this.diameter_mm = diameter_mm;
        this.by = act.by();
        this.at = act.at();
        this.actId = act.id();
    }

    HoleSaw saw(HoleSaw.@Nullable Check check) {
        return new HoleSaw(code, what, diameter_mm, retiredOn, retiredBecause, check);
    }

    String code() {
        return code;
    }

    BigDecimal diameter_mm() {
        return diameter_mm;
    }

    @Nullable
    LocalDate retiredOn() {
        return retiredOn;
    }

    void retire(LocalDate on, String because) {
        retiredOn = on;
        retiredBecause = because;
    }
}
