package org.trammel.shop.welding;

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

/** Oxygen inside a frame before an arc. */
@Entity
@Immutable
@Table(name = "weld_purge")
class PurgeRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "operation_id", nullable = false)
    private long operationId;

    @Column(name = "oxygen_ppm", nullable = false)
    private BigDecimal oxygen_ppm;

    @Column(name = "guard_ppm", nullable = false)
    private BigDecimal guard_ppm;

    @Column(name = "most_ppm", nullable = false)
    private BigDecimal most_ppm;

    @Column(name = "room_l")
    private @Nullable BigDecimal room_L;

    @Column(name = "flow_l_per_min")
    private @Nullable BigDecimal flow_L_per_min;

    @Column(name = "volumes", nullable = false)
    private BigDecimal volumes;

    @Column(name = "minutes")
    private @Nullable BigDecimal minutes;

    @Column(name = "gauge", nullable = false)
    private String gauge;

    @Column(name = "by_person", nullable = false)
    private long by;

    @Column(nullable = false)
    private Instant at;

    @Column(name = "act_id", nullable = false)
    private UUID actId;

    protected PurgeRow() {}

    PurgeRow(long operationId, PurgeRecord purge, Act act) {
        this.operationId = operationId;
        this.oxygen_ppm = purge.oxygen_ppm();
        this.guard_ppm = purge.guard_ppm();
        this.most_ppm = purge.most_ppm();
        this.room_L = purge.room_L();
        this.flow_L_per_min = purge.flow_L_per_min();
        this.volumes = purge.volumes();
        this.minutes = purge.minutes();
        this.gauge = purge.gauge();
        this.by = act.by();
        this.at = act.at();
        this.actId = act.id();
    }

    long operationId() {
        return operationId;
    }

    PurgeRecord purge() {
        return new PurgeRecord(
                oxygen_ppm, guard_ppm, most_ppm, room_L, flow_L_per_min, volumes, minutes, gauge, by, at);
    }
}
