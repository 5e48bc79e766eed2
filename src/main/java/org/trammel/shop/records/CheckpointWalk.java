package org.trammel.shop.records;

import java.time.OffsetDateTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.springframework.jdbc.core.JdbcTemplate;

/** Grows the tree of chain heads anew and compares its roots with those in the database and in the file. */
final class CheckpointWalk {

    private static final String CHECKPOINTS = "checkpoints";

    private final JdbcTemplate jdbc;
    private final Findings findings;
    private final MerkleTree tree = new MerkleTree();
    private final Map<Long, CheckpointSheet> stored = new HashMap<>();
    private final Map<Long, String> rootByLeaves = new HashMap<>();
    private final Map<Long, String> peaksByLeaves = new HashMap<>();

    private record Stored(CheckpointSheet sheet, String peaks) {}

    CheckpointWalk(JdbcTemplate jdbc, Findings findings) {
        this.jdbc = jdbc;
        this.findings = findings;
    }

    void walk(CheckpointFile file) {
        List<Stored> checkpoints = jdbc.query(
                "select number, at, leaves, root, peaks from checkpoint order by number",
                (row, i) -> new Stored(
                        new CheckpointSheet(
                                row.getLong("number"),
                                row.getObject("at", OffsetDateTime.class).toInstant(),
                                row.getLong("leaves"),
                                row.getString("root")),
                        row.getString("peaks")));
        checkpoints.forEach(checkpoint -> rootByLeaves.put(checkpoint.sheet().leaves(), ""));
        grow();
        long expected = 1;
        for (Stored checkpoint : checkpoints) {
            CheckpointSheet sheet = checkpoint.sheet();
            stored.put(sheet.number(), sheet);
            findings.checkpoint();
            String root = rootByLeaves.get(sheet.leaves());
            if (sheet.number() != expected) {
                findings.fault(CHECKPOINTS, expected, "It is missing.");
                expected = sheet.number();
            } else if (!sheet.root().equals(root)) {
                findings.fault(
                        CHECKPOINTS, sheet.number(), "Its root is not that of the chain heads it ties together.");
            } else if (!checkpoint.peaks().equals(peaksByLeaves.get(sheet.leaves()))) {
                findings.fault(CHECKPOINTS, sheet.number(), "What the tree grows on from is not what it was.");
            }
            expected++;
        }
        if (checkpoints.isEmpty()
                ? tree.leaves() > 0
                : tree.leaves() != last(checkpoints).leaves()) {
            findings.fault(CHECKPOINTS, expected, "It is missing: chain heads are tied into it.");
        }
        missingRecords();
        compare(file);
    }

    private static CheckpointSheet last(List<Stored> checkpoints) {
        return checkpoints.get(checkpoints.size() - 1).sheet();
    }

    private void grow() {
        jdbc.query("select leaf, chain, position, hash from checkpoint_head order by leaf", row -> {
            if (row.getLong("leaf") != tree.leaves()) {
                findings.fault(CHECKPOINTS, row.getLong("leaf"), "The chain head before it is missing.");
            }
            tree.add(CheckpointHead.leaf(row.getString("chain"), row.getLong("position"), row.getString("hash")));
            if (rootByLeaves.containsKey(tree.leaves())) {
                rootByLeaves.put(tree.leaves(), tree.root());
                peaksByLeaves.put(tree.leaves(), tree.peaks());
            }
        });
    }

    /** Found by no walk over the records that are there: a chain whose end, or all of it, was taken away. */
    private void missingRecords() {
        jdbc.query(
                "select c.chain, c.position from checkpoint_head c where not exists (select 1 from log_entry e"
                        + " where e.chain = c.chain and e.position = c.position and e.hash = c.hash)"
                        + " order by c.leaf fetch first " + Findings.FAULTS_AT_MOST + " rows only",
                row -> {
                    findings.fault(
                            row.getString("chain"),
                            row.getLong("position"),
                            "A checkpoint knows it and the chain does not hold it as it was.");
                });
    }

    private void compare(CheckpointFile file) {
        long written = 0;
        for (CheckpointFile.Line line : file.lines()) {
            if (line instanceof CheckpointFile.Line.Unreadable unreadable) {
                findings.remark("Line " + unreadable.line() + " of " + file.path() + " cannot be read.");
                continue;
            }
            CheckpointSheet outside = ((CheckpointFile.Line.Written) line).checkpoint();
            CheckpointSheet inside = stored.get(outside.number());
            if (inside == null) {
                findings.fault(
                        CHECKPOINTS,
                        outside.number(),
                        "The file outside the database has it and the database does not: the end was cut off, or an"
                                + " older copy was restored.");
            } else if (!inside.equals(outside)) {
                findings.fault(
                        CHECKPOINTS,
                        outside.number(),
                        "It is not the one that was written to the file outside the database on " + outside.at() + ".");
            }
            written++;
        }
        if (written < findings.checkpoints()) {
            findings.remark(file.path() + " holds " + written + " of " + findings.checkpoints()
                    + " checkpoints; the others are not compared with anything outside the database.");
        }
    }
}
