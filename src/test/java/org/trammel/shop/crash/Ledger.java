package org.trammel.shop.crash;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** What the clients know: which acts were acknowledged, which had to be sent again, which were refused. */
final class Ledger {

    private final Map<UUID, Deed> acknowledged = new LinkedHashMap<>();
    private final Map<UUID, Instant> unansweredAt = new LinkedHashMap<>();
    private final List<String> refusals = new ArrayList<>();
    private final List<String> faults = new ArrayList<>();
    private long sent;
    private long usualNanos = 10_000_000;

    synchronized void sent() {
        sent++;
    }

    synchronized void acknowledged(Deed deed, long tookNanos) {
        acknowledged.put(deed.id(), deed);
        usualNanos += (tookNanos - usualNanos) / 10;
    }

    /** How long an act took of late, from sending to answer. */
    synchronized long usualNanos() {
        return usualNanos;
    }

    /** No answer came; whether the act was carried out is not known. */
    synchronized void unanswered(Deed deed, Instant at) {
        unansweredAt.put(deed.id(), at);
    }

    synchronized void refused(Deed deed, int status, String body) {
        refusals.add(deed.kind() + " " + deed.id() + ": " + status + " " + body);
    }

    /** The service said that something went wrong in it. */
    synchronized void fault(Deed deed, int status, String body) {
        faults.add(deed.kind() + " " + deed.id() + ": " + status + " " + body);
    }

    synchronized long sends() {
        return sent;
    }

    synchronized Map<UUID, Deed> acknowledged() {
        return Map.copyOf(acknowledged);
    }

    synchronized Map<UUID, Instant> unanswered() {
        return Map.copyOf(unansweredAt);
    }

    synchronized List<String> refusals() {
        return List.copyOf(refusals);
    }

    synchronized List<String> faults() {
        return List.copyOf(faults);
    }
}
