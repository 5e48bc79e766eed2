package org.trammel.shop.materials;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.Objects;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;

/** What was left of a piece and put back. It belongs to the lot of the piece for good. */
@Entity
@Table(name = "lot_remnant")
class LotRemnantRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "lot_id", nullable = false)
    private long lotId;

    @Column(nullable = false)
    private int number;

    @Column(name = "use_id", nullable = false)
    private long useId;

    @Column(nullable = false)
    private BigDecimal quantity;

    @Column(name = "quantity_left", nullable = false)
    private BigDecimal quantityLeft;

    @Column(nullable = false)
    private String unit;

    @Column(name = "by_person", nullable = false)
    private long by;

    @Column(nullable = false)
    private Instant at;

    protected LotRemnantRow() {}

    LotRemnantRow(LotUseRow use, int number, BigDecimal quantity, String unit, Act act) {
        this.lotId = use.lotId();
        this.useId = use.id();
        this.number = number;
        this.quantity = quantity;
        this.quantityLeft = quantity;
        this.unit = unit;
        this.by = act.by();
        this.at = act.at();
    }

    void take(String lot, BigDecimal amount) {
        if (amount.compareTo(quantityLeft) > 0) {
            throw Refusal.input(
                    "quantity",
                    code(lot) + " was not issued.",
                    "The remnant holds " + LotRow.bare(quantityLeft) + " " + unit + ", " + LotRow.bare(amount) + " "
                            + unit + " are wanted.",
                    "Take a longer remnant or a whole piece of a lot.");
        }
        quantityLeft = quantityLeft.subtract(amount);
    }

    long id() {
        return id;
    }

    int number() {
        return number;
    }

    BigDecimal quantity() {
        return quantity;
    }

    BigDecimal quantityLeft() {
        return quantityLeft;
    }

    String unit() {
        return unit;
    }

    String code(String lot) {
        return lot + "/R" + number;
    }

    Remnant remnant(String lot) {
        return new Remnant(code(lot), plain(quantity), plain(quantityLeft), unit, by, at);
    }

    private static BigDecimal plain(BigDecimal number) {
        return Objects.requireNonNull(LotRow.plain(number));
    }
}
