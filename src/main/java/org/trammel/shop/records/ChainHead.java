package org.trammel.shop.records;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;

/** Where a chain stands. Its row is locked while an act is carried out, so acts on one frame follow each other. */
@Entity
@Table(name = "chain_head")
class ChainHead {

    @Id
    private String chain;

    @Column(name = "position", nullable = false)
    private long position;

    @Column(nullable = false)
    private String hash;

    protected ChainHead() {}

    void moveTo(LogEntry entry) {
        position = entry.position();
        hash = entry.hash();
    }

    String chain() {
        return chain;
    }

    long position() {
        return position;
    }

    String hash() {
        return hash;
    }
}
