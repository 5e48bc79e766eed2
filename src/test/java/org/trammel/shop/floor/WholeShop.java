package org.trammel.shop.floor;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.BeanFactory;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.support.GeneratedKeyHolder;
import org.springframework.test.util.ReflectionTestUtils;
import org.trammel.calc.marks.SerialNumber;
import org.trammel.shop.TestClock;
import org.trammel.shop.TestCrew;
import org.trammel.shop.designs.Nominal;
import org.trammel.shop.designs.PlantedGate;
import org.trammel.shop.gauges.GaugeRange;
import org.trammel.shop.gauges.GaugeRegister;
import org.trammel.shop.gauges.NewGauge;
import org.trammel.shop.inspection.ReadingLine;
import org.trammel.shop.inspection.Readings;
import org.trammel.shop.people.Qualification;
import org.trammel.shop.people.Qualifications;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.routes.CharacteristicSheet;
import org.trammel.shop.routes.ChildSheet;
import org.trammel.shop.routes.ClockSheet;
import org.trammel.shop.routes.OperationSheet;
import org.trammel.shop.routes.RouteSheet;
import org.trammel.shop.routes.StepSheet;
import org.trammel.shop.travellers.Bench;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.Release;
import org.trammel.shop.travellers.Travellers;

/**
 * The application with nothing left out: approved orders, checked drawings and released routes are planted in their
 * tables, everything after that goes through the services.
 */
public final class WholeShop {

    private static final AtomicInteger NEXT = new AtomicInteger(1);
    /** Ids of orders that exist only in the books of a test lie below. */
    private static final long BEYOND = 1_000_000;

    private static final OffsetDateTime EARLIER = OffsetDateTime.of(2026, 1, 5, 8, 0, 0, 0, ZoneOffset.UTC);

    private final BeanFactory beans;
    private final JdbcClient jdbc;
    private final TestCrew crew;
    private final TestClock clock;
    private final Release release;
    private final Travellers travellers;
    private final Bench bench;
    private final Readings readings;
    private final GaugeRegister gauges;
    private final Qualifications qualifications;
    private final Object clockWatch;

    public WholeShop(BeanFactory beans) {
        this.beans = beans;
        jdbc = beans.getBean(JdbcClient.class);
        crew = beans.getBean(TestCrew.class);
        clock = beans.getBean(TestClock.class);
        release = beans.getBean(Release.class);
        travellers = beans.getBean(Travellers.class);
        bench = beans.getBean(Bench.class);
        readings = beans.getBean(Readings.class);
        gauges = beans.getBean(GaugeRegister.class);
        qualifications = beans.getBean(Qualifications.class);
        clockWatch = beans.getBean("clockWatch");
    }

    /** A frame in the shop. */
    public record Frame(long orderId, long designId, String number, long travellerId, String serial) {}

    /** Releases a new order's frame on a planted route. */
    public Frame frame(long routeRevisionId) {
        return frame(routeRevisionId, Map.of());
    }

    public Frame frame(RouteSheet route) {
        return frame(route(route));
    }

    /** Releases a new order's frame on a planted route, with nominals by characteristic code. */
    public Frame frame(long routeRevisionId, Map<String, Nominal> nominals) {
        int n = NEXT.getAndIncrement();
        String number = "W-" + n;
        String serial = SerialNumber.of("W" + (char) ('A' + n / 100_000), n / 1000 % 100, n % 1000)
                .stored();
        long design = insert("insert into design (drawn_for, version) values (?, 0)", number);
        long order = order(number, serial, design);
        long drawing = drawing(design, 1, nominals);
        release.release(act(hire(Role.OWNER)), order, drawing, routeRevisionId);
        return new Frame(order, design, number, travellers.inForce(serial, "").travellerId(), serial);
    }

