package org.trammel.shop.stations;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.math.BigDecimal;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

@Entity
@Table(name = "station")
class StationRow {

    @Id
    private String code;

    @Column(nullable = false)
    private String name;

    @Column(name = "wip_limit", nullable = false)
    private int wipLimit;

    @Column(name = "productive_hours_per_week", nullable = false)
    private BigDecimal productiveHoursPerWeek;

    @Column(name = "paper_only", nullable = false)
    private boolean paperOnly;

    @Column(name = "position", nullable = false)
    private int position;

    @Column(name = "retired_at")
    private @Nullable Instant retiredAt;

    @Version
    private @Nullable Long version;

    protected StationRow() {}

    StationRow(Station station, int position) {
        this.code = station.code();
        this.name = station.name();
        this.wipLimit = station.wipLimit();
        this.productiveHoursPerWeek = station.productiveHoursPerWeek();
        this.paperOnly = station.paperOnly();
        this.position = position;
    }

    void runs(String name, int wipLimit, BigDecimal productiveHoursPerWeek, boolean paperOnly) {
        this.name = name;
        this.wipLimit = wipLimit;
        this.productiveHoursPerWeek = productiveHoursPerWeek;
        this.paperOnly = paperOnly;
    }

    void retire(Instant at) {
        this.retiredAt = at;
    }

    boolean retired() {
        return retiredAt != null;
    }

    Station sheet() {
        return new Station(code, name, wipLimit, productiveHoursPerWeek, paperOnly);
    }
}
