package org.trammel.shop.orders;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import jakarta.persistence.EmbeddedId;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import org.jspecify.annotations.Nullable;

/** How far the serials of one year have gone. */
@Entity
@Table(name = "serial_series")
class SerialSeries {

    /** Letters and two digits of the year, such as AV and 26. */
    @Embeddable
    record Key(
            @Column(name = "prefix") String prefix,
            @Column(name = "year_of_century") String yearOfCentury) {

        String text() {
            return prefix + yearOfCentury;
        }
    }

    @EmbeddedId
    private Key key;

    private int lastNumber;

    @Version
    private @Nullable Long version;

    protected SerialSeries() {}

    SerialSeries(Key key) {
        this.key = key;
        this.lastNumber = 0;
    }

    int lastNumber() {
        return lastNumber;
    }

    void moveTo(int number) {
        if (number <= lastNumber) {
            throw new IllegalStateException("A series of serials never goes back");
        }
        lastNumber = number;
    }
}
