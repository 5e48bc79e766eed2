package org.trammel.shop.dew;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import org.hibernate.annotations.Immutable;

/** A place of the metal that was measured. */
@Entity
@Immutable
@Table(name = "dew_place")
class DewPlaceRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "dew_margin_id", nullable = false)
    private long marginId;

    @Column(nullable = false)
    private String place;

    @Column(name = "metal_degc", nullable = false)
    private BigDecimal metal_degC;

    protected DewPlaceRow() {}

    DewPlaceRow(long marginId, DewMargin.Place place) {
        this.marginId = marginId;
        this.place = place.place();
        this.metal_degC = place.metal_degC();
    }

    long marginId() {
        return marginId;
    }

    DewMargin.Place place() {
        return new DewMargin.Place(place, metal_degC);
    }
}
