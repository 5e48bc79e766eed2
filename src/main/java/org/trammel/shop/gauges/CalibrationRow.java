package org.trammel.shop.gauges;

import jakarta.persistence.CascadeType;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.OneToMany;
import jakarta.persistence.OrderBy;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.Objects;
import java.util.Set;
import org.hibernate.annotations.Immutable;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Act;

@Entity
@Immutable
@Table(name = "gauge_calibration")
class CalibrationRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "gauge_id", nullable = false)
    private long gaugeId;

    @Column(name = "calibrated_on", nullable = false)
    private LocalDate calibratedOn;

    @Column(name = "due_on")
    private @Nullable LocalDate dueOn;

    @Column(nullable = false)
    private String certificate;

    @Column(name = "as_found", nullable = false)
    private String asFound;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    @Column(nullable = false)
    private AsFound found;

    @Column(nullable = false)
    private boolean stands;

    @Column(name = "put_right", nullable = false)
    private boolean putRight;

    @Column(name = "as_left", nullable = false)
    private String asLeft;

    @Column(nullable = false)
    private String unit;

    @OneToMany(mappedBy = "calibration", cascade = CascadeType.PERSIST)
    @OrderBy("sequence")
    private Set<CalibrationPointRow> points = new LinkedHashSet<>();

    @Column(name = "by_person", nullable = false)
    private long by;

    @Column(nullable = false)
    private Instant at;

    protected CalibrationRow() {}

    CalibrationRow(long gaugeId, NewCalibration entry, boolean stands, Act act) {
        this.gaugeId = gaugeId;
        this.calibratedOn = entry.calibratedOn();
        this.dueOn = stands ? entry.dueOn() : null;
        this.certificate = entry.certificate();
        this.asFound = entry.asFound();
        this.found = entry.points().isEmpty()
                ? AsFound.NOT_STATED
                : Calibration.over(entry.points()) ? AsFound.OVER : AsFound.WITHIN;
        this.stands = stands;
        this.putRight = entry.putRight();
        this.asLeft = entry.asLeft();
        this.unit = entry.points().isEmpty() ? "" : entry.unit();
        for (CalibrationPoint point : entry.points()) {
            points.add(new CalibrationPointRow(this, points.size() + 1, point));
        }
        this.by = act.by();
        this.at = act.at();
    }

    /** Last day the gauge may be used by it; asked only of one that stands. */
    LocalDate due() {
        return Objects.requireNonNull(dueOn);
    }

    LocalDate calibratedOn() {
        return calibratedOn;
    }

    Calibration calibration() {
        return new Calibration(
                calibratedOn,
                dueOn,
                certificate,
                asFound,
                found,
                stands,
                putRight,
                asLeft,
                unit,
                points.stream().map(CalibrationPointRow::point).toList(),
                by,
                at);
    }
}
