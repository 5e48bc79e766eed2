package org.trammel.shop.people;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.LocalDate;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;

/** Somebody named to stand in for a role. */
@Entity
@Table(name = "deputy")
class DeputyRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private @Nullable Long id;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    @Column(nullable = false)
    private Role role;

    @Column(name = "person_id", nullable = false)
    private long personId;

    @Column(name = "from_on", nullable = false)
    private LocalDate fromOn;

    @Column(name = "until_on")
    private @Nullable LocalDate untilOn;

    @Column(name = "named_by", nullable = false)
    private long namedBy;

    protected DeputyRow() {}

    DeputyRow(Role role, long personId, LocalDate fromOn, @Nullable LocalDate untilOn, long namedBy) {
        this.role = role;
        this.personId = personId;
        this.fromOn = fromOn;
        this.untilOn = untilOn;
        this.namedBy = namedBy;
    }

    boolean open(LocalDate on) {
        return !on.isBefore(fromOn) && (untilOn == null || !on.isAfter(untilOn));
    }

    void end(LocalDate lastDay) {
        untilOn = lastDay.isBefore(fromOn) ? fromOn : lastDay;
    }

    Role role() {
        return role;
    }

    long personId() {
        return personId;
    }

    LocalDate fromOn() {
        return fromOn;
    }

    @Nullable
    LocalDate untilOn() {
        return untilOn;
    }
}
