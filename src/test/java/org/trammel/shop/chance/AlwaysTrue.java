package org.trammel.shop.chance;

import static org.trammel.shop.chance.Rows.number;
import static org.trammel.shop.chance.Rows.numberOrNull;
import static org.trammel.shop.chance.Rows.text;
import static org.trammel.shop.chance.Rows.yes;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;

/** What must be true of a frame's records whatever was tried on it, read from the tables alone. */
final class AlwaysTrue {

    private static final Set<String> BARRING =
            Set.of("NONCONFORMANCE", "LOT_TRACE", "GAUGE_TRACE", "OVEN_TRACE", "SAFETY");

    private final Rows rows;
    private final Cast cast;
    private final LastGate gate;
    private final FrameLog log;

    AlwaysTrue(JdbcClient jdbc, Cast cast, LastGate gate) {
        this.rows = new Rows(jdbc);
        this.cast = cast;
        this.gate = gate;
        this.log = new FrameLog(rows);
    }

    /** Everything that is not as it must be. */
    List<String> violations(String serial) {
        Map<UUID, Long> places = rows.places(serial);
        List<String> found = new ArrayList<>(log.broken("frame:" + serial));
        found.addAll(log.clocks(serial));
        signatures(serial, places, found);
        ticks(serial, places, found);
        readings(serial, found);
        lifted(serial, found);
        decided(serial, places, found);
        coldSets(serial, found);
        order(serial, found);
        return found;
    }

    private void signatures(String serial, Map<UUID, Long> places, List<String> found) {
        for (Map<String, Object> s : rows.of(
                "select s.*, o.code, o.void_signature_id from signature s join operation o on o.id = s.operation_id"
                        + " join traveller t on t.id = o.traveller_id where t.serial = ?",
                serial)) {
            long person = number(s, "person_id");
            boolean mayNot = person == cast.apprentice || person == cast.auditor || person == cast.gone;
            boolean wrongRole = text(s, "signer").equals("QA") && !lead(person)
                    || text(s, "signer").equals("OWNER") && !owner(person);
            long until = lastSignature(s, places);
            boolean did = did(
                            "select act_id from tick where operation_id = ? and person_id = ? and not untick",
                            s,
                            places,
                            until)
                    || did(
                            "select r.act_id from reading r join characteristic c on c.id = r.characteristic_id"
                                    + " where r.operation_id = ? and r.person_id = ? and not c.second_person",
                            s,
                            places,
                            until);
            if (mayNot || wrongRole || did) {
                found.add("operation " + s.get("code") + " was signed as " + s.get("signer") + " by " + person
                        + (did ? ", who did it" : ", who may not"));
            }
        }
    }

    /** Whoever signs does the work neither before nor until the gate is passed: up to the last signature that counts. */
    private long lastSignature(Map<String, Object> signature, Map<UUID, Long> places) {
        long mine = places.get((UUID) signature.get("act_id"));
        Long none = numberOrNull(signature, "void_signature_id");
        if (none != null && number(signature, "id") <= none) {
            return mine;
        }
        return rows
                .of("select act_id from signature where operation_id = ?", number(signature, "operation_id"))
                .stream()
                .mapToLong(other -> places.get((UUID) other.get("act_id")))
                .max()
                .orElse(mine);
    }

    private boolean did(String sql, Map<String, Object> signature, Map<UUID, Long> places, long until) {
        return rows.of(sql, number(signature, "operation_id"), number(signature, "person_id")).stream()
                .anyMatch(deed -> places.get((UUID) deed.get("act_id")) < until);
    }

