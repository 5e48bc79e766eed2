package org.trammel.shop.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;
import org.trammel.shop.ShopTest;
import org.trammel.shop.Statements;
import org.trammel.shop.TestClock;

/** The log's own promises, raced on the engine that runs. */
@ShopTest
class ActLogTest {

    private static final AtomicInteger NAMES = new AtomicInteger();

    @Autowired
    private ActLog log;

    @Autowired
    private LogEntryRepository entries;

    @Autowired
    private Statements statements;

    private final TransactionTemplate transaction;

    @Autowired
    ActLogTest(PlatformTransactionManager transactions) {
        transaction = new TransactionTemplate(transactions);
    }

    @Test
    void anActIsOneRecordInEveryChainItTouches() {
        String frame = newChain();
        Act act = act();
        transaction.executeWithoutResult(status -> {
            assertThat(log.opens(act, "tick", "step:1", frame, Chains.SHOP)).isTrue();
            log.event(frame, "ticked", Map.of("step", 1));
            log.event(frame, "clock started", Map.of("clock", 7));
        });
        List<LogEntry> records = entries.findByActId(act.id());
        assertThat(records).extracting(LogEntry::chain).containsExactlyInAnyOrder(frame, Chains.SHOP);
        LogEntry record = entries.findByChainOrderByPosition(frame).get(0);
        assertThat(record.position()).isEqualTo(1);
        assertThat(record.payload()).contains("\"what\":\"ticked\"").contains("\"what\":\"clock started\"");
        assertThat(record.hash())
                .isEqualTo(Seal.of(frame, 1, Seal.NOTHING, record.payload()))
                .isNotEqualTo(Seal.NOTHING);
    }

    @Test
    void theSameActAgainIsNotCarriedOut() {
        String frame = newChain();
        Act act = act();
        assertThat(carriedOut(act, "step:1", frame)).isTrue();
        assertThat(carriedOut(act, "step:1", frame)).isFalse();
        assertThat(entries.findByChainOrderByPosition(frame)).hasSize(1);
    }

