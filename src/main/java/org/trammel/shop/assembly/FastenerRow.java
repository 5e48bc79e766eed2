package org.trammel.shop.assembly;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Objects;
import java.util.stream.Collectors;
import org.hibernate.annotations.Immutable;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;

@Entity
@Immutable
@Table(name = "component_fastener")
class FastenerRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "sheet_id", nullable = false)
    private long sheetId;

    @Column(nullable = false)
    private int sequence;

    @Column(nullable = false)
    private String name;

    @Column(nullable = false)
    private int bolts;

    @Column(name = "least_nm", nullable = false)
    private BigDecimal least_Nm;

    @Column(name = "target_nm", nullable = false)
    private BigDecimal target_Nm;

    @Column(name = "most_nm", nullable = false)
    private BigDecimal most_Nm;

    @Column(nullable = false)
    private boolean greased;

    @Column(name = "nut_factor", nullable = false)
    private BigDecimal nutFactor;

    @Column(name = "thread_mm")
    private @Nullable BigDecimal thread_mm;

    @Column(nullable = false)
    private boolean crosswise;

    @Column(nullable = false)
    private String passes;

    @Column(name = "left_hand", nullable = false)
    private boolean leftHand;

    @Column(nullable = false)
    private boolean witness;

    @Column(name = "after_ride", nullable = false)
    private boolean afterRide;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    private @Nullable ComponentKind clamps;

    private @Nullable String answers;

    @Column(name = "every_place", nullable = false)
    private boolean everyPlace;

    protected FastenerRow() {}

    /** @param content as it was checked: whatever may be empty in a form is filled in */
    FastenerRow(long sheetId, int sequence, NewFastener content) {
        this.sheetId = sheetId;
        this.sequence = sequence;
        this.name = content.name();
        this.bolts = content.bolts();
        this.least_Nm = Objects.requireNonNull(content.least_Nm());
        this.target_Nm = Objects.requireNonNull(content.target_Nm());
        this.most_Nm = Objects.requireNonNull(content.most_Nm());
        this.greased = content.greased();
        this.nutFactor = Objects.requireNonNull(content.nutFactor());
        this.thread_mm = content.thread_mm();
        this.crosswise = content.crosswise();
        this.passes = content.passes().stream().map(String::valueOf).collect(Collectors.joining(" "));
        this.leftHand = content.leftHand();
        this.witness = Objects.requireNonNull(content.witness());
        this.afterRide = content.afterRide();
        this.clamps = content.clamps();
        this.answers = content.answers();
        this.everyPlace = content.everyPlace();
    }

    long sheetId() {
        return sheetId;
    }

    Fastener fastener() {
        return new Fastener(
                id,
                name,
                bolts,
                least_Nm,
                target_Nm,
                most_Nm,
                greased,
                nutFactor,
                thread_mm,
                crosswise,
                Arrays.stream(passes.split(" ")).map(Integer::valueOf).toList(),
                leftHand,
                witness,
                afterRide,
                clamps,
                answers,
                everyPlace);
    }
}
