package org.trammel.shop.records;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;

/** One record of the log, sealed to the one before it in its chain. */
@Entity
@Table(name = "log_entry")
class LogEntry {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(nullable = false)
    private String chain;

    @Column(name = "position", nullable = false)
    private long position;

    @Column(name = "act_id", nullable = false)
    private UUID actId;

    @Column(name = "at", nullable = false)
    private Instant at;

    @Column(nullable = false)
    private String kind;

    @Column(nullable = false)
    private String subject;

    @Column(nullable = false)
    private String payload;

    @Column(name = "previous_hash", nullable = false)
    private String previousHash;

    @Column(nullable = false)
    private String hash;

    @Column(nullable = false)
    private int place;

    protected LogEntry() {}

    LogEntry(ChainHead head, Act act, int place, String kind, String subject, String payload) {
        this.chain = head.chain();
        this.position = head.position() + 1;
        this.actId = act.id();
        this.place = place;
        this.at = act.at();
        this.kind = kind;
        this.subject = subject;
        this.payload = payload;
        this.previousHash = head.hash();
        this.hash = Seal.of(chain, position, previousHash, payload);
    }

    String chain() {
        return chain;
    }

    long position() {
        return position;
    }

    UUID actId() {
        return actId;
    }

    Instant at() {
        return at;
    }

    String kind() {
        return kind;
    }

    String subject() {
        return subject;
    }

    String payload() {
        return payload;
    }

    String previousHash() {
        return previousHash;
    }

    int place() {
        return place;
    }

    String hash() {
        return hash;
    }
}
