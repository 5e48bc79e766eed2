package org.trammel.shop.outside;

import java.math.BigDecimal;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.marks.SerialNumber;
import org.trammel.shop.routes.CharacteristicSheet;
import org.trammel.shop.routes.ClockSheet;
import org.trammel.shop.routes.OperationSheet;
import org.trammel.shop.routes.Point;
import org.trammel.shop.routes.RouteSheet;
import org.trammel.shop.routes.StepSheet;

/**
 * Frames with all that their way through the shop leaves behind, written in bulk: order, traveller, operations, steps,
 * ticks, readings, signatures, clocks, and the sealed record of every act. What the service would have written for the
 * same acts, so that its queries meet what they meet in a shop of that age.
 */
public final class WrittenFrames {

    private static final Duration BETWEEN_ACTS = Duration.ofMinutes(2);
    private static final int FRAMES_AT_ONCE = 40;

    private final WrittenShop shop;
    private final SealedLog log;
    private final FrameTables to;
    private int written;

    public WrittenFrames(Connection connection, WrittenShop shop) throws SQLException {
        this.shop = shop;
        this.to = new FrameTables(connection);
        this.log = new SealedLog(connection);
    }

    /**
     * How far a frame has come.
     *
     * @param operations that are done
     * @param steps that are ticked at the operation after them
     * @param shipped whether the frame has left the shop, all operations done
     */
    public record Reached(int operations, int steps, boolean shipped) {

        public static final Reached NOTHING = new Reached(0, 0, false);
    }

    /** Writes a frame that was released at a time. */
    public WrittenFrame write(RouteSheet route, Reached reached, Instant released) throws SQLException {
        WrittenFrame frame = new Way(route, reached, released).walk();
        if (++written % FRAMES_AT_ONCE == 0) {
            send();
        }
        return frame;
    }

    private void send() throws SQLException {
        to.send();
        log.send();
    }

    /** Sends what is left. Nothing may be written after it. */
    public void end() throws SQLException {
        to.end();
        log.end();
    }

    /** Rows written so far, of all tables. */
    public long rows() {
        return to.count() + log.count();
    }

    private static @Nullable BigDecimal limit(CharacteristicSheet sheet, @Nullable BigDecimal deviation) {
        BigDecimal nominal = nominal(sheet);
        return deviation == null || nominal == null ? deviation : nominal.add(deviation);
    }

    private static @Nullable BigDecimal nominal(CharacteristicSheet sheet) {
        return sheet.fromDesign() ? BigDecimal.valueOf(100) : sheet.nominal();
    }

    private static String joined(Stream<String> words, String between) {
        return words.collect(Collectors.joining(between));
    }

    /** One frame on its way. */
    private final class Way {

        private final RouteSheet route;
        private final Reached reached;
        private final String serial;
        private final SealedLog.Chain chain;
        private final WrittenShop.Worker worker;
        private final WrittenShop.Worker second;
        private Instant now;
        private long traveller;

        Way(RouteSheet route, Reached reached, Instant released) {
            this.route = route;
            this.reached = reached;
            this.now = released;
            this.serial = SerialNumber.of("AV", written / 999 % 100, written % 999 + 1)
                    .stored();
            this.chain = log.chain("frame:" + serial);
            this.worker = shop.workers().get(written % shop.workers().size());
            this.second = shop.workers().get((written + 1) % shop.workers().size());
        }

