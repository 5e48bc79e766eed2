package org.trammel.shop.records;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.transaction.support.TransactionSynchronization;
import org.springframework.transaction.support.TransactionSynchronizationManager;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** The act of the current transaction: sealed just before the commit, forgotten after it. */
final class OpenAct implements TransactionSynchronization {

    private static final JsonMapper CANONICAL = JsonMapper.builder()
            .enable(SerializationFeature.ORDER_MAP_ENTRIES_BY_KEYS)
            .build();

    private final ActLog log;
    private final Act act;
    private final String kind;
    private final String subject;
    private final ChainHeadRepository heads;
    private final LogEntryRepository entries;
    private final SentContents contents;
    private final Map<String, ChainHead> locked = new LinkedHashMap<>();
    private final Map<String, List<Map<String, Object>>> events = new LinkedHashMap<>();
    private boolean repeated;
    private boolean sealed;

    OpenAct(
            ActLog log,
            Act act,
            String kind,
            String subject,
            ChainHeadRepository heads,
            LogEntryRepository entries,
            SentContents contents) {
        this.log = log;
        this.act = act;
        this.kind = kind;
        this.subject = subject;
        this.heads = heads;
        this.entries = entries;
        this.contents = contents;
    }

    Act act() {
        return act;
    }

    String kind() {
        return kind;
    }

    /** The act was carried out before; nothing is written. */
    void repeat() {
        repeated = true;
    }

    boolean isRepeated() {
        return repeated;
    }

    void bind() {
        TransactionSynchronizationManager.bindResource(log, this);
        TransactionSynchronizationManager.registerSynchronization(this);
    }

    void lock(String chain) {
        if (locked.containsKey(chain)) {
            return;
        }
        ChainHead head = heads.lock(chain).orElseGet(() -> {
            heads.begin(chain, Seal.NOTHING);
            return heads.lock(chain).orElseThrow();
        });
        locked.put(chain, head);
        events.put(chain, new ArrayList<>());
    }

    void add(String chain, Map<String, Object> event) {
        if (sealed) {
            throw new IllegalStateException("The record is sealed; " + event.get("what") + " comes too late");
        }
        lock(chain);
        events.get(chain).add(event);
    }

    @Override
    public void beforeCommit(boolean readOnly) {
        sealed = true;
        if (repeated) {
            return;
        }
        int place = 0;
        for (Map.Entry<String, ChainHead> chain : locked.entrySet()) {
            LogEntry entry = new LogEntry(chain.getValue(), act, place, kind, subject, payload(chain.getKey(), place));
            chain.getValue().moveTo(saved(entry));
            place++;
        }
    }

    /** Two requests may carry one act id to different chains at once; the second finds out here. */
    private LogEntry saved(LogEntry entry) {
        try {
            return entries.save(entry);
        } catch (DataIntegrityViolationException e) {
            throw Refusal.stale(
                    "This was not done.",
                    "Its act id was used for another act at the same moment.",
                    "Load the page again and repeat the act.");
        }
    }

    private String payload(String chain, int place) {
        Map<String, Object> all = new TreeMap<>();
        all.put("act", act.id().toString());
        all.put("at", act.at().toString());
        all.put("by", act.by());
        all.put("device", act.device());
        all.put("deviceAt", act.deviceAt() == null ? null : act.deviceAt().toString());
        all.put("kind", kind);
        all.put("subject", subject);
        all.put("place", place);
        all.put("chains", List.copyOf(locked.keySet()));
        all.put("events", events.get(chain));
        return CANONICAL.writeValueAsString(all);
    }

    @Override
    public void suspend() {
        TransactionSynchronizationManager.unbindResource(log);
    }

    @Override
    public void resume() {
        TransactionSynchronizationManager.bindResource(log, this);
    }

    @Override
    public void afterCompletion(int status) {
        TransactionSynchronizationManager.unbindResourceIfPossible(log);
        if (status == STATUS_COMMITTED && !repeated) {
            contents.keep(act);
        }
    }
}
