package org.trammel.shop.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.IllegalTransactionStateException;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;
import org.trammel.shop.ShopTest;
import org.trammel.shop.TestClock;

@ShopTest
class WordsTest {

    @Autowired
    private Words words;

    @Autowired
    private JdbcClient jdbc;

    private final TransactionTemplate transaction;

    @Autowired
    WordsTest(PlatformTransactionManager transactions) {
        transaction = new TransactionTemplate(transactions);
    }

    @Test
    void wordsAreKeptAsTheyWereWritten() {
        String written = "Left cable port, não o direito\r\n<b>\uD83D\uDD27</b> =1+1 ' or 1=1 -- \u05E9\u05DC";
        WordsRef ref = kept("  " + written + " ");
        assertThat(words.find(ref.id())).isEqualTo(new KeptWords.Said(written.replace("\r\n", "\n")));
        assertThat(ref.sha256()).matches("[0-9a-f]{64}");
    }

    @Test
    void whatNoDatabaseHoldsIsDroppedAndTheWordsStay() {
        WordsRef ref = kept("a\u0000b\u0007c\uD800d\u202Ee");
        assertThat(words.find(ref.id())).isEqualTo(new KeptWords.Said("abc\uFFFDde"));
    }

    @Test
    void theSameWordsTwiceHaveTwoHashes() {
        assertThat(kept("scratch at the shell").sha256())
                .isNotEqualTo(kept("scratch at the shell").sha256());
    }

    @Test
    void emptyAndOverlongWordsAreRefused() {
        for (String typed : List.of("", " \u0000 \n", "x".repeat(Words.LONGEST + 1))) {
            assertThatThrownBy(() -> kept(typed)).isInstanceOf(Refusal.class);
        }
        assertThat(words.find(kept("x".repeat(Words.LONGEST)).id())).isInstanceOf(KeptWords.Said.class);
    }

    @Test
    void wordsAreKeptWithTheirActOnly() {
        assertThatThrownBy(() -> words.keep("alone")).isInstanceOf(IllegalTransactionStateException.class);
    }

    @Test
    void erasedWordsAreGoneAndThatTheyWereErasedStays() {
        WordsRef ref = kept("the customer's telephone number");
        WordsRef other = kept("stays");
        Act act = act();
        words.erase(act, ref.id());
        words.erase(act, ref.id());
        assertThat(words.find(ref.id())).isEqualTo(new KeptWords.Erased(TestClock.START));
        assertThat(words.findAll(List.of(ref.id(), other.id(), -1L)))
                .isEqualTo(Map.of(
                        ref.id(), new KeptWords.Erased(TestClock.START), other.id(), new KeptWords.Said("stays")));
        assertThat(jdbc.sql("select count(*) from kept_words_text where words_id = ?")
                        .param(ref.id())
                        .query(Long.class)
                        .single())
                .isZero();
        assertThatThrownBy(() -> words.erase(act(), ref.id())).isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> words.erase(act(), -1)).isInstanceOf(Refusal.class);
    }

    private WordsRef kept(String typed) {
        return transaction.execute(status -> words.keep(typed));
    }

    private static Act act() {
        return new Act(UUID.randomUUID(), Act.SERVICE, null, TestClock.START, null);
    }
}
