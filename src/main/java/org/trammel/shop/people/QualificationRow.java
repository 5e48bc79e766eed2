package org.trammel.shop.people;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.math.BigDecimal;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

@Entity
@Table(name = "qualification")
class QualificationRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private @Nullable Long id;

    @Column(name = "person_id", nullable = false)
    private long personId;

    @Column(nullable = false)
    private String kind;

    @Column(nullable = false)
    private String standard;

    @Column(name = "metal")
    private @Nullable String metal;

    @Column(name = "process")
    private @Nullable String process;

    @Column(name = "thickness_from_mm")
    private @Nullable BigDecimal thicknessFromMm;

    @Column(name = "thickness_to_mm")
    private @Nullable BigDecimal thicknessToMm;

    @Column(name = "joint")
    private @Nullable String joint;

    @Column(name = "issued_on", nullable = false)
    private LocalDate issuedOn;

    @Column(name = "expires_on")
    private @Nullable LocalDate expiresOn;

    @Column(name = "six_month_confirmation", nullable = false)
    private boolean sixMonthConfirmation;

    @Column(name = "confirmed_on")
    private @Nullable LocalDate confirmedOn;

    @Column(name = "ended_on")
    private @Nullable LocalDate endedOn;

    @Column(name = "ended_by")
    private @Nullable Long endedBy;

    @Column(name = "end_reason_id")
    private @Nullable Long endReasonId;

    @Version
    private @Nullable Long version;

    protected QualificationRow() {}

    QualificationRow(long personId, Qualification sheet) {
        this.personId = personId;
        this.kind = sheet.kind();
        this.standard = sheet.standard();
        this.metal = sheet.metal();
        this.process = sheet.process();
        this.thicknessFromMm = sheet.thicknessFromMm();
        this.thicknessToMm = sheet.thicknessToMm();
        this.joint = sheet.joint();
        this.issuedOn = sheet.issuedOn();
        this.expiresOn = sheet.expiresOn();
        this.sixMonthConfirmation = sheet.sixMonthConfirmation();
        this.confirmedOn = sheet.confirmedOn();
    }

    void confirm(LocalDate on) {
        if (confirmedOn == null || on.isAfter(confirmedOn)) {
            confirmedOn = on;
        }
    }

    void end(LocalDate on, long by, long reasonId) {
        endedOn = on;
        endedBy = by;
        endReasonId = reasonId;
    }

    /** Who took it back; null while it stands, and of those taken back when nobody was asked why. */
    @Nullable
    Long endedBy() {
        return endedBy;
    }

    @Nullable
    Long endReasonId() {
        return endReasonId;
    }

    long id() {
        if (id == null) {
            throw new IllegalStateException("The qualification is not stored yet");
        }
        return id;
    }

    long personId() {
        return personId;
    }

    Qualification sheet() {
        return new Qualification(
                id(),
                personId,
                kind,
                standard,
                metal,
                process,
                thicknessFromMm,
                thicknessToMm,
                joint,
                issuedOn,
                expiresOn,
                sixMonthConfirmation,
                confirmedOn,
                endedOn);
    }
}
