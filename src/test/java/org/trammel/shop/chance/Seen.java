package org.trammel.shop.chance;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;

/** A frame and its parts as they stand in the tables now; what to try next is chosen from it. */
record Seen(
        List<Seen.Piece> pieces,
        List<Seen.Op> operations,
        List<Seen.Step> steps,
        List<Seen.Read> characteristics,
        List<Seen.Held> holds,
        List<Seen.Found> nonconformances,
        List<Seen.Window> clocks) {

    record Piece(
            long id,
            String part,
            @Nullable Long parentId,
            String state,
            @Nullable Long currentOperationId) {}

    record Op(
            long id,
            long travellerId,
            int position,
            String code,
            String state,
            String point,
            String signers,
            boolean irreversible,
            String part) {}

    record Step(
            long id,
            long operationId,
            boolean ticked,
            @Nullable String lotKind) {}

    record Read(
            long id,
            long operationId,
            String code,
            String state,
            String gaugeKind,
            boolean secondPerson,
            @Nullable String coldSetClock,
            @Nullable Long readingId) {}

    record Held(long id, String reason, String source) {}

    record Found(
            long id,
            String state,
            @Nullable Long characteristicId,
            String operationCode,
            @Nullable String decision,
            int decisionNumber,
            @Nullable String read) {}

    record Window(
            long travellerId,
            String code,
            String kind,
            String gates,
            String state,
            @Nullable OffsetDateTime endsAt) {}

    static Seen of(JdbcClient jdbc, String serial) {
        String mine = " in (select id from traveller where serial = ?)";
        return new Seen(
                list(jdbc, Piece.class, "select * from traveller where serial = ? order by id", serial),
                list(
                        jdbc,
                        Op.class,
                        "select o.*, t.part from operation o join traveller t on t.id = o.traveller_id"
                                + " where t.serial = ? order by o.traveller_id, o.position",
                        serial),
                list(
                        jdbc,
                        Step.class,
                        "select s.* from step s join operation o on o.id = s.operation_id where o.traveller_id" + mine
                                + " order by s.id",
                        serial),
                list(
                        jdbc,
                        Read.class,
                        "select c.* from characteristic c join operation o on o.id = c.operation_id"
                                + " where o.traveller_id" + mine + " order by c.id",
                        serial),
                list(jdbc, Held.class, "select * from hold where serial = ? and lifted_at is null order by id", serial),
                list(
                        jdbc,
                        Found.class,
                        "select n.id, n.state, n.characteristic_id, n.operation_code, n.decision, n.decision_number, c.state as read"
                                + " from nonconformance n left join characteristic c on c.id = n.characteristic_id"
                                + " where n.serial = ? order by n.id",
                        serial),
                list(
                        jdbc,
                        Window.class,
                        "select * from frame_clock where traveller_id" + mine + " order by id",
                        serial));
    }

    private static <T> List<T> list(JdbcClient jdbc, Class<T> row, String sql, String serial) {
        return jdbc.sql(sql).param(serial).query(row).list();
    }

    /** The frame's traveller in force. */
    Piece whole() {
        return pieces.stream()
                .filter(p -> p.part().isEmpty() && !p.state().equals("WITHDRAWN"))
                .reduce((a, b) -> b)
                .orElseThrow();
    }

    /** The newest copy of each part of the frame in force. */
    List<Piece> parts() {
        return pieces.stream()
                .filter(p -> p.parentId() != null && p.parentId() == whole().id())
                .filter(p -> pieces.stream()
                        .noneMatch(later -> later.id() > p.id()
                                && later.part().equals(p.part())
                                && p.parentId().equals(later.parentId())))
                .toList();
    }

    /** Something to work on: a part that is not ready, or else the whole. */
    Optional<Piece> next(Random chance) {
        List<Piece> open = parts().stream()
                .filter(p -> p.currentOperationId() != null && open(p))
                .toList();
        return open.isEmpty()
                ? Optional.of(whole()).filter(p -> p.currentOperationId() != null && open(p))
                : Optional.of(any(open, chance));
    }

    static boolean open(Piece piece) {
        return List.of("RELEASED", "IN_WORK", "FINISHED").contains(piece.state());
    }

    Op operation(long id) {
        return operations.stream().filter(o -> o.id() == id).findFirst().orElseThrow();
    }

    List<Step> stepsAt(long operationId) {
        return steps.stream().filter(s -> s.operationId() == operationId).toList();
    }

    List<Read> readAt(long operationId) {
        return characteristics.stream()
                .filter(c -> c.operationId() == operationId)
                .toList();
    }

    static <T> T any(List<T> all, Random chance) {
        return all.get(chance.nextInt(all.size()));
    }
}
