package org.trammel.shop.assembly;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;

@Entity
@Table(name = "component_sheet")
class ComponentRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(nullable = false)
    private String code;

    @Column(nullable = false)
    private String letter;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    @Column(nullable = false)
    private ComponentKind kind;

    @Column(nullable = false)
    private String what;

    @Column(nullable = false)
    private String operation;

    @Column(name = "ride_operation")
    private @Nullable String rideOperation;

    @Column(nullable = false)
    private boolean carbon;

    @Column(name = "clamped_most_nm")
    private @Nullable BigDecimal clampedMost_Nm;

    @Column(name = "least_insertion_mm")
    private @Nullable BigDecimal leastInsertion_mm;

    @Column(nullable = false)
    private String source;

    @Column(nullable = false)
    private String edition;

    @Column(name = "drafted_by", nullable = false)
    private long draftedBy;

    @Column(name = "drafted_at", nullable = false)
    private Instant draftedAt;

    @Column(name = "in_force_by")
    private @Nullable Long inForceBy;

    @Column(name = "in_force_at")
    private @Nullable Instant inForceAt;

    @Column(name = "superseded_at")
    private @Nullable Instant supersededAt;

    @Column(name = "act_id", nullable = false)
    private UUID actId;

    @Version
    private long version;

    protected ComponentRow() {}

    ComponentRow(String code, String letter, NewComponent content, Act act) {
        this.code = code;
        this.letter = letter;
        this.kind = Objects.requireNonNull(content.kind());
        this.what = content.what();
        this.operation = content.operation();
        this.rideOperation = content.rideOperation();
        this.carbon = content.carbon();
        this.clampedMost_Nm = content.clampedMost_Nm();
        this.leastInsertion_mm = content.leastInsertion_mm();
        this.source = content.source();
        this.edition = content.edition();
        this.draftedBy = act.by();
        this.draftedAt = act.at();
        this.actId = act.id();
    }

    void putInForce(Act act) {
        if (inForceAt != null || supersededAt != null) {
            throw Refusal.stale(
                    "The sheet of " + code + " was not put in force.",
                    "Revision " + letter + " is no draft any more.",
                    "Look at the component as it is now.");
        }
        inForceBy = act.by();
        inForceAt = act.at();
    }

    void supersede(Act act) {
        supersededAt = act.at();
    }

    long id() {
        return id;
    }

    boolean draft() {
        return inForceAt == null && supersededAt == null;
    }

    boolean inForce() {
        return inForceAt != null && supersededAt == null;
    }

    Component component(List<Fastener> fasteners) {
        return new Component(
                id,
                code,
                letter,
                kind,
                what,
                operation,
                rideOperation,
                carbon,
                clampedMost_Nm,
                source,
                edition,
                fasteners,
                draftedBy,
                draftedAt,
                inForceBy,
                inForceAt,
                supersededAt,
                leastInsertion_mm);
    }
}
