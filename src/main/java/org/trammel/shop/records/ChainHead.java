package org.trammel.shop.records;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.PostLoad;
import jakarta.persistence.PostPersist;
import jakarta.persistence.Table;
import jakarta.persistence.Transient;
import org.springframework.data.domain.Persistable;

/** Where a chain stands. Its row is locked while an act is carried out, so acts on one frame follow each other. */
@Entity
@Table(name = "chain_head")
class ChainHead implements Persistable<String> {

    @Id
    private String chain;

    @Column(name = "position", nullable = false)
    private long position;

    @Column(nullable = false)
    private String hash;

    @Transient
    private boolean fresh;

    protected ChainHead() {}

    ChainHead(String chain) {
        this.chain = chain;
        this.position = 0;
        this.hash = Seal.NOTHING;
        this.fresh = true;
    }

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

    @Override
    public String getId() {
        return chain;
    }

    @Override
    public boolean isNew() {
        return fresh;
    }

    @PostLoad
    @PostPersist
    void known() {
        fresh = false;
    }
}
