package org.trammel.shop.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.trammel.shop.records.SealedHistory.FIRST;
import static org.trammel.shop.records.SealedHistory.RECORDS_OF_FIRST;
import static org.trammel.shop.records.SealedHistory.SECOND;
import static org.trammel.shop.records.SealedHistory.YOUNG;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;
import org.trammel.shop.ShopTest;
import org.trammel.shop.TestDatabase;
import org.trammel.shop.TestEngine;
import org.trammel.shop.records.Verification.Fault;

/** Every way of tampering that is known to us is found, on the engine that runs. */
@ShopTest(properties = {"trammel.test.database=verification", "trammel.home=target/home-verification"})
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ChainVerificationTest {

    private static final TestDatabase DATABASE = TestEngine.running().database("verification");

    @Autowired
    private ChainVerification verification;

    @Autowired
    private CheckpointFile file;

    private SealedHistory history;

    /** Of the history itself; a new shop begins with records of its own. */
    private long records = 18;

    @BeforeAll
    void write(
            @Autowired ActLog log,
            @Autowired Words words,
            @Autowired Files files,
            @Autowired Checkpoints checkpoints,
            @Autowired JdbcTemplate jdbc,
            @Autowired PlatformTransactionManager transactions)
            throws IOException, SQLException {
        java.nio.file.Files.deleteIfExists(file.path());
        records += jdbc.queryForObject("select count(*) from log_entry", Long.class);
        SealedHistory.write(log, words, files, checkpoints, new TransactionTemplate(transactions));
        history = new SealedHistory(DATABASE, file);
        history.liftGuards();
    }

    @Test
    void anUntouchedHistoryFits() {
        Verification found = verification.verify(ChainVerification.Extent.RECORDS_AND_FILES);
        assertThat(found.faults()).isEmpty();
        assertThat(found.remarks()).isEmpty();
        assertThat(found.chains()).isEqualTo(4);
        assertThat(found.records()).isEqualTo(records);
        assertThat(found.checkpoints()).isEqualTo(2);
        assertThat(found.words()).isEqualTo("4 chains, " + records + " records, 2 checkpoints: every record fits.");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "chain|chain = 'frame:OTHER'",
                "position|position = 70",
                "act_id|act_id = '00000000-0000-0000-0000-000000000001'",
                "at|at = timestamp with time zone '2026-03-18 07:30:00.000001+00'",
                "kind|kind = 'sign'",
                "subject|subject = 'step:33'",
                "payload|payload = replace(payload, '\"by\":\"1\"', '\"by\":\"2\"')",
                "previous_hash|previous_hash = repeat('0', 64)",
                "hash|hash = repeat('a', 64)",
                "place|place = 1"
            })
    void aChangedColumnIsFound(String column, String change) {
        Verification found =
                history.afterSql("update log_entry set " + change + " where chain = ? and position = 3", FIRST);
        assertThat(found.faults()).as(column).anySatisfy(fault -> {
            assertThat(fault.chain()).isEqualTo(FIRST);
            assertThat(fault.position()).isBetween(3L, 4L);
        });
    }

    /** The number a database gives a record cannot be assigned, so it is changed by writing the record again. */
    @Test
    void aRecordThatWasTakenOutAndPutBackIsFound() {
        String columns = "chain, position, act_id, at, kind, subject, payload, previous_hash, hash, place";
        assertThat(history.after(owner -> {
                            owner.update(
                                    "insert into log_entry (" + columns + ") select 'aside', 3, gen_random_uuid(), at,"
                                            + " kind, subject, payload, previous_hash, hash, place from log_entry"
                                            + " where chain = ? and position = 3",
                                    FIRST);
                            owner.update("delete from log_entry where chain = ? and position = 3", FIRST);
                            owner.update(
                                    "update log_entry set chain = ?, act_id = cast(? as uuid) where chain = 'aside'",
                                    FIRST,
                                    actOf(owner));
                        })
                        .faults())
                .extracting(Fault::position)
                .contains(4L);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 3, RECORDS_OF_FIRST})
    void aRemovedRecordIsFound(int position) {
        assertThat(history.afterSql("delete from log_entry where chain = ? and position = ?", FIRST, position)
                        .faults())
                .extracting(Fault::chain)
                .contains(FIRST);
    }

    @Test
    void theFirstRecordThatDoesNotFitIsNamed() {
        Fault first = history.afterSql("delete from log_entry where chain = ? and position = 2", FIRST)
                .first()
                .orElseThrow();
        assertThat(first.words()).isEqualTo("Record 3 of " + FIRST + " does not fit. Record 2 is missing before it.");
    }

    @Test
    void recordsInAnotherOrderAreFound() {
        assertThat(history.after(owner -> {
                            move(owner, 2, 99);
                            move(owner, 3, 2);
                            move(owner, 99, 3);
                        })
                        .faults())
                .extracting(Fault::chain)
                .contains(FIRST);
    }

    @Test
    void aForgedRecordAtTheEndIsFound() {
        assertThat(history.after(owner -> owner.update(
                                "insert into log_entry (chain, position, act_id, at, kind, subject, payload,"
                                        + " previous_hash, hash, place) select chain, position + 1,"
                                        + " gen_random_uuid(), at, kind, subject, payload, hash, repeat('b', 64), 0"
                                        + " from log_entry where chain = ? and position = ?",
                                FIRST,
                                RECORDS_OF_FIRST))
                        .faults())
                .extracting(Fault::chain)
                .contains(FIRST);
    }

    @Test
    void aHeadThatWasMovedIsFound() {
        assertThat(history.afterSql("update chain_head set position = position - 1 where chain = ?", FIRST)
                        .faults())
                .extracting(Fault::chain)
                .contains(FIRST);
        assertThat(history.afterSql("delete from chain_head where chain = ?", FIRST)
                        .faults())
                .extracting(Fault::chain)
                .contains(FIRST);
    }

    @Test
    void aCutOffEndIsFoundByTheCheckpoint() {
        assertThat(history.after(owner -> cutOff(owner, FIRST, RECORDS_OF_FIRST - 1))
                        .faults())
                .extracting(Fault::chain)
                .contains(FIRST);
    }

    @Test
    void aChainThatWasTakenAwayIsFoundByTheCheckpoint() {
        assertThat(history.after(owner -> {
                            owner.update("delete from log_entry where chain = ?", FIRST);
                            owner.update("delete from chain_head where chain = ?", FIRST);
                        })
                        .faults())
                .extracting(Fault::chain)
                .contains(FIRST);
    }

    @Test
    void aRecordYoungerThanTheCheckpointIsMissedByItsSisterInAnotherChain() {
        assertThat(history.after(owner -> {
                            owner.update("delete from log_entry where chain = ?", YOUNG);
                            owner.update("delete from chain_head where chain = ?", YOUNG);
                        })
                        .faults())
                .anySatisfy(fault -> assertThat(fault.chain()).startsWith("act "));
    }

    @Test
    void aChainThatWasSealedAnewIsFoundByTheCheckpoint() {
        assertThat(history.after(owner -> sealAnew(owner, FIRST)).faults())
                .isNotEmpty()
                .allSatisfy(fault -> assertThat(fault.why()).contains("checkpoint"));
    }

    @Test
    void aDatabaseThatWasRebuiltIsFoundByTheFileOutsideIt() {
        assertThat(history.after(owner -> {
                            sealAnew(owner, FIRST);
                            tieAnew(owner);
                        })
                        .faults())
                .isNotEmpty()
                .allSatisfy(fault -> assertThat(fault.why()).contains("file outside the database"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "update checkpoint set root = repeat('c', 64) where number = 1",
                "update checkpoint set peaks = repeat('c', 64) where number = 1",
                "update checkpoint set leaves = leaves - 1 where number = 2",
                "update checkpoint set at = timestamp with time zone '2026-01-01 00:00:00+00' where number = 2",
                "update checkpoint_head set hash = repeat('d', 64) where leaf = 1",
                "update checkpoint_head set position = position + 100 where leaf = 1",
                "update checkpoint_head set chain = 'frame:NOBODY' where leaf = 1",
                "update checkpoint_head set leaf = 77 where leaf = 1",
                "delete from checkpoint_head where leaf = 0",
                "delete from checkpoint_head where checkpoint_number = 2"
            })
    void aChangedCheckpointIsFound(String sql) {
        assertThat(history.afterSql(sql).faults()).isNotEmpty();
    }

    @Test
    void removedCheckpointsAreFoundByTheFile() {
        assertThat(history.after(owner -> {
                            owner.update("delete from checkpoint_head where checkpoint_number = 2");
                            owner.update("delete from checkpoint where number = 2");
                        })
                        .faults())
                .singleElement()
                .satisfies(fault -> assertThat(fault.why()).contains("older copy was restored"));
    }

    @Test
    void aFileThatWasChangedOrIsGoneIsSaid(@TempDir Path changed, @TempDir Path shortened, @TempDir Path empty)
            throws IOException {
        CheckpointFile other = SealedHistory.copyTo(file, changed);
        String text = java.nio.file.Files.readString(other.path());
        char root = text.charAt(text.length() - 2);
        java.nio.file.Files.writeString(
                other.path(), text.substring(0, text.length() - 2) + (root == '0' ? '1' : '0') + "\n");
        assertThat(history.after(owner -> {}, other).faults()).hasSize(1);

        CheckpointFile shorter = SealedHistory.copyTo(file, shortened);
        java.nio.file.Files.writeString(shorter.path(), text.substring(0, text.length() - 20));
        Verification cutOff = history.after(owner -> {}, shorter);
        assertThat(cutOff.faults()).hasSize(1);

        Verification without = history.after(owner -> {}, new CheckpointFile(empty.toString()));
        assertThat(without.isIntact()).isTrue();
        assertThat(without.remarks())
                .singleElement()
                .satisfies(remark -> assertThat(remark).contains("holds 0 of 2"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "update kept_words_text set words = 'the same on this one' where words_id = (select min(id) from kept_words)",
                "update kept_words_text set salt = repeat('e', 64) where words_id = (select min(id) from kept_words)",
                "delete from kept_words_text where words_id = (select min(id) from kept_words)",
                "update kept_words set sha256 = repeat('f', 64) where id = (select min(id) from kept_words)",
                "delete from kept_file_part",
                "update kept_file_part set part = 5, content = cast('x' as bytea)",
                "insert into erasure (thing, act_id, by_person, at) values ('words:1', gen_random_uuid(), 0, now())"
            })
    void changedWordsAndFilesAreFound(String sql) {
        assertThat(history.afterSql(sql).faults()).isNotEmpty();
    }

    /** By hand a thousand are tried; a hundred for each seed are enough to see that none depends on luck. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2})
    void aRandomChangeOfOneCharacterIsFound(long seed) {
        Random random = new Random(seed);
        List<String> columns = List.of("chain", "kind", "subject", "payload", "previous_hash", "hash");
        for (int i = 0; i < 100; i++) {
            String column = columns.get(random.nextInt(columns.size()));
            String chain = random.nextBoolean() ? FIRST : SECOND;
            int position = 1 + random.nextInt(5);
            Verification found = history.after(owner -> {
                String where = " where chain = '" + chain + "' and position = " + position;
                String text = owner.queryForObject("select " + column + " from log_entry" + where, String.class);
                int at = random.nextInt(text.length());
                char other = text.charAt(at) == 'x' ? 'y' : 'x';
                owner.update(
                        "update log_entry set " + column + " = ?" + where,
                        text.substring(0, at) + other + text.substring(at + 1));
            });
            assertThat(found.isIntact())
                    .as("%s of %s %d", column, chain, position)
                    .isFalse();
        }
    }

    @Test
    void theCommandEndsWithWhatItFound(@TempDir Path nowhere) {
        assertThat(command("--spring.datasource.url=" + DATABASE.url(), "--trammel.home=target/home-verification"))
                .isEqualTo(Map.entry(
                        VerifyCommand.INTACT, "4 chains, " + records + " records, 2 checkpoints: every record fits."));
        assertThat(command("--spring.datasource.url=jdbc:h2:file:" + nowhere + "/none", "--trammel.home=" + nowhere)
                        .getKey())
                .isEqualTo(VerifyCommand.NOT_READ);
        assertThat(nowhere).isEmptyDirectory();
        assertThat(VerifyCommand.isAskedFor("--server.port=1", "--verify")).isTrue();
        assertThat(VerifyCommand.isAskedFor("--verify-not")).isFalse();
    }

    private static Map.Entry<Integer, String> command(String... more) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        int code = VerifyCommand.run(
                new PrintStream(out, true, StandardCharsets.UTF_8),
                "--verify",
                more[0],
                more[1],
                "--spring.datasource.username=" + DATABASE.user(),
                "--spring.datasource.password=" + DATABASE.password());
        return Map.entry(code, out.toString(StandardCharsets.UTF_8).strip());
    }

    /** The act of the record put aside, as its content says. */
    private static String actOf(JdbcTemplate owner) {
        String payload = owner.queryForObject("select payload from log_entry where chain = 'aside'", String.class);
        return payload.substring(8, 44);
    }

    private static void move(JdbcTemplate owner, int from, int to) {
        owner.update("update log_entry set position = ? where chain = ? and position = ?", to, FIRST, from);
    }

    private static void cutOff(JdbcTemplate owner, String chain, int last) {
        owner.update("delete from log_entry where chain = ? and position > ?", chain, last);
        owner.update(
                "update chain_head set position = ?, hash = (select e.hash from log_entry e where e.chain = ? and"
                        + " e.position = ?) where chain = ?",
                last,
                chain,
                last,
                chain);
    }

    /** Changes the first record and makes every seal after it fit again, as somebody who knows the rule can. */
    private static void sealAnew(JdbcTemplate owner, String chain) {
        String before = Seal.NOTHING;
        for (int position = 1; position <= RECORDS_OF_FIRST; position++) {
            String payload = owner.queryForObject(
                    "select payload from log_entry where chain = ? and position = ?", String.class, chain, position);
            String forged = payload.replace("\"by\":\"1\"", "\"by\":\"2\"");
            String seal = Seal.of(chain, position, before, forged);
            owner.update(
                    "update log_entry set payload = ?, previous_hash = ?, hash = ? where chain = ? and position = ?",
                    forged,
                    before,
                    seal,
                    chain,
                    position);
            before = seal;
        }
        owner.update("update chain_head set hash = ? where chain = ?", before, chain);
    }

    /** Makes leaves and roots fit what the log says now. */
    private static void tieAnew(JdbcTemplate owner) {
        owner.update("update checkpoint_head set hash = (select e.hash from log_entry e where e.chain ="
                + " checkpoint_head.chain and e.position = checkpoint_head.position)");
        MerkleTree tree = new MerkleTree();
        owner.query("select chain, position, hash, checkpoint_number from checkpoint_head order by leaf", row -> {
            tree.add(CheckpointHead.leaf(row.getString(1), row.getLong(2), row.getString(3)));
            owner.update(
                    "update checkpoint set root = ?, peaks = ? where number = ?",
                    tree.root(),
                    tree.peaks(),
                    row.getLong(4));
        });
    }
}
