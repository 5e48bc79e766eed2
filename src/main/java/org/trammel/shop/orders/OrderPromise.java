package org.trammel.shop.orders;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import org.trammel.shop.records.Act;

/** A date that was promised, and why. */
@Entity
@Table(name = "order_promise")
class OrderPromise {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    private long orderId;
    private LocalDate promisedOn;
    private BigDecimal percentile;
    private long reasonWords;
    private long promisedBy;
    private Instant promisedAt;

    protected OrderPromise() {}

    OrderPromise(long orderId, LocalDate promisedOn, BigDecimal percentile, long reasonWords, Act act) {
        this.orderId = orderId;
        this.promisedOn = promisedOn;
        this.percentile = percentile;
        this.reasonWords = reasonWords;
        this.promisedBy = act.by();
        this.promisedAt = act.at();
    }

    long id() {
        return id;
    }

    LocalDate promisedOn() {
        return promisedOn;
    }

    BigDecimal percentile() {
        return percentile;
    }

    long reasonWords() {
        return reasonWords;
    }

    long promisedBy() {
        return promisedBy;
    }

    Instant promisedAt() {
        return promisedAt;
    }
}
