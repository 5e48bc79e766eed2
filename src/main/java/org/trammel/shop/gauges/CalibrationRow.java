package org.trammel.shop.gauges;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.LocalDate;
import org.hibernate.annotations.Immutable;
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

    @Column(name = "due_on", nullable = false)
    private LocalDate dueOn;

    @Column(nullable = false)
    private String certificate;

    @Column(name = "as_found", nullable = false)
    private String asFound;

    @Column(name = "by_person", nullable = false)
    private long by;

    @Column(nullable = false)
    private Instant at;

    protected CalibrationRow() {}

    CalibrationRow(long gaugeId, LocalDate on, LocalDate due, String certificate, String asFound, Act act) {
        this.gaugeId = gaugeId;
        this.calibratedOn = on;
        this.dueOn = due;
        this.certificate = certificate;
        this.asFound = asFound;
        this.by = act.by();
        this.at = act.at();
    }

    Calibration calibration() {
        return new Calibration(calibratedOn, dueOn, certificate, asFound, by, at);
    }
}
