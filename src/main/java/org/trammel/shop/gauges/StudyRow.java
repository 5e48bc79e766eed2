package org.trammel.shop.gauges;

import jakarta.persistence.CascadeType;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.OneToMany;
import jakarta.persistence.OrderBy;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Act;

@Entity
@Immutable
@Table(name = "gauge_study")
class StudyRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "gauge_id", nullable = false)
    private long gaugeId;

    @Column(nullable = false)
    private String what;

    @Column(nullable = false)
    private String unit;

    private @Nullable BigDecimal tolerance;

    @OneToMany(mappedBy = "study", cascade = CascadeType.PERSIST)
    @OrderBy("sequence")
    private Set<StudyReadingRow> readings = new LinkedHashSet<>();

    @Column(name = "by_person", nullable = false)
    private long by;

    @Column(nullable = false)
    private Instant at;

    @Column(name = "act_id", nullable = false)
    private UUID actId;

    protected StudyRow() {}

    StudyRow(long gaugeId, NewStudy entry, Act act) {
        this.gaugeId = gaugeId;
        this.what = entry.what();
        this.unit = entry.unit();
        this.tolerance = entry.tolerance();
        for (StudyReading reading : entry.readings()) {
            readings.add(new StudyReadingRow(this, readings.size() + 1, reading));
        }
        this.by = act.by();
        this.at = act.at();
        this.actId = act.id();
    }

    long id() {
        return id;
    }

    long gaugeId() {
        return gaugeId;
    }

    String what() {
        return what;
    }

    String unit() {
        return unit;
    }

    @Nullable
    BigDecimal tolerance() {
        return tolerance == null ? null : GaugeRangeRow.bare(tolerance);
    }

    List<StudyReading> readings() {
        return readings.stream().map(StudyReadingRow::reading).toList();
    }

    long by() {
        return by;
    }

    Instant at() {
        return at;
    }

    StudyLine line() {
        return new StudyLine(id, what, unit, tolerance(), at);
    }
}
