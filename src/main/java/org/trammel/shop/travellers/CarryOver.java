package org.trammel.shop.travellers;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;

/** What a newer revision said of an operation done under the old one. Only added to. */
@Entity
@Table(name = "carry_over")
class CarryOver {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "old_operation_id")
    private long oldOperationId;

    @Column(name = "new_operation_id")
    private long newOperationId;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    private Carry verdict;

    private String reason;

    @Column(name = "person_id")
    private long personId;

    private Instant at;

    protected CarryOver() {}

    CarryOver(long oldOperationId, long newOperationId, Carry verdict, String reason, long personId, Instant at) {
        this.oldOperationId = oldOperationId;
        this.newOperationId = newOperationId;
        this.verdict = verdict;
        this.reason = reason;
        this.personId = personId;
        this.at = at;
    }

    long id() {
        return id;
    }

    long oldOperationId() {
        return oldOperationId;
    }

    long newOperationId() {
        return newOperationId;
    }

    Carry verdict() {
        return verdict;
    }

    String reason() {
        return reason;
    }

    long personId() {
        return personId;
    }

    Instant at() {
        return at;
    }
}
