package org.trammel.shop.drift;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import org.trammel.shop.records.Act;

/** An axis watched on a jig. Only added to. */
@Entity
@Table(name = "drift_series")
class SeriesRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "jig_code")
    private String jigCode;

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
        this.jigCode = entry.jig();
        this.characteristicCode = entry.code();
        this.name = entry.name();
        this.unit = entry.unit();
        this.scaled = entry.scaled();
        this.personId = act.by();
        this.at = act.at();
        this.actId = act.id();
    }

    Series series() {
        return new Series(id, jigCode, characteristicCode, name, unit, scaled);
    }
}
