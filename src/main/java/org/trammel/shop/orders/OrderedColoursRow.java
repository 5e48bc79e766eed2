package org.trammel.shop.orders;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Act;

/** The colours of an order as they were named once, one to a line. */
@Entity
@Immutable
@Table(name = "ordered_colours")
class OrderedColoursRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    private long orderId;
    private String colours;
    private @Nullable Long reasonWords;

    @Column(name = "by_person", nullable = false)
    private long by;

    @Column(nullable = false)
    private Instant at;

    private UUID actId;

    protected OrderedColoursRow() {}

    OrderedColoursRow(long orderId, List<String> colours, @Nullable Long reasonWords, Act act) {
        this.orderId = orderId;
        this.colours = String.join("\n", colours);
        this.reasonWords = reasonWords;
        this.by = act.by();
        this.at = act.at();
        this.actId = act.id();
    }

    long id() {
        return id;
    }

    List<String> colours() {
        return colours.lines().toList();
    }

    @Nullable
    Long reasonWords() {
        return reasonWords;
    }

    long by() {
        return by;
    }

    Instant at() {
        return at;
    }
}