        WrittenFrame walk() throws SQLException {
            Instant released = now;
            String number = "T-" + (100_000 + written);
            long customer = to.customers.add("Customer of " + serial, "by letter", "SE", 0L);
            int acts = route.operations().stream()
                    .mapToInt(o -> o.steps().size() + o.characteristics().size() + 1)
                    .sum();
            @Nullable Instant left = reached.shipped() ? released.plus(BETWEEN_ACTS.multipliedBy(acts + 2L)) : null;
            long order = to.orders.add(
                    number,
                    customer,
                    left == null ? "IN_WORK" : "SHIPPED",
                    "Frame in bulk " + written,
                    route.metal(),
                    route.kind(),
                    "MOUNTAIN",
                    "SE",
                    "",
                    "LEFT",
                    "EUR",
                    serial,
                    false,
                    0L,
                    released,
                    UUID.randomUUID(),
                    released,
                    left,
                    left,
                    0L);
            to.serials.put(serial, order, released);
            record(
                    UUID.randomUUID(),
                    released,
                    "release",
                    "order:" + order,
                    "{\"letter\":\"A\",\"order\":\"" + number + "\",\"what\":\"released\"}");
            // The traveller names its operation at hand, whose id is the next but so many.
            OperationSheet atHand =
                    reached.shipped() ? null : route.operations().get(reached.operations());
            long firstOperation = to.operations.lastId() + 1;
            traveller = to.travellers.add(
                    serial,
                    "",
                    order,
                    number,
                    route.revisionId(),
                    "A",
                    0,
                    route.metal(),
                    route.kind(),
                    "Frame in bulk " + written,
                    reached.shipped() ? "SHIPPED" : begun() ? "IN_WORK" : "RELEASED",
                    released,
                    left,
                    left,
                    atHand == null ? null : firstOperation + reached.operations(),
                    atHand == null ? null : atHand.code(),
                    atHand == null ? null : atHand.station(),
                    0L);
            List<WrittenFrame.Operation> done = new ArrayList<>();
            for (int i = 0; i < route.operations().size(); i++) {
                done.add(operation(i, route.operations().get(i)));
            }
            for (ClockSheet clock : route.clocks()) {
                clock(clock, released);
            }
            if (left != null) {
                record(
                        UUID.randomUUID(),
                        left,
                        "ship",
                        "traveller:" + traveller,
                        "{\"order\":\"" + number + "\",\"what\":\"shipped\"}");
            }
            chain.stand();
            return new WrittenFrame(serial, traveller, done);
        }

        private void record(UUID act, Instant at, String kind, String subject, String event) throws SQLException {
            chain.add(act, at, worker.personId(), worker.deviceId(), kind, subject, event);
        }

        private boolean begun() {
            return reached.operations() > 0 || reached.steps() > 0;
        }

        private WrittenFrame.Operation operation(int index, OperationSheet sheet) throws SQLException {
            boolean past = reached.shipped() || index < reached.operations();
            boolean inWork = !past && index == reached.operations() && reached.steps() > 0;
            Instant began = now;
            long acts = sheet.steps().size() + sheet.characteristics().size() + (sheet.point() == Point.NONE ? 0 : 1);
            long id = to.operations.add(
                    traveller,
                    (index + 1) * 1000,
                    sheet.code(),
                    sheet.name(),
                    sheet.station(),
                    sheet.point().name(),
                    joined(sheet.signers().stream().map(Enum::name), ","),
                    sheet.qualification(),
                    sheet.together(),
                    sheet.outside(),
                    sheet.irreversible(),
                    sheet.joins(),
                    sheet.repeatLimit(),
                    sheet.caution(),
                    0,
                    past ? "DONE" : inWork ? "IN_WORK" : "WAITING",
                    past || inWork ? began : null,
                    past ? began.plus(BETWEEN_ACTS.multipliedBy(acts)) : null,
                    0L);
            List<WrittenFrame.Step> toTick = new ArrayList<>();
            for (int i = 0; i < sheet.steps().size(); i++) {
                boolean ticked = past || inWork && i < reached.steps();
                toTick.add(step(id, i, sheet.steps().get(i), ticked));
            }
            List<Long> toRead = new ArrayList<>();
            for (int i = 0; i < sheet.characteristics().size(); i++) {
                toRead.add(characteristic(id, i, sheet.characteristics().get(i), past));
            }
            if (past && sheet.point() != Point.NONE) {
                sign(id, sheet);
            }
            if (past && sheet.outside()) {
                to.consignments.add(
                        id, "Aldmoor Coating", worker.personId(), began, worker.personId(), now, "C-" + id, 0L);
            }
            return new WrittenFrame.Operation(id, sheet.code(), sheet.together(), toTick, toRead);
        }

        private Instant next() {
            now = now.plus(BETWEEN_ACTS);
            return now;
        }

        private WrittenFrame.Step step(long operation, int index, StepSheet sheet, boolean ticked) throws SQLException {
            Instant at = ticked ? next() : null;
            long id = to.steps.add(
                    operation,
                    index + 1,
                    sheet.text(),
                    sheet.instruction(),
                    sheet.photo(),
                    sheet.irreversible(),
                    sheet.lotKind(),
                    sheet.startsClock(),
                    sheet.qualification(),
                    ticked,
                    ticked ? worker.personId() : null,
                    at,
                    ticked ? 1L : 0L);
            if (at != null) {
                UUID act = UUID.randomUUID();
                to.ticks.add(id, operation, false, worker.personId(), worker.deviceId(), at, act);
                record(
                        act,
                        at,
                        "tick",
                        "step:" + id,
                        "{\"operation\":" + operation + ",\"part\":\"\",\"step\":" + id + ",\"what\":\"ticked\"}");
            }
            if (ticked && sheet.photo()) {
                to.photos.add(traveller, operation, id, shop.photoSha256(), worker.personId(), at);
            }
            return new WrittenFrame.Step(id, sheet.text());
        }

