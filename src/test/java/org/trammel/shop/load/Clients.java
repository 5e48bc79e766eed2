package org.trammel.shop.load;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;

/** Several who do the same thing at the same time, each one time after the other without a pause. */
final class Clients {

    private static final long PATIENCE_S = 120;

    private Clients() {}

    /** What one client does again and again. It throws if it was not done as it should be. */
    interface Deed {
        void once() throws Exception;
    }

    /** Lets each of them do it so often, and adds the times. */
    static void let(List<? extends Deed> clients, int times, Timing timing) throws InterruptedException {
        ExecutorService threads = Executors.newFixedThreadPool(clients.size());
        CountDownLatch go = new CountDownLatch(1);
        try {
            List<Future<long[]>> working = new ArrayList<>();
            for (Deed client : clients) {
                working.add(threads.submit(() -> {
                    go.await();
                    return timed(client, times);
                }));
            }
            long began = System.nanoTime();
            go.countDown();
            long[] all = new long[clients.size() * times];
            for (int i = 0; i < clients.size(); i++) {
                System.arraycopy(working.get(i).get(PATIENCE_S, TimeUnit.SECONDS), 0, all, i * times, times);
            }
            timing.add(all, System.nanoTime() - began);
        } catch (ExecutionException | java.util.concurrent.TimeoutException e) {
            throw new IllegalStateException("A client did not come to its end", e);
        } finally {
            threads.shutdownNow();
        }
    }

    private static long[] timed(Deed client, int times) throws Exception {
        long[] nanos = new long[times];
        for (int i = 0; i < times; i++) {
            long began = System.nanoTime();
            client.once();
            nanos[i] = System.nanoTime() - began;
        }
        return nanos;
    }
}
