package org.trammel.shop.designs;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.time.Instant;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Act;

/** Deviations of a tolerance class that came into force. Only added. */
@Entity
@Immutable
@Table(name = "tolerance")
class ToleranceRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    private String classCode;
    private @Nullable BigDecimal lowerDeviation;
    private @Nullable BigDecimal upperDeviation;
    private String source;
    private String reason;

    @Column(name = "by_person")
    private long by;

    private Instant since;

    protected ToleranceRow() {}

    ToleranceRow(
            String classCode,
            @Nullable BigDecimal lower,
            @Nullable BigDecimal upper,
            String source,
            String reason,
            Act act) {
        this.classCode = classCode;
        this.lowerDeviation = lower;
        this.upperDeviation = upper;
        this.source = source;
        this.reason = reason;
        this.by = act.by();
        this.since = act.at();
    }

    long id() {
        return id;
    }

    Tolerance of(ToleranceClass kind) {
        return new Tolerance(
                id,
                kind.code(),
                kind.name(),
                kind.explanation(),
                kind.unit(),
                lowerDeviation == null ? null : Nominal.plain(lowerDeviation),
                upperDeviation == null ? null : Nominal.plain(upperDeviation),
                source,
                reason,
                since,
                by);
    }
}