        private long characteristic(long operation, int index, CharacteristicSheet sheet, boolean read)
                throws SQLException {
            long reading = read ? to.readings.lastId() + 1 : 0;
            long id = to.characteristics.add(
                    operation,
                    index + 1,
                    sheet.code(),
                    sheet.name(),
                    sheet.unit(),
                    sheet.decimals(),
                    nominal(sheet),
                    limit(sheet, sheet.lowerDeviation()),
                    limit(sheet, sheet.upperDeviation()),
                    sheet.gaugeKind(),
                    String.join("|", sheet.points()),
                    sheet.reduction().name(),
                    sheet.rule().name(),
                    joined(sheet.signers().stream().map(Enum::name), ","),
                    sheet.sided(),
                    sheet.readBack(),
                    sheet.secondPerson(),
                    sheet.deciding(),
                    sheet.coldSetClock(),
                    sheet.coldSetAttempts(),
                    sheet.coldSetAmount(),
                    sheet.triageTolerances(),
                    read ? "CONFORMING" : "OPEN",
                    read ? reading : null,
                    read ? 1L : 0L);
            if (read) {
                read(operation, id, sheet);
            }
            return id;
        }

        /** A reading in the middle of its limits, whatever gauge the route asks for. */
        private void read(long operation, long characteristic, CharacteristicSheet sheet) throws SQLException {
            BigDecimal nominal = nominal(sheet);
            BigDecimal value = nominal == null ? BigDecimal.ZERO : nominal;
            UUID act = UUID.randomUUID();
            Instant at = next();
            long id = to.readings.add(
                    characteristic,
                    operation,
                    traveller,
                    sheet.code(),
                    joined(sheet.points().stream().map(point -> value.toPlainString()), ";"),
                    value,
                    sheet.unit(),
                    new BigDecimal(WrittenShop.U),
                    shop.gaugeId(),
                    WrittenShop.GAUGE,
                    shop.gaugeDueOn(),
                    nominal,
                    limit(sheet, sheet.lowerDeviation()),
                    limit(sheet, sheet.upperDeviation()),
                    sheet.rule().name(),
                    sheet.rule().name(),
                    new BigDecimal("1.65"),
                    new BigDecimal("0.00825"),
                    "CONFORMING",
                    sheet.deciding(),
                    false,
                    false,
                    worker.personId(),
                    worker.deviceId(),
                    at,
                    act);
            record(
                    act,
                    at,
                    "read",
                    "characteristic:" + characteristic,
                    "{\"characteristic\":" + characteristic + ",\"code\":\"" + sheet.code() + "\",\"reading\":" + id
                            + ",\"verdict\":\"CONFORMING\",\"what\":\"judged\"}");
        }

        private void sign(long operation, OperationSheet sheet) throws SQLException {
            UUID act = UUID.randomUUID();
            Instant at = next();
            String signer = sheet.signers().get(0).name();
            long id = to.signatures.add(
                    operation,
                    second.personId(),
                    "Person",
                    signer,
                    "Operation " + sheet.code() + " may go on",
                    at,
                    second.deviceId(),
                    act);
            record(
                    act,
                    at,
                    "sign " + signer,
                    "operation:" + operation,
                    "{\"operation\":" + operation + ",\"person\":" + second.personId() + ",\"signature\":" + id
                            + ",\"signer\":\"" + signer + "\",\"what\":\"signed\"}");
        }

        private void clock(ClockSheet sheet, Instant released) throws SQLException {
            boolean met = reached.shipped();
            to.clocks.add(
                    traveller,
                    sheet.code(),
                    sheet.name(),
                    sheet.kind().name(),
                    sheet.minutes(),
                    sheet.startedBy(),
                    String.join(",", sheet.gates()),
                    met ? "MET" : "PLANNED",
                    met ? released : null,
                    met ? released.plus(Duration.ofMinutes(sheet.minutes())) : null,
                    0L);
        }
    }
}
