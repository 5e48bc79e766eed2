package org.trammel.shop.ovens;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

@Entity
@Table(name = "oven_programme_step")
class ProgrammeStepRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @ManyToOne
    @JoinColumn(name = "revision_id", nullable = false)
    private ProgrammeRevisionRow revision;

    @Column(nullable = false)
    private int position;

    @Column(name = "set_degc", nullable = false)
    private BigDecimal set_degC;

    @Column(name = "below_k", nullable = false)
    private BigDecimal below_K;

    @Column(name = "above_k", nullable = false)
    private BigDecimal above_K;

    @Column(name = "soak_h", nullable = false)
    private BigDecimal soak_h;

    @Column(name = "longest_h")
    private @Nullable BigDecimal longest_h;

    @Column(nullable = false)
    private boolean unbroken;

    @Column(name = "overshoot_k")
    private @Nullable BigDecimal overshoot_K;

    @Column(name = "spread_k")
    private @Nullable BigDecimal spread_K;

    @Column(name = "rise_k_per_h")
    private @Nullable BigDecimal rise_KPerH;

    protected ProgrammeStepRow() {}

    ProgrammeStepRow(ProgrammeRevisionRow revision, int position, ProgrammeStep step) {
        this.revision = revision;
        this.position = position;
        this.set_degC = step.set_degC();
        this.below_K = step.below_K();
        this.above_K = step.above_K();
        this.soak_h = step.soak_h();
        this.longest_h = step.longest_h();
        this.unbroken = step.unbroken();
        this.overshoot_K = step.overshoot_K();
        this.spread_K = step.spread_K();
        this.rise_KPerH = step.rise_KPerH();
    }

    ProgrammeStep step() {
        return new ProgrammeStep(
                set_degC, below_K, above_K, soak_h, longest_h, unbroken, overshoot_K, spread_K, rise_KPerH);
    }
}