    private void ticks(String serial, Map<UUID, Long> places, List<String> found) {
        for (Map<String, Object> t : rows.of(
                "select k.*, o.code, o.qualification, o.traveller_id, o.irreversible from tick k"
                        + " join operation o on o.id = k.operation_id join traveller t on t.id = o.traveller_id"
                        + " where t.serial = ? and not k.untick",
                serial)) {
            long person = number(t, "person_id");
            if (person == cast.auditor
                    || person == cast.gone
                    || t.get("qualification") != null && person != cast.welder) {
                found.add("operation " + t.get("code") + " was ticked by " + person + ", who may not");
            }
            if (yes(t, "irreversible")) {
                long at = places.get((UUID) t.get("act_id"));
                log.holdsAt(serial, at).stream()
                        .filter(h -> text(h, "scope").equals("FRAME")
                                || number(t, "traveller_id") == orNone(numberOrNull(h, "traveller_id")))
                        .forEach(h -> found.add("operation " + t.get("code") + ", which cannot be undone, was ticked"
                                + " under hold " + h.get("id")));
            }
        }
    }

    private static long orNone(Long id) {
        return id == null ? -1 : id;
    }

    private void readings(String serial, List<String> found) {
        for (Map<String, Object> r : rows.of(
                "select r.* from reading r join traveller t on t.id = r.traveller_id where t.serial = ?", serial)) {
            Map<String, Object> c = rows.last(
                            "select * from characteristic where id = ?", number(r, "characteristic_id"))
                    .orElseThrow();
            String mine = gate.judged(c, r).orElse("conforming");
            String theirs =
                    text(r, "verdict").toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
            boolean noted = theirs.equals("noted") && !yes(c, "deciding") && mine.equals("conforming");
            if (!mine.equals(theirs) && !noted) {
                found.add("reading " + r.get("raw_values") + " of " + c.get("code") + " is " + mine + " and was called "
                        + theirs);
            }
            if (cast.unusable.contains(text(r, "gauge_code"))) {
                found.add("a reading was taken with a gauge that may not be used");
            }
        }
    }

    private void lifted(String serial, List<String> found) {
        for (Map<String, Object> h : rows.of(
                "select * from hold where serial = ? and lifted_at is not null and source not like 'NC-%'"
                        + " and lift_words not like 'goes on as%'",
                serial)) {
            long by = number(h, "lifted_by");
            boolean barred = BARRING.contains(text(h, "reason"))
                    && Arrays.asList(text(h, "causers").split(",")).contains(String.valueOf(by));
            boolean mayNot = by == cast.apprentice || by == cast.auditor || by == cast.gone;
            boolean wrong = switch (text(h, "reason")) {
                case "PAYMENT", "APPROVAL" -> !owner(by);
                case "NONCONFORMANCE", "LOT_TRACE", "GAUGE_TRACE", "OVEN_TRACE" -> !lead(by);
                case "SAFETY" -> !lead(by) && !owner(by) || text(h, "agreed_by").split(",").length < 2;
                default -> false;
            };
            if (barred || mayNot || wrong) {
                found.add("hold " + h.get("id") + " for " + h.get("reason") + " was lifted by " + by
                        + (barred ? ", who caused it" : ", who may not"));
            }
        }
    }

    private void decided(String serial, Map<UUID, Long> places, List<String> found) {
        for (Map<String, Object> a : rows.of(
                "select a.*, n.fault_code, n.traveller_id from nonconformance_agreement a join nonconformance n"
                        + " on n.id = a.nonconformance_id where n.serial = ? and n.decided_at is not null"
                        + " and a.decision_number = n.decision_number",
                serial)) {
            long person = number(a, "person_id");
            long at = places.get((UUID) a.get("act_id"));
            for (String table : List.of("tick", "reading", "signature", "cold_set")) {
                String done = table.equals("tick") ? " and not x.untick" : "";
                rows
                        .of(
                                "select x.act_id from " + table + " x join operation o on o.id = x.operation_id"
                                        + " where o.traveller_id = ? and o.code = ? and x.person_id = ?" + done,
                                number(a, "traveller_id"),
                                text(a, "fault_code"),
                                person)
                        .stream()
                        .filter(x -> places.get((UUID) x.get("act_id")) < at)
                        .findFirst()
                        .ifPresent(x -> found.add("nonconformance " + a.get("nonconformance_id") + " was decided by "
                                + person + ", who has a " + table + " at the operation at fault"));
            }
            if (text(a, "agreed_as").equals("OWNER") ? !owner(person) : !lead(person)) {
                found.add("nonconformance " + a.get("nonconformance_id") + " was decided as " + a.get("agreed_as")
                        + " by " + person + ", who is none");
            }
        }
    }

