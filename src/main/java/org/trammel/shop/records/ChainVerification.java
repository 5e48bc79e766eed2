package org.trammel.shop.records;

import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.Objects;
import javax.sql.DataSource;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Service;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.TransactionDefinition;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Looks whether everything that was sealed is still as it was: each record follows on the one before it and is what its
 * seal says, each chain ends where its head stands, the checkpoints come out of the chains again, in the database and in
 * the file beside it, and words and files have their hashes.
 *
 * <p>It reads the columns as they lie and not through the entities, since it judges them; rows are read as a stream, so
 * that a long history needs no more memory than a short one. All is read in one view of the database, so that acts may
 * go on meanwhile.
 *
 * <p>What it cannot see: the loss of records younger than the newest checkpoint, if the head is set back with them, and a
 * rebuild of everything including the file. Against the second helps a root that was written down.
 */
@Service
public class ChainVerification {

    private static final int ROWS_AT_ONCE = 2000;
    private static final String LIMIT = " fetch first " + Findings.FAULTS_AT_MOST + " rows only";

    /** What to look at. */
    public enum Extent {
        /** Chains, checkpoints and words: seconds, even for a long history. */
        RECORDS,
        /** Also the content of every file, which reads all of it. */
        RECORDS_AND_FILES
    }

    private final JdbcTemplate jdbc;
    private final CheckpointFile file;
    private final TransactionTemplate oneView;

    ChainVerification(DataSource database, PlatformTransactionManager transactions, CheckpointFile file) {
        this.jdbc = new JdbcTemplate(database);
        this.jdbc.setFetchSize(ROWS_AT_ONCE);
        this.file = file;
        this.oneView = new TransactionTemplate(transactions);
        this.oneView.setReadOnly(true);
        this.oneView.setIsolationLevel(TransactionDefinition.ISOLATION_REPEATABLE_READ);
    }

    /** Walks everything. */
    public Verification verify(Extent extent) {
        Findings findings = new Findings();
        oneView.executeWithoutResult(status -> {
            ChainWalk walk = new ChainWalk(findings);
            jdbc.query(ChainWalk.RECORDS, walk);
            heads(findings);
            walk.end();
            new CheckpointWalk(jdbc, findings).walk(file);
            words(findings);
            erasures(findings);
            if (extent == Extent.RECORDS_AND_FILES) {
                files(findings);
            }
        });
        return findings.verification();
    }

    private void heads(Findings findings) {
        jdbc.query(
                "select h.chain, h.position from chain_head h where h.position > 0 and not exists (select 1 from"
                        + " log_entry e where e.chain = h.chain and e.position = h.position and e.hash = h.hash)"
                        + " order by h.chain" + LIMIT,
                row -> {
                    findings.fault(
                            row.getString(1),
                            row.getLong(2),
                            "The head of the chain names it and it is not there as it was.");
                });
        jdbc.query(
                "select e.chain, min(e.position) from log_entry e left join chain_head h on h.chain = e.chain"
                        + " where h.chain is null or e.position > h.position group by e.chain order by e.chain" + LIMIT,
                row -> {
                    findings.fault(row.getString(1), row.getLong(2), "It lies beyond the head of its chain.");
                });
    }

    private void words(Findings findings) {
        jdbc.query(
                "select k.id, k.sha256, t.salt, t.words, x.thing from kept_words k"
                        + " left join kept_words_text t on t.words_id = k.id"
                        + " left join erasure x on x.thing = 'words:' || k.id order by k.id",
                row -> {
                    String text = row.getString("words");
                    if (text == null && row.getString("thing") == null) {
                        findings.fault("words", row.getLong("id"), "They are gone and were not erased.");
                    } else if (text != null
                            && !KeptWordsText.hash(row.getString("salt"), text).equals(row.getString("sha256"))) {
                        findings.fault("words", row.getLong("id"), "They are not what was written.");
                    }
                });
    }

    private void erasures(Findings findings) {
        jdbc.query(
                "select x.thing from erasure x where not exists"
                        + " (select 1 from log_entry e where e.act_id = x.act_id and e.subject = x.thing)"
                        + " order by x.thing" + LIMIT,
                row -> {
                    findings.fault("erasure of " + row.getString(1), 1, "The log knows no act that erased it.");
                });
    }

    private void files(Findings findings) {
        jdbc.query(
                "select f.sha256 from kept_file f where not exists (select 1 from kept_file_part p where p.file_sha256 ="
                        + " f.sha256) and not exists (select 1 from erasure x where x.thing = 'file:' || f.sha256)"
                        + " order by f.sha256" + LIMIT,
                row -> {
                    findings.fault("file " + row.getString(1), 1, "It is gone and was not erased.");
                });
        FileWalk walk = new FileWalk(findings);
        JdbcTemplate slowly = new JdbcTemplate(Objects.requireNonNull(jdbc.getDataSource()));
        slowly.setFetchSize(8);
        slowly.query("select file_sha256, content from kept_file_part order by file_sha256, part", row -> {
            walk.part(row.getString(1), row.getBytes(2));
        });
        walk.end();
    }

    /** Hashes file after file from its parts. */
    private static final class FileWalk {

        private final Findings findings;
        private final MessageDigest digest = Seal.digest();
        private String sha256 = "";

        FileWalk(Findings findings) {
            this.findings = findings;
        }

        void part(String of, byte[] content) {
            if (!of.equals(sha256)) {
                end();
                sha256 = of;
            }
            digest.update(content);
        }

        void end() {
            String found = HexFormat.of().formatHex(digest.digest());
            if (!sha256.isEmpty() && !found.equals(sha256)) {
                findings.fault("file " + sha256, 1, "Its content is not what was kept.");
            }
        }
    }
}
