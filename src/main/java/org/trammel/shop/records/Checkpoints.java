package org.trammel.shop.records;

import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.scheduling.annotation.Scheduled;
import org.springframework.stereotype.Service;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Ties the chains together from time to time, outside the acts, because one chain for the whole shop would make every
 * tick wait for every other.
 *
 * <p>Each head that moved since becomes a leaf of one Merkle tree over all heads there ever were, in the order they were
 * tied in ({@link MerkleTree}). A tree over the present heads alone would have to be built anew each time; this one grows,
 * and each root still covers where every chain stood. What was written after the newest checkpoint is covered by the
 * next.
 */
@Service
public class Checkpoints {

    private static final Logger LOG = LoggerFactory.getLogger(Checkpoints.class);

    private final CheckpointRepository checkpoints;
    private final CheckpointHeadRepository leaves;
    private final ChainHeadRepository heads;
    private final CheckpointFile file;
    private final Clock clock;
    private final TransactionTemplate transaction;

    Checkpoints(
            CheckpointRepository checkpoints,
            CheckpointHeadRepository leaves,
            ChainHeadRepository heads,
            CheckpointFile file,
            Clock clock,
            PlatformTransactionManager transactions) {
        this.checkpoints = checkpoints;
        this.leaves = leaves;
        this.heads = heads;
        this.file = file;
        this.clock = clock;
        this.transaction = new TransactionTemplate(transactions);
    }

    /** The newest checkpoint, to be shown and written down. */
    public Optional<CheckpointSheet> newest() {
        return checkpoints.findTopByOrderByNumberDesc().map(Checkpoint::sheet);
    }

    /**
     * Makes a checkpoint, if any chain moved since the last.
     *
     * @return the new checkpoint; empty if nothing moved or another instance of the service made it
     */
    public Optional<CheckpointSheet> make() {
        Optional<CheckpointSheet> made;
        try {
            made = Optional.ofNullable(transaction.execute(status -> grown().orElse(null)));
        } catch (DataIntegrityViolationException another) {
            LOG.debug("Another instance made the checkpoint", another);
            return Optional.empty();
        }
        made.ifPresent(file::add);
        return made;
    }

    @Scheduled(
            initialDelayString = "${trammel.checkpoint.every:PT10M}",
            fixedDelayString = "${trammel.checkpoint.every:PT10M}")
    void makeFromTimeToTime() {
        make();
    }

    private Optional<CheckpointSheet> grown() {
        Optional<Checkpoint> before = checkpoints.findTopByOrderByNumberDesc();
        List<ChainHead> moved;
        try (Stream<ChainHead> found = heads.moved()) {
            moved = found.toList();
        }
        if (moved.isEmpty()) {
            return Optional.empty();
        }
        long number = before.map(Checkpoint::number).orElse(0L) + 1;
        MerkleTree tree = before.map(Checkpoint::tree).orElseGet(MerkleTree::new);
        long leaf = tree.leaves();
        moved.forEach(head -> tree.add(CheckpointHead.leaf(head.chain(), head.position(), head.hash())));
        Checkpoint checkpoint =
                checkpoints.saveAndFlush(new Checkpoint(number, clock.instant().truncatedTo(ChronoUnit.MICROS), tree));
        for (ChainHead head : moved) {
            leaves.save(new CheckpointHead(leaf++, number, head));
        }
        return Optional.of(checkpoint.sheet());
    }
}
