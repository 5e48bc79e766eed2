package org.trammel.shop.ovens;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.time.Instant;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Act;
import org.trammel.shop.travellers.FrameSheet;

@Entity
@Table(name = "oven_run_frame")
class LoadedRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "run_id", nullable = false)
    private long runId;

    @Column(name = "traveller_id", nullable = false)
    private long travellerId;

    @Column(name = "operation_id")
    private @Nullable Long operationId;

    @Column(nullable = false)
    private String serial;

    @Column(nullable = false)
    private String part;

    @Column(nullable = false)
    private String mark;

    @Column(nullable = false)
    private String metal;

    @Column(nullable = false)
    private String place;

    @Column(name = "mass_kg")
    private @Nullable BigDecimal mass_kg;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    @Column(nullable = false)
    private FrameState state;

    /** Why it was kept back or taken out; kept apart, where it can be erased. */
    @Column(name = "words_id")
    private @Nullable Long wordsId;

    @Column(name = "loaded_by", nullable = false)
    private long loadedBy;

    @Column(name = "loaded_at", nullable = false)
    private Instant loadedAt;

    @Column(name = "decided_by")
    private @Nullable Long decidedBy;

    @Column(name = "decided_at")
    private @Nullable Instant decidedAt;

    protected LoadedRow() {}

    LoadedRow(long runId, FrameSheet.Head head) {
        this.runId = runId;
        this.travellerId = head.travellerId();
        this.serial = head.serial();
        this.part = head.part();
        this.mark = head.mark();
        this.metal = head.metal();
    }

    void load(@Nullable Long operation, String at, @Nullable BigDecimal kg, Act act) {
        operationId = operation;
        place = at;
        mass_kg = kg;
        state = FrameState.LOADED;
        wordsId = null;
        loadedBy = act.by();
        loadedAt = act.at();
    }

    void takeOut(@Nullable Long why) {
        state = FrameState.TAKEN_OUT;
        wordsId = why;
        operationId = null;
    }

    void decide(FrameState decided, @Nullable Long why, Act act) {
        state = decided;
        wordsId = why;
        decidedBy = act.by();
        decidedAt = act.at();
    }

    long runId() {
        return runId;
    }

    long travellerId() {
        return travellerId;
    }

    @Nullable
    Long operationId() {
        return operationId;
    }

    FrameState state() {
        return state;
    }

    String serial() {
        return serial;
    }

    String part() {
        return part;
    }

    @Nullable
    Long wordsId() {
        return wordsId;
    }

    Run.Loaded loaded(String words) {
        return new Run.Loaded(
                travellerId, operationId, serial, part, mark, metal, place, mass_kg, state, words, loadedBy);
    }
}
