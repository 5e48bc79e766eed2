package org.trammel.shop.routes;

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

/** A code that a released revision left out. */
@Entity
@Table(name = "route_retired")
class RetiredRow {

    enum Thing {
        OPERATION,
        CHARACTERISTIC
    }

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "route_id", nullable = false)
    private long routeId;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    @Column(nullable = false)
    private Thing thing;

    @Column(nullable = false)
    private String code;

    @Column(nullable = false)
    private String name;

    @Column(name = "last_letter", nullable = false)
    private String lastLetter;

    @Column(name = "retired_at", nullable = false)
    private Instant retiredAt;

    protected RetiredRow() {}

    RetiredRow(long routeId, Draft.RetiredCode code, Instant at) {
        this.routeId = routeId;
        this.thing = code.thing();
        this.code = code.code();
        this.name = code.name();
        this.lastLetter = code.lastLetter();
        this.retiredAt = at;
    }

    Draft.RetiredCode sheet() {
        return new Draft.RetiredCode(thing, code, name, lastLetter);
    }
}