    @Test
    void anActIdUsedForSomethingElseIsRefused() {
        String frame = newChain();
        Act act = act();
        carriedOut(act, "step:1", frame);
        assertThatThrownBy(() -> carriedOut(act, "step:2", frame))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.kind()).isEqualTo(Refusal.Kind.INPUT));
        assertThat(entries.findByChainOrderByPosition(frame)).hasSize(1);
    }

    @Test
    void anActThatFailsLeavesNoRecordAndMayBeSentAgain() {
        String frame = newChain();
        Act act = act();
        assertThatThrownBy(() -> transaction.executeWithoutResult(status -> {
                    log.opens(act, "tick", "step:1", frame);
                    throw new IllegalArgumentException("in the middle");
                }))
                .hasMessage("in the middle");
        assertThat(entries.findByActId(act.id())).isEmpty();
        assertThat(carriedOut(act, "step:1", frame)).isTrue();
    }

    @Test
    void anActInsideAnActHasItsOwnTransaction(@Autowired PlatformTransactionManager transactions) {
        String outer = newChain();
        String inner = newChain();
        TransactionTemplate apart = new TransactionTemplate(transactions);
        apart.setPropagationBehavior(TransactionTemplate.PROPAGATION_REQUIRES_NEW);
        transaction.executeWithoutResult(status -> {
            log.opens(act(), "tick", "step:1", outer);
            apart.executeWithoutResult(other -> log.opens(act(), "note", "step:2", inner));
            log.event(outer, "ticked", Map.of());
        });
        assertThat(entries.findByChainOrderByPosition(outer)).hasSize(1);
        assertThat(entries.findByChainOrderByPosition(inner)).hasSize(1);
    }

    @Test
    void outsideATransactionAndWithoutAnActNothingIsLogged() {
        assertThatThrownBy(() -> log.opens(act(), "tick", "step:1", newChain()))
                .isInstanceOf(IllegalStateException.class);
        assertThatThrownBy(() -> transaction.executeWithoutResult(status -> log.event(newChain(), "ticked", Map.of())))
                .isInstanceOf(IllegalStateException.class);
    }

    @Test
    void theChainCostsFourStatements() throws Exception {
        String frame = newChain();
        carriedOut(act(), "step:0", frame);
        List<String> sent = statements.during(() -> carriedOut(act(), "step:1", frame));
        assertThat(sent).as("lock, look, add, move").hasSize(4);
    }

    @Test
    void actsOnOneChainAtOnceFollowEachOther() throws Exception {
        String frame = newChain();
        List<Callable<Boolean>> acts = new ArrayList<>();
        for (int i = 0; i < 24; i++) {
            String subject = "step:" + i;
            acts.add(() -> carriedOut(act(), subject, frame));
        }
        assertThat(atOnce(acts)).containsOnly("true");
        List<LogEntry> records = entries.findByChainOrderByPosition(frame);
        assertThat(records).hasSize(24);
        String before = Seal.NOTHING;
        for (int i = 0; i < records.size(); i++) {
            assertThat(records.get(i).position()).isEqualTo(i + 1);
            assertThat(records.get(i).previousHash()).isEqualTo(before);
            before = records.get(i).hash();
        }
    }

    @Test
    void theSameActTwiceAtOnceIsOneRecord() throws Exception {
        for (int round = 0; round < 10; round++) {
            String frame = newChain();
            Act act = act();
            List<String> answers = atOnce(List.of(
                    () -> carriedOut(act, "step:1", frame),
                    () -> carriedOut(act, "step:1", frame),
                    () -> carriedOut(act, "step:1", frame)));
            assertThat(answers).containsExactlyInAnyOrder("true", "false", "false");
            assertThat(entries.findByActId(act.id())).hasSize(1);
        }
    }

    @Test
    void oneActIdOnTwoChainsAtOnceIsCarriedOutOnce() throws Exception {
        for (int round = 0; round < 10; round++) {
            String one = newChain();
            String other = newChain();
            carriedOut(act(), "step:0", one);
            carriedOut(act(), "step:0", other);
            Act act = act();
            List<String> answers =
                    atOnce(List.of(() -> carriedOut(act, "step:1", one), () -> carriedOut(act, "step:1", other)));
            assertThat(entries.findByActId(act.id())).as("%s", answers).hasSize(1);
            assertThat(answers).containsOnlyOnce("true").doesNotContain("DataIntegrityViolationException");
        }
    }

    @Test
    void chainsLockedInAnyOrderNeverWaitForEachOther() throws Exception {
        String one = newChain();
        String other = newChain();
        List<Callable<Boolean>> acts = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            String subject = "step:" + i;
            String[] chains = i % 2 == 0 ? new String[] {one, other} : new String[] {other, one};
            acts.add(() -> carriedOut(act(), subject, chains));
        }
        assertThat(atOnce(acts)).containsOnly("true");
        assertThat(entries.findByChainOrderByPosition(one)).hasSize(12);
        assertThat(entries.findByChainOrderByPosition(other)).hasSize(12);
    }

    private boolean carriedOut(Act act, String subject, String... chains) {
        return Boolean.TRUE.equals(transaction.execute(status -> log.opens(act, "tick", subject, chains)));
    }

    private static List<String> atOnce(List<? extends Callable<Boolean>> acts) throws Exception {
        ExecutorService tablets = Executors.newFixedThreadPool(8);
        CyclicBarrier together = new CyclicBarrier(Math.min(8, acts.size()));
        try {
            List<Future<String>> futures = new ArrayList<>();
            for (int i = 0; i < acts.size(); i++) {
                Callable<Boolean> act = acts.get(i);
                boolean waits = i < together.getParties();
                futures.add(tablets.submit(() -> {
                    if (waits) {
                        together.await();
                    }
                    try {
                        return String.valueOf(act.call());
                    } catch (RuntimeException refused) {
                        return refused.getClass().getSimpleName();
                    }
                }));
            }
            List<String> answers = new ArrayList<>();
            for (Future<String> future : futures) {
                answers.add(future.get());
            }
            return answers;
        } finally {
            tablets.shutdownNow();
        }
    }

    private static String newChain() {
        return Chains.frame("LOG" + NAMES.incrementAndGet());
    }

    private static Act act() {
        return new Act(UUID.randomUUID(), Act.SERVICE, null, Instant.from(TestClock.START), null);
    }
}
