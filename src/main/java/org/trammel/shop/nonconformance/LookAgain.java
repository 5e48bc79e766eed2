package org.trammel.shop.nonconformance;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.WordsRef;

/** Somebody looked again at what a nonconformance is about, and what they saw. Only added to. */
@Entity
@Table(name = "nonconformance_look")
class LookAgain {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "nonconformance_id")
    private long nonconformanceId;

    @Column(name = "by_person")
    private long by;

    private Instant at;

    @Column(name = "words_id")
    private long wordsId;

    @Column(name = "act_id")
    private UUID actId;

    protected LookAgain() {}

    LookAgain(Nonconformance of, Act act, WordsRef words) {
        this.nonconformanceId = of.id();
        this.by = act.by();
        this.at = act.at();
        this.wordsId = words.id();
        this.actId = act.id();
    }

    long by() {
        return by;
    }

    Instant at() {
        return at;
    }

    long wordsId() {
        return wordsId;
    }

    UUID actId() {
        return actId;
    }
}