    private long order(String number, String serial, long design) {
        long customer = insert("insert into customer (name, country, version) values ('Rider One', 'SE', 0)");
        long order = insert(
                "insert into shop_order (id, number, customer_id, state, description, metal, kind, category, country,"
                        + " country_rules, front_brake_lever, price_currency, promised_on, serial, returned_frame,"
                        + " design_id, ordered_by, ordered_at, entered_act, version) overriding system value"
                        + " values (?, ?, ?, 'APPROVED',"
                        + " 'test frame', 'AL6061', 'HARDTAIL', 'MOUNTAIN', 'SE', '', 'LEFT', 'EUR', ?, ?, false, ?, 0,"
                        + " ?, ?, 0)",
                BEYOND + NEXT.getAndIncrement(),
                number,
                customer,
                LocalDate.of(2026, 5, 22),
                serial,
                design,
                EARLIER,
                UUID.randomUUID());
        jdbc.sql("insert into rider (order_id, version) values (?, 0)")
                .param(order)
                .update();
        return order;
    }

    /** A checked revision of a design, ready to be released. */
    public long drawing(long design, int position, Map<String, Nominal> nominals) {
        long revision = insert(
                "insert into design_revision (design_id, position, letter, state, metal, kind, description, begun_by,"
                        + " begun_at, checked_at, version) values (?, ?, ?, 'CHECKED', 'AL6061', 'HARDTAIL',"
                        + " 'test frame', 0, ?, ?, 0)",
                design,
                position,
                String.valueOf((char) ('A' + position - 1)),
                EARLIER,
                EARLIER);
        nominals.forEach((code, nominal) -> jdbc.sql("insert into design_nominal (revision_id, characteristic, nominal,"
                        + " lower_deviation, upper_deviation, overrides_limits) values (?, ?, ?, ?, ?, ?)")
                .params(Arrays.asList(
                        revision,
                        code,
                        nominal.nominal(),
                        nominal.lowerDeviation(),
                        nominal.upperDeviation(),
                        nominal.overridesLimits()))
                .update());
        PlantedGate.answer(beans, revision);
        return revision;
    }

    /** Plants a route, its parts first; gives the id of its released revision. */
    public long route(RouteSheet sheet) {
        Map<String, Long> parts =
                sheet.children().stream().collect(Collectors.toMap(ChildSheet::part, part -> route(part.route())));
        long route = insert(
                "insert into route (code, name, metal, kind) values (?, ?, ?, ?)",
                "W" + NEXT.getAndIncrement(),
                sheet.name(),
                sheet.metal(),
                sheet.kind());
        long revision = insert(
                "insert into route_revision (route_id, ordinal, letter, state, released_of, origin, drawn_by, drawn_at,"
                        + " content_sha256, edits, version) values (?, 1, 'A', 'RELEASED', ?, 'test', 0, ?, ?, 0, 0)",
                route,
                route,
                EARLIER,
                "0".repeat(64));
        for (int i = 0; i < sheet.operations().size(); i++) {
            operation(revision, i + 1, sheet.operations().get(i));
        }
        for (int i = 0; i < sheet.clocks().size(); i++) {
            clock(revision, i + 1, sheet.clocks().get(i));
        }
        for (int i = 0; i < sheet.children().size(); i++) {
            ChildSheet child = sheet.children().get(i);
            long theirs = parts.get(child.part());
            insert(
                    "insert into route_child (revision_id, sequence, part, name, child_route_id, child_revision_id)"
                            + " select ?, ?, ?, ?, route_id, id from route_revision where id = ?",
                    revision,
                    i + 1,
                    child.part(),
                    child.name(),
                    theirs);
        }
        return revision;
    }

    private void operation(long revision, int sequence, OperationSheet o) {
        long operation = insert(
                "insert into route_operation (revision_id, sequence, code, name, station_code, point, signers,"
                        + " qualification, together, outside, irreversible, joins, repeat_limit, caution)"
                        + " values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
                revision,
                sequence,
                o.code(),
                o.name(),
                o.station(),
                o.point().name(),
                o.signers().stream().map(Enum::name).collect(Collectors.joining(",")),
                o.qualification(),
                o.together(),
                o.outside(),
                o.irreversible(),
                o.joins(),
                o.repeatLimit(),
                o.caution());
        for (int i = 0; i < o.steps().size(); i++) {
            StepSheet s = o.steps().get(i);
            insert(
                    "insert into route_step (operation_id, sequence, text, instruction, photo, irreversible, lot_kind,"
                            + " starts_clock, qualification, proof) values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
                    operation,
                    i + 1,
                    s.text(),
                    s.instruction(),
                    s.photo(),
                    s.irreversible(),
                    s.lotKind(),
                    s.startsClock(),
                    s.qualification(),
                    s.proof() == null ? null : s.proof().name());
        }
        for (int i = 0; i < o.characteristics().size(); i++) {
            characteristic(operation, i + 1, o.characteristics().get(i));
        }
    }

