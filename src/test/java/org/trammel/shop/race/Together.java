package org.trammel.shop.race;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;

/** Several deeds of several people at the same instant, in threads of their own. */
final class Together {

    private Together() {}

    /** Something one of them does; what it throws is what they are told. */
    interface Deed {
        void done() throws Exception;
    }

    /** Lets all begin at once; gives what each was told, in their order, empty for who was not refused. */
    static List<Optional<Exception>> all(Deed... deeds) throws Exception {
        CyclicBarrier start = new CyclicBarrier(deeds.length);
        ExecutorService threads = Executors.newFixedThreadPool(deeds.length);
        try {
            List<Future<Optional<Exception>>> told = new ArrayList<>();
            for (Deed deed : deeds) {
                told.add(threads.submit(() -> {
                    start.await(10, TimeUnit.SECONDS);
                    try {
                        deed.done();
                        return Optional.<Exception>empty();
                    } catch (Exception refused) {
                        return Optional.of(refused);
                    }
                }));
            }
            List<Optional<Exception>> answers = new ArrayList<>();
            for (Future<Optional<Exception>> one : told) {
                answers.add(one.get(30, TimeUnit.SECONDS));
            }
            return answers;
        } finally {
            threads.shutdownNow();
        }
    }
}
