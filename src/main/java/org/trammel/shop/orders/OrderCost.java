package org.trammel.shop.orders;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.time.Instant;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Act;

/** What a piece of work or material cost; hours carry the rate of their day. */
@Entity
@Table(name = "order_cost")
class OrderCost {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    private long orderId;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    private CostKind kind;

    private @Nullable BigDecimal hours;
    private @Nullable BigDecimal hourRate;
    private @Nullable BigDecimal amount;
    private String currency;
    private long reasonWords;
    private long enteredBy;
    private Instant enteredAt;

    protected OrderCost() {}

    OrderCost(
            long orderId,
            CostKind kind,
            @Nullable BigDecimal hours,
            @Nullable BigDecimal hourRate,
            @Nullable BigDecimal amount,
            String currency,
            long reasonWords,
            Act act) {
        this.orderId = orderId;
        this.kind = kind;
        this.hours = hours;
        this.hourRate = hourRate;
        this.amount = amount;
        this.currency = currency;
        this.reasonWords = reasonWords;
        this.enteredBy = act.by();
        this.enteredAt = act.at();
    }

    long id() {
        return id;
    }

    CostKind kind() {
        return kind;
    }

    @Nullable
    BigDecimal hours() {
        return hours;
    }

    @Nullable
    BigDecimal hourRate() {
        return hourRate;
    }

    @Nullable
    BigDecimal amount() {
        return amount;
    }

    String currency() {
        return currency;
    }

    long reasonWords() {
        return reasonWords;
    }

    long enteredBy() {
        return enteredBy;
    }

    Instant enteredAt() {
        return enteredAt;
    }
}
