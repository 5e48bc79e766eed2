package org.trammel.shop.welding;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;

/** A process by its number, and how its filler is looked up: as that of TIG or of brazing. */
@Entity
@Immutable
@Table(name = "weld_process")
class WeldProcess {

    @Id
    private String number;

    @Column(nullable = false)
    private String name;

    @Column(name = "joins_as", nullable = false)
    private String joinsAs;

    @Column(nullable = false)
    private boolean arc;

    private @Nullable BigDecimal efficiency;

    @Column(nullable = false)
    private String source;

    protected WeldProcess() {}

    String number() {
        return number;
    }

    String joinsAs() {
        return joinsAs;
    }

    boolean arc() {
        return arc;
    }

    /** As a list offers it. */
    String words() {
        return number + ", " + name
                + (efficiency == null
                        ? ""
                        : ", efficiency " + efficiency.stripTrailingZeros().toPlainString()) + " ("
                + source + ")";
    }
}
