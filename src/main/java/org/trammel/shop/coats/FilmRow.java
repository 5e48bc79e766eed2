package org.trammel.shop.coats;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.Immutable;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.coating.FilmGauge;
import org.trammel.shop.records.Act;

@Entity
@Immutable
@Table(name = "coat_film")
class FilmRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "operation_id", nullable = false)
    private long operationId;

    @Column(name = "finish_id", nullable = false)
    private long finishId;

    @Column(nullable = false)
    private String readings;

    @Column(nullable = false)
    private String gauge;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    @Column(nullable = false)
    private FilmGauge principle;

    @Column(name = "u_um")
    private @Nullable BigDecimal u_um;

    @Column(name = "guard_factor")
    private @Nullable BigDecimal guardFactor;

    @Column(name = "guard_um")
    private @Nullable BigDecimal guard_um;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    @Column(nullable = false)
    private CoatVerdict verdict;

    @Column(nullable = false)
    private String words;

    @Column
    private @Nullable String nonconformance;

    @Column(name = "by_person", nullable = false)
    private long by;

    @Column(nullable = false)
    private Instant at;

    @Column(name = "act_id", nullable = false)
    private UUID actId;

    protected FilmRow() {}

    /** @param guardFactor null by the plain rule */
    FilmRow(long operationId, long finishId, Film film, @Nullable BigDecimal guardFactor, Act act) {
        this.operationId = operationId;
        this.finishId = finishId;
        this.readings = String.join("\n", film.readings());
        this.gauge = film.gauge();
        this.principle = film.principle();
        this.u_um = film.u_um();
        this.guardFactor = guardFactor;
        this.guard_um = film.guard_um();
        this.verdict = film.verdict();
        this.words = String.join("\n", film.words());
        this.nonconformance = film.nonconformance();
        this.by = act.by();
        this.at = act.at();
        this.actId = act.id();
    }

    long operationId() {
        return operationId;
    }

    Film film() {
        return new Film(
                readings.lines().toList(),
                gauge,
                principle,
                u_um,
                guard_um,
                verdict,
                words.lines().toList(),
                nonconformance,
                by,
                at);
    }
}
