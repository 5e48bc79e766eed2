package org.trammel.shop.records;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.nio.charset.StandardCharsets;
import org.springframework.data.domain.Persistable;

/** Where a chain stood at a checkpoint: a leaf of the tree. */
@Entity
@Table(name = "checkpoint_head")
class CheckpointHead implements Persistable<Long> {

    @Id
    private Long leaf;

    @Column(name = "checkpoint_number", nullable = false)
    private long checkpointNumber;

    @Column(nullable = false)
    private String chain;

    @Column(name = "position", nullable = false)
    private long position;

    @Column(nullable = false)
    private String hash;

    protected CheckpointHead() {}

    CheckpointHead(long leaf, long checkpointNumber, ChainHead head) {
        this.leaf = leaf;
        this.checkpointNumber = checkpointNumber;
        this.chain = head.chain();
        this.position = head.position();
        this.hash = head.hash();
    }

    /** What of a head goes into the tree. */
    static byte[] leaf(String chain, long position, String hash) {
        return (chain + '\n' + position + '\n' + hash).getBytes(StandardCharsets.UTF_8);
    }

    @Override
    public Long getId() {
        return leaf;
    }

    /** A leaf is only ever added. */
    @Override
    public boolean isNew() {
        return true;
    }
}
