package org.trammel.shop.orders;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The one row that counts orders and tells this database from any other. */
@Entity
@Table(name = "order_series")
class OrderSeries {

    static final int ONLY = 1;

    @Id
    private Integer id;

    private UUID installation;
    private int lastNumber;

    @Version
    private @Nullable Long version;

    protected OrderSeries() {}

    OrderSeries(UUID installation) {
        this.id = ONLY;
        this.installation = installation;
        this.lastNumber = 0;
    }

    UUID installation() {
        return installation;
    }

    int next() {
        lastNumber++;
        return lastNumber;
    }

    /** A number was typed: those given by themselves go on after it. */
    void atLeast(int number) {
        lastNumber = Math.max(lastNumber, number);
    }
}
