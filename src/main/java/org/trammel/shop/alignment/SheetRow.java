package org.trammel.shop.alignment;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;

/** One turn of measuring a frame at an operation. Only added to. */
@Entity
@Table(name = "alignment_sheet")
class SheetRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "operation_id")
    private long operationId;

    @Column(name = "traveller_id")
    private long travellerId;

    private int turn;

    /** How often the frame had been pushed at the operation when the turn began. */
    private int pushes;

    private Instant at;

    protected SheetRow() {}

    SheetRow(long operationId, long travellerId, int turn, int pushes, Instant at) {
        this.operationId = operationId;
        this.travellerId = travellerId;
        this.turn = turn;
        this.pushes = pushes;
        this.at = at;
    }

    long id() {
        return id;
    }

    long operationId() {
        return operationId;
    }

    long travellerId() {
        return travellerId;
    }

    int turn() {
        return turn;
    }

    int pushes() {
        return pushes;
    }
}
