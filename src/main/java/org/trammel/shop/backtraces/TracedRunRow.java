package org.trammel.shop.backtraces;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import org.hibernate.annotations.Immutable;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.thermal.DriftTrace;
import org.trammel.calc.thermal.Judged;

@Entity
@Immutable
@Table(name = "oven_trace_run")
class TracedRunRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "trace_id", nullable = false)
    private long traceId;

    @Column(name = "run_id", nullable = false)
    private long runId;

    @Column(name = "log_id")
    private @Nullable Long logId;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    @Column(nullable = false)
    private DriftTrace.Suspicion suspicion;

    @Column(name = "drift_k", nullable = false)
    private BigDecimal drift_K;

    @Column(name = "worst_k", nullable = false)
    private BigDecimal worst_K;

    @Column(name = "reference_degc")
    private @Nullable BigDecimal reference_degC;

    @Column(name = "recorded_h")
    private @Nullable BigDecimal recorded_h;

    @Column(name = "linear_h")
    private @Nullable BigDecimal linear_h;

    @Column(name = "worst_h")
    private @Nullable BigDecimal worst_h;

    @Column(name = "without_h")
    private @Nullable BigDecimal without_h;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    private @Nullable Judged judged;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    @Column(name = "judged_linear")
    private @Nullable Judged judgedLinear;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    @Column(name = "judged_worst")
    private @Nullable Judged judgedWorst;

    @Column(nullable = false)
    private boolean cleared;

    @Column(nullable = false)
    private String words;

    @Column(nullable = false)
    private Instant at;

    protected TracedRunRow() {}

    TracedRunRow(long traceId, long runId, TraceJudge.Told told, Instant at) {
        this.traceId = traceId;
        this.runId = runId;
        this.logId = told.logId();
        this.suspicion = told.suspicion();
        this.drift_K = figure(told.drift_K(), 3);
        this.worst_K = figure(told.worst_K(), 3);
        this.cleared = told.cleared();
        this.words = told.words();
        this.at = at;
        TraceJudge.Hours hours = told.hours();
        if (hours != null) {
            this.reference_degC = figure(hours.reference_degC(), 2);
            this.recorded_h = figure(hours.recorded_h(), 6);
            this.linear_h = figure(hours.linear_h(), 6);
            this.worst_h = figure(hours.worst_h(), 6);
            this.without_h = hours.without_h() == null ? null : figure(hours.without_h(), 6);
        }
        this.judged = told.judged();
        this.judgedLinear = told.judgedLinear();
        this.judgedWorst = told.judgedWorst();
    }

    private static BigDecimal figure(double value, int decimals) {
        return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_EVEN);
    }

    long traceId() {
        return traceId;
    }

    long runId() {
        return runId;
    }

    boolean cleared() {
        return cleared;
    }

    /** What is missing to what the record said, by the worst case; null where no hours are counted. */
    @Nullable
    Double missingWorst_h() {
        return recorded_h == null || worst_h == null
                ? null
                : Math.max(0, recorded_h.subtract(worst_h).doubleValue());
    }

    OvenTrace.TracedRun run(String code, String programme, Instant startedAt) {
        return new OvenTrace.TracedRun(
                code,
                programme,
                startedAt,
                suspicion,
                drift_K,
                worst_K,
                reference_degC,
                recorded_h,
                linear_h,
                worst_h,
                without_h,
                judged,
                judgedLinear,
                judgedWorst,
                cleared,
                words);
    }
}
