package org.trammel.shop.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.TransactionDefinition;
import org.springframework.transaction.support.TransactionTemplate;
import org.trammel.shop.ShopTest;

/** Who writes on H2 waits for whoever writes; who reads waits for nobody, and on PostgreSQL nobody does. */
@ShopTest
class WritersInTurnTest {

    @Autowired
    private PlatformTransactionManager transactions;

    @Autowired
    private JdbcClient jdbc;

    private final ExecutorService others = Executors.newCachedThreadPool();
    private final CountDownLatch finish = new CountDownLatch(1);

    @AfterEach
    void leaves() {
        finish.countDown();
        others.shutdown();
    }

    @Test
    void aSecondWriterBeginsWhenTheFirstIsDoneAndAReaderAtOnce() throws Exception {
        boolean inTurn = System.getProperty("trammel.test.engine", "h2").equals("h2");
        CountDownLatch begun = new CountDownLatch(1);
        Future<?> first = others.submit(() -> template(false, false).executeWithoutResult(status -> {
            begun.countDown();
            await(finish);
        }));
        await(begun);
        Future<Integer> reader = others.submit(() -> template(true, false).execute(status -> one()));
        assertThat(reader.get(20, TimeUnit.SECONDS)).isEqualTo(1);
        CountDownLatch inside = new CountDownLatch(1);
        Future<?> second =
                others.submit(() -> template(false, false).executeWithoutResult(status -> inside.countDown()));
        assertThat(inside.await(inTurn ? 300 : 20_000, TimeUnit.MILLISECONDS)).isEqualTo(!inTurn);
        finish.countDown();
        first.get(20, TimeUnit.SECONDS);
        second.get(20, TimeUnit.SECONDS);
        assertThat(inside.getCount()).isZero();
    }

    /** A wrong PIN is counted in a transaction of its own while the act it belongs to is under way. */
    @Test
    void aTransactionWithinATransactionKeepsTheTurnAndGivesItBackAtTheEnd() throws Exception {
        template(false, false).executeWithoutResult(outer -> {
            template(false, true).executeWithoutResult(inner -> one());
            template(true, true).executeWithoutResult(inner -> one());
        });
        template(true, false)
                .executeWithoutResult(outer -> template(false, true).executeWithoutResult(inner -> one()));
        Future<Integer> other = others.submit(() -> template(false, false).execute(status -> one()));
        assertThat(other.get(20, TimeUnit.SECONDS)).isEqualTo(1);
    }

    @Test
    void whatIsTakenBackGivesTheTurnBackToo() throws Exception {
        template(false, false).executeWithoutResult(status -> status.setRollbackOnly());
        Future<Integer> other = others.submit(() -> template(false, false).execute(status -> one()));
        assertThat(other.get(20, TimeUnit.SECONDS)).isEqualTo(1);
    }

    private int one() {
        return jdbc.sql("select 1").query(Integer.class).single();
    }

    private TransactionTemplate template(boolean reads, boolean ownOne) {
        TransactionTemplate template = new TransactionTemplate(transactions);
        template.setReadOnly(reads);
        if (ownOne) {
            template.setPropagationBehavior(TransactionDefinition.PROPAGATION_REQUIRES_NEW);
        }
        return template;
    }

    private static void await(CountDownLatch latch) {
        try {
            assertThat(latch.await(20, TimeUnit.SECONDS)).isTrue();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }
}
