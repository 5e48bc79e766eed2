package org.trammel.shop.welding;

import jakarta.persistence.Column;
import jakarta.persistence.Embedded;
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
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;

@Entity
@Table(name = "weld_procedure")
class ProcedureRow {

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
    private ProcedureState state;

    @Embedded
    private NewProcedure content;

    @Column(name = "drafted_by", nullable = false)
    private long draftedBy;

    @Column(name = "drafted_at", nullable = false)
    private Instant draftedAt;

    @Column(name = "approved_by")
    private @Nullable Long approvedBy;

    @Column(name = "approved_at")
    private @Nullable Instant approvedAt;

    @Column(name = "superseded_at")
    private @Nullable Instant supersededAt;

    @Version
    private long version;

    protected ProcedureRow() {}

    ProcedureRow(String code, String letter, NewProcedure content, Act act) {
        this.code = code;
        this.letter = letter;
        this.state = ProcedureState.DRAFT;
        this.content = content;
        this.draftedBy = act.by();
        this.draftedAt = act.at();
    }

    /** A draft is written anew as often as it takes. */
    void rewrite(NewProcedure other, Act act) {
        require(ProcedureState.DRAFT, "rewritten");
        content = other;
        draftedBy = act.by();
        draftedAt = act.at();
    }

    void approve(Act act) {
        require(ProcedureState.DRAFT, "put in force");
        state = ProcedureState.IN_FORCE;
        approvedBy = act.by();
        approvedAt = act.at();
    }

    void supersede(Act act) {
        require(ProcedureState.IN_FORCE, "superseded");
        state = ProcedureState.SUPERSEDED;
        supersededAt = act.at();
    }

    private void require(ProcedureState wanted, String done) {
        if (state != wanted) {
            throw Refusal.state(
                    "Procedure " + code + " " + letter + " was not " + done + ".",
                    "It is " + state.word() + ".",
                    "Draft the next revision of " + code + ".");
        }
    }

    ProcedureState state() {
        return state;
    }

    Procedure procedure() {
        return new Procedure(
                id, code, letter, state, content, draftedBy, draftedAt, approvedBy, approvedAt, supersededAt, version);
    }
}
