package org.trammel.shop.chance;

import static org.trammel.shop.chance.Rows.number;
import static org.trammel.shop.chance.Rows.text;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The log of a frame, read record by record. */
final class FrameLog {

    private static final JsonMapper JSON = JsonMapper.builder().build();

    private final Rows rows;

    FrameLog(Rows rows) {
        this.rows = rows;
    }

    /**
     * Where the chain does not hold: places without gaps, each record sealed with SHA-256 over chain, place, the seal
     * before it and its own content, the head at the last of them.
     */
    List<String> broken(String chain) {
        List<String> found = new ArrayList<>();
        String before = "0".repeat(64);
        long place = 0;
        for (Map<String, Object> entry : rows.of("select * from log_entry where chain = ? order by position", chain)) {
            place++;
            String seal = sha256(chain + '\n' + place + '\n' + before + '\n' + text(entry, "payload"));
            if (number(entry, "position") != place
                    || !text(entry, "previous_hash").equals(before)
                    || !text(entry, "hash").equals(seal)) {
                found.add("record " + place + " of " + chain + " does not follow from the one before");
                return found;
            }
            before = text(entry, "hash");
        }
        Map<String, Object> head =
                rows.last("select * from chain_head where chain = ?", chain).orElseThrow();
        if (number(head, "position") != place || !text(head, "hash").equals(before)) {
            found.add("the head of " + chain + " is not its last record");
        }
        return found;
    }

    private static String sha256(String sealed) {
        try {
            return HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(sealed.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    private record Event(long place, Instant at, JsonNode facts) {

        String what() {
            return facts.get("what").asString();
        }
    }

    private List<Event> events(String serial) {
        List<Event> events = new ArrayList<>();
        for (Map<String, Object> entry :
                rows.of("select * from log_entry where chain = ? order by position", "frame:" + serial)) {
            JsonNode payload = JSON.readTree(text(entry, "payload"));
            Instant at = Instant.parse(payload.get("at").asString());
            payload.get("events").forEach(e -> events.add(new Event(number(entry, "position"), at, e)));
        }
        return events;
    }

    /** Operations that began outside their window or before their waiting time was over. */
    List<String> clocks(String serial) {
        List<String> found = new ArrayList<>();
        Map<String, Map<String, Object>> clocks = new HashMap<>();
        rows.of("select c.* from frame_clock c join traveller t on t.id = c.traveller_id where t.serial = ?", serial)
                .forEach(c -> clocks.put(text(c, "code"), c));
        Map<String, Instant> ends = new HashMap<>();
        for (Event e : events(serial)) {
            if (e.what().equals("clock started")) {
                String code = e.facts().get("clock").asString();
                ends.put(code, Instant.parse(e.facts().get("ends").asString()));
            }
            if (e.what().equals("operation begun")) {
                String begun = e.facts().get("code").asString();
                clocks.forEach((code, clock) -> {
                    List<String> gates = Arrays.asList(text(clock, "gates").split(","));
                    if (gates.contains(begun)) {
                        Instant end = ends.get(code);
                        boolean window = text(clock, "kind").equals("WINDOW");
                        boolean outside =
                                end == null || window && e.at().isAfter(end) || !window && e.at().isBefore(end);
                        if (outside) {
                            found.add("operation " + begun + " began at " + e.at() + " against the clock " + code
                                    + ", which ends at " + end);
                        }
                    }
                });
            }
        }
        return found;
    }

    /** Holds that were open when the act at that place of the log was done. */
    List<Map<String, Object>> holdsAt(String serial, long place) {
        Map<Long, Long> placed = new HashMap<>();
        Map<Long, Long> lifted = new HashMap<>();
        for (Event e : events(serial)) {
            switch (e.what()) {
                case "hold placed" -> placed.put(e.facts().get("hold").asLong(), e.place());
                case "hold lifted" -> lifted.put(e.facts().get("hold").asLong(), e.place());
                case "hold moved" -> {
                    lifted.put(e.facts().get("from").asLong(), e.place());
                    placed.put(e.facts().get("to").asLong(), e.place());
                }
                default -> {
                    // says nothing of holds
                }
            }
        }
        return rows.of("select * from hold where serial = ?", serial).stream()
                .filter(h -> placed.getOrDefault(number(h, "id"), Long.MAX_VALUE) < place)
                .filter(h -> lifted.getOrDefault(number(h, "id"), Long.MAX_VALUE) > place)
                .toList();
    }
}
