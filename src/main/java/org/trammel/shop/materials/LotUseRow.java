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
import org.trammel.shop.records.Refusal;

/** A piece of a lot in a frame. It is never removed; scrapping it is written beside it. */
@Entity
@Table(name = "lot_use")
class LotUseRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "lot_id", nullable = false)
    private long lotId;

    @Column(name = "remnant_id")
    private @Nullable Long remnantId;

    @Column(nullable = false)
    private String serial;

    @Column(nullable = false)
    private String part;

    @Column(nullable = false)
    private String operation;

    @Column(name = "position", nullable = false)
    private String position;

    private @Nullable BigDecimal quantity;

    @Column(nullable = false)
    private String unit;

    @Column(name = "by_person", nullable = false)
    private long by;

    @Column(nullable = false)
    private Instant at;

    @Column(nullable = false)
    private boolean scrapped;

    @Column(name = "scrapped_by")
    private @Nullable Long scrappedBy;

    @Column(name = "scrapped_at")
    private @Nullable Instant scrappedAt;

    @Column(name = "scrapped_reason")
    private @Nullable String scrappedReason;

    @Column(name = "gone_with")
    private @Nullable Long goneWith;

    protected LotUseRow() {}

    LotUseRow(
            long lotId, @Nullable Long remnantId, Destination to, @Nullable BigDecimal quantity, String unit, Act act) {
        this.lotId = lotId;
        this.remnantId = remnantId;
        this.serial = to.serial();
        this.part = to.part();
        this.operation = to.operation();
        this.position = to.position();
        this.quantity = quantity;
        this.unit = unit;
        this.by = act.by();
        this.at = act.at();
    }

    void scrap(String reason, Act act) {
        if (goneWith != null) {
            throw Refusal.state(
                    "The piece was not scrapped.",
                    "It was scrapped with its part, of which it is a piece.",
                    "Look at what the frame is made of.");
        }
        if (scrapped) {
            throw Refusal.state(
                    "The piece was not scrapped.",
                    "It was scrapped already: " + scrappedReason + ".",
                    "Look at what the frame is made of.");
        }
        scrapped = true;
        scrappedBy = act.by();
        scrappedAt = act.at();
        scrappedReason = reason;
    }

    /** It was in a piece that is no more, or was scrapped out of that one. */
    void goneWith(long travellerId) {
        goneWith = travellerId;
    }

    long id() {
        return id;
    }

    long lotId() {
        return lotId;
    }

    String serial() {
        return serial;
    }

    String part() {
        return part;
    }

    String operation() {
        return operation;
    }

    String position() {
        return position;
    }

    @Nullable
    BigDecimal quantity() {
        return quantity;
    }

    String unit() {
        return unit;
    }
}
