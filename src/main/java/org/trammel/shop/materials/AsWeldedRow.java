package org.trammel.shop.materials;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.Immutable;
import org.trammel.shop.records.Act;

@Entity
@Immutable
@Table(name = "material_as_welded")
class AsWeldedRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(nullable = false)
    private String serial;

    @Column(nullable = false)
    private String reason;

    @Column(name = "by_person", nullable = false)
    private long by;

    @Column(nullable = false)
    private Instant at;

    @Column(name = "act_id", nullable = false)
    private UUID actId;

    protected AsWeldedRow() {}

    AsWeldedRow(String serial, String reason, Act act) {
        this.serial = serial;
        this.reason = reason;
        this.by = act.by();
        this.at = act.at();
        this.actId = act.id();
    }

    AfterWelds.AsWelded asWelded() {
        return new AfterWelds.AsWelded(serial, reason, by, at);
    }
}
