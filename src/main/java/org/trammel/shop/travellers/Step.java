package org.trammel.shop.travellers;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.routes.Proof;
import org.trammel.shop.routes.StepSheet;

/** One thing to do and tick. Its history stands in the ticks; this is where they lead. */
@Entity
@Table(name = "step")
class Step {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "operation_id")
    private long operationId;

    private int position;
    private String text;
    private String instruction;
    private boolean photo;
    private boolean irreversible;

    @Column(name = "lot_kind")
    private @Nullable String lotKind;

    @Column(name = "starts_clock")
    private @Nullable String startsClock;

    private @Nullable String qualification;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    private @Nullable Proof proof;

    @Column(name = "second_person")
    private boolean secondPerson;

    private boolean ticked;

    @Column(name = "ticked_by")
    private @Nullable Long tickedBy;

    @Column(name = "ticked_at")
    private @Nullable Instant tickedAt;

    @Version
    private long version;

    protected Step() {}

    Step(long operationId, int position, StepSheet sheet) {
        this.operationId = operationId;
        this.position = position;
        this.text = sheet.text();
        this.instruction = sheet.instruction();
        this.photo = sheet.photo();
        this.irreversible = sheet.irreversible();
        this.lotKind = sheet.lotKind();
        this.startsClock = sheet.startsClock();
        this.qualification = sheet.qualification();
        this.proof = sheet.proof();
        this.secondPerson = sheet.secondPerson();
    }

    Step again(long operationId) {
        Step copy = new Step();
        copy.operationId = operationId;
        copy.position = position;
        copy.text = text;
        copy.instruction = instruction;
        copy.photo = photo;
        copy.irreversible = irreversible;
        copy.lotKind = lotKind;
        copy.startsClock = startsClock;
        copy.qualification = qualification;
        copy.proof = proof;
        copy.secondPerson = secondPerson;
        return copy;
    }

    void tick(long by, Instant at) {
        ticked = true;
        tickedBy = by;
        tickedAt = at;
    }

    void untick() {
        ticked = false;
        tickedBy = null;
        tickedAt = null;
    }

    long id() {
        return id;
    }

    long operationId() {
        return operationId;
    }

    int position() {
        return position;
    }

    String text() {
        return text;
    }

    String instruction() {
        return instruction;
    }

    boolean photo() {
        return photo;
    }

    boolean irreversible() {
        return irreversible;
    }

    @Nullable
    String lotKind() {
        return lotKind;
    }

    @Nullable
    String startsClock() {
        return startsClock;
    }

    @Nullable
    String qualification() {
        return qualification;
    }

    @Nullable
    Proof proof() {
        return proof;
    }

    /** Whether somebody ticks it who did none of the work of its operation. */
    boolean secondPerson() {
        return secondPerson;
    }

    boolean ticked() {
        return ticked;
    }

    @Nullable
    Long tickedBy() {
        return tickedBy;
    }

    @Nullable
    Instant tickedAt() {
        return tickedAt;
    }
}
