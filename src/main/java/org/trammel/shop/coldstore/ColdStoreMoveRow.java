package org.trammel.shop.coldstore;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.Immutable;
import org.trammel.shop.records.Act;
import org.trammel.shop.travellers.FrameSheet;

/** A frame put into the cold store, or taken out of it. */
@Entity
@Immutable
@Table(name = "cold_store_move")
class ColdStoreMoveRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "traveller_id", nullable = false)
    private long travellerId;

    @Column(nullable = false)
    private String serial;

    @Column(nullable = false)
    private String part;

    @Column(nullable = false)
    private String mark;

    @Column(name = "went_in", nullable = false)
    private boolean wentIn;

    @Column(name = "degc", nullable = false)
    private BigDecimal degC;

    @Column(name = "most_degc", nullable = false)
    private BigDecimal most_degC;

    @Column(nullable = false)
    private boolean counts;

    @Column(nullable = false)
    private String gauge;

    @Column(name = "by_person", nullable = false)
    private long by;

    @Column(nullable = false)
    private Instant at;

    @Column(name = "act_id", nullable = false)
    private UUID actId;

    protected ColdStoreMoveRow() {}

    ColdStoreMoveRow(FrameSheet.Head head, boolean wentIn, ColdStore.Cold cold, Act act) {
        this.travellerId = head.travellerId();
        this.serial = head.serial();
        this.part = head.part();
        this.mark = head.mark();
        this.wentIn = wentIn;
        this.degC = cold.degC();
        this.most_degC = cold.most_degC();
        this.counts = cold.enough();
        this.gauge = cold.gauge();
        this.by = act.by();
        this.at = act.at();
        this.actId = act.id();
    }

    long travellerId() {
        return travellerId;
    }

    ColdStore.Move move() {
        return new ColdStore.Move(travellerId, serial, part, mark, wentIn, degC, most_degC, counts, gauge, by, at);
    }
}
