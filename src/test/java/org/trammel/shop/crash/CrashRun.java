package org.trammel.shop.crash;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.trammel.shop.outside.RecordsAt;
import org.trammel.shop.outside.ServiceProcess;
import org.trammel.shop.outside.Tablet;
import org.trammel.shop.outside.WrittenFrame;
import org.trammel.shop.outside.WrittenFrames;
import org.trammel.shop.outside.WrittenRoutes;
import org.trammel.shop.outside.WrittenShop;

/**
 * Several clients work at the real service, which is killed hard again and again: at random moments, and aimed at acts
 * that were sent and are not answered. It is started again on the same records; at the end these are looked through.
 */
final class CrashRun {

    private static final int CLIENTS = 4;
    private static final int ACTS_OF_TWO_FRAMES = 33;

    /** No client does more between two kills, as far as the frames to work on are reckoned. */
    private static final int MOST_ACTS_BETWEEN_KILLS = 260;

    private static final int ACTS_AT_LEAST = 30;
    private static final int ACTS_MORE = 120;
    private static final int PATIENCE_S = 30;

    private static final int ONE_IN_STARTS = 10;

    private final RecordsAt records;
    private final int kills;
    private final Path folder;
    private final Random random;
    private final Door door = new Door();
    private final Ledger ledger = new Ledger();
    private final List<Double> secondsToReady = new ArrayList<>();
    private final List<Client> clients = new ArrayList<>();
    private int starts;
    private int killsWhileStarting;

    /** @param folder where the service writes what it says */
    CrashRun(RecordsAt records, int kills, Path folder, long seed) {
        this.records = records;
        this.kills = kills;
        this.folder = folder;
        this.random = new Random(seed);
    }

    Outcome run() throws IOException, InterruptedException, SQLException {
        Files.createDirectories(folder);
        ServiceProcess.build();
        ServiceProcess.start(records, log()).stop();
        write();
        work();
        ServiceProcess.Verified verified = ServiceProcess.verify(records);
        Aftermath found;
        try (Connection connection = records.connect()) {
            found = new Aftermath(connection);
        }
        found.compare(ledger.acknowledged());
        List<Double> times = secondsToReady.stream().sorted().toList();
        return new Outcome(
                kills,
                killsWhileStarting,
                ledger.sends(),
                ledger.acknowledged().size() + ledger.refusals().size(),
                ledger.acknowledged().size(),
                ledger.unanswered().size(),
                found.savedBefore(ledger.unanswered()),
                found.lost(),
                found.twice(),
                found.torn(),
                ledger.refusals(),
                ledger.faults(),
                verified.code(),
                verified.words(),
                times.get(times.size() / 2),
                times.get(times.size() - 1));
    }

    /** Frames for every client to work on, and the clients. */
    private void write() throws SQLException {
        try (Connection connection = records.connect()) {
            connection.setAutoCommit(false);
            Instant now = Instant.now().truncatedTo(ChronoUnit.MICROS);
            WrittenShop shop = WrittenShop.write(connection, CLIENTS, now);
            WrittenFrames frames = new WrittenFrames(connection, shop);
            int each = 2 * (2 + (kills + 1) * MOST_ACTS_BETWEEN_KILLS / ACTS_OF_TWO_FRAMES);
            for (WrittenShop.Worker worker : shop.workers()) {
                List<WrittenFrame> own = new ArrayList<>();
                for (int i = 0; i < each; i++) {
                    own.add(frames.write(WrittenRoutes.forKills(), WrittenFrames.Reached.NOTHING, now));
                }
                clients.add(new Client(new Tablet(worker.token()), own, door, ledger, random.nextLong()));
            }
            frames.end();
            connection.commit();
        }
    }

    private void work() throws IOException, InterruptedException {
        ExecutorService threads = Executors.newFixedThreadPool(CLIENTS);
        ServiceProcess service = started();
        try {
            List<Future<Void>> working = new ArrayList<>();
            for (Callable<Void> client : clients) {
                working.add(threads.submit(client));
            }
            int killed = 0;
            while (killed < kills) {
                strike(service);
                killed++;
                if (killed < kills && random.nextInt(ONE_IN_STARTS) == 0) {
                    ServiceProcess.startAndKill(records, log(), Duration.ofMillis(random.nextInt(4000)));
                    killsWhileStarting++;
                    killed++;
                }
                service = started();
            }
            door.awaitRequests(ACTS_AT_LEAST, PATIENCE_S);
            door.lastRound();
            for (Future<Void> client : working) {
                client.get(60, TimeUnit.SECONDS);
            }
        } catch (ExecutionException | java.util.concurrent.TimeoutException e) {
            throw new IllegalStateException("A client did not come to its end\n" + service.said(), e);
        } finally {
            threads.shutdownNow();
            service.stop();
        }
    }

    /**
     * Kills the service after some acts: half of the time whenever it comes, half of the time while an act is under way,
     * at a moment within twice the time acts take, so that some kills fall into a transaction, some into the commit and
     * some between commit and answer.
     */
    private void strike(ServiceProcess service) throws InterruptedException {
        door.awaitRequests(ACTS_AT_LEAST + random.nextInt(ACTS_MORE), PATIENCE_S);
        if (random.nextBoolean()) {
            service.letWork(Duration.ofMillis(random.nextInt(100)));
        } else {
            door.awaitRequests(1, PATIENCE_S);
            long until = System.nanoTime() + (long) (random.nextDouble() * 2 * ledger.usualNanos());
            while (System.nanoTime() < until) {
                Thread.onSpinWait();
            }
        }
        service.kill();
    }

    private ServiceProcess started() throws IOException, InterruptedException {
        ServiceProcess service = ServiceProcess.start(records, log());
        secondsToReady.add(Math.round(service.startedIn().toMillis() / 100.0) / 10.0);
        door.open(service.port());
        return service;
    }

    private Path log() {
        return folder.resolve(String.format(Locale.ROOT, "service-%03d.log", ++starts));
    }
}
