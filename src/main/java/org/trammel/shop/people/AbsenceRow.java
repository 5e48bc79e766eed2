package org.trammel.shop.people;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** Days on which somebody is away, so that a deputy stands in. */
@Entity
@Table(name = "absence")
class AbsenceRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private @Nullable Long id;

    @Column(name = "person_id", nullable = false)
    private long personId;

    @Column(name = "from_on", nullable = false)
    private LocalDate fromOn;

    @Column(name = "until_on", nullable = false)
    private LocalDate untilOn;

    @Column(name = "noted_by", nullable = false)
    private long notedBy;

    protected AbsenceRow() {}

    AbsenceRow(long personId, LocalDate fromOn, LocalDate untilOn, long notedBy) {
        this.personId = personId;
        this.fromOn = fromOn;
        this.untilOn = untilOn;
        this.notedBy = notedBy;
    }

    boolean away(LocalDate on) {
        return !on.isBefore(fromOn) && !on.isAfter(untilOn);
    }

    void end(LocalDate lastDay) {
        untilOn = lastDay.isBefore(fromOn) ? fromOn : lastDay;
    }

    LocalDate fromOn() {
        return fromOn;
    }

    LocalDate untilOn() {
        return untilOn;
    }
}
