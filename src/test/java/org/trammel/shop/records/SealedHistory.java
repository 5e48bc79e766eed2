package org.trammel.shop.records;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.function.Consumer;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.datasource.SingleConnectionDataSource;
import org.springframework.jdbc.support.JdbcTransactionManager;
import org.springframework.transaction.TransactionDefinition;
import org.springframework.transaction.support.TransactionTemplate;
import org.trammel.shop.TestClock;
import org.trammel.shop.TestDatabase;

/**
 * A small history of its own database: three frames, the shop, words, a file, two checkpoints and a record after the
 * last. Whoever owns the tables can tamper with it; every attempt is looked at and taken back.
 */
final class SealedHistory {

    static final String FIRST = Chains.frame("TAMPER1");
    static final String SECOND = Chains.frame("TAMPER2");
    static final String YOUNG = Chains.frame("TAMPER3");
    static final int RECORDS_OF_FIRST = 6;

    private final TestDatabase database;
    private final CheckpointFile file;

    SealedHistory(TestDatabase database, CheckpointFile file) {
        this.database = database;
        this.file = file;
    }

    /** Writes the history. Called once for the database. */
    static void write(ActLog log, Words words, Files files, Checkpoints checkpoints, TransactionTemplate transaction)
            throws IOException {
        for (int i = 1; i < RECORDS_OF_FIRST; i++) {
            int step = i;
            transaction.executeWithoutResult(status -> {
                log.opens(act(), "tick", "step:" + step, FIRST);
                log.event(FIRST, "ticked", Map.of("step", step, "by", "1"));
            });
            transaction.executeWithoutResult(status -> {
                log.opens(act(), "measure", "characteristic:" + step, SECOND, Chains.SHOP);
                WordsRef said = words.keep("different on this one " + step);
                log.event(SECOND, "noted", Map.of("words", said.id(), "sha256", said.sha256()));
            });
        }
        checkpoints.make();
        transaction.executeWithoutResult(status -> {
            log.opens(act(), "photo", "step:9", FIRST);
            StoredFile kept =
                    files.keep("%PDF-1.7 a certificate".getBytes(StandardCharsets.US_ASCII), "application/pdf", "c");
            log.event(FIRST, "file kept", Map.of("sha256", kept.sha256()));
        });
        checkpoints.make();
        transaction.executeWithoutResult(status -> log.opens(act(), "release", "traveller:1", YOUNG, Chains.SHOP));
    }

    /** Lifts the guard H2 puts on the tables, as the owner of the file can. */
    void liftGuards() throws SQLException {
        try (Connection owner = database.connectAsOwner();
                Statement statement = owner.createStatement()) {
            if (!owner.getMetaData().getDatabaseProductName().equals("H2")) {
                return;
            }
            for (String table :
                    new String[] {"log_entry", "checkpoint", "checkpoint_head", "kept_words", "kept_file", "erasure"}) {
                statement.execute("drop trigger if exists " + table + "_append_only");
            }
        }
    }

    /** What a verification finds after the tampering, which is taken back. */
    Verification after(Consumer<JdbcTemplate> tampering) {
        return after(tampering, file);
    }

    Verification after(Consumer<JdbcTemplate> tampering, CheckpointFile outside) {
        try (Connection owner = database.connectAsOwner()) {
            SingleConnectionDataSource source = new SingleConnectionDataSource(owner, true);
            JdbcTransactionManager transactions = new JdbcTransactionManager(source);
            TransactionTemplate tampered = new TransactionTemplate(transactions);
            tampered.setIsolationLevel(TransactionDefinition.ISOLATION_REPEATABLE_READ);
            Verification found = tampered.execute(status -> {
                tampering.accept(new JdbcTemplate(source));
                status.setRollbackOnly();
                return new ChainVerification(source, transactions, outside)
                        .verify(ChainVerification.Extent.RECORDS_AND_FILES);
            });
            return Objects.requireNonNull(found);
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }

    Verification afterSql(String sql, Object... values) {
        return after(owner -> owner.update(sql, values));
    }

    /** The file as the service wrote it, in another folder where it can be tampered with too. */
    static CheckpointFile copyTo(CheckpointFile original, Path folder) throws IOException {
        java.nio.file.Files.copy(original.path(), folder.resolve("checkpoints.log"));
        return new CheckpointFile(folder.toString());
    }

    static Act act() {
        return new Act(UUID.randomUUID(), Act.SERVICE, null, TestClock.START, null);
    }
}
