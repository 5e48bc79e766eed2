package org.trammel.shop.materials;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Act;

/** A section that lies in a lot, as it was stated once. */
@Entity
@Table(name = "lot_section")
class LotSectionRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "lot_id", nullable = false)
    private long lotId;

    @Column(nullable = false)
    private int statement;

    @Column(nullable = false)
    private BigDecimal outside;

    @Column(nullable = false)
    private BigDecimal wall;

    private @Nullable BigDecimal middle;

    @Column(name = "other_wall")
    private @Nullable BigDecimal otherWall;

    @Column(name = "by_person", nullable = false)
    private long by;

    @Column(nullable = false)
    private Instant at;

    protected LotSectionRow() {}

    LotSectionRow(long lotId, int statement, Section section, Act act) {
        this.lotId = lotId;
        this.statement = statement;
        this.outside = section.outside_mm();
        this.wall = section.wall_mm();
        this.middle = section.middle_mm();
        this.otherWall = section.other_mm();
        this.by = act.by();
        this.at = act.at();
    }

    long lotId() {
        return lotId;
    }

    int statement() {
        return statement;
    }

    Section section() {
        return new Section(outside, wall, middle, otherWall);
    }
}
