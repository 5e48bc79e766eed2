package org.trammel.shop.drift;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.Objects;
import java.util.UUID;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Act;

/** A watched axis. Only added to. */
@Entity
@Table(name = "drift_series")
class SeriesRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    private Factor followed;

    /** Of a jig; of anything else null. */
    @Column(name = "jig_code")
    private @Nullable String jigCode;

    /** Welder or tube set; of a jig null. */
    private @Nullable String subject;

    @Column(name = "characteristic_code")
    private String characteristicCode;

    private String name;
    private String unit;
    private boolean scaled;

    @Column(name = "person_id")
    private long personId;

    private Instant at;

    @Column(name = "act_id")
    private UUID actId;

    protected SeriesRow() {}

    SeriesRow(Act act, NewSeries entry) {
        this.followed = entry.by();
        this.jigCode = entry.by() == Factor.JIG ? entry.of() : null;
        this.subject = entry.by() == Factor.JIG ? null : entry.of();
        this.characteristicCode = entry.code();
        this.name = entry.name();
        this.unit = entry.unit();
        this.scaled = entry.scaled();
        this.personId = act.by();
        this.at = act.at();
        this.actId = act.id();
    }

    Series series() {
        String of = followed == Factor.JIG ? jigCode : subject;
        return new Series(id, followed, Objects.requireNonNull(of), characteristicCode, name, unit, scaled);
    }
}
