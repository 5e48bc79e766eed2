package org.trammel.shop.gauges;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import org.hibernate.annotations.Immutable;

@Entity
@Immutable
@Table(name = "gauge_calibration_point")
class CalibrationPointRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @ManyToOne
    @JoinColumn(name = "calibration_id", nullable = false)
    private CalibrationRow calibration;

    @Column(nullable = false)
    private int sequence;

    @Column(nullable = false)
    private BigDecimal place;

    @Column(nullable = false)
    private BigDecimal error;

    @Column(nullable = false)
    private BigDecimal permissible;

    protected CalibrationPointRow() {}

    CalibrationPointRow(CalibrationRow calibration, int sequence, CalibrationPoint point) {
        this.calibration = calibration;
        this.sequence = sequence;
        this.place = point.at();
        this.error = point.error();
        this.permissible = point.permissible();
    }

    CalibrationPoint point() {
        return new CalibrationPoint(
                GaugeRangeRow.bare(place), GaugeRangeRow.bare(error), GaugeRangeRow.bare(permissible));
    }
}
