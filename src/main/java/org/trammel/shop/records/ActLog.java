package org.trammel.shop.records;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionSynchronizationManager;

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

    private final ChainHeadRepository heads;
    private final LogEntryRepository entries;
    private final SentContents contents;

    ActLog(ChainHeadRepository heads, LogEntryRepository entries, SentContents contents) {
        this.heads = heads;
        this.entries = entries;
        this.contents = contents;
    }

    /**
     * Locks the chains, in name order, and opens a record for the act in each. A second call in the same transaction
     * adds chains to the act that is open.
     *
     * @param kind what is done, a verb of ours such as "tick"
     * @param subject what it is done to, such as "step:12"; ids, never a customer's words
     * @return false if this act was carried out before: then nothing may be changed
     * @throws Refusal if the act id was used before for something else, or was sent before with other content
     */
    public boolean opens(Act act, String kind, String subject, String... chains) {
        OpenAct open = current();
        boolean first = open == null;
        if (open == null) {
            open = new OpenAct(this, act, kind, subject, heads, entries, contents);
            open.bind();
        } else if (!open.act().id().equals(act.id())) {
            throw new IllegalStateException("One transaction carries one act; " + open.kind() + " is open");
        }
        Stream.of(chains).distinct().sorted().forEach(open::lock);
        if (!first) {
            return !open.isRepeated();
        }
        List<LogEntry> before = entries.findByActId(act.id());
        if (before.isEmpty()) {
            return true;
        }
        if (!before.get(0).kind().equals(kind) || !before.get(0).subject().equals(subject)) {
            throw usedFor(before.get(0));
        }
        if (contents.differs(act)) {
            throw Refusal.input(
                    "actId",
                    "This was not done.",
                    "Its act id was already used for " + kind + " of " + subject
                            + " with other content, and that is recorded.",
                    "Load the page again, see what is recorded, and correct that if it is wrong.");
        }
        open.repeat();
        return false;
    }

    /**
     * Adds an event to the act that is open. A chain that {@link #opens} did not name is locked now; name it there if it
     * sorts before another, because chains that are locked out of order can wait for each other.
     *
     * @param facts text, numbers, booleans, lists and maps of these; ids instead of customer data
     */
    public void event(String chain, String what, Map<String, ?> facts) {
        OpenAct open = current();
        if (open == null) {
            throw new IllegalStateException("No act is open for " + what);
        }
        Map<String, Object> event = new TreeMap<>(facts);
        event.put("what", what);
        open.add(chain, event);
    }

    private @Nullable OpenAct current() {
        if (!TransactionSynchronizationManager.isActualTransactionActive()) {
            throw new IllegalStateException("An act is written in the transaction that makes the change");
        }
        return (OpenAct) TransactionSynchronizationManager.getResource(this);
    }

    private static Refusal usedFor(LogEntry other) {
        return Refusal.input(
                "actId",
                "This was not done.",
                "Its act id was already used for " + other.kind() + " of " + other.subject() + ".",
                "Load the page again and repeat the act.");
    }
}
