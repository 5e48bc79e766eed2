package org.trammel.shop.chance;

import static org.trammel.shop.chance.Rows.figure;
import static org.trammel.shop.chance.Rows.number;
import static org.trammel.shop.chance.Rows.numberOrNull;
import static org.trammel.shop.chance.Rows.text;
import static org.trammel.shop.chance.Rows.yes;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * Reads from the tables alone what forbids a frame to leave: rows of ticks, readings, signatures, holds and lots, judged
 * by arithmetic of its own. Shares nothing with the service's gates.
 */
final class LastGate {

    static final String HOLD = "open hold";
    static final String OPEN = "operation not done";
    static final String PART = "part not ready";
    static final String UNDECIDED = "undecided";
    static final String NOT_CONFORMING = "not conforming";
    static final String UNREAD = "not read";
    static final String UNSIGNED = "hold point not signed";
    static final String CLOCK = "clock run out";
    static final String LOT = "lot blocked or missing";

    /** u of the gauges of the test times 1.65, rounded up to a thousandth; worked out by hand. */
    private static final Map<String, BigDecimal> GUARD =
            Map.of("0.005", new BigDecimal("0.009"), "0.020", new BigDecimal("0.033"));

    private final Rows rows;

    LastGate(JdbcClient jdbc) {
        this.rows = new Rows(jdbc);
    }

    /** Every cause that forbids shipping now. */
    Set<String> forbids(String serial, Instant now) {
        Set<String> found = new TreeSet<>();
        Map<UUID, Long> places = rows.places(serial);
        Map<String, Object> whole = rows.last(
                        "select * from traveller where serial = ? and part = '' and state <> 'WITHDRAWN' order by id",
                        serial)
                .orElseThrow();
        piece(number(whole, "id"), places, now, found);
        List<Map<String, Object>> parts = rows.of(
                "select t.* from traveller t where t.parent_id = ? and t.id = (select max(x.id) from traveller x"
                        + " where x.parent_id = t.parent_id and x.part = t.part)",
                number(whole, "id"));
        for (Map<String, Object> part : parts) {
            Set<String> ofPart = new TreeSet<>();
            piece(number(part, "id"), places, now, ofPart);
            if (ofPart.contains(OPEN) || text(part, "state").equals("SCRAPPED")) {
                ofPart.add(PART);
            }
            found.addAll(ofPart);
        }
        if (rows.any("select 1 from hold where serial = ? and lifted_at is null", serial)) {
            found.add(HOLD);
        }
        if (rows.any(
                "select 1 from lot_use u join lot l on l.id = u.lot_id where u.serial = ? and not u.scrapped"
                        + " and l.state = 'BLOCKED' and not exists (select 1 from hold h where h.serial = u.serial"
                        + " and h.source = l.code and h.lifted_at is not null)",
                serial)) {
            found.add(LOT);
        }
        return found;
    }

    private void piece(long traveller, Map<UUID, Long> places, Instant now, Set<String> found) {
        for (Map<String, Object> op : rows.of(
                "select o.*, t.serial, t.part from operation o join traveller t on t.id = o.traveller_id"
                        + " where o.traveller_id = ? and o.state <> 'REPEATED'",
                traveller)) {
            long id = number(op, "id");
            if (!text(op, "state").equals("DONE")) {
                found.add(OPEN);
            }
            if (text(op, "state").equals("WAITING") && shut(traveller, text(op, "code"), now)) {
                found.add(CLOCK);
            }
            for (Map<String, Object> step : rows.of("select * from step where operation_id = ?", id)) {
                if (!ticked(step)) {
                    found.add(OPEN);
                } else if (step.get("lot_kind") != null
                        && !rows.any(
                                "select 1 from lot_use where serial = ? and part = ? and operation = ?",
                                text(op, "serial"),
                                text(op, "part"),
                                text(op, "code"))) {
                    found.add(LOT);
                }
            }
            for (Map<String, Object> c : rows.of("select * from characteristic where operation_id = ?", id)) {
                verdict(c, places).ifPresent(found::add);
            }
            if (text(op, "point").equals("HOLD") && !signed(op)) {
                found.add(UNSIGNED);
            }
        }
    }

    private boolean shut(long traveller, String code, Instant now) {
        return rows.of("select * from frame_clock where traveller_id = ? and kind = 'WINDOW'", traveller).stream()
                .filter(c -> Arrays.asList(text(c, "gates").split(",")).contains(code))
                .filter(c -> c.get("ends_at") != null)
                .anyMatch(c -> now.isAfter(instant(c.get("ends_at"))));
    }

    private static Instant instant(Object column) {
        return column instanceof OffsetDateTime time ? time.toInstant() : ((java.sql.Timestamp) column).toInstant();
    }

    /** The operation of the revision before from which this one was carried over, if it was. */
    private Optional<Map<String, Object>> carried(long operation) {
        return rows.last(
                "select * from carry_over where new_operation_id = ? and verdict in ('STILL_VALID', 'CONCESSION')",
                operation);
    }

    private boolean ticked(Map<String, Object> step) {
        Optional<Map<String, Object>> newest =
                rows.last("select * from tick where step_id = ? order by id", number(step, "id"));
        if (newest.isPresent()) {
            return !yes(newest.get(), "untick");
        }
        return carried(number(step, "operation_id"))
                .map(c -> rows
                        .of(
                                "select * from step where operation_id = ? and text = ?",
                                number(c, "old_operation_id"),
                                text(step, "text"))
                        .stream()
                        .anyMatch(this::ticked))
                .orElse(false);
    }