    private void coldSets(String serial, List<String> found) {
        rows
                .of(
                        "select c.code, s.traveller_id, count(*) as pushes from cold_set s join characteristic c"
                                + " on c.id = s.characteristic_id join traveller t on t.id = s.traveller_id"
                                + " where t.serial = ? group by c.code, s.traveller_id",
                        serial)
                .stream()
                .filter(row -> number(row, "pushes") > 2)
                .forEach(row -> found.add(row.get("code") + " was set more often than the route allows"));
    }

    private void order(String serial, List<String> found) {
        String state = text(
                rows.last("select state from shop_order where serial = ?", serial)
                        .orElseThrow(),
                "state");
        Set<String> pieces = new HashSet<>();
        rows.of(
                        "select t.state from traveller t where t.serial = ? and t.state <> 'WITHDRAWN' and not exists"
                                + " (select 1 from traveller x where x.part = t.part and x.serial = t.serial"
                                + " and x.id > t.id and x.state <> 'WITHDRAWN')",
                        serial)
                .forEach(row -> pieces.add(text(row, "state")));
        boolean ready = pieces.equals(Set.of("FINISHED"));
        boolean shipped = pieces.equals(Set.of("SHIPPED"));
        if (ready != state.equals("READY_TO_SHIP") || shipped != state.equals("SHIPPED")) {
            found.add("the order is " + state + " while its frame and parts are " + pieces);
        }
    }

    private boolean lead(long person) {
        return person == cast.qa || person == cast.lead || person == cast.both;
    }

    private boolean owner(long person) {
        return person == cast.owner || person == cast.both;
    }

    /** Changes with every row of a frame that is added, changed or taken away, its log included. */
    String digest(String serial) {
        String mine = "(select id from traveller where serial = :serial)";
        String at = "(select id from operation where traveller_id in " + mine + ")";
        List<String> sums = new ArrayList<>();
        sums.add(sum("traveller", "serial = :serial", true));
        sums.add(sum("operation", "traveller_id in " + mine, true));
        for (String table : List.of("step", "characteristic", "consignment")) {
            sums.add(sum(table, "operation_id in " + at, true));
        }
        sums.add(sum("frame_clock", "traveller_id in " + mine, true));
        sums.add(sum("hold", "serial = :serial", true));
        sums.add(sum("nonconformance", "serial = :serial", true));
        sums.add(sum("shop_order", "serial = :serial", true));
        for (String table : List.of("tick", "signature", "reading", "cold_set", "hold_freed")) {
            sums.add(sum(table, "operation_id in " + at, false));
        }
        sums.add(sum("carry_over", "old_operation_id in " + at, false));
        sums.add(sum("lot_use", "serial = :serial", false));
        sums.add(sum("shop_call", "traveller_id in " + mine, false));
        sums.add(sum(
                "nonconformance_agreement",
                "nonconformance_id in (select id from nonconformance where serial = :serial)",
                false));
        sums.add(sum("log_entry", "chain = 'frame:' || :serial", false));
        return String.join(
                "/",
                rows.named("select " + String.join(", ", sums), serial).values().stream()
                        .map(v -> new BigDecimal(String.valueOf(v)).toPlainString())
                        .toList());
    }

    private static String sum(String table, String where, boolean versioned) {
        return "(select count(*) * 1000000" + (versioned ? " + coalesce(sum(version), 0)" : "") + " from " + table
                + " where " + where + ") as " + table + "_sum";
    }
}
