package org.trammel.shop.nonconformance;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.trammel.shop.people.Person;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;

/** Somebody agreed to a decision in a role. Only added to. */
@Entity
@Table(name = "nonconformance_agreement")
class Agreement {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "nonconformance_id")
    private long nonconformanceId;

    @Column(name = "decision_number")
    private int decisionNumber;

    @Column(name = "person_id")
    private long personId;

    @Column(name = "person_name")
    private String personName;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    @Column(name = "agreed_as")
    private Role agreedAs;

    private Instant at;

    @Column(name = "act_id")
    private UUID actId;

    protected Agreement() {}

    Agreement(Nonconformance of, Person person, Role as, Act act) {
        this.nonconformanceId = of.id();
        this.decisionNumber = of.decisionNumber();
        this.personId = person.id();
        this.personName = person.name();
        this.agreedAs = as;
        this.at = act.at();
        this.actId = act.id();
    }

    long nonconformanceId() {
        return nonconformanceId;
    }

    int decisionNumber() {
        return decisionNumber;
    }

    long personId() {
        return personId;
    }

    String personName() {
        return personName;
    }

    Role agreedAs() {
        return agreedAs;
    }

    Instant at() {
        return at;
    }
}
