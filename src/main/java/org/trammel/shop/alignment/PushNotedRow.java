package org.trammel.shop.alignment;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.trammel.calc.metrology.Deviation;
import org.trammel.shop.records.Act;

/** A push the shop noted elsewhere. Only added to. */
@Entity
@Table(name = "push_noted")
class PushNotedRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    private Deviation deviation;

    private String metal;

    @Column(name = "outside_mm")
    private BigDecimal outside;

    @Column(name = "wall_mm")
    private BigDecimal wall;

    @Column(name = "push_mm")
    private BigDecimal push;

    @Column(name = "set_mm")
    private BigDecimal set;

    private String source;

    @Column(name = "person_id")
    private long personId;

    private Instant at;

    @Column(name = "act_id")
    private UUID actId;

    protected PushNotedRow() {}

    PushNotedRow(Act act, PushNoted noted, String source) {
        this.deviation = noted.deviation();
        this.metal = noted.metal();
        this.outside = noted.outside_mm();
        this.wall = noted.wall_mm();
        this.push = noted.push_mm();
        this.set = noted.set_mm();
        this.source = source;
        this.personId = act.by();
        this.at = act.at();
        this.actId = act.id();
    }

    long id() {
        return id;
    }

    PushNoted noted() {
        return new PushNoted(deviation, metal, outside, wall, push, set, source);
    }
}
