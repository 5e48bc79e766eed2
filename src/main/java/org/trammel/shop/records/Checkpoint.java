package org.trammel.shop.records;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import org.springframework.data.domain.Persistable;

/** Root of the tree of chain heads at one moment. */
@Entity
@Table(name = "checkpoint")
class Checkpoint implements Persistable<Long> {

    @Id
    private Long number;

    @Column(name = "at", nullable = false)
    private Instant at;

    @Column(nullable = false)
    private long leaves;

    @Column(nullable = false)
    private String root;

    @Column(nullable = false)
    private String peaks;

    protected Checkpoint() {}

    Checkpoint(long number, Instant at, MerkleTree tree) {
        this.number = number;
        this.at = at;
        this.leaves = tree.leaves();
        this.root = tree.root();
        this.peaks = tree.peaks();
    }

    long number() {
        return number;
    }

    MerkleTree tree() {
        return MerkleTree.of(leaves, peaks);
    }

    CheckpointSheet sheet() {
        return new CheckpointSheet(number, at, leaves, root);
    }

    @Override
    public Long getId() {
        return number;
    }

    /** A checkpoint is only ever added. */
    @Override
    public boolean isNew() {
        return true;
    }
}
