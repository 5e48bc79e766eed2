package org.trammel.shop.gauges;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;

@Entity
@Table(name = "gauge_kind")
class GaugeKindRow {

    @Id
    private String code;

    @Column(nullable = false)
    private String name;

    protected GaugeKindRow() {}

    GaugeKindRow(String code, String name) {
        this.code = code;
        this.name = name;
    }

    GaugeKind kind() {
        return new GaugeKind(code, name);
    }
}