    private boolean signed(Map<String, Object> op) {
        Long voided = numberOrNull(op, "void_signature_id");
        List<Map<String, Object>> valid = rows.of(
                "select * from signature where operation_id = ? and id > ?",
                number(op, "id"),
                voided == null ? 0 : voided);
        Set<String> as = new HashSet<>();
        Set<Long> people = new HashSet<>();
        valid.forEach(s -> {
            as.add(text(s, "signer"));
            people.add(number(s, "person_id"));
        });
        if (as.containsAll(Arrays.asList(text(op, "signers").split(","))) && people.size() == valid.size()) {
            return true;
        }
        return valid.isEmpty()
                && voided == null
                && carried(number(op, "id"))
                        .flatMap(c -> rows.last("select * from operation where id = ?", number(c, "old_operation_id")))
                        .map(this::signed)
                        .orElse(false);
    }

    /** What speaks against a characteristic; empty if it conforms or was conceded. */
    Optional<String> verdict(Map<String, Object> c, Map<UUID, Long> places) {
        if (conceded(number(c, "id"))) {
            return Optional.empty();
        }
        List<Map<String, Object>> all = valid(c, places);
        if (all.isEmpty()) {
            return carriedVerdict(c, places);
        }
        Map<String, Object> newest = all.get(all.size() - 1);
        Optional<String> against = judged(c, newest);
        if (against.isPresent() || !yes(c, "second_person")) {
            return against;
        }
        boolean pair = all.size() > 1
                && number(all.get(all.size() - 2), "person_id") != number(newest, "person_id")
                && judged(c, all.get(all.size() - 2)).isEmpty();
        return pair ? Optional.empty() : Optional.of(UNREAD);
    }

    private Optional<String> carriedVerdict(Map<String, Object> c, Map<UUID, Long> places) {
        Optional<Map<String, Object>> carried = carried(number(c, "operation_id"));
        if (carried.isEmpty()) {
            return Optional.of(UNREAD);
        }
        return rows.last(
                        "select * from characteristic where operation_id = ? and code = ?",
                        number(carried.get(), "old_operation_id"),
                        text(c, "code"))
                .map(old -> verdict(old, places))
                .orElse(Optional.of(UNREAD));
    }

    /** Readings that no other replaced and after which the part was not bent. */
    private List<Map<String, Object>> valid(Map<String, Object> c, Map<UUID, Long> places) {
        long bent = rows.of("select act_id from cold_set where operation_id = ?", number(c, "operation_id")).stream()
                .mapToLong(s -> places.get((UUID) s.get("act_id")))
                .max()
                .orElse(0);
        List<Map<String, Object>> valid = new ArrayList<>();
        for (Map<String, Object> r : rows.of(
                "select r.* from reading r where r.characteristic_id = ? and not exists (select 1 from reading x"
                        + " where x.replaces_id = r.id) order by r.id",
                number(c, "id"))) {
            if (places.get((UUID) r.get("act_id")) > bent) {
                valid.add(r);
            }
        }
        // A correction stands where the reading stood that it replaces.
        valid.sort((a, b) -> Long.compare(first(a), first(b)));
        return valid;
    }

    private long first(Map<String, Object> reading) {
        Long replaces = numberOrNull(reading, "replaces_id");
        return replaces == null
                ? number(reading, "id")
                : first(rows.last("select * from reading where id = ?", replaces)
                        .orElseThrow());
    }

    private boolean conceded(long characteristic) {
        return rows.any(
                "select 1 from nonconformance n where n.characteristic_id = ? and n.decision = 'CONCESSION'"
                        + " and n.state in ('DECIDED', 'CLOSED')"
                        + " and exists (select 1 from nonconformance_agreement a where a.nonconformance_id = n.id"
                        + " and a.decision_number = n.decision_number and a.agreed_as = 'QA_LEAD')"
                        + " and exists (select 1 from nonconformance_agreement a where a.nonconformance_id = n.id"
                        + " and a.decision_number = n.decision_number and a.agreed_as = 'OWNER')",
                characteristic);
    }

    /** What a reading says against a characteristic, from its raw value, the frozen limits and the gauge's own u. */
    Optional<String> judged(Map<String, Object> c, Map<String, Object> reading) {
        BigDecimal value = new BigDecimal(text(reading, "raw_values").strip());
        BigDecimal lower = figure(c, "lower_limit");
        BigDecimal upper = figure(c, "upper_limit");
        if (!yes(c, "deciding")) {
            BigDecimal three = BigDecimal.valueOf(3);
            boolean within = value.compareTo(lower.multiply(three)) >= 0 && value.compareTo(upper.multiply(three)) <= 0;
            return within ? Optional.empty() : Optional.of(NOT_CONFORMING);
        }
        BigDecimal guard = text(c, "rule").equals("PLAIN") ? BigDecimal.ZERO : guard(number(reading, "gauge_id"));
        if (value.compareTo(lower.add(guard)) >= 0 && value.compareTo(upper.subtract(guard)) <= 0) {
            return Optional.empty();
        }
        return value.compareTo(lower.subtract(guard)) < 0 || value.compareTo(upper.add(guard)) > 0
                ? Optional.of(NOT_CONFORMING)
                : Optional.of(UNDECIDED);
    }

    private BigDecimal guard(long gauge) {
        BigDecimal u = figure(
                rows.last("select u from gauge_range where gauge_id = ?", gauge).orElseThrow(), "u");
        return GUARD.get(u.setScale(3, RoundingMode.UNNECESSARY).toPlainString());
    }
}
