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
@Table(name = "gauge_study_reading")
class StudyReadingRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @ManyToOne
    @JoinColumn(name = "study_id", nullable = false)
    private StudyRow study;

    @Column(nullable = false)
    private int sequence;

    @Column(nullable = false)
    private String part;

    @Column(nullable = false)
    private String appraiser;

    @Column(nullable = false)
    private BigDecimal figure;

    protected StudyReadingRow() {}

    StudyReadingRow(StudyRow study, int sequence, StudyReading reading) {
        this.study = study;
        this.sequence = sequence;
        this.part = reading.part();
        this.appraiser = reading.appraiser();
        this.figure = reading.value();
    }

    StudyReading reading() {
        return new StudyReading(part, appraiser, GaugeRangeRow.bare(figure));
    }
}
