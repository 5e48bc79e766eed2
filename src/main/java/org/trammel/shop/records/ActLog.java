package org.trammel.shop.records;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionSynchronization;
import org.springframework.transaction.support.TransactionSynchronizationManager;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/**
 * The log every act is written to. Use inside a transaction:
 *
 * <pre>
 * if (!log.opens(act, "tick", "step:12", Chains.frame(serial))) return whatItIsNow();   // sent a second time
 * ... change things ...
 * log.event(Chains.frame(serial), "ticked", Map.of("step", 12));
 * </pre>
 *
 * The events of an act, whichever module reports them, are sealed into one record for each chain just before the commit.
 */
@Service
public class ActLog {

    private static final JsonMapper CANONICAL = JsonMapper.builder()
            .enable(SerializationFeature.ORDER_MAP_ENTRIES_BY_KEYS)
            .build();

    private final ChainHeadRepository heads;
    private final LogEntryRepository entries;

    ActLog(ChainHeadRepository heads, LogEntryRepository entries) {
        this.heads = heads;
        this.entries = entries;
    }

    /**
     * Locks the chains, in name order, and opens a record for the act in each. A second call in the same transaction
     * adds chains to the act that is open.
     *
     * @param kind what is done, a verb of ours such as "tick"
     * @param subject what it is done to, such as "step:12"; ids, never a customer's words
     * @return false if this act was carried out before: then nothing may be changed
     * @throws Refusal if the act id was used before for something else
     */
    public boolean opens(Act act, String kind, String subject, String... chains) {
        Opened opened = current();
        if (opened == null) {
            opened = new Opened(act, kind, subject);
            TransactionSynchronizationManager.bindResource(this, opened);
            TransactionSynchronizationManager.registerSynchronization(opened);
        } else if (!opened.act.id().equals(act.id())) {
            throw new IllegalStateException("One transaction carries one act; " + opened.kind + " is open");
        }
        Opened mine = opened;
        Stream.of(chains).distinct().sorted().forEach(mine::lock);
        List<LogEntry> before = entries.findByActId(act.id());
        if (before.isEmpty()) {
            return true;
        }
        LogEntry first = before.get(0);
        if (!first.kind().equals(mine.kind) || !first.subject().equals(mine.subject)) {
            throw Refusal.input(
                    "actId",
                    "This was not done.",
                    "Its act id was already used for " + first.kind() + " of " + first.subject() + ".",
                    "Load the page again and repeat the act.");
        }
        mine.repeated = true;
        return false;
    }

    /**
     * Adds an event to the act that is open.
     *
     * @param facts text, numbers, booleans, lists and maps of these; ids instead of customer data
     */
    public void event(String chain, String what, Map<String, ?> facts) {
        Opened opened = current();
        if (opened == null) {
            throw new IllegalStateException("No act is open for " + what);
        }
        opened.lock(chain);
        Map<String, Object> event = new TreeMap<>(facts);
        event.put("what", what);
        opened.events.get(chain).add(event);
    }

    private @Nullable Opened current() {
        if (!TransactionSynchronizationManager.isActualTransactionActive()) {
            throw new IllegalStateException("An act is written in the transaction that makes the change");
        }
        return (Opened) TransactionSynchronizationManager.getResource(this);
    }

    /** What the current transaction has opened; sealed before commit, forgotten after it. */
    private final class Opened implements TransactionSynchronization {

        private final Act act;
        private final String kind;
        private final String subject;
        private final Map<String, ChainHead> locked = new LinkedHashMap<>();
        private final Map<String, List<Map<String, Object>>> events = new LinkedHashMap<>();
        private boolean repeated;

        Opened(Act act, String kind, String subject) {
            this.act = act;
            this.kind = kind;
            this.subject = subject;
        }

        void lock(String chain) {
            if (!locked.containsKey(chain)) {
                locked.put(chain, heads.lock(chain).orElseGet(() -> heads.save(new ChainHead(chain))));
                events.put(chain, new ArrayList<>());
            }
        }

        @Override
        public void beforeCommit(boolean readOnly) {
            if (repeated) {
                return;
            }
            locked.forEach((chain, head) -> {
                LogEntry entry = entries.save(new LogEntry(head, act, kind, subject, payload(chain)));
                head.moveTo(entry);
            });
        }

        private String payload(String chain) {
            Map<String, Object> all = new TreeMap<>();
            all.put("act", act.id().toString());
            all.put("at", act.at().toString());
            all.put("by", act.by());
            all.put("device", act.device());
            all.put("deviceAt", act.deviceAt() == null ? null : act.deviceAt().toString());
            all.put("kind", kind);
            all.put("subject", subject);
            all.put("events", events.get(chain));
            return CANONICAL.writeValueAsString(all);
        }

        @Override
        public void afterCompletion(int status) {
            TransactionSynchronizationManager.unbindResourceIfPossible(ActLog.this);
        }
    }
}
