package org.trammel.shop.floor;

import static org.mockito.ArgumentMatchers.any;
import static org.mockito.ArgumentMatchers.anyLong;
import static org.mockito.ArgumentMatchers.anyString;
import static org.mockito.Mockito.when;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicLong;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.marks.SerialNumber;
import org.trammel.shop.Fixture;
import org.trammel.shop.TestClock;
import org.trammel.shop.TestCrew;
import org.trammel.shop.designs.DesignSheet;
import org.trammel.shop.designs.DesignState;
import org.trammel.shop.designs.Designs;
import org.trammel.shop.designs.Nominal;
import org.trammel.shop.gauges.GaugeRange;
import org.trammel.shop.gauges.GaugeRegister;
import org.trammel.shop.gauges.NewGauge;
import org.trammel.shop.inspection.ReadingLine;
import org.trammel.shop.inspection.Readings;
import org.trammel.shop.orders.OrderSheet;
import org.trammel.shop.orders.OrderState;
import org.trammel.shop.orders.Orders;
import org.trammel.shop.people.Qualification;
import org.trammel.shop.people.Qualifications;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.routes.RouteBook;
import org.trammel.shop.routes.RouteSheet;
import org.trammel.shop.travellers.Bench;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.Release;
import org.trammel.shop.travellers.Travellers;

/** A shop floor with a crew, gauges and frames on small routes of the test's own. */
@Fixture
public class Floor {

    private static final AtomicLong NEXT = new AtomicLong(1);

    /** Added to the ids of orders that are only made up, since other tests take real ones into the same database. */
    private static final long MADE_UP = 1_000_000_000L;

    private final Orders orders;
    private final Designs designs;
    private final RouteBook book;
    private final Release release;
    private final Travellers travellers;
    private final Bench bench;
    private final Readings readings;
    private final GaugeRegister register;
    private final Qualifications qualifications;
    private final TestCrew crew;
    private final TestClock clock;
    private final Map<Long, String> serials = new ConcurrentHashMap<>();
    private final Map<Long, RouteSheet> routes = new ConcurrentHashMap<>();
    private final Map<Long, DesignSheet> drawings = new ConcurrentHashMap<>();

    Floor(
            Orders orders,
            Designs designs,
            RouteBook book,
            Release release,
            Travellers travellers,
            Bench bench,
            Readings readings,
            GaugeRegister register,
            Qualifications qualifications,
            TestCrew crew,
            TestClock clock) {
        this.orders = orders;
        this.designs = designs;
        this.book = book;
        this.release = release;
        this.travellers = travellers;
        this.bench = bench;
        this.readings = readings;
        this.register = register;
        this.qualifications = qualifications;
        this.crew = crew;
        this.clock = clock;
    }

    /** Opens the books. The mocks are reset between tests, so every test calls it first. */
    public void open() {
        when(orders.byId(anyLong())).thenAnswer(i -> order(i.getArgument(0)));
        when(orders.assignSerial(any(), anyLong())).thenAnswer(i -> serials.get(i.<Long>getArgument(1)));
        when(orders.began(any(), anyLong(), anyLong(), anyString())).thenAnswer(i -> order(i.getArgument(1)));
        when(designs.release(any(), anyLong(), any())).thenAnswer(i -> drawings.get(i.<Long>getArgument(1)));
        when(book.revision(anyLong())).thenAnswer(i -> routes.get(i.<Long>getArgument(0)));
        when(designs.revision(anyLong())).thenAnswer(i -> drawings.get(i.<Long>getArgument(0)));
        when(book.forFrames(anyLong())).thenAnswer(i -> routes.get(i.<Long>getArgument(0)));
    }

    private OrderSheet order(long id) {
        return new OrderSheet(
                id,
                "T-" + id,
                serials.get(id),
                false,
                "test frame",
                "AL6061",
                "HARDTAIL",
                OrderState.APPROVED,
                LocalDate.of(2026, 4, 10),
                new BigDecimal("85"),
                id,
                id,
                "TEST",
                "SE",
                TestClock.START,
                null);
    }

    /** The order of a frame. */
    public OrderSheet orderOf(Frame frame) {
        return order(frame.orderId());
    }

    /** A frame of the shop floor. */
    public record Frame(long orderId, long travellerId, String serial) {}

