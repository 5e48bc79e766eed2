package org.trammel.shop.crash;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Looks in the database what the acts left behind, and compares it with itself and with what the clients know. */
final class Aftermath {

    private static final JsonMapper JSON = JsonMapper.shared();

    private final Map<UUID, List<Entry>> log = new HashMap<>();
    private final Map<UUID, List<Effect>> effects = new HashMap<>();
    private final Map<UUID, Set<Effect>> readingsByNumber = new HashMap<>();
    private final List<String> lost = new ArrayList<>();
    private final List<String> twice = new ArrayList<>();
    private final List<String> torn = new ArrayList<>();

    /** A record of the log, with what it says that was done. */
    private record Entry(String chain, String kind, Instant at, int chains, Set<Effect> said) {}

    /** Something an act did: a row of ticks or of readings. */
    private record Effect(String kind, long thing, String value) {}

    Aftermath(Connection connection) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            readLog(statement);
            readEffects(statement);
            states(statement);
        }
        recordsAndEffects();
    }

    List<String> lost() {
        return lost;
    }

    List<String> twice() {
        return twice;
    }

    List<String> torn() {
        return torn;
    }

    /** Of the acts that had no answer, those that were saved before it failed to come. */
    long savedBefore(Map<UUID, Instant> unanswered) {
        return unanswered.entrySet().stream()
                .filter(act -> log.getOrDefault(act.getKey(), List.of()).stream()
                        .anyMatch(entry -> entry.at().isBefore(act.getValue())))
                .count();
    }

    /** Compares with what the clients were told. */
    void compare(Map<UUID, Deed> acknowledged) {
        for (Deed deed : acknowledged.values()) {
            List<Entry> entries = log.getOrDefault(deed.id(), List.of());
            List<Effect> done = effects.getOrDefault(deed.id(), List.of());
            Set<Effect> wanted = new HashSet<>();
            deed.steps().forEach(step -> wanted.add(new Effect(deed.kind(), step, "")));
            if (deed.characteristic() != 0) {
                wanted.add(new Effect("read", deed.characteristic(), deed.raw()));
            }
            if (entries.size() < deed.frames() || !new HashSet<>(done).containsAll(wanted)) {
                lost.add(deed + " has " + entries.size() + " records and did " + done);
            }
            // The last act of a frame is recorded in the chain of its order as well.
            if (entries.stream().map(Entry::chain).distinct().count() < entries.size() || done.size() > wanted.size()) {
                twice.add(deed + " has " + entries.size() + " records and did " + done);
            }
        }
    }

    private void readLog(Statement statement) throws SQLException {
        try (ResultSet row = statement.executeQuery(
                "select act_id, chain, kind, at, payload from log_entry where kind in ('tick', 'untick', 'read')")) {
            while (row.next()) {
                JsonNode payload = JSON.readTree(row.getString("payload"));
                Set<Effect> said = new HashSet<>();
                payload.path("events").valueStream().forEach(event -> {
                    switch (event.path("what").asString()) {
                        case "ticked" ->
                            said.add(new Effect("tick", event.path("step").asLong(), ""));
                        case "unticked" ->
                            said.add(new Effect("untick", event.path("step").asLong(), ""));
                        case "judged" ->
                            said.add(new Effect(
                                    "read",
                                    event.path("characteristic").asLong(),
                                    event.path("reading").asString()));
                        default -> {
                            // What followed from it, such as an operation that is done.
                        }
                    }
                });
                log.computeIfAbsent(row.getObject("act_id", UUID.class), act -> new ArrayList<>())
                        .add(new Entry(
                                row.getString("chain"),
                                row.getString("kind"),
                                row.getObject("at", OffsetDateTime.class).toInstant(),
                                payload.path("chains").size(),
                                said));
            }
        }
    }

    private void readEffects(Statement statement) throws SQLException {
        try (ResultSet row = statement.executeQuery("select act_id, untick, step_id from tick")) {
            while (row.next()) {
                effects.computeIfAbsent(row.getObject(1, UUID.class), act -> new ArrayList<>())
                        .add(new Effect(row.getBoolean(2) ? "untick" : "tick", row.getLong(3), ""));
            }
        }
        try (ResultSet row = statement.executeQuery("select act_id, characteristic_id, raw_values, id from reading")) {
            while (row.next()) {
                UUID act = row.getObject(1, UUID.class);
                effects.computeIfAbsent(act, a -> new ArrayList<>())
                        .add(new Effect("read", row.getLong(2), row.getString(3)));
                readingsByNumber
                        .computeIfAbsent(act, a -> new HashSet<>())
                        .add(new Effect("read", row.getLong(2), row.getString(4)));
            }
        }
    }

    /** A record without what it says was done, something done that no record says, or an act in half of its chains. */
    private void recordsAndEffects() {
        Set<UUID> acts = new HashSet<>(log.keySet());
        acts.addAll(effects.keySet());
        for (UUID act : acts) {
            List<Entry> entries = log.getOrDefault(act, List.of());
            Set<Effect> said = new HashSet<>();
            entries.forEach(entry -> said.addAll(entry.said()));
            Set<Effect> done = readingsByNumber.getOrDefault(act, new HashSet<>(effects.getOrDefault(act, List.of())));
            if (!said.equals(done)) {
                torn.add(act + ": the log says " + said + ", done was " + done);
            }
            if (entries.stream().anyMatch(entry -> entry.chains() != entries.size())) {
                torn.add(act + ": the log has it in " + entries.size() + " of its chains");
            }
            if (said.size()
                            < entries.stream()
                                    .mapToInt(entry -> entry.said().size())
                                    .sum()
                    || done.size() < effects.getOrDefault(act, List.of()).size()) {
                twice.add(act + ": " + entries);
            }
        }
    }

    /** States that the history does not lead to. */
    private void states(Statement statement) throws SQLException {
        Map<String, String> questions = new TreeMap<>(Map.of(
                "steps whose state is not what their ticks say",
                """
                select s.id from step s where s.ticked <> (
                  (select count(*) from tick t where t.step_id = s.id and t.untick = false) > (
                  select count(*) from tick t where t.step_id = s.id and t.untick = true))""",
                "steps ticked twice or taken back twice",
                """
                select t.step_id from tick t group by t.step_id
                having sum(case when t.untick then -1 else 1 end) not in (0, 1)""",
                "characteristics whose state is not what their readings say",
                """
                select c.id from characteristic c
                where coalesce(c.reading_id, 0) <> coalesce(
                    (select max(r.id) from reading r where r.characteristic_id = c.id), 0)
                  or (c.reading_id is null) <> (c.state = 'OPEN')""",
                "characteristics read twice",
                "select r.characteristic_id from reading r group by r.characteristic_id having count(*) > 1",
                "operations that are done with something left, or not done with nothing left",
                """
                select o.id from operation o where (o.state = 'DONE') <> (
                  not exists (select 1 from step s where s.operation_id = o.id and s.ticked = false)
                  and not exists (select 1 from characteristic c where c.operation_id = o.id and c.state = 'OPEN'))""",
                "frames that do not stand at their first operation that is not done",
                """
                select t.id from traveller t where coalesce(t.current_operation_id, 0) <> coalesce((
                  select min(o.id) from operation o where o.traveller_id = t.id and o.state <> 'DONE'), 0)"""));
        for (Map.Entry<String, String> question : questions.entrySet()) {
            try (ResultSet row = statement.executeQuery(question.getValue())) {
                while (row.next()) {
                    torn.add(question.getKey() + ": " + row.getLong(1));
                }
            }
        }
    }
}
