package org.trammel.shop.routes;

import jakarta.persistence.Column;
import jakarta.persistence.Convert;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.PreRemove;
import jakarta.persistence.PreUpdate;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.util.List;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;

/** A characteristic of an operation. */
@Entity
@Table(name = "route_characteristic")
class CharacteristicRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @ManyToOne(fetch = FetchType.LAZY, optional = false)
    @JoinColumn(name = "operation_id", nullable = false)
    private OperationRow operation;

    @Column(nullable = false)
    private int sequence;

    @Column(nullable = false)
    private String code = "";

    @Column(nullable = false)
    private String name;

    @Column(nullable = false)
    private String unit;

    @Column(nullable = false)
    private int decimals;

    @Column(name = "from_design", nullable = false)
    private boolean fromDesign;

    private @Nullable BigDecimal nominal;

    @Column(name = "lower_deviation")
    private @Nullable BigDecimal lowerDeviation;

    @Column(name = "upper_deviation")
    private @Nullable BigDecimal upperDeviation;

    @Column(name = "gauge_kind", nullable = false)
    private String gaugeKind;

    @Convert(converter = LineList.class)
    @Column(nullable = false)
    private List<String> points;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    @Column(nullable = false)
    private Reduction reduction;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    @Column(nullable = false)
    private Rule rule;

    @Convert(converter = SignerList.class)
    @Column(nullable = false)
    private List<Signer> signers;

    @Column(nullable = false)
    private boolean sided;

    @Column(name = "read_back", nullable = false)
    private boolean readBack;

    @Column(name = "second_person", nullable = false)
    private boolean secondPerson;

    @Column(nullable = false)
    private boolean deciding;

    @Column(name = "cold_set_clock")
    private @Nullable String coldSetClock;

    @Column(name = "cold_set_attempts", nullable = false)
    private int coldSetAttempts;

    @Column(name = "triage_tolerances")
    private @Nullable BigDecimal triageTolerances;

    @Column(name = "cold_set_amount")
    private @Nullable BigDecimal coldSetAmount;

    @Column(nullable = false)
    private String source;

    void becomes(OperationRow owner, int position, CharacteristicSheet sheet) {
        operation = owner;
        sequence = position;
        code = sheet.code();
        name = sheet.name();
        unit = sheet.unit();
        decimals = sheet.decimals();
        fromDesign = sheet.fromDesign();
        nominal = stored(nominal, sheet.nominal());
        lowerDeviation = stored(lowerDeviation, sheet.lowerDeviation());
        upperDeviation = stored(upperDeviation, sheet.upperDeviation());
        gaugeKind = sheet.gaugeKind();
        points = sheet.points();
        reduction = sheet.reduction();
        rule = sheet.rule();
        signers = sheet.signers();
        sided = sheet.sided();
        readBack = sheet.readBack();
        secondPerson = sheet.secondPerson();
        deciding = sheet.deciding();
        coldSetClock = sheet.coldSetClock();
        coldSetAttempts = sheet.coldSetAttempts();
        triageTolerances = stored(triageTolerances, sheet.triageTolerances());
        coldSetAmount = stored(coldSetAmount, sheet.coldSetAmount());
        source = sheet.source();
    }

    @PreUpdate
    @PreRemove
    void onlyInADraft() {
        operation.revision().guardContent();
    }

    String code() {
        return code;
    }

    CharacteristicSheet sheet() {
        return new CharacteristicSheet(
                code,
                name,
                unit,
                decimals,
                fromDesign,
                read(nominal),
                read(lowerDeviation),
                read(upperDeviation),
                gaugeKind,
                points,
                reduction,
                rule,
                signers,
                sided,
                readBack,
                secondPerson,
                deciding,
                coldSetClock,
                coldSetAttempts,
                read(triageTolerances),
                read(coldSetAmount),
                source);
    }

    /** Keeps the stored number where the new one is equal, so that the row is not written for a trailing zero. */
    private static @Nullable BigDecimal stored(@Nullable BigDecimal before, @Nullable BigDecimal wanted) {
        return before != null && wanted != null && before.compareTo(wanted) == 0 ? before : wanted;
    }

    /** Without the zeros the column adds, so that what is read equals what was written. */
    private static @Nullable BigDecimal read(@Nullable BigDecimal column) {
        return column == null ? null : Figures.plain(column);
    }
}