    /** Releases a frame on a route; nominals may be given by characteristic code. */
    public Frame frame(RouteSheet route, Map<String, Nominal> nominals) {
        long id = NEXT.getAndIncrement();
        String letters = "" + (char) ('B' + id / 100000 % 20) + (char) ('A' + id / 1000 / 100 % 20 + id / 1000 % 5);
        SerialNumber serial = SerialNumber.of(letters, (int) (id / 1000 % 100), (int) (id % 1000));
        long order = MADE_UP + id;
        serials.put(order, serial.stored());
        long owner = crew.hire(Role.OWNER);
        release.release(act(owner), order, drawing(order, route.metal(), "A", nominals), book(route));
        return new Frame(order, travellers.inForce(serial.stored(), "").travellerId(), serial.stored());
    }

    public Frame frame(RouteSheet route) {
        return frame(route, Map.of());
    }

    /** Enters a route in the book; gives the id of its revision. */
    public long book(RouteSheet route) {
        long id = NEXT.getAndIncrement();
        routes.put(id, route);
        return id;
    }

    /** Enters a drawing for an order; gives the id of its revision. */
    public long drawing(long order, String metal, String letter, Map<String, Nominal> nominals) {
        long id = NEXT.getAndIncrement();
        drawings.put(
                id,
                new DesignSheet(
                        id,
                        id,
                        "T-" + order,
                        letter,
                        DesignState.RELEASED,
                        metal,
                        "HARDTAIL",
                        "test frame",
                        null,
                        nominals,
                        Map.of(),
                        List.of(),
                        null,
                        null));
        return id;
    }

    public long hire(Role... roles) {
        return crew.hire(roles);
    }

    /** Somebody who holds a qualification that needs no confirmation. */
    public long qualified(String kind, Role... roles) {
        long person = crew.hire(roles);
        qualifications.enter(
                act(crew.hire(Role.QA_LEAD)),
                person,
                Qualification.of(kind, "shop rule", LocalDate.of(2025, 1, 1), LocalDate.of(2027, 1, 1), false));
        return person;
    }

    public Act act(long by) {
        return crew.act(by);
    }

    /** An act that a device sent at a time of its own. */
    public Act act(long by, Instant deviceAt) {
        return new Act(UUID.randomUUID(), by, null, clock.instant(), deviceAt);
    }

    /** A gauge in date. */
    public String gauge(String kind, String unit, @Nullable String u) {
        return gauge(range(kind, unit, u == null ? null : "0.001", u));
    }

    /** A meter in date that reads each of them well enough, such as air by its temperature and its humidity. */
    public String meter(String kind, String... units) {
        return gauge(java.util.Arrays.stream(units)
                .map(unit -> range(kind, unit, "0.1", "0.2"))
                .toArray(GaugeRange[]::new));
    }

    private static GaugeRange range(String kind, String unit, @Nullable String resolution, @Nullable String u) {
        return new GaugeRange(
                kind,
                unit,
                new BigDecimal("-2000"),
                new BigDecimal("2000"),
                resolution == null ? null : new BigDecimal(resolution),
                u == null ? null : new BigDecimal(u),
                null,
                "from memory");
    }

    private String gauge(GaugeRange... ranges) {
        long qa = crew.hire(Role.QA_LEAD);
        String code = "G" + UUID.randomUUID().toString().substring(0, 8).toUpperCase(java.util.Locale.ROOT);
        register.register(
                act(qa), code, new NewGauge("gauge of a test", null, "bench", ranges[0].u() == null, List.of(ranges)));
        register.calibrated(
                act(qa), code, LocalDate.of(2026, 1, 1), LocalDate.of(2026, 12, 31), "C-1", null, "as it should be");
        return code;
    }

    public FrameSheet sheet(Frame frame) {
        return travellers.sheet(frame.travellerId());
    }

    public FrameSheet.OperationSheetOfFrame at(Frame frame) {
        return java.util.Objects.requireNonNull(sheet(frame).at());
    }

    /** Ticks the first step of the operation at hand. */
    public void tickFirst(Frame frame, long by) {
        bench.tick(act(by), List.of(at(frame).steps().get(0).stepId()), null, null);
    }

    /** Ticks every step of the operation at hand that is not ticked. */
    public void tickAll(Frame frame, long by) {
        for (FrameSheet.StepLine step : at(frame).steps()) {
            if (!step.ticked()) {
                bench.tick(act(by), List.of(step.stepId()), null, null);
            }
        }
    }

    public ReadingLine read(long by, long characteristicId, String gauge, String... values) {
        return readings.read(
                act(by),
                characteristicId,
                new Readings.Input(
                        java.util.Arrays.stream(values).map(BigDecimal::new).toList(), gauge, null, true));
    }
}
