package org.trammel.shop.handwork;

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
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Act;

/** The conductivity of a coupon of known stock; a row that names another takes that one out of the count. */
@Entity
@Immutable
@Table(name = "conductivity_coupon")
class CouponRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(nullable = false)
    private String metal;

    @Column(nullable = false)
    private String coupon;

    @Column(name = "known_by", nullable = false)
    private String knownBy;

    @Column(name = "percent_iacs", nullable = false)
    private BigDecimal percent_IACS;

    @Column(nullable = false)
    private String gauge;

    @Column(name = "takes_out")
    private @Nullable Long takesOut;

    @Column(name = "by_person", nullable = false)
    private long by;

    @Column(nullable = false)
    private Instant at;

    @Column(name = "act_id", nullable = false)
    private UUID actId;

    protected CouponRow() {}

    CouponRow(String metal, String coupon, String knownBy, BigDecimal percent_IACS, String gauge, Act act) {
        this.metal = metal;
        this.coupon = coupon;
        this.knownBy = knownBy;
        this.percent_IACS = percent_IACS;
        this.gauge = gauge;
        this.by = act.by();
        this.at = act.at();
        this.actId = act.id();
    }

    /** Takes another out of the count, which stays on record. */
    CouponRow without(String reason, Act act) {
        CouponRow row = new CouponRow(metal, coupon, reason, percent_IACS, gauge, act);
        row.takesOut = id;
        return row;
    }

    @Nullable
    Long takesOut() {
        return takesOut;
    }

    Coupon coupon() {
        return new Coupon(id, metal, coupon, knownBy, percent_IACS, gauge, by, at);
    }
}
