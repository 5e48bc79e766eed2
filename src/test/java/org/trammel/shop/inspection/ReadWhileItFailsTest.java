package org.trammel.shop.inspection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.transaction.support.TransactionTemplate;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.records.Refusal;

/** A gauge is found wrong while somebody reads with it: the reading is judged again, or it is not taken. */
class ReadWhileItFailsTest extends AfterAFailure {

    @Autowired
    private TransactionTemplate transaction;

    @Test
    void aReadingThatIsNotWrittenYetWhenItsGaugeFailsIsJudgedAgainAllTheSame() throws Exception {
        String gauge = offsetGauge();
        WholeShop.Frame frame = frame(offset());
        assertThat(outcome(failedWhileRead(frame, gauge, "-0.80", gauge), frame))
                .isEqualTo(FrameOutcome.MEASURE_AGAIN);
    }

    @Test
    void aPartOfASetUpWaitsToo() throws Exception {
        String part = offsetGauge();
        WholeShop.Frame frame = frame(offset());
        assertThat(outcome(failedWhileRead(frame, setUpWith(part), "0.10", part), frame))
                .isEqualTo(FrameOutcome.MEASURE_AGAIN);
    }

    /** The gauge fails in between the reading and its commit; gives the re-judgement when both are done. */
    private RejudgementLine failedWhileRead(WholeShop.Frame frame, String gauge, String value, String failing)
            throws Exception {
        CountDownLatch read = new CountDownLatch(1);
        CountDownLatch goOn = new CountDownLatch(1);
        ExecutorService two = Executors.newFixedThreadPool(2);
        try {
            Future<ReadingLine> reading = two.submit(() -> transaction.execute(status -> {
                ReadingLine line = readConfirmed(frame, gauge, value);
                read.countDown();
                await(goOn);
                return line;
            }));
            assertThat(read.await(20, TimeUnit.SECONDS)).isTrue();
            Future<RejudgementLine> failure = two.submit(() -> failed(failing, "0.18"));
            assertThatThrownBy(() -> failure.get(700, TimeUnit.MILLISECONDS))
                    .as("the failure waits for the reading")
                    .isInstanceOf(TimeoutException.class);
            goOn.countDown();
            long id = reading.get(20, TimeUnit.SECONDS).readingId();
            RejudgementLine done = failure.get(20, TimeUnit.SECONDS);
            assertThat(only(done).readingId()).isEqualTo(id);
            return done;
        } finally {
            goOn.countDown();
            two.shutdownNow();
        }
    }

    @Test
    void afterTheFailureItIsRefused() {
        String gauge = offsetGauge();
        WholeShop.Frame frame = frame(offset());
        failed(gauge, "0.18");
        assertThatThrownBy(() -> readConfirmed(frame, gauge, "0.10"))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.what()).contains("may not be used"));
    }

    private static void await(CountDownLatch latch) {
        try {
            assertThat(latch.await(20, TimeUnit.SECONDS)).isTrue();
        } catch (InterruptedException stopped) {
            throw new IllegalStateException(stopped);
        }
    }
}