    private void characteristic(long operation, int sequence, CharacteristicSheet c) {
        insert(
                "insert into route_characteristic (operation_id, sequence, code, name, unit, decimals, from_design,"
                        + " nominal, lower_deviation, upper_deviation, gauge_kind, points, reduction, rule, signers,"
                        + " sided, read_back, second_person, deciding, cold_set_clock, cold_set_attempts,"
                        + " triage_tolerances, cold_set_amount, source)"
                        + " values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
                operation,
                sequence,
                c.code(),
                c.name(),
                c.unit(),
                c.decimals(),
                c.fromDesign(),
                c.nominal(),
                c.lowerDeviation(),
                c.upperDeviation(),
                c.gaugeKind(),
                String.join("\n", c.points()),
                c.reduction().name(),
                c.rule().name(),
                c.signers().stream().map(Enum::name).collect(Collectors.joining(",")),
                c.sided(),
                c.readBack(),
                c.secondPerson(),
                c.deciding(),
                c.coldSetClock(),
                c.coldSetAttempts(),
                c.triageTolerances(),
                c.coldSetAmount(),
                c.source());
    }

    private void clock(long revision, int sequence, ClockSheet c) {
        insert(
                "insert into route_clock (revision_id, sequence, code, name, kind, minutes, started_by, gates, source)"
                        + " values (?, ?, ?, ?, ?, ?, ?, ?, ?)",
                revision,
                sequence,
                c.code(),
                c.name(),
                c.kind().name(),
                c.minutes(),
                c.startedBy(),
                String.join("\n", c.gates()),
                c.source());
    }

    private long insert(String sql, @Nullable Object... values) {
        GeneratedKeyHolder key = new GeneratedKeyHolder();
        jdbc.sql(sql).params(Arrays.asList(values)).update(key, "id");
        return key.getKeyAs(Long.class);
    }

    public long hire(Role... roles) {
        return crew.hire(roles);
    }

    /** Somebody who holds a qualification from 2025 until a day. */
    public long qualified(String kind, LocalDate until, Role... roles) {
        long person = crew.hire(roles);
        qualifications.enter(
                act(crew.hire(Role.QA_LEAD)),
                person,
                Qualification.of(kind, "shop rule", LocalDate.of(2025, 1, 1), until, false));
        return person;
    }

    public Act act(long by) {
        return crew.act(by);
    }

    /** A gauge that was calibrated on new year's day. */
    public String gauge(String kind, String unit, @Nullable String u, LocalDate dueOn) {
        String code = "W" + UUID.randomUUID().toString().substring(0, 8).toUpperCase(Locale.ROOT);
        long qa = crew.hire(Role.QA_LEAD);
        gauges.register(
                act(qa),
                code,
                new NewGauge(
                        "gauge of a test",
                        null,
                        "bench",
                        u == null,
                        List.of(new GaugeRange(
                                kind,
                                unit,
                                new BigDecimal("-2000"),
                                new BigDecimal("2000"),
                                u == null ? null : new BigDecimal("0.001"),
                                u == null ? null : new BigDecimal(u),
                                null,
                                "from memory"))));
        gauges.calibrated(act(qa), code, LocalDate.of(2026, 1, 1), dueOn, "C-1", null, "as it should be");
        return code;
    }

    public FrameSheet sheet(Frame frame) {
        return travellers.sheet(frame.travellerId());
    }

    public FrameSheet.OperationSheetOfFrame at(Frame frame) {
        return java.util.Objects.requireNonNull(sheet(frame).at());
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
                new Readings.Input(Arrays.stream(values).map(BigDecimal::new).toList(), gauge, null, true));
    }

    /** What the service does by itself every few seconds: it looks which windows have closed. */
    public void lookAtClocks() {
        ReflectionTestUtils.invokeMethod(clockWatch, "look");
    }

    public TestClock clock() {
        return clock;
    }
}
