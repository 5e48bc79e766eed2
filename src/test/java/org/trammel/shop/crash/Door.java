package org.trammel.shop.crash;

import java.util.concurrent.TimeUnit;

/** Where the service is to be found, for the clients; shut while it is dead. */
final class Door {

    private int port;
    private int openings;
    private boolean closedForGood;
    private long sent;

    /** The service is ready again. */
    synchronized void open(int at) {
        port = at;
        openings++;
        notifyAll();
    }

    /** Clients that have no unanswered act stop. */
    synchronized void lastRound() {
        closedForGood = true;
        notifyAll();
    }

    synchronized boolean isLastRound() {
        return closedForGood;
    }

    synchronized int port() {
        return port;
    }

    synchronized int openings() {
        return openings;
    }

    /** A request leaves now. */
    synchronized void sending() {
        sent++;
        notifyAll();
    }

    /** Waits until the clients have sent so many requests more, or the time is up. */
    synchronized void awaitRequests(int more, long patienceS) throws InterruptedException {
        long enough = sent + more;
        long until = System.nanoTime() + TimeUnit.SECONDS.toNanos(patienceS);
        while (sent < enough && System.nanoTime() < until) {
            wait(Math.max(1, TimeUnit.NANOSECONDS.toMillis(until - System.nanoTime())));
        }
    }

    /** Waits until the service was started once more than at that opening. */
    synchronized void awaitOpeningAfter(int opening) throws InterruptedException {
        while (openings == opening) {
            wait();
        }
    }
}
