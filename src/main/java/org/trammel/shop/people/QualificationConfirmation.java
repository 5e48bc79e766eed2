package org.trammel.shop.people;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** One six-month confirmation. Only added to. */
@Entity
@Table(name = "qualification_confirmation")
class QualificationConfirmation {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private @Nullable Long id;

    @Column(name = "qualification_id", nullable = false)
    private long qualificationId;

    @Column(name = "confirmed_on", nullable = false)
    private LocalDate confirmedOn;

    @Column(name = "confirmed_by", nullable = false)
    private long confirmedBy;

    @Column(nullable = false)
    private Instant at;

    protected QualificationConfirmation() {}

    QualificationConfirmation(long qualificationId, LocalDate confirmedOn, long confirmedBy, Instant at) {
        this.qualificationId = qualificationId;
        this.confirmedOn = confirmedOn;
        this.confirmedBy = confirmedBy;
        this.at = at;
    }
}
