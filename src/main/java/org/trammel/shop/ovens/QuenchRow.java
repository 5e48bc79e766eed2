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
import org.jspecify.annotations.Nullable;
import org.trammel.calc.thermal.QuenchDelay;
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

    /** Null where it was entered by hand. */
    @Column(name = "least_s")
    private @Nullable BigDecimal least_s;

    @Column(nullable = false)
    private boolean late;

    @Column(name = "words_id")
    private @Nullable Long wordsId;

    @Column(name = "by_person", nullable = false)
    private long by;

    @Column(nullable = false)
    private Instant at;

    @Column(name = "act_id", nullable = false)
    private UUID actId;

    protected QuenchRow() {}

    /** By two taps. */
    QuenchRow(long runId, QuenchDelay tapped, Act act) {
        this(runId, tapped.most_s(), null, act);
        this.least_s = tapped.least_s();
        this.late = false;
    }

    /** By hand. */
    QuenchRow(long runId, BigDecimal delay_s, @Nullable Long wordsId, Act act) {
        this.late = true;
        this.runId = runId;
        this.delay_s = delay_s;
        this.wordsId = wordsId;
        this.by = act.by();
        this.at = act.at();
        this.actId = act.id();
    }

    @Nullable
    Long wordsId() {
        return wordsId;
    }

    Quench quench(String words) {
        return new Quench(
                ProgrammeStep.bare(least_s == null ? delay_s : least_s),
                ProgrammeStep.bare(delay_s),
                late,
                words,
                by,
                at);
    }
}
