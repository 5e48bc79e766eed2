package org.trammel.shop.materials;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.math.BigDecimal;
import java.time.Instant;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;

/** Bars alike, or one remnant, on the rack. */
@Entity
@Table(name = "tube_bar")
class TubeBarRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Version
    private long version;

    @Column(name = "lot_id", nullable = false)
    private long lotId;

    @Column(nullable = false)
    private BigDecimal outside;

    @Column(nullable = false)
    private BigDecimal wall;

    @Column(nullable = false)
    private BigDecimal length;

    @Column(nullable = false)
    private int bars;

    @Column(nullable = false)
    private boolean remnant;

    @Column(nullable = false)
    private boolean butted;

    @Column(name = "by_person", nullable = false)
    private long by;

    @Column(nullable = false)
    private Instant at;

    protected TubeBarRow() {}

    TubeBarRow(long lotId, NewBars entry, boolean remnant, Act act) {
        this.lotId = lotId;
        this.outside = entry.outside_mm();
        this.wall = entry.wall_mm();
        this.length = entry.length_mm();
        this.bars = entry.count();
        this.butted = entry.butted();
        this.remnant = remnant;
        this.by = act.by();
        this.at = act.at();
    }

    /** One bar is sawn; what is left of it is a row of the same lot, or null where nothing is. */
    NewBars cut(BigDecimal left_mm) {
        if (bars == 0) {
            throw Refusal.state(
                    "No bar was booked as sawn.",
                    "The rack holds none of these any more.",
                    "Look at the rack as it is now.");
        }
        if (left_mm.signum() < 0 || left_mm.compareTo(length) >= 0) {
            throw Refusal.input(
                    "left",
                    "No bar was booked as sawn.",
                    "Of a bar of " + length.stripTrailingZeros().toPlainString() + " mm not "
                            + left_mm.stripTrailingZeros().toPlainString() + " mm can be left.",
                    "Measure what is left, or enter 0 if nothing goes back to the rack.");
        }
        bars--;
        return new NewBars(outside, wall, left_mm, 1, butted);
    }

    Long id() {
        return id;
    }

    long lotId() {
        return lotId;
    }
}
