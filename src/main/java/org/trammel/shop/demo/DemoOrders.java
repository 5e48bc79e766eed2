package org.trammel.shop.demo;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.springframework.context.annotation.Profile;
import org.springframework.core.io.ClassPathResource;
import org.springframework.stereotype.Component;
import org.trammel.shop.designs.Approval;
import org.trammel.shop.designs.DesignDraft;
import org.trammel.shop.designs.DesignGate;
import org.trammel.shop.designs.Designs;
import org.trammel.shop.designs.DrawingOffice;
import org.trammel.shop.designs.GateAnswer;
import org.trammel.shop.designs.GateCheck;
import org.trammel.shop.designs.GeometryInput;
import org.trammel.shop.designs.Lacking;
import org.trammel.shop.designs.Nominal;
import org.trammel.shop.orders.BrakeLever;
import org.trammel.shop.orders.Category;
import org.trammel.shop.orders.CustomerDetails;
import org.trammel.shop.orders.NewOrder;
import org.trammel.shop.orders.OrderBook;
import org.trammel.shop.orders.OrderDetails;
import org.trammel.shop.orders.OrderEntry;
import org.trammel.shop.orders.OrderSheet;
import org.trammel.shop.orders.OrderedColours;
import org.trammel.shop.orders.Orders;
import org.trammel.shop.orders.OwnPartDetails;
import org.trammel.shop.orders.RiderDetails;
import org.trammel.shop.orders.Serials;
import org.trammel.shop.people.Role;
import org.trammel.shop.routes.RouteBook;
import org.trammel.shop.routes.RouteSheet;
import org.trammel.shop.travellers.Release;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;

/** Enters the invented orders, draws their frames, and releases them to the shop. */
@Component
@Profile("demo")
class DemoOrders {

    private static final Instant NEW_YEAR = Instant.parse("2026-01-05T08:00:00Z");

    /** As the powders of the story call them; the frame in two colours gets a clear coat. */
    private static final Map<String, List<String>> COLOURS =
            Map.of("O-104", List.of("green"), "O-107", List.of("green"), "O-114", List.of("sand", "green", "clear"));

    private final OrderEntry entry;
    private final OrderBook book;
    private final Orders orders;
    private final OrderedColours colours;
    private final Serials serials;
    private final Designs designs;
    private final DrawingOffice office;
    private final DesignGate gate;
    private final RouteBook routes;
    private final Release release;
    private final DemoFamilies families;
    private final DemoActs acts;
    private final DemoClock clock;

    DemoOrders(
            OrderEntry entry,
            OrderBook book,
            Orders orders,
            OrderedColours colours,
            Serials serials,
            Designs designs,
            DrawingOffice office,
            DesignGate gate,
            RouteBook routes,
            Release release,
            DemoFamilies families,
            DemoActs acts,
            DemoClock clock) {
        this.entry = entry;
        this.book = book;
        this.orders = orders;
        this.colours = colours;
        this.serials = serials;
        this.designs = designs;
        this.office = office;
        this.gate = gate;
        this.routes = routes;
        this.release = release;
        this.families = families;
        this.acts = acts;
        this.clock = clock;
    }

