package org.trammel.shop.assembly;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import org.hibernate.annotations.Immutable;
import org.trammel.shop.records.Act;

/** A thing the country asks for, there or not. */
@Entity
@Immutable
@Table(name = "country_tick")
class CountryTickRow extends OperationRecord {

    @Column(nullable = false)
    private String item;

    @Column(nullable = false)
    private boolean there;

    protected CountryTickRow() {}

    CountryTickRow(long operationId, String item, boolean there, Act act) {
        super(operationId, act);
        this.item = item;
        this.there = there;
    }

    BuildRecord.Item item() {
        return new BuildRecord.Item(item, there, by(), at());
    }
}
