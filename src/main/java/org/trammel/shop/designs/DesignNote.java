package org.trammel.shop.designs;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import org.trammel.shop.records.Act;

/** A note left at a revision. */
@Entity
@Table(name = "design_note")
class DesignNote {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    private long revisionId;
    private long noteWords;
    private long writtenBy;
    private Instant writtenAt;

    protected DesignNote() {}

    DesignNote(long revisionId, long noteWords, Act act) {
        this.revisionId = revisionId;
        this.noteWords = noteWords;
        this.writtenBy = act.by();
        this.writtenAt = act.at();
    }

    long id() {
        return id;
    }

    long noteWords() {
        return noteWords;
    }

    long writtenBy() {
        return writtenBy;
    }

    Instant writtenAt() {
        return writtenAt;
    }
}
