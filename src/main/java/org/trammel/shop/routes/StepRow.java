package org.trammel.shop.routes;

import jakarta.persistence.Column;
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
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;

/** A step of an operation. */
@Entity
@Table(name = "route_step")
class StepRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @ManyToOne(fetch = FetchType.LAZY, optional = false)
    @JoinColumn(name = "operation_id", nullable = false)
    private OperationRow operation;

    @Column(nullable = false)
    private int sequence;

    @Column(nullable = false)
    private String text;

    @Column(nullable = false)
    private String instruction;

    @Column(nullable = false)
    private boolean photo;

    @Column(nullable = false)
    private boolean irreversible;

    @Column(name = "lot_kind")
    private @Nullable String lotKind;

    @Column(name = "starts_clock")
    private @Nullable String startsClock;

    private @Nullable String qualification;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    private @Nullable Proof proof;

    @Column(name = "second_person", nullable = false)
    private boolean secondPerson;

    void becomes(OperationRow owner, int position, StepSheet sheet) {
        operation = owner;
        sequence = position;
        text = sheet.text();
        instruction = sheet.instruction();
        photo = sheet.photo();
        irreversible = sheet.irreversible();
        lotKind = sheet.lotKind();
        startsClock = sheet.startsClock();
        qualification = sheet.qualification();
        proof = sheet.proof();
        secondPerson = sheet.secondPerson();
    }

    @PreUpdate
    @PreRemove
    void onlyInADraft() {
        operation.revision().guardContent();
    }

    StepSheet sheet() {
        return new StepSheet(
                text, instruction, photo, irreversible, lotKind, startsClock, qualification, proof, secondPerson);
    }
}
