package org.trammel.shop.ovens;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Act;

@Entity
@Immutable
@Table(name = "oven_run_door")
class DoorRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "run_id", nullable = false)
    private long runId;

    @Column(nullable = false)
    private boolean opened;

    @Column(name = "moved_at", nullable = false)
    private Instant movedAt;

    @Column(name = "words_id")
    private @Nullable Long wordsId;

    @Column(name = "by_person", nullable = false)
    private long by;

    @Column(nullable = false)
    private Instant at;

    @Column(name = "act_id", nullable = false)
    private UUID actId;

    protected DoorRow() {}

    DoorRow(long runId, boolean opened, @Nullable Long wordsId, Act act) {
        this.runId = runId;
        this.opened = opened;
        this.movedAt = act.at();
        this.wordsId = wordsId;
        this.by = act.by();
        this.at = act.at();
        this.actId = act.id();
    }

    @Nullable
    Long wordsId() {
        return wordsId;
    }

    Run.Door door(String words) {
        return new Run.Door(opened, movedAt, words, by);
    }
}