    static List<DemoOrder> read() {
        try (InputStream in = new ClassPathResource("demo/orders.json").getInputStream()) {
            return JsonMapper.builder().build().readValue(in, new TypeReference<List<DemoOrder>>() {});
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Enters every order in the order of their numbers, and gives each its serial. */
    Map<String, Long> enter(List<DemoOrder> all) {
        Map<String, Long> ids = new LinkedHashMap<>();
        clock.setTo(NEW_YEAR);
        serials.raise(acts.by("ME"), 100);
        families.enter();
        for (DemoOrder order : all) {
            Instant ordered = order.ordered()
                    .atTime(LocalTime.of(10, 0))
                    .atZone(DemoOrder.ZONE)
                    .toInstant();
            clock.setTo(ordered);
            OrderSheet sheet = entry.enter(acts.by("ME"), typed(order));
            if (COLOURS.containsKey(order.order())) {
                colours.name(acts.by("ME"), sheet.id(), COLOURS.get(order.order()), null);
            }
            ids.put(order.order(), sheet.id());
            clock.setTo(ordered.isAfter(NEW_YEAR) ? ordered.plus(Duration.ofHours(1)) : NEW_YEAR);
            if (!order.order().equals("O-121")) {
                orders.reserveSerial(acts.by("ME"), sheet.id());
            }
        }
        return ids;
    }

    private static NewOrder typed(DemoOrder order) {
        boolean back = order.order().equals("O-121");
        List<OwnPartDetails> own = order.order().equals("O-116")
                ? List.of(new OwnPartDetails("shock", "210 by 55, customer's own", java.time.LocalDate.of(2026, 3, 11)))
                : List.of();
        return new NewOrder(
                order.order(),
                null,
                new CustomerDetails(
                        "Invented customer " + order.order().substring(2),
                        "customer" + order.order().substring(2) + "@example.invalid",
                        "SE",
                        order.ordered()),
                new OrderDetails(
                        order.description(),
                        order.metal(),
                        order.route().startsWith("FS") ? "FULL_SUSPENSION" : kind(order),
                        category(order),
                        "SE",
                        "bell, reflectors and lights of the country",
                        BrakeLever.LEFT,
                        new RiderDetails(
                                BigDecimal.valueOf(order.rider()),
                                BigDecimal.valueOf(Math.round(order.rider() * 0.47)),
                                null,
                                null,
                                BigDecimal.valueOf(Math.min(100, Math.round(order.rider() * 0.42))),
                                null),
                        List.of()),
                own,
                order.price(),
                order.promised(),
                new BigDecimal("85"),
                back ? "AV24-037-V" : null,
                true);
    }

    private static String kind(DemoOrder order) {
        return switch (order.route()) {
            case "ST-TIG" -> "STEEL_TIG";
            case "ST-FILLET" -> "STEEL_FILLET";
            case "TI" -> "TITANIUM";
            case "TANDEM-ST" -> "TANDEM";
            case "HT-7005-2C" -> "TWO_COLOUR";
            case "REPAIR-6061" -> "REPAIR";
            default -> "HARDTAIL";
        };
    }

    private static Category category(DemoOrder order) {
        if (order.order().equals("O-113")) {
            return Category.YOUNG_ADULT;
        }
        String what = order.description();
        if (what.startsWith("Touring") || what.startsWith("Tandem")) {
            return Category.CITY_AND_TREKKING;
        }
        return what.matches("(Road|All-road|Gravel|Cyclo-cross).*") ? Category.RACING : Category.MOUNTAIN;
    }

    /** Draws the frame, has it approved and checked, and releases it; gives its serial. */
    String release(DemoOrder order, long orderId) {
        Instant begin = start(order);
        clock.setTo(begin);
        long revision = draw(order, orderId);
        office.send(acts.by("ME"), revision);
        clock.pass(Duration.ofDays(1));
        String file = Objects.requireNonNull(designs.revision(revision).drawing());
        gate.approve(
                acts.by("ME"),
                revision,
                new Approval(
                        "A",
                        file,
                        "the customer",
                        clock.instant().atZone(DemoOrder.ZONE).toLocalDate()));
        answer(order, revision);
        clock.pass(Duration.ofHours(2));
        gate.sign(acts.by("ME"), revision, acts.id("ME"), Role.OWNER);
        clock.pass(Duration.ofMinutes(10));
        gate.sign(acts.by("TR"), revision, acts.id("TR"), Role.QA_LEAD);
        clock.pass(Duration.ofMinutes(10));
        return release.release(
                acts.by("TR"), orderId, revision, routes.released(order.route()).revisionId());
    }

    static Instant start(DemoOrder order) {
        Instant first = order.anchors() == null || order.anchors().isEmpty()
                ? DemoClock.MORNING
                : order.anchors().values().stream()
                        .min(java.util.Comparator.naturalOrder())
                        .orElseThrow()
                        .atZone(DemoOrder.ZONE)
                        .toInstant();
        return first.minus(Duration.ofDays(3));
    }

    /** Draws a first revision with geometry and every nominal the route asks for. */
    long draw(DemoOrder order, long orderId) {
        long revision = book.beginDesign(acts.by("ME"), orderId).revisionId();
        RouteSheet route = routes.released(order.route());
        enter(order, revision, route, Map.of());
        giveNominals(order, revision, route);
        office.draw(acts.by("ME"), revision, DemoPicture.png(order.order()), "image/png", order.order() + ".png");
        return revision;
    }

    /** Changes what a newer revision is about, and leaves the rest as it was drawn. */
    void redraw(DemoOrder order, long revision, Map<GeometryInput, BigDecimal> changed) {
        RouteSheet route = routes.released(order.route());
        enter(order, revision, route, changed);
        giveNominals(order, revision, route);
        office.draw(
                acts.by("ME"), revision, DemoPicture.png(order.order() + " B"), "image/png", order.order() + "-B.png");
    }

    /** What the route asks for and the drawing does not give is typed. */
    private void giveNominals(DemoOrder order, long revision, RouteSheet route) {
        Map<String, Nominal> nominals = new LinkedHashMap<>();
        for (Lacking lacking : designs.readyFor(revision, route)) {
            BigDecimal value = order.nominal(lacking.code());
            if (value != null) {
                nominals.put(lacking.code(), Nominal.of(value));
            }
        }
        if (!nominals.isEmpty()) {
            office.give(acts.by("ME"), revision, null, nominals);
        }
    }

    private void enter(DemoOrder order, long revision, RouteSheet route, Map<GeometryInput, BigDecimal> changed) {
        Map<GeometryInput, BigDecimal> geometry = new EnumMap<>(GeometryInput.class);
        if (order.geometry() != null) {
            order.geometry().forEach((k, v) -> geometry.put(GeometryInput.valueOf(k), v));
        }
        geometry.putAll(changed);
        office.change(
                acts.by("ME"),
                revision,
                null,
                new DesignDraft(
                        order.description(),
                        order.metal(),
                        route.kind(),
                        route.revisionId(),
                        order.family(),
                        List.of(),
                        geometry,
                        true));
    }

    private void answer(DemoOrder order, long revision) {
        Set<GateCheck> notMet = gate.notMet(revision);
        Set<GateCheck> notComputed = gate.notComputed(revision);
        for (GateCheck check : gate.asked(revision)) {
            boolean outside = check == GateCheck.TEST_FAMILY && order.family() == null;
            if (outside || notMet.contains(check) || notComputed.contains(check)) {
                gate.answer(acts.by("ME"), revision, check, GateAnswer.DECIDED, decision(order, check));
            } else {
                gate.answer(acts.by("ME"), revision, check, GateAnswer.MEETS, null);
            }
        }
    }

    /** What the owner wrote where a figure is not met, or a frame lies outside what was tested. */
    private static String decision(DemoOrder order, GateCheck check) {
        return switch (check) {
            case TEST_FAMILY ->
                order.order().equals("O-119")
                        ? "Axle 197 lies outside the families tested: released to be cut, held before welding until"
                                + " owner and QA lead decide, invented."
                        : "Outside the families tested; decided for this frame by owner and QA lead, invented.";
            case HEAD_NODES ->
                "So short a head tube: the welds of both tubes are laid as one bead, decided for this frame, invented.";
            case TOE_CLEARANCE ->
                "A touring bicycle: the overlap is known to the rider and wanted, decided for this frame, invented.";
            case MITRES ->
                order.geometry() != null && order.geometry().containsKey(GeometryInput.SEAT_TUBE_OFFSET.code())
                        ? "The seat tube stands ahead of the shell and is joined to it through the yoke of the pivot, as"
                                + " drawn; equal tubes are formed or dressed by hand, invented."
                        : "Equal tubes: feather edge dressed by hand, down tube formed where it meets the shell, invented.";
            case STANDOVER -> "The rider stands over the frame before with as little, and wants it so, invented.";
            case SEATPOST -> "The post is chosen at assembly, and its own mark decides; invented.";
            default -> "Seen and decided for this frame, invented.";
        };
    }
}
