package org.trammel.shop.records;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;
import org.springframework.stereotype.Component;

/**
 * What was sent with the newest acts, as digests, so that an act id that comes back with other content is not answered as
 * if that had been recorded. Kept in memory only: a digest of a customer's words in the database could not be erased. An
 * act from before the last start is answered by its kind and subject alone.
 */
@Component
class SentContents {

    /** Several days of a busy shop, some megabytes. */
    static final int MOST = 20_000;

    private final Map<UUID, String> newest = new LinkedHashMap<>() {
        @Override
        protected boolean removeEldestEntry(Map.Entry<UUID, String> eldest) {
            return size() > MOST;
        }
    };

    synchronized void keep(Act act) {
        if (act.content() != null) {
            newest.put(act.id(), act.content());
        }
    }

    /** True if this id came with something else before, as far as that is remembered. */
    synchronized boolean differs(Act act) {
        String before = newest.get(act.id());
        return before != null && act.content() != null && !before.equals(act.content());
    }
}
