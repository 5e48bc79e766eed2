package org.trammel.shop.orders;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.time.Instant;
import org.trammel.shop.records.Act;

/** A price that was agreed, and why. */
@Entity
@Table(name = "order_price")
class OrderPrice {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    private long orderId;
    private BigDecimal amount;
    private String currency;
    private long reasonWords;
    private long pricedBy;
    private Instant pricedAt;

    protected OrderPrice() {}

    OrderPrice(long orderId, BigDecimal amount, String currency, long reasonWords, Act act) {
        this.orderId = orderId;
        this.amount = amount;
        this.currency = currency;
        this.reasonWords = reasonWords;
        this.pricedBy = act.by();
        this.pricedAt = act.at();
    }

    long id() {
        return id;
    }

    BigDecimal amount() {
        return amount;
    }

    String currency() {
        return currency;
    }

    long reasonWords() {
        return reasonWords;
    }

    long pricedBy() {
        return pricedBy;
    }

    Instant pricedAt() {
        return pricedAt;
    }
}
