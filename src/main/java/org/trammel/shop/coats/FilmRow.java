package org.trammel.shop.coats;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import org.hibernate.annotations.Immutable;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.coating.FilmGauge;
import org.trammel.shop.records.Act;

@Entity
@Immutable
@Table(name = "coat_film")
class FilmRow extends JudgedRow {

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

    protected FilmRow() {}

    /** @param guardFactor null by the plain rule */
    FilmRow(long operationId, long finishId, Film film, @Nullable BigDecimal guardFactor, Act act) {
        super(operationId, finishId, film.verdict(), film.words(), film.nonconformance(), act);
        this.readings = String.join("\n", film.readings());
        this.gauge = film.gauge();
        this.principle = film.principle();
        this.u_um = film.u_um();
        this.guardFactor = guardFactor;
        this.guard_um = film.guard_um();
    }

    Film film() {
        return new Film(
                readings.lines().toList(),
                gauge,
                principle,
                u_um,
                guard_um,
                verdict(),
                words(),
                nonconformance(),
                by(),
                at());
    }
}
