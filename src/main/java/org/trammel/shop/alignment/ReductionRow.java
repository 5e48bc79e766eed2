package org.trammel.shop.alignment;

import jakarta.persistence.CollectionTable;
import jakarta.persistence.Column;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.util.HashSet;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.metrology.DatumFit;
import org.trammel.shop.records.Act;

/** One reduction of a sheet's raw figures. Only added to. */
@Entity
@Table(name = "alignment_reduction")
class ReductionRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "sheet_id")
    private long sheetId;

    @Column(name = "set_up_id")
    private long setUpId;

    @Column(name = "residual_mm")
    private @Nullable BigDecimal residual;

    @Column(name = "residual_most_mm")
    private BigDecimal residualMost;

    private @Nullable String farthest;

    @Column(name = "post_mm")
    private @Nullable BigDecimal post;

    @Column(name = "person_id")
    private long personId;

    private Instant at;

    @Column(name = "act_id")
    private UUID actId;

    @ElementCollection
    @CollectionTable(name = "alignment_used", joinColumns = @JoinColumn(name = "reduction_id"))
    @Column(name = "reading_id")
    private Set<Long> used = new HashSet<>();

    protected ReductionRow() {}

    /**
     * A reduction.
     *
     * @param fit of the faces; null where the frame stood on its post or in space without them
     * @param post height of the post by the settings; null where it was read, or the faces were
     */
    ReductionRow(
            Act act,
            long sheetId,
            long setUpId,
            @Nullable DatumFit fit,
            BigDecimal residualMost,
            @Nullable BigDecimal post,
            Set<Long> used) {
        this.sheetId = sheetId;
        this.setUpId = setUpId;
        this.residual =
                fit == null ? null : BigDecimal.valueOf(fit.residual_mm()).setScale(6, RoundingMode.HALF_EVEN);
        this.residualMost = residualMost;
        this.farthest = fit == null ? null : fit.farthest();
        this.post = post;
        this.used = new HashSet<>(used);
        this.personId = act.by();
        this.at = act.at();
        this.actId = act.id();
    }

    long id() {
        return id;
    }

    long sheetId() {
        return sheetId;
    }

    long setUpId() {
        return setUpId;
    }

    /** Height of the post by the settings of then; null where it was read, or the faces were. */
    @Nullable
    BigDecimal post() {
        return post;
    }

    @Nullable
    BigDecimal residual() {
        return residual;
    }

    BigDecimal residualMost() {
        return residualMost;
    }

    @Nullable
    String farthest() {
        return farthest;
    }

    long personId() {
        return personId;
    }

    Instant at() {
        return at;
    }

    Set<Long> used() {
        return Set.copyOf(used);
    }
}
