package org.trammel.shop.assembly;

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
import org.hibernate.annotations.Immutable;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Act;

/** A customer's own part as it came. */
@Entity
@Immutable
@Table(name = "own_part_check")
class OwnPartCheckRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "own_part_id", nullable = false)
    private long ownPartId;

    @Column(name = "order_id", nullable = false)
    private long orderId;

    @Column(nullable = false)
    private String condition;

    @Column(name = "maker_serial", nullable = false)
    private String makerSerial;

    private @Nullable String photo;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    private OwnPartCheck.@Nullable Figure figure;

    @Column(name = "measured_mm")
    private @Nullable BigDecimal measured_mm;

    private @Nullable String gauge;

    @Column(name = "nominal_mm")
    private @Nullable BigDecimal nominal_mm;

    @Column(name = "within_mm")
    private @Nullable BigDecimal within_mm;

    @Column(nullable = false)
    private boolean conforming;

    @Column(name = "by_person", nullable = false)
    private long by;

    @Column(nullable = false)
    private Instant at;

    @Column(name = "act_id", nullable = false)
    private UUID actId;

    protected OwnPartCheckRow() {}

    OwnPartCheckRow(long orderId, OwnPartCheck check, Act act) {
        this.ownPartId = check.ownPartId();
        this.orderId = orderId;
        this.condition = check.condition();
        this.makerSerial = check.makerSerial();
        this.photo = check.photo();
        this.figure = check.figure();
        this.measured_mm = check.measured_mm();
        this.gauge = check.gauge();
        this.nominal_mm = check.nominal_mm();
        this.within_mm = check.within_mm();
        this.conforming = check.conforming();
        this.by = act.by();
        this.at = act.at();
        this.actId = act.id();
    }

    OwnPartCheck check() {
        return new OwnPartCheck(
                ownPartId,
                condition,
                makerSerial,
                photo,
                figure,
                measured_mm,
                gauge,
                nominal_mm,
                within_mm,
                conforming,
                by,
                at);
    }
}
