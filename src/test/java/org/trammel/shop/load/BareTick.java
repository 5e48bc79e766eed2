package org.trammel.shop.load;

import java.security.MessageDigest;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.UUID;
import org.trammel.shop.outside.SealedLog;
import org.trammel.shop.outside.WrittenShop;

/**
 * The rows a tick writes, written by prepared statements in one transaction and nothing else: no request, no sign-on, no
 * check. What the service's tick is measured by. {@link SameRows} sees to it that both leave the same.
 */
final class BareTick implements Clients.Deed, AutoCloseable {

    private final Connection connection;
    private final WrittenShop.Worker worker;
    private final Work.Waiting waiting;
    private final MessageDigest digest = SealedLog.digest();
    private final PreparedStatement tick;
    private final PreparedStatement entry;
    private final PreparedStatement head;
    private final PreparedStatement step;
    private final PreparedStatement begun;
    private final PreparedStatement finished;
    private final PreparedStatement taken;
    private final PreparedStatement moved;
    private Work work;
    private String chain = "";
    private long position;
    private String hash = "";

    BareTick(Connection connection, WrittenShop.Worker worker, Work.Waiting waiting) throws SQLException {
        this.connection = connection;
        this.worker = worker;
        this.waiting = waiting;
        connection.setAutoCommit(false);
        tick = connection.prepareStatement("insert into tick (step_id, operation_id, untick, person_id, device_id, at,"
                + " device_at, act_id, lot, reason) values (?, ?, false, ?, ?, ?, null, ?, null, null)");
        entry = connection.prepareStatement(
                "insert into log_entry (chain, position, act_id, at, kind, subject, payload,"
                        + " previous_hash, hash, place) values (?, ?, ?, ?, 'tick', ?, ?, ?, ?, 0)");
        head = connection.prepareStatement("update chain_head set position = ?, hash = ? where chain = ?");
        step = connection.prepareStatement(
                "update step set ticked = true, ticked_by = ?, ticked_at = ?, version = version + 1 where id = ?");
        begun = connection.prepareStatement(
                "update operation set state = 'IN_WORK', started_at = ?, version = version + 1 where id = ?");
        finished = connection.prepareStatement(
                "update operation set state = 'DONE', finished_at = ?, version = version + 1 where id = ?");
        taken = connection.prepareStatement(
                "update traveller set state = 'IN_WORK', version = version + 1 where id = ?");
        moved = connection.prepareStatement("update traveller set current_operation_id = ?, current_code = ?,"
                + " current_station = ?, version = version + 1 where id = ?");
        work = taken();
    }

    /** Another frame; where its chain stands is read once, while nobody's time is taken. */
    private Work taken() throws SQLException {
        Work next = waiting.take();
        chain = "frame:" + next.frame.serial();
        try (PreparedStatement asked =
                connection.prepareStatement("select position, hash from chain_head where chain = ?")) {
            asked.setString(1, chain);
            try (ResultSet row = asked.executeQuery()) {
                row.next();
                position = row.getLong(1);
                hash = row.getString(2);
            }
        }
        connection.commit();
        return next;
    }

    @Override
    public void once() throws SQLException {
        if (work.done()) {
            work = taken();
        }
        Work.Next next = work.next();
        Instant now = Instant.now().truncatedTo(ChronoUnit.MICROS);
        OffsetDateTime at = now.atOffset(ZoneOffset.UTC);
        UUID act = UUID.randomUUID();
        String events = ticked(next);
        send(tick, next.step(), next.operation().id(), worker.personId(), worker.deviceId(), at, act);
        if (next.begins()) {
            send(begun, at, next.operation().id());
            if (next.operation().equals(work.frame.operations().get(0))) {
                send(taken, work.frame.travellerId());
            }
            events = told(next, "operation begun") + "," + events;
        }
        send(step, worker.personId(), at, next.step());
        if (next.ends()) {
            send(finished, at, next.operation().id());
            send(moved, next.after().id(), next.after().code(), "9", work.frame.travellerId());
            events = events + "," + told(next, "operation done");
        }
        String subject = "step:" + next.step();
        String payload =
                SealedLog.payload(chain, act, now, worker.personId(), worker.deviceId(), "tick", subject, events);
        String seal = SealedLog.seal(digest, chain, position + 1, hash, payload);
        send(entry, chain, position + 1, act, at, subject, payload, hash, seal);
        send(head, position + 1, seal, chain);
        connection.commit();
        position++;
        hash = seal;
    }

    private static String ticked(Work.Next next) {
        return "{\"operation\":" + next.operation().id() + ",\"part\":\"\",\"step\":" + next.step()
                + ",\"what\":\"ticked\"}";
    }

    private static String told(Work.Next next, String what) {
        return "{\"code\":\"" + next.operation().code() + "\",\"operation\":"
                + next.operation().id() + ",\"part\":\"\",\"what\":\"" + what + "\"}";
    }

    private static void send(PreparedStatement statement, Object... values) throws SQLException {
        for (int i = 0; i < values.length; i++) {
            statement.setObject(i + 1, values[i]);
        }
        statement.executeUpdate();
    }

    @Override
    public void close() throws SQLException {
        connection.close();
    }
}
