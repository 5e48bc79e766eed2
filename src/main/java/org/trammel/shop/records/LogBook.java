package org.trammel.shop.records;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.data.domain.Limit;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Reads the log. */
@Service
@Transactional(readOnly = true)
public class LogBook {

    /** Lines a page holds at most. */
    public static final int MOST = 200;

    private static final JsonMapper JSON = JsonMapper.shared();

    private final ChainHeadRepository heads;
    private final LogEntryRepository entries;

    LogBook(ChainHeadRepository heads, LogEntryRepository entries) {
        this.heads = heads;
        this.entries = entries;
    }

    /**
     * Chains by name.
     *
     * @param beginning what their names begin with; empty for all
     * @param after name of the chain the page before ended with; empty for the first page
     */
    public List<ChainSummary> chains(String beginning, String after, int limit) {
        return heads.page(beginning.replaceAll("([%_\\\\])", "\\\\$1") + "%", after, limit(limit)).stream()
                .map(head -> new ChainSummary(head.chain(), head.position(), head.hash()))
                .toList();
    }

    /**
     * Records of a chain, the newest first.
     *
     * @param before only those before this position; null for the newest
     * @throws Refusal if there is no such chain
     */
    public List<LogRecord> records(String chain, @Nullable Long before, int limit) {
        List<LogRecord> found = entries
                .findByChainAndPositionLessThanOrderByPositionDesc(
                        chain, before == null ? Long.MAX_VALUE : before, limit(limit))
                .stream()
                .map(LogBook::read)
                .toList();
        if (found.isEmpty() && !heads.existsById(chain)) {
            throw Refusal.missing(
                    "There is no such chain.", "The log has nothing under " + chain + ".", "Choose one from the list.");
        }
        return found;
    }

    /** The records of one act, in every chain it touched; none if it was not carried out. */
    public List<LogRecord> act(UUID id) {
        return entries.findByActIdOrderByPlace(id).stream().map(LogBook::read).toList();
    }

    private static Limit limit(int asked) {
        return Limit.of(Math.max(1, Math.min(asked, MOST)));
    }

    private static LogRecord read(LogEntry entry) {
        JsonNode payload = JSON.readTree(entry.payload());
        JsonNode device = payload.path("device");
        JsonNode deviceAt = payload.path("deviceAt");
        return new LogRecord(
                entry.chain(),
                entry.position(),
                entry.actId(),
                entry.at(),
                payload.path("by").asLong(),
                device.isNumber() ? device.asLong() : null,
                deviceAt.isString() ? Instant.parse(deviceAt.asString()) : null,
                entry.kind(),
                entry.subject(),
                entry.place(),
                payload.path("chains").valueStream().map(JsonNode::asString).toList(),
                payload.path("events").valueStream().map(LogBook::facts).toList(),
                entry.previousHash(),
                entry.hash());
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> facts(JsonNode event) {
        return JSON.convertValue(event, Map.class);
    }
}
